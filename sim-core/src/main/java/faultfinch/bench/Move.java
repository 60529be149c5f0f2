package faultfinch.bench;

import faultfinch.fault.RepairAction;

/**
 * One move at the bench. Its text is its identity: {@code look: probe U9.D0 at the pin}, {@code
 * reseat: U9}, {@code hold: U4.Y0/ to ground}, {@code power on}.
 *
 * @param place what it is done to; empty where the kind needs none
 */
public record Move(Moves kind, String place) {

  /** A look as a move. */
  public static Move look(Look look) {
    return new Move(Moves.LOOK, look.text());
  }

  /** The move that carries out a repair. */
  public static Move repair(RepairAction action) {
    Moves kind =
        switch (action.kind()) {
          case DESOLDER_AND_SOCKET -> Moves.DESOLDER;
          case NEW_SOCKET -> Moves.NEW_SOCKET;
          case SUPPLY -> Moves.NEW_SUPPLY;
          case EXCHANGE -> Moves.EXCHANGE;
          case EXCHANGE_SMALL -> Moves.EXCHANGE_SMALL;
          case LINK_TRACK -> Moves.LINK_TRACK;
          case REFLOW -> Moves.REFLOW;
          case CLEAR_BRIDGE -> Moves.CLEAR_BRIDGE;
          case CLEAN -> Moves.CLEAN_BOARD;
          case STRAIGHTEN_LEG -> Moves.STRAIGHTEN;
          case SWAP_BACK -> Moves.SWAP_BACK;
          case SET_LINK -> Moves.SET_LINK;
          case RESEAT -> Moves.RESEAT;
        };
    return new Move(kind, action.place());
  }

  /** Such as {@code look: probe U9.D0 at the pin}. */
  public String text() {
    return place.isEmpty() ? kind.word() : kind.word() + ": " + place;
  }

  /** The look it is; only of a move of kind {@link Moves#LOOK}. */
  public Look asLook() {
    return Look.parse(place);
  }

  /**
   * The move of a text. Whether a bench can do it is for {@link Bench} to say.
   *
   * @throws IllegalArgumentException if it does not begin with a kind of move
   */
  public static Move parse(String text) {
    String[] halves = text.strip().split(": ", 2);
    Moves kind =
        Moves.named(halves[0])
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "found move '"
                            + text
                            + "', right would be a kind and a place, such as 'look: screen' or"
                            + " 'reseat: U9'"));
    Move move = new Move(kind, halves.length == 1 ? "" : halves[1].strip());
    return kind == Moves.LOOK ? look(move.asLook()) : move;
  }
}
