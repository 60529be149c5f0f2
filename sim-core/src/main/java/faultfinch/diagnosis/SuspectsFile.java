package faultfinch.diagnosis;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.RepairAction;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The suspects of a board as a file, since to work out every fault it can have takes longer than to
 * weigh them. A check proves that what is shipped is what the fault list gives.
 */
public final class SuspectsFile {
  private static final int MAGIC = 0x46665331;
  private static final String SUFFIX = ".suspects";

  /** What cures a suspect, and with what chance in per cent. */
  private record Remedy(RepairAction repair, Map<RepairAction, Integer> cures) {}

  private SuspectsFile() {}

  /** Its file name beside the board. */
  public static String fileName(Board board) {
    return board.name() + SUFFIX;
  }

  /** The suspects that were shipped for just this board. */
  public static Optional<Suspects> shipped(Board board, Origin origin) {
    Optional<InputStream> file = BoardReader.beside(board.name(), fileName(board));
    try (InputStream in = file.orElse(InputStream.nullInputStream())) {
      return file.isEmpty() ? Optional.empty() : read(in.readAllBytes(), origin);
    } catch (IOException e) {
      throw new UncheckedIOException("the program's own " + fileName(board) + " is unreadable", e);
    }
  }

  /** The whole file; equal suspects have equal bytes. */
  public static byte[] bytes(Origin origin, Suspects suspects) {
    FileWords words = new FileWords();
    ByteArrayOutputStream inner = new ByteArrayOutputStream();
    ByteArrayOutputStream whole = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(inner);
        DataOutputStream file = new DataOutputStream(whole)) {
      out.writeInt(words.of(origin.board()));
      out.writeInt(words.of(origin.digest()));
      Map<Remedy, Integer> remedies = new LinkedHashMap<>();
      for (Suspect s : suspects.all()) {
        remedies.putIfAbsent(new Remedy(s.repair(), s.cures()), remedies.size());
      }
      out.writeInt(remedies.size());
      for (Remedy remedy : remedies.keySet()) {
        write(remedy.repair, words, out);
        out.writeInt(remedy.cures.size());
        for (Map.Entry<RepairAction, Integer> cure : remedy.cures.entrySet()) {
          write(cure.getKey(), words, out);
          out.writeInt(cure.getValue());
        }
      }
      out.writeInt(suspects.all().size());
      for (Suspect s : suspects.all()) {
        out.writeInt(words.of(s.fault()));
        out.writeInt(words.of(s.place()));
        out.writeInt(remedies.get(new Remedy(s.repair(), s.cures())));
        out.writeDouble(s.weight());
      }
      file.writeInt(MAGIC);
      words.writeTo(file);
      inner.writeTo(file);
    } catch (IOException e) {
      throw new UncheckedIOException("suspects could not be written into memory", e);
    }
    return whole.toByteArray();
  }

  private static void write(RepairAction action, FileWords words, DataOutputStream out)
      throws IOException {
    out.writeByte(action.kind().ordinal());
    out.writeInt(words.of(action.place()));
  }

  /** The suspects of a file, if it is of this origin. */
  static Optional<Suspects> read(byte[] bytes, Origin origin) {
    FileBytes in = new FileBytes(bytes);
    if (in.readInt() != MAGIC) {
      return Optional.empty();
    }
    String[] words = in.readWords();
    if (!new Origin(words[in.readInt()], words[in.readInt()]).equals(origin)) {
      return Optional.empty();
    }
    Remedy[] remedies = new Remedy[in.readInt()];
    for (int i = 0; i < remedies.length; i++) {
      RepairAction repair = action(words, in);
      Map<RepairAction, Integer> cures = new LinkedHashMap<>();
      RepairAction least = repair;
      for (int left = in.readInt(); left > 0; left--) {
        RepairAction action = action(words, in);
        cures.put(action, in.readInt());
        least = action.equals(repair) ? action : least;
      }
      remedies[i] = new Remedy(least, Cures.of(cures));
    }
    int count = in.readInt();
    List<Suspect> all = new ArrayList<>(count);
    for (int i = 0; i < count; i++) {
      String fault = words[in.readInt()];
      String place = words[in.readInt()];
      Remedy remedy = remedies[in.readInt()];
      all.add(new Suspect(fault, place, in.readDouble(), remedy.repair, remedy.cures));
    }
    return Optional.of(Suspects.proven(all));
  }

  private static RepairAction action(String[] words, FileBytes in) {
    RepairAction.Kind kind = RepairAction.Kind.values()[in.readByte()];
    return new RepairAction(kind, words[in.readInt()]);
  }
}
