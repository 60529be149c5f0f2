package faultfinch.diagnosis;

import java.nio.charset.StandardCharsets;

/**
 * Reads what a {@link java.io.DataOutputStream} wrote, from memory and without a call for each
 * byte: a dictionary has millions of them, and is waited for.
 */
final class FileBytes {
  private static final int BITS_IN_A_BYTE = 7;
  private static final int MOST_IN_A_BYTE = 0x7F;
  private static final int MORE = 0x80;

  private final byte[] bytes;
  private int at;

  FileBytes(byte[] bytes) {
    this.bytes = bytes;
  }

  int readInt() {
    int number =
        (bytes[at] & 0xFF) << 24
            | (bytes[at + 1] & 0xFF) << 16
            | (bytes[at + 2] & 0xFF) << 8
            | bytes[at + 3] & 0xFF;
    at += Integer.BYTES;
    return number;
  }

  long readLong() {
    return (long) readInt() << Integer.SIZE | readInt() & 0xFFFFFFFFL;
  }

  double readDouble() {
    return Double.longBitsToDouble(readLong());
  }

  int readByte() {
    return bytes[at++] & 0xFF;
  }

  boolean readBoolean() {
    return readByte() != 0;
  }

  void skip(int count) {
    at += count;
  }

  /** How many bytes are left. */
  int left() {
    return bytes.length - at;
  }

  /** Seven bits a byte, the lowest first; a set eighth bit says that more follow. */
  int readNumber() {
    int number = 0;
    for (int shift = 0; shift < Integer.SIZE; shift += BITS_IN_A_BYTE) {
      int some = bytes[at++];
      number |= (some & MOST_IN_A_BYTE) << shift;
      if ((some & MORE) == 0) {
        break;
      }
    }
    return number;
  }

  /** As many words as the number before them says. */
  String[] readWords() {
    int count = readInt();
    if (count < 0 || count > bytes.length) {
      throw new IndexOutOfBoundsException(count + " words");
    }
    String[] words = new String[count];
    for (int i = 0; i < words.length; i++) {
      int length = readByte() << 8 | readByte();
      if (at + length > bytes.length) {
        throw new IndexOutOfBoundsException(at + length);
      }
      // What is written is plain UTF-8 for all that has no surrogates and no zero.
      words[i] = new String(bytes, at, length, StandardCharsets.UTF_8);
      at += length;
    }
    return words;
  }
}
