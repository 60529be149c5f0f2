package faultfinch.cli;

import faultfinch.symptom.Picture;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * A picture as PNG: 8 bits each of red, green and blue, no transparency, no filters. Written here,
 * since the library for it would load half a window system. Source: the PNG specification (ISO
 * 15948).
 */
final class PictureFile {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final byte BITS = 8;
  private static final byte TRUE_COLOUR = 2;

  private PictureFile() {}

  /** The bytes of the file. */
  static byte[] bytes(Picture picture) {
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    file.writeBytes(SIGNATURE);
    ByteBuffer header = ByteBuffer.allocate(13);
    header.putInt(picture.width()).putInt(picture.height()).put(BITS).put(TRUE_COLOUR);
    chunk("IHDR", header.array(), file);
    chunk("IDAT", packed(lines(picture)), file);
    chunk("IEND", new byte[0], file);
    return file.toByteArray();
  }

  /** Each line of dots behind a 0, which says that it is not filtered. */
  private static byte[] lines(Picture picture) {
    int[] argb = picture.argb();
    ByteBuffer lines = ByteBuffer.allocate(picture.height() * (1 + 3 * picture.width()));
    for (int y = 0; y < picture.height(); y++) {
      lines.put((byte) 0);
      for (int x = 0; x < picture.width(); x++) {
        int dot = argb[y * picture.width() + x];
        lines.put((byte) (dot >> 16)).put((byte) (dot >> 8)).put((byte) dot);
      }
    }
    return lines.array();
  }

  private static byte[] packed(byte[] plain) {
    Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION);
    try {
      deflater.setInput(plain);
      deflater.finish();
      ByteArrayOutputStream packed = new ByteArrayOutputStream();
      byte[] some = new byte[8192];
      while (!deflater.finished()) {
        packed.write(some, 0, deflater.deflate(some));
      }
      return packed.toByteArray();
    } finally {
      deflater.end();
    }
  }

  private static void chunk(String type, byte[] content, ByteArrayOutputStream file) {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 check = new CRC32();
    check.update(name);
    check.update(content);
    file.writeBytes(ByteBuffer.allocate(4).putInt(content.length).array());
    file.writeBytes(name);
    file.writeBytes(content);
    file.writeBytes(ByteBuffer.allocate(4).putInt((int) check.getValue()).array());
  }
}
