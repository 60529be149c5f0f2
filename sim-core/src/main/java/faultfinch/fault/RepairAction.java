package faultfinch.fault;

import faultfinch.board.Board;
import faultfinch.board.PlacedPart;
import faultfinch.part.Element;

/**
 * One thing a technician does, and the faults it cures. Cure sets overlap: a new chip may cure a
 * bad contact too, a link wire also the joints it is soldered to.
 *
 * @param place a reference, a pad, a piece of track or two pads, as the kind needs
 */
public record RepairAction(Kind kind, String place) {
  private static final int SURE = 100;
  private static final int HALF = 50;

  /** The kinds of action, cheap ones last. */
  public enum Kind {
    DESOLDER_AND_SOCKET("desolder, fit a socket and a new chip at "),
    NEW_SOCKET("fit a new socket at "),
    SUPPLY("exchange the "),
    EXCHANGE("exchange "),
    EXCHANGE_SMALL("unsolder and exchange "),
    LINK_TRACK("link the track "),
    REFLOW("reflow the joint of "),
    CLEAR_BRIDGE("clear the bridge "),
    CLEAN("clean around "),
    STRAIGHTEN_LEG("straighten the leg "),
    SWAP_BACK("put into their own sockets "),
    SET_LINK("open the link "),
    RESEAT("reseat ");

    private final String words;

    Kind(String words) {
      this.words = words;
    }
  }

  /** In plain words, such as {@code reflow the joint of U9.D0}. */
  public String text() {
    return kind.words + place;
  }

  /** Whether this surely cures the fault. */
  public boolean cures(Fault fault) {
    return cureChance(fault) == SURE;
  }

  /** Chance in per cent that this cures the fault: 0, 50 or 100. */
  public int cureChance(Fault fault) {
    Seat seat = fault.seat();
    boolean part = place.equals(fault.place());
    boolean spot = place.equals(fault.spot());
    return switch (kind) {
      case EXCHANGE ->
          part
              ? switch (seat) {
                case INSIDE, LEG, BENT_LEG, SEATING -> SURE;
                case CONTACT -> HALF;
                case JOINT, TRACK, BETWEEN_PADS, DIRT, SETTING, SOCKET_OF_ANOTHER, SUPPLY -> 0;
              }
              : 0;
      case RESEAT -> part && seat == Seat.SEATING ? SURE : part && seat == Seat.CONTACT ? HALF : 0;
      case NEW_SOCKET ->
          sure(part && (seat == Seat.CONTACT || seat == Seat.SEATING || underSocket(seat)));
      case DESOLDER_AND_SOCKET -> sure(part && (inPart(seat) || underSocket(seat)));
      case EXCHANGE_SMALL -> sure(part && (inPart(seat) || seat == Seat.JOINT));
      case LINK_TRACK ->
          sure((spot && seat == Seat.TRACK) || (seat == Seat.JOINT && endsAt(fault.spot())));
      case REFLOW -> sure(spot && seat == Seat.JOINT);
      case CLEAR_BRIDGE -> sure(spot && seat == Seat.BETWEEN_PADS);
      case CLEAN -> sure(spot && seat == Seat.DIRT);
      case STRAIGHTEN_LEG -> sure(spot && seat == Seat.BENT_LEG);
      case SWAP_BACK -> sure(spot && seat == Seat.SOCKET_OF_ANOTHER);
      case SET_LINK -> sure(spot && seat == Seat.SETTING);
      case SUPPLY -> sure(spot && seat == Seat.SUPPLY);
    };
  }

  /** The least action that surely cures a fault of this board. */
  public static RepairAction curing(Fault fault, Board board) {
    return switch (fault.seat()) {
      case INSIDE, LEG -> exchanging(fault.place(), board);
      case BENT_LEG -> new RepairAction(Kind.STRAIGHTEN_LEG, fault.spot());
      case CONTACT -> new RepairAction(Kind.NEW_SOCKET, fault.place());
      case SEATING -> new RepairAction(Kind.RESEAT, fault.place());
      case JOINT -> new RepairAction(Kind.REFLOW, fault.spot());
      case TRACK -> new RepairAction(Kind.LINK_TRACK, fault.spot());
      case BETWEEN_PADS -> new RepairAction(Kind.CLEAR_BRIDGE, fault.spot());
      case DIRT -> new RepairAction(Kind.CLEAN, fault.spot());
      case SETTING -> new RepairAction(Kind.SET_LINK, fault.spot());
      case SOCKET_OF_ANOTHER -> new RepairAction(Kind.SWAP_BACK, fault.spot());
      case SUPPLY -> new RepairAction(Kind.SUPPLY, fault.spot());
    };
  }

  /** Whatever it takes to exchange a part of this board. */
  public static RepairAction exchanging(String ref, Board board) {
    PlacedPart part = board.part(ref).orElseThrow();
    boolean chip = !(part.type().part() instanceof Element);
    Kind chips = part.socketed() ? Kind.EXCHANGE : Kind.DESOLDER_AND_SOCKET;
    return new RepairAction(chip ? chips : Kind.EXCHANGE_SMALL, ref);
  }

  private static boolean inPart(Seat seat) {
    return seat == Seat.INSIDE || seat == Seat.LEG;
  }

  /** What is made good when everything is unsoldered: a bridge under it too. */
  private static boolean underSocket(Seat seat) {
    return seat == Seat.JOINT || seat == Seat.BETWEEN_PADS;
  }

  private boolean endsAt(String pad) {
    return place.startsWith(pad + "-") || place.endsWith("-" + pad);
  }

  private static int sure(boolean cures) {
    return cures ? SURE : 0;
  }
}
