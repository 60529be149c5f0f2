package faultfinch.attempt;

import faultfinch.board.Board;
import faultfinch.board.PlacedPart;
import faultfinch.fault.FaultUniverse;
import faultfinch.fault.RepairAction;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Every answer to "what is wrong, and where" that a board allows, and the repair it leads to. */
final class Claims {

  /** The answer that nothing on the bench is at fault. */
  static final String NOTHING = "nothing wrong";

  private static final String SUPPLY = "supply";
  private static final String BRICK = "brick";
  private static final String PART = "part";

  private final Map<String, RepairAction> actions = new LinkedHashMap<>();
  private final Map<String, String> words = new LinkedHashMap<>();

  Claims(Board board) {
    for (PlacedPart part : board.parts()) {
      if (part.socketed()) {
        add(new RepairAction(RepairAction.Kind.RESEAT, part.ref()));
      }
    }
    FaultUniverse.of(board).repairs().forEach(this::add);
    for (String word :
        List.of(
            PART,
            "contact",
            "socket",
            "leg",
            "joint",
            "dirt",
            "track",
            "bridge",
            "setting",
            "wrong socket")) {
      Texts.list("claim." + word.replace(' ', '-')).forEach(synonym -> words.put(synonym, word));
    }
  }

  private void add(RepairAction action) {
    actions.putIfAbsent(text(action), action);
  }

  /** Such as {@code U9: contact}. */
  static String text(RepairAction action) {
    String what =
        switch (action.kind()) {
          case EXCHANGE, DESOLDER_AND_SOCKET, EXCHANGE_SMALL -> PART;
          case NEW_SOCKET -> "socket";
          case RESEAT -> "contact";
          case STRAIGHTEN_LEG -> "leg";
          case REFLOW -> "joint";
          case CLEAN -> "dirt";
          case LINK_TRACK -> "track";
          case CLEAR_BRIDGE -> "bridge";
          case SET_LINK -> "setting";
          case SWAP_BACK -> "wrong socket";
          case SUPPLY -> SUPPLY;
        };
    return action.place() + ": " + what;
  }

  /** The repair an answer leads to; none if the answer is that nothing is wrong. */
  Optional<RepairAction> repair(String typed) {
    String said = canonical(typed);
    if (said.equals(NOTHING)) {
      return Optional.empty();
    }
    RepairAction action = actions.get(said);
    if (action == null) {
      throw new Slip(Texts.say("slip.claim", typed.strip()), near(said));
    }
    return Optional.of(action);
  }

  /** The one text of an answer, however it was typed. */
  String canonical(String typed) {
    String said = typed.strip().replaceAll("[\\s:]+", " ");
    String small = said.toLowerCase(Locale.ROOT);
    if (Texts.list("claim.nothing").contains(small)) {
      return NOTHING;
    }
    if (Texts.list("claim.supply").contains(small)) {
      return BRICK + ": " + SUPPLY;
    }
    String[] halves = said.split(" ", 2);
    if (small.startsWith("track ")) {
      halves = new String[] {said.substring("track ".length()), "track"};
    }
    String what = halves.length == 1 ? PART : halves[1].toLowerCase(Locale.ROOT);
    return fit(halves[0], words.getOrDefault(what, what));
  }

  /**
   * A place in the case of the board; a pin's contact is its part's; a lone supply needs no word.
   */
  private String fit(String place, String what) {
    List<String> tries =
        List.of(
            place + ": " + what,
            place.replaceFirst("\\..*", "") + ": " + what,
            place + ": " + SUPPLY);
    for (String wanted : tries) {
      for (String text : actions.keySet()) {
        if (text.equalsIgnoreCase(wanted)) {
          return text;
        }
      }
    }
    return place + ": " + what;
  }

  private List<String> near(String said) {
    String place = said.replaceFirst("[.:].*", "");
    List<String> here = of(place);
    return Spelling.nearest(said, here.isEmpty() ? actions.keySet() : here);
  }

  /** All answers for one part; for the empty reference those for the board as a whole. */
  List<String> of(String ref) {
    Collection<String> all = actions.keySet();
    if (ref.isEmpty()) {
      return java.util.stream.Stream.concat(
              java.util.stream.Stream.of(NOTHING), all.stream().filter(t -> t.endsWith(SUPPLY)))
          .toList();
    }
    return all.stream().filter(t -> at(t, ref)).toList();
  }

  private static boolean at(String text, String ref) {
    String place = text.substring(0, text.indexOf(": "));
    for (String end : place.split("-")) {
      if (end.equalsIgnoreCase(ref)
          || end.toLowerCase(Locale.ROOT).startsWith(ref.toLowerCase(Locale.ROOT) + ".")) {
        return true;
      }
    }
    return false;
  }
}
