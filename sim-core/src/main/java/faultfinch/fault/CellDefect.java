package faultfinch.fault;

import faultfinch.board.PlacedPart;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One cell of a dynamic memory that does not keep what it is given: it forgets soon, or it takes
 * what is written beside it.
 *
 * @param index place of the cell in its chip, from 0: row times columns plus column
 */
public record CellDefect(String ref, int index, Way way) implements Fault {

  /** How a cell loses what it holds. */
  public enum Way {
    SHORT_LIVED("short-lived"),
    DISTURBED("disturbed");

    private final String word;

    Way(String word) {
      this.word = word;
    }

    /** As a fault's text and the part's page say it. */
    public String word() {
      return word;
    }

    private static Way named(String word) {
      return word.equals(DISTURBED.word) ? DISTURBED : SHORT_LIVED;
    }
  }

  static Optional<Fault> read(Words words) {
    PlacedPart part = words.part();
    if (!words.anatomy().isDynamic(part)) {
      return Optional.empty();
    }
    int index = CellStuck.index(words, part);
    return Optional.of(new CellDefect(part.ref(), index, Way.named(words.said(2))));
  }

  static List<Fault> sites(Anatomy anatomy) {
    List<Fault> faults = new ArrayList<>();
    for (PlacedPart part : anatomy.chips()) {
      if (anatomy.isDynamic(part)) {
        for (int index : CellStuck.regions(anatomy, part)) {
          for (Way way : Way.values()) {
            faults.add(new CellDefect(part.ref(), index, way));
          }
        }
      }
    }
    return faults;
  }

  @Override
  public String text() {
    return String.format(Locale.ROOT, "%s: cell %04X %s", ref, index, way.word);
  }

  @Override
  public String place() {
    return ref;
  }

  @Override
  public FaultKinds kind() {
    return FaultKinds.CELL_DEFECT;
  }

  @Override
  public Seat seat() {
    return Seat.INSIDE;
  }

  @Override
  public void applyTo(Harm harm) {
    harm.cellDefect(ref, index, way.word);
  }
}
