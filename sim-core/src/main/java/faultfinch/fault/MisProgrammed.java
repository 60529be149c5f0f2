package faultfinch.fault;

import faultfinch.board.Firmware;
import faultfinch.board.PlacedPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A byte of a programmed memory that is not what the listing says.
 *
 * @param index address inside the part, from 0
 * @param value what it holds instead, 0 to 255
 */
public record MisProgrammed(String ref, int index, int value) implements Fault {
  private static final int PAGE = 256;
  private static final int ERASED = 0xFF;

  public MisProgrammed {
    if (index < 0 || value < 0 || value > 255) {
      throw new IllegalArgumentException(
          "found " + value + " at " + index + ", right would be a byte at an address from 0");
    }
  }

  static Optional<Fault> read(Words words) {
    PlacedPart part = words.part();
    if (!words.anatomy().isProgrammed(part)) {
      return Optional.empty();
    }
    int index = Integer.parseInt(words.said(1), 16);
    int cells = words.anatomy().cells(part);
    if (index >= cells) {
      String last = String.format(Locale.ROOT, "%04X", cells - 1);
      throw words.refuse(1, "address '" + words.said(1) + "'", "0000 to " + last);
    }
    return Optional.of(new MisProgrammed(part.ref(), index, Integer.parseInt(words.said(2), 16)));
  }

  /** One byte a page: a bit that lost its charge, so only pages that hold a charge have one. */
  static List<Fault> sites(Anatomy anatomy) {
    List<Fault> faults = new ArrayList<>();
    for (Firmware firmware : anatomy.board().firmware()) {
      byte[] image = firmware.image();
      for (int page = 0; page * PAGE < image.length; page++) {
        List<Integer> charged = charged(image, page * PAGE);
        if (!charged.isEmpty()) {
          int index = charged.get(Lot.below(charged.size(), page, Lot.of(firmware.ref())));
          int held = image[index] & 0xFF;
          faults.add(new MisProgrammed(firmware.ref(), index, held | Integer.lowestOneBit(~held)));
        }
      }
    }
    return faults;
  }

  private static List<Integer> charged(byte[] image, int from) {
    List<Integer> charged = new ArrayList<>();
    for (int i = from; i < Math.min(from + PAGE, image.length); i++) {
      if ((image[i] & 0xFF) != ERASED) {
        charged.add(i);
      }
    }
    return charged;
  }

  @Override
  public String text() {
    return String.format(Locale.ROOT, "%s: mis-programmed at %04X as %02X", ref, index, value);
  }

  @Override
  public String place() {
    return ref;
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.MIS_PROGRAMMED;
  }

  @Override
  public Seat seat() {
    return Seat.INSIDE;
  }

  @Override
  public Optional<String> decides() {
    return Optional.of(String.format(Locale.ROOT, "what %s holds at %04X", ref, index));
  }

  @Override
  public void applyTo(Harm harm) {
    harm.programmed(ref, index, value);
  }
}
