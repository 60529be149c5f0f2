package faultfinch.bench;

import faultfinch.bench.Reading.Words;
import faultfinch.board.Board;
import faultfinch.board.Footprint;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.fault.RepairAction;
import faultfinch.part.Element;
import java.util.ArrayList;
import java.util.List;

/** Work with iron, wire or brush that surely cures what it is meant for, if that was wrong. */
record Repair(RepairAction.Kind kind) implements Act {

  @Override
  public List<String> places(Patient patient) {
    Board board = patient.board;
    return switch (kind) {
      case REFLOW -> pads(board).stream().map(Pad::text).toList();
      case CLEAN -> pads(board).stream().map(Pad::text).toList();
      case STRAIGHTEN_LEG ->
          pads(board).stream()
              .filter(p -> patient.isSocketed(p.ref()) && !patient.isOut(p.ref()))
              .map(Pad::text)
              .toList();
      case LINK_TRACK ->
          board.nets().stream().flatMap(n -> n.segments().stream()).map(s -> s.text()).toList();
      case CLEAR_BRIDGE -> bridges(board);
      case SWAP_BACK -> pairs(patient);
      case SET_LINK -> board.parts().stream().filter(this::links).map(PlacedPart::ref).toList();
      case EXCHANGE_SMALL ->
          board.parts().stream().filter(p -> !Looks.chip(p)).map(PlacedPart::ref).toList();
      case SUPPLY -> List.of("brick", "lead");
      case NEW_SOCKET -> chips(patient, true);
      case DESOLDER_AND_SOCKET -> chips(patient, false);
      case EXCHANGE, RESEAT ->
          throw new IllegalStateException(kind + " is a move of a chip, not a repair of its place");
    };
  }

  private boolean links(PlacedPart part) {
    return part.type().part() instanceof Element e && e.kind() == Element.Kind.SWITCH;
  }

  private static List<Pad> pads(Board board) {
    return List.copyOf(board.netOfPad().keySet());
  }

  private static List<String> bridges(Board board) {
    List<String> pairs = new ArrayList<>();
    for (PlacedPart part : board.parts()) {
      Footprint.of(part)
          .neighbours()
          .forEach(n -> pairs.add(n.one().pad().text() + "-" + n.other().pad().text()));
    }
    board.neighbours().forEach(n -> pairs.add(n.text()));
    return List.copyOf(pairs);
  }

  private static List<String> pairs(Patient patient) {
    List<String> chips = chips(patient, true);
    return chips.stream()
        .flatMap(a -> chips.stream().filter(b -> !b.equals(a)).map(b -> a + "-" + b))
        .toList();
  }

  private static List<String> chips(Patient patient, boolean socketed) {
    return patient.board.parts().stream()
        .filter(p -> Looks.chip(p) && patient.isSocketed(p.ref()) == socketed)
        .map(PlacedPart::ref)
        .toList();
  }

  @Override
  public Reading perform(Patient patient, String place) {
    if (kind == RepairAction.Kind.DESOLDER_AND_SOCKET) {
      patient.desolder(place);
    } else {
      patient.cure(new RepairAction(kind, place));
    }
    return new Words("done", "done");
  }
}
