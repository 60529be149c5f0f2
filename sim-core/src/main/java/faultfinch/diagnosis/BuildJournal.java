package faultfinch.diagnosis;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.io.UncheckedIOException;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.InflaterInputStream;

/**
 * What of a build is done, in a file that every finished run is added to: a build that was killed
 * goes on from there. A record is its length, a check sum and its bytes; a torn last one is cut
 * off. A file of another origin is begun anew.
 *
 * <p>Without a file it only remembers.
 */
final class BuildJournal implements AutoCloseable {
  private static final int MAGIC = 0x46664A31;
  private static final int LONGEST = 1 << 28;

  private final Map<String, byte[]> done = new LinkedHashMap<>();
  private final Map<String, String> words = new HashMap<>();
  private final Optional<RandomAccessFile> file;

  private BuildJournal(Optional<RandomAccessFile> file) {
    this.file = file;
  }

  /** One that is gone with the process. */
  static BuildJournal inMemory() {
    return new BuildJournal(Optional.empty());
  }

  /**
   * One in a file, which is made if it is not there.
   *
   * @throws IOException if it can neither be read nor written, or another build writes it
   */
  static BuildJournal in(Path path, Origin origin) throws IOException {
    if (path.getParent() != null) {
      Files.createDirectories(path.getParent());
    }
    RandomAccessFile file = new RandomAccessFile(path.toFile(), "rw");
    if (!isOurs(file)) {
      file.close();
      throw new IOException(
          "found it being written by another build, right would be one that nobody writes");
    }
    BuildJournal journal = new BuildJournal(Optional.of(file));
    byte[] head = head(origin);
    byte[] found = new byte[head.length];
    boolean same = file.length() >= head.length;
    if (same) {
      file.readFully(found);
      same = Arrays.equals(head, found);
    }
    if (!same) {
      file.setLength(0);
      file.write(head);
    }
    journal.read(file);
    return journal;
  }

  /** Two builds that add to one file would tear each other's records. */
  private static boolean isOurs(RandomAccessFile file) throws IOException {
    try {
      return file.getChannel().tryLock() != null;
    } catch (OverlappingFileLockException e) {
      return false;
    }
  }

  private static byte[] head(Origin origin) {
    byte[] name = (origin.board() + " " + origin.digest()).getBytes(StandardCharsets.UTF_8);
    ByteArrayOutputStream head = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(head)) {
      out.writeInt(MAGIC);
      out.writeInt(name.length);
      out.write(name);
    } catch (IOException e) {
      throw new UncheckedIOException("a journal could not be begun in memory", e);
    }
    return head.toByteArray();
  }

  private void read(RandomAccessFile file) throws IOException {
    long whole = file.getFilePointer();
    while (file.length() - whole >= Integer.BYTES + Long.BYTES) {
      int length = file.readInt();
      long sum = file.readLong();
      if (length < 0 || length > LONGEST || file.length() - file.getFilePointer() < length) {
        break;
      }
      byte[] bytes = new byte[length];
      file.readFully(bytes);
      if (sum != sum(bytes)) {
        break;
      }
      keep(bytes);
      whole = file.getFilePointer();
    }
    file.setLength(whole);
    file.seek(whole);
  }

  private void keep(byte[] record) throws IOException {
    try (DataInputStream in = open(record)) {
      done.put(in.readUTF(), record);
    }
  }

  private static DataInputStream open(byte[] record) {
    return new DataInputStream(new InflaterInputStream(new ByteArrayInputStream(record)));
  }

  private static long sum(byte[] bytes) {
    CRC32 crc = new CRC32();
    crc.update(bytes);
    return crc.getValue();
  }

  /** How many runs are done. */
  synchronized int size() {
    return done.size();
  }

  /** What a run showed, if it is done. */
  synchronized Optional<List<Departure>> find(String run) {
    byte[] record = done.get(run);
    if (record == null) {
      return Optional.empty();
    }
    try (DataInputStream in = open(record)) {
      in.readUTF();
      Departure[] all = new Departure[in.readInt()];
      for (int i = 0; i < all.length; i++) {
        boolean excited = in.readBoolean();
        SortedMap<String, String> otherwise = new TreeMap<>();
        for (int left = in.readInt(); left > 0; left--) {
          otherwise.put(word(in), word(in));
        }
        all[i] = new Departure(otherwise, excited);
      }
      return Optional.of(List.of(all));
    } catch (IOException e) {
      throw new UncheckedIOException("a record whose sum is right is not whole", e);
    }
  }

  private String word(DataInputStream in) throws IOException {
    byte[] bytes = new byte[in.readInt()];
    in.readFully(bytes);
    String word = new String(bytes, StandardCharsets.UTF_8);
    return words.computeIfAbsent(word, w -> w);
  }

  /** Notes what a run showed. */
  synchronized void add(String run, List<Departure> departures) {
    ByteArrayOutputStream record = new ByteArrayOutputStream();
    Deflater fast = new Deflater(Deflater.BEST_SPEED);
    try {
      try (DataOutputStream out = new DataOutputStream(new DeflaterOutputStream(record, fast))) {
        out.writeUTF(run);
        out.writeInt(departures.size());
        for (Departure departure : departures) {
          out.writeBoolean(departure.excited());
          out.writeInt(departure.otherwise().size());
          for (Map.Entry<String, String> entry : departure.otherwise().entrySet()) {
            write(out, entry.getKey());
            write(out, entry.getValue());
          }
        }
      }
      byte[] bytes = record.toByteArray();
      done.put(run, bytes);
      if (file.isPresent()) {
        ByteArrayOutputStream whole = new ByteArrayOutputStream();
        try (DataOutputStream out = new DataOutputStream(whole)) {
          out.writeInt(bytes.length);
          out.writeLong(sum(bytes));
          out.write(bytes);
        }
        file.get().write(whole.toByteArray());
      }
    } catch (IOException e) {
      throw new UncheckedIOException("what was built could not be noted: " + e.getMessage(), e);
    } finally {
      fast.end();
    }
  }

  private static void write(DataOutputStream out, String word) throws IOException {
    byte[] bytes = word.getBytes(StandardCharsets.UTF_8);
    out.writeInt(bytes.length);
    out.write(bytes);
  }

  @Override
  public void close() throws IOException {
    if (file.isPresent()) {
      file.get().close();
    }
  }
}
