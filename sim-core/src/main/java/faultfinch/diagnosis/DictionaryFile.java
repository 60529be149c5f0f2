package faultfinch.diagnosis;

import faultfinch.signal.BadInput;
import java.io.ByteArrayOutputStream;
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
 * A dictionary as one file: a check sum, the origin, every word once, looks, faults, then column by
 * column the cells. Most looks show most faults what the healthy board shows; of a column like that
 * only the other cells are kept.
 */
public final class DictionaryFile {
  private static final int MAGIC = 0x46664433;

  /** Set in the row number of a fault that is excited. */
  private static final int EXCITED = 1 << 31;

  private static final int SUM_ENDS = 12;

  /** Of a cell: its distance from the one before, and what it is. */
  private static final int LEAST_BYTES = 2;

  private static final int BITS_IN_A_BYTE = 7;
  private static final int MOST_IN_A_BYTE = 0x7F;
  private static final int MORE = 0x80;

  private DictionaryFile() {}

  /** The whole file; equal dictionaries have equal bytes. */
  public static byte[] bytes(FaultDictionary dictionary) {
    FileWords words = new FileWords();
    ByteArrayOutputStream inner = new ByteArrayOutputStream();
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(inner);
        DataOutputStream file = new DataOutputStream(whole)) {
      writeTables(dictionary, words, out);
      file.writeInt(MAGIC);
      file.writeLong(0);
      words.writeTo(file);
      inner.writeTo(file);
      for (int column = 0; column < dictionary.cells().columns(); column++) {
        writeColumn(dictionary.cells(), column, file);
      }
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
    try {
      FileBytes in = new FileBytes(bytes);
      if (bytes.length < SUM_ENDS || in.readInt() != MAGIC) {
        throw wrong(name, "another kind of file");
      }
      if (in.readLong() != sum(bytes)) {
        throw wrong(name, "a damaged dictionary");
      }
      return readTables(in.readWords(), in);
    } catch (IndexOutOfBoundsException e) {
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

  private static void writeTables(FaultDictionary dictionary, FileWords words, DataOutputStream out)
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
    out.writeBoolean(dictionary.excited().isPresent());
    Set<String> excited = dictionary.excited().orElse(Set.of());
    out.writeInt(dictionary.faults().size());
    for (String fault : dictionary.faults()) {
      out.writeInt(words.of(fault));
      out.writeInt(dictionary.row(fault) | (excited.contains(fault) ? EXCITED : 0));
    }
    Cells cells = dictionary.cells();
    out.writeInt(cells.rows());
    out.writeInt(cells.columns());
    for (int i = 0; i < cells.columns(); i++) {
      out.writeBoolean(cells.wide(i));
    }
  }

  /** How many cells differ from the healthy one; then each, by its distance from the one before. */
  private static void writeColumn(Cells cells, int column, DataOutputStream out)
      throws IOException {
    writeNumber(cells.to(column) - cells.from(column), out);
    int before = -1;
    for (int i = cells.from(column); i < cells.to(column); i++) {
      writeNumber(cells.row(i) - before, out);
      writeNumber(cells.cell(i), out);
      before = cells.row(i);
    }
  }

  private static Cells readColumns(int rows, int columns, FileBytes in) {
    Cells.Draft cells = new Cells.Draft(rows, columns, in.left() / LEAST_BYTES);
    for (int column = 0; column < columns; column++) {
      int row = -1;
      for (int left = in.readNumber(); left > 0; left--) {
        row += in.readNumber();
        cells.keep(row, in.readNumber());
      }
      cells.endColumn();
    }
    return cells.done();
  }

  /** Seven bits a byte, the lowest first; a set eighth bit says that more follow. */
  private static void writeNumber(int number, DataOutputStream out) throws IOException {
    int left = number;
    while (left > MOST_IN_A_BYTE) {
      out.writeByte(left & MOST_IN_A_BYTE | MORE);
      left >>>= BITS_IN_A_BYTE;
    }
    out.writeByte(left);
  }

  private static FaultDictionary readTables(String[] words, FileBytes in) {
    Origin origin = new Origin(words[in.readInt()], words[in.readInt()]);
    List<String> dropped = new ArrayList<>();
    for (int left = in.readInt(); left > 0; left--) {
      dropped.add(words[in.readInt()]);
    }
    List<FaultDictionary.Column> columns = new ArrayList<>();
    for (int left = in.readInt(); left > 0; left--) {
      String look = words[in.readInt()];
      int cells = in.readInt();
      List<String> outcomes = new ArrayList<>();
      for (int more = in.readInt(); more > 0; more--) {
        outcomes.add(words[in.readInt()]);
      }
      columns.add(new FaultDictionary.Column(look, cells, outcomes));
    }
    boolean tellsExcited = in.readBoolean();
    Map<String, Integer> rowOfFault = new LinkedHashMap<>();
    Set<String> excited = new LinkedHashSet<>();
    for (int left = in.readInt(); left > 0; left--) {
      String fault = words[in.readInt()];
      int row = in.readInt();
      rowOfFault.put(fault, row & ~EXCITED);
      if ((row & EXCITED) != 0) {
        excited.add(fault);
      }
    }
    int rows = in.readInt();
    int partitions = in.readInt();
    // Whether each takes two bytes, which its cells tell too.
    in.skip(partitions);
    Cells cells = readColumns(rows, partitions, in);
    return new FaultDictionary(
        origin,
        columns,
        dropped,
        rowOfFault,
        tellsExcited ? Optional.of(excited) : Optional.empty(),
        cells);
  }
}
