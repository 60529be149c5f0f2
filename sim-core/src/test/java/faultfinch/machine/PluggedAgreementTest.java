package faultfinch.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;

import faultfinch.board.Board;
import faultfinch.board.BoardReader;
import faultfinch.board.Contact;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.board.Plug;
import faultfinch.fault.Fault;
import faultfinch.fault.FaultKinds;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Both machines do the same with something plugged into a board or standing on it. */
class PluggedAgreementTest {
  private static final Board TAMARISK = BoardReader.shipped("tamarisk");
  private static final Board SORREL = BoardReader.shipped("sorrel");
  private static final long MS = 1_000_000;

  private static Setup setup(Board board, Board own, String... faults) {
    List<Fault> all = Arrays.stream(faults).map(f -> FaultKinds.parse(f, own)).toList();
    return Setup.healthy(board, 1).with(all);
  }

  private static Board withBenchRom() {
    return TAMARISK
        .withBenchRom()
        .with(Plug.leads(TAMARISK.benchRom().orElseThrow().returnLeads()));
  }

  /** A like chip on another, leg on leg. */
  private static Board doubled(Board board, String ref) {
    PlacedPart under = board.part(ref).orElseThrow();
    PlacedPart top =
        new PlacedPart("PB1", under.type(), "", under.x(), under.y(), 0, true, "", under.share());
    List<Contact> contacts = new ArrayList<>();
    List<Net> nets = new ArrayList<>();
    for (Pin pin : under.type().part().pinout().pins()) {
      Pad leg = new Pad("PB1", pin.name());
      contacts.add(new Contact(new Pad(ref, pin.name()), leg));
      nets.add(new Net(leg.text(), List.of(leg), List.of()));
    }
    return board.with(new Plug(List.of(top), nets, contacts, List.of()));
  }

  /** Station 1 begins at 63 ms, station 4 at 250, station 9 at 1086. */
  @Test
  void benchRom_healthyBoard_agreesAtItsStations() {
    assertEquals(
        Optional.empty(),
        Agreement.fromMarks(
                setup(withBenchRom(), TAMARISK),
                List.of(),
                List.of(64 * MS, 251 * MS, 1087 * MS),
                2000)
            .difference());
  }

  @Test
  void benchRom_bankBitStuckAndRomOut_agreesFromReset() {
    Setup with = setup(withBenchRom(), TAMARISK, "U29.Q2: drives low", "U2: dead");
    assertEquals(Optional.empty(), Agreement.ofRuns(with, 66 * MS).difference());
  }

  @Test
  void piggyback_memoryOnMemory_agreesWhileMemoryIsSized() {
    Setup with = setup(doubled(TAMARISK, "U7"), TAMARISK, "U7.Q: open pin");
    assertEquals(Optional.empty(), Agreement.ofRuns(with, 66 * MS).difference());
  }

  @Test
  void piggyback_decoderOnSorrel_agreesOverItsBoot() {
    Setup with = setup(doubled(SORREL, "U4"), SORREL, "U4.Y5/: drives low");
    assertEquals(Optional.empty(), Agreement.ofRuns(with, 120 * MS).difference());
  }
}
