package faultfinch.symptom;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.fault.Draw;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultUniverse;
import faultfinch.machine.Machine;
import faultfinch.machine.Setup;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Prints a digest of everything that can be observed of drawn cases: stored state, levels of all
 * nets phase by phase, heat and current, milestones, picture, sound, lamp and the owner's features.
 * The lines must be the same on every Java. {@code java -cp ... faultfinch.symptom.CaseDigests
 * [BOARD [HOW MANY [SEED]]]}
 */
public final class CaseDigests {
  private static final int CYCLES = 2_000;

  private CaseDigests() {}

  /** Prints a line a case, and one for all. */
  public static void main(String[] arguments) throws IOException, NoSuchAlgorithmException {
    Board board = BoardReader.shipped(arguments.length > 0 ? arguments[0] : "tamarisk");
    int howMany = arguments.length > 1 ? Integer.parseInt(arguments[1]) : 20;
    long seed = arguments.length > 2 ? Long.parseLong(arguments[2]) : 1;
    MessageDigest all = MessageDigest.getInstance("SHA-256");
    List<List<Fault>> cases = new ArrayList<>();
    cases.add(List.of());
    List<Fault> drawn = new Draw(FaultUniverse.of(board), seed).overKinds(howMany - 1);
    drawn.forEach(f -> cases.add(List.of(f)));
    for (List<Fault> faults : cases) {
      byte[] bytes = observed(Setup.healthy(board, seed).with(faults));
      all.update(bytes);
      String name = faults.isEmpty() ? "healthy" : faults.get(0).text();
      System.out.println(digest(bytes).substring(0, 32) + "  " + bytes.length + "  " + name);
    }
    System.out.println(HexFormat.of().formatHex(all.digest()));
  }

  private static String digest(byte[] bytes) throws NoSuchAlgorithmException {
    return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
  }

  private static byte[] observed(Setup setup) throws IOException {
    long end = Watching.endMilliseconds(setup.board()) * 1_000_000L;
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    DataOutputStream out = new DataOutputStream(bytes);
    List<byte[]> atTheEnd = new ArrayList<>();
    Watching watched = Watching.of(setup, Map.of(end, machine -> atTheEnd.add(machine(machine))));
    out.write(atTheEnd.get(0));
    out.writeUTF(new TreeMap<>(watched.milestones()).toString());
    out.writeUTF(watched.symptoms().features().toString());
    out.writeUTF(watched.lamp().toString());
    for (short sample : watched.sound(0, end, Ear.RATE).samples()) {
      out.writeShort(sample);
    }
    if (watched.screen().isPresent()) {
      for (int argb : Picture.of(watched.screen().get(), 1).argb()) {
        out.writeInt(argb);
      }
    }
    return bytes.toByteArray();
  }

  private static byte[] machine(Machine machine) {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (DataOutputStream out = new DataOutputStream(bytes)) {
      out.writeLong(machine.digest());
      out.writeLong(machine.cycles());
      out.writeLong(machine.nanoseconds());
      machine.play(
          CYCLES,
          (phase, at) -> {
            for (int net = 0; net < machine.points(); net++) {
              write(out, machine.millivolts(net));
            }
          });
      out.writeInt(machine.currentMilliamps());
      for (var part : machine.board().parts()) {
        out.writeInt(machine.heat().milliwatts(part.ref()));
        out.writeInt(machine.caseTenths(part.ref(), 300));
      }
    } catch (IOException e) {
      throw new IllegalStateException("memory could not be written", e);
    }
    return bytes.toByteArray();
  }

  private static void write(DataOutputStream out, int number) {
    try {
      out.writeShort(number);
    } catch (IOException e) {
      throw new IllegalStateException("memory could not be written", e);
    }
  }
}
