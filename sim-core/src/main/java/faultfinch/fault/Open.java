package faultfinch.fault;

import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.part.Element;
import java.util.List;
import java.util.Optional;

/**
 * A pin that does not meet its pad. The level at the part is the same wherever it is broken; the
 * repair is not, so the place of the break is part of the identity.
 */
public record Open(Pad pad, Break at) implements Fault {

  /** Where between die and pad the way is broken. */
  public enum Break {
    PIN("open pin", Seat.INSIDE),
    LEG("open leg", Seat.LEG),
    BENT_LEG("bent leg", Seat.BENT_LEG),
    CONTACT("open contact", Seat.CONTACT),
    JOINT("open joint", Seat.JOINT);

    private final String words;
    private final Seat seat;

    Break(String words, Seat seat) {
      this.words = words;
      this.seat = seat;
    }

    FaultKinds kind() {
      return switch (this) {
        case PIN -> FaultKinds.OPEN_PIN;
        case LEG -> FaultKinds.OPEN_LEG;
        case BENT_LEG -> FaultKinds.BENT_LEG;
        case CONTACT -> FaultKinds.OPEN_CONTACT;
        case JOINT -> FaultKinds.OPEN_JOINT;
      };
    }

    private boolean fits(Anatomy anatomy, PlacedPart part) {
      return switch (this) {
        case PIN ->
            anatomy.isChip(part)
                || anatomy.is(part, Element.Kind.PACK)
                || anatomy.is(part, Element.Kind.POTENTIOMETER);
        case LEG -> anatomy.isChip(part);
        case BENT_LEG, CONTACT -> part.socketed();
        case JOINT -> !anatomy.feedsBoard(part);
      };
    }
  }

  static Optional<Fault> read(Words words, Break at) {
    if (at == Break.JOINT && words.anatomy().feedsBoard(words.part())) {
      return Optional.empty();
    }
    if (!at.fits(words.anatomy(), words.part())) {
      boolean sits = at == Break.CONTACT || at == Break.BENT_LEG;
      String because = sits ? "which is soldered" : "whose part has no such place";
      throw words.unfit(at.kind(), because);
    }
    return Optional.of(new Open(words.pad(), at));
  }

  static List<Fault> sites(Anatomy anatomy, Break at) {
    return anatomy.pads().stream()
        .filter(p -> at.fits(anatomy, anatomy.part(p)))
        .<Fault>map(p -> new Open(p, at))
        .toList();
  }

  @Override
  public String text() {
    return pad.text() + ": " + at.words;
  }

  @Override
  public String place() {
    return pad.ref();
  }

  @Override
  public String spot() {
    return pad.text();
  }

  @Override
  public FaultKinds kind() {
    return at.kind();
  }

  @Override
  public Seat seat() {
    return at.seat;
  }

  @Override
  public void applyTo(Harm harm) {
    harm.open(pad);
  }
}
