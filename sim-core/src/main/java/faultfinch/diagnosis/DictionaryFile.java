package faultfinch.diagnosis;

import faultfinch.signal.BadInput;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.zip.CRC32;

/**
 * A dictionary as one file: a check sum, the origin, every word once, looks, faults, then the cells
 * as they are used, so that reading copies none of them.
 */
public final class DictionaryFile {
  /** Of files that tell which faults are excited; those of the other kind are still read. */
  private static final int MAGIC = 0x46664432;

  private static final int MAGIC_WITHOUT_EXCITED = 0x46664431;

  /** Set in the row number of a fault that is excited. */
  private static final int EXCITED = 1 << 31;

  private static final int SUM_ENDS = 12;

  private DictionaryFile() {}

  /** The whole file; equal dictionaries have equal bytes. */
  public static byte[] bytes(FaultDictionary dictionary) {
    Words words = new Words();
    ByteArrayOutputStream inner = new ByteArrayOutputStream();
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(inner);
        DataOutputStream file = new DataOutputStream(whole)) {
      writeTables(dictionary, words, out);
      file.writeInt(dictionary.excited().isPresent() ? MAGIC : MAGIC_WITHOUT_EXCITED);
      file.writeLong(0);
      file.writeInt(words.index.size());
      for (String word : words.index.keySet()) {
        file.writeUTF(word);
      }
      inner.writeTo(file);
      FaultDictionary.Cells cells = dictionary.cells();
      int first = cells.starts()[0];
      file.write(cells.bytes(), first, cells.starts()[cells.columns()] - first);
    } catch (IOException e) {
      throw new UncheckedIOException("a dictionary could not be written into memory", e);
    }
    byte[] bytes = whole.toByteArray();
    long sum = sum(bytes);
    for (int i = 0; i < 8; i++) {
      bytes[4 + i] = (byte) (sum >> (56 - 8 * i));
    }
    return bytes;
  }

  /** Writes it to a file. */
  public static void write(FaultDictionary dictionary, Path file) throws IOException {
    Files.write(file, bytes(dictionary));
  }

  /**
   * Reads a file.
   *
   * @throws BadInput if it is not a whole dictionary
   */
  public static FaultDictionary read(Path file) throws IOException {
    return read(String.valueOf(file.getFileName()), Files.readAllBytes(file));
  }

  /**
   * Reads a resource.
   *
   * @param name for messages
   * @throws BadInput if it is not a whole dictionary
   */
  public static FaultDictionary read(String name, InputStream in) throws IOException {
    return read(name, in.readAllBytes());
  }

  private static FaultDictionary read(String name, byte[] bytes) {
    ByteArrayInputStream inner = new ByteArrayInputStream(bytes);
    try (DataInputStream in = new DataInputStream(inner)) {
      int magic = bytes.length < SUM_ENDS ? 0 : in.readInt();
      if (magic != MAGIC && magic != MAGIC_WITHOUT_EXCITED) {
        throw wrong(name, "another kind of file");
      }
      if (in.readLong() != sum(bytes)) {
        throw wrong(name, "a damaged dictionary");
      }
      List<String> words = new ArrayList<>();
      for (int left = in.readInt(); left > 0; left--) {
        words.add(in.readUTF());
      }
      return readTables(words, in, bytes, magic == MAGIC);
    } catch (IOException | IndexOutOfBoundsException e) {
      throw wrong(name, "a dictionary that ends too early");
    }
  }

  private static BadInput wrong(String name, String found) {
    return new BadInput(name, 1, 1, found, "a whole dictionary; build it again");
  }

  private static long sum(byte[] bytes) {
    CRC32 crc = new CRC32();
    crc.update(bytes, SUM_ENDS, bytes.length - SUM_ENDS);
    return crc.getValue();
  }

  private static void writeTables(FaultDictionary dictionary, Words words, DataOutputStream out)
      throws IOException {
    out.writeInt(words.of(dictionary.origin().board()));
    out.writeInt(words.of(dictionary.origin().digest()));
    out.writeInt(dictionary.dropped().size());
    for (String look : dictionary.dropped()) {
      out.writeInt(words.of(look));
    }
    out.writeInt(dictionary.columns().size());
    for (FaultDictionary.Column column : dictionary.columns()) {
      out.writeInt(words.of(column.look()));
      out.writeInt(column.cells());
      out.writeInt(column.outcomes().size());
      for (String outcome : column.outcomes()) {
        out.writeInt(words.of(outcome));
      }
    }
    Set<String> excited = dictionary.excited().orElse(Set.of());
    out.writeInt(dictionary.faults().size());
    for (String fault : dictionary.faults()) {
      out.writeInt(words.of(fault));
      out.writeInt(dictionary.row(fault) | (excited.contains(fault) ? EXCITED : 0));
    }
    FaultDictionary.Cells cells = dictionary.cells();
    out.writeInt(cells.rows());
    out.writeInt(cells.columns());
    for (int i = 0; i < cells.columns(); i++) {
      out.writeInt(cells.starts()[i + 1] - cells.starts()[i]);
    }
  }

  private static FaultDictionary readTables(
      List<String> words, DataInputStream in, byte[] bytes, boolean tellsExcited)
      throws IOException {
    Origin origin = new Origin(words.get(in.readInt()), words.get(in.readInt()));
    List<String> dropped = new ArrayList<>();
    for (int left = in.readInt(); left > 0; left--) {
      dropped.add(words.get(in.readInt()));
    }
    List<FaultDictionary.Column> columns = new ArrayList<>();
    for (int left = in.readInt(); left > 0; left--) {
      String look = words.get(in.readInt());
      int cells = in.readInt();
      List<String> outcomes = new ArrayList<>();
      for (int more = in.readInt(); more > 0; more--) {
        outcomes.add(words.get(in.readInt()));
      }
      columns.add(new FaultDictionary.Column(look, cells, outcomes));
    }
    Map<String, Integer> rowOfFault = new LinkedHashMap<>();
    Set<String> excited = new LinkedHashSet<>();
    for (int left = in.readInt(); left > 0; left--) {
      String fault = words.get(in.readInt());
      int row = in.readInt();
      rowOfFault.put(fault, row & ~EXCITED);
      if ((row & EXCITED) != 0) {
        excited.add(fault);
      }
    }
    int rows = in.readInt();
    int[] starts = new int[in.readInt() + 1];
    int size = 0;
    for (int i = 1; i < starts.length; i++) {
      starts[i] = in.readInt();
      size += starts[i];
    }
    starts[0] = bytes.length - size;
    for (int i = 1; i < starts.length; i++) {
      starts[i] += starts[i - 1];
    }
    FaultDictionary.Cells cells = new FaultDictionary.Cells(bytes, rows, starts);
    return new FaultDictionary(
        origin,
        columns,
        dropped,
        rowOfFault,
        tellsExcited ? Optional.of(excited) : Optional.empty(),
        cells);
  }

  /** Every word once, numbered as it comes. */
  private static final class Words {
    private final Map<String, Integer> index = new LinkedHashMap<>();

    int of(String word) {
      return index.computeIfAbsent(word, k -> index.size());
    }
  }
}
