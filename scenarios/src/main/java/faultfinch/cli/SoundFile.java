package faultfinch.cli;

import faultfinch.symptom.Sound;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** A sound as WAV: 16-bit samples of one channel, not packed. */
final class SoundFile {
  /** Samples a second, as on a disc. */
  static final int RATE = 44_100;

  private static final int HEADER = 44;
  private static final int FORMAT = 16;
  private static final short NOT_PACKED = 1;
  private static final short CHANNELS = 1;
  private static final short BYTES = 2;

  private SoundFile() {}

  /** The bytes of the file. */
  static byte[] bytes(Sound sound) {
    short[] samples = sound.samples();
    int content = samples.length * BYTES;
    ByteBuffer file = ByteBuffer.allocate(HEADER + content).order(ByteOrder.LITTLE_ENDIAN);
    file.put(name("RIFF")).putInt(HEADER - 8 + content).put(name("WAVE"));
    file.put(name("fmt ")).putInt(FORMAT).putShort(NOT_PACKED).putShort(CHANNELS);
    file.putInt(sound.rate()).putInt(sound.rate() * BYTES);
    file.putShort(BYTES).putShort((short) (BYTES * 8));
    file.put(name("data")).putInt(content);
    for (short sample : samples) {
      file.putShort(sample);
    }
    return file.array();
  }

  private static byte[] name(String four) {
    return four.getBytes(StandardCharsets.US_ASCII);
  }
}
