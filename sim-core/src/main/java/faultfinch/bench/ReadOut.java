package faultfinch.bench;

import faultfinch.board.Firmware;
import faultfinch.machine.Surroundings;
import faultfinch.machine.TestSocket;
import faultfinch.machine.TestSocket.Bed;
import faultfinch.machine.TestSocket.Chip;
import faultfinch.part.PartCatalog;
import faultfinch.signal.Level;
import java.util.List;

/** A pulled ROM read byte by byte and held against its listing. */
final class ReadOut implements Act {
  private static final int RAIL_MV = 5000;
  private static final int LINES = 13;
  private static final int BITS = 8;

  @Override
  public List<String> places(Patient patient) {
    return patient.board.firmware().stream()
        .map(Firmware::ref)
        .filter(ref -> patient.liesAside(ref))
        .filter(ref -> patient.board.part(ref).orElseThrow().type() == PartCatalog.EPROM_2764)
        .toList();
  }

  @Override
  public Reading perform(Patient patient, String ref) {
    Chip chip = ChipTest.pulled(patient, ref);
    TestSocket socket =
        new TestSocket(chip, new Bed(RAIL_MV, Surroundings.BENCH, patient.job.seed(), 0));
    for (String high : List.of("VPP", "PGM/")) {
      socket.drive(high, true);
    }
    for (String low : List.of("CE/", "OE/")) {
      socket.drive(low, false);
    }
    byte[] listing = chip.contents();
    int different = 0;
    String first = "";
    for (int at = 0; at < 1 << LINES; at++) {
      for (int line = 0; line < LINES; line++) {
        socket.drive("A" + line, (at >> line & 1) != 0);
      }
      socket.rest();
      int read = 0;
      for (int bit = 0; bit < BITS; bit++) {
        read |= socket.level("D" + bit) == Level.HIGH ? 1 << bit : 0;
      }
      if (read != (listing[at] & 0xFF)) {
        different++;
        first =
            first.isEmpty()
                ? String.format(
                    "byte %04X reads %02X, the listing says %02X", at, read, listing[at] & 0xFF)
                : first;
      }
    }
    return different == 0
        ? new Reading.Check(true, List.of())
        : new Reading.Check(
            false, List.of(different + " bytes differ from the listing", "the first, " + first));
  }
}
