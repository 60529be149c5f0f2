package faultfinch.board;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;

/** A folder that notes what was read of it, so that a board can tell from which files it is. */
final class Sources implements BoardFolder {
  private final BoardFolder folder;
  private final CRC32 sum = new CRC32();
  private long size;

  Sources(BoardFolder folder) {
    this.folder = folder;
  }

  @Override
  public byte[] bytes(String name) throws IOException {
    byte[] bytes = folder.bytes(name);
    sum.update(name.getBytes(StandardCharsets.UTF_8));
    sum.update(bytes);
    size += bytes.length;
    return bytes;
  }

  @Override
  public String shown(String name) {
    return folder.shown(name);
  }

  @Override
  public boolean isProven() {
    return folder.isProven();
  }

  /** Check sum and size of all that was read so far, in the order in which it was. */
  String text() {
    return Long.toHexString(sum.getValue()) + "-" + size;
  }
}
