package faultfinch.fault;

import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;

/**
 * The words of one fault, its place already found on the board: what a kind reads itself from.
 *
 * @param text as it was given
 * @param place the place as this board names it
 * @param pads the pads of the place, or none
 * @param parts the part of the place, or none
 * @param what matched words behind the colon
 * @param column of the first of them, from 1
 */
record Words(
    Anatomy anatomy,
    String text,
    String place,
    List<Pad> pads,
    Optional<PlacedPart> parts,
    Matcher what,
    int column) {

  /** The fault without condition, in the board's own names. */
  String normal() {
    return place + ": " + what.group();
  }

  PlacedPart part() {
    return parts.orElseThrow();
  }

  Pad pad() {
    return pads.get(0);
  }

  /** The words in one bracket of the kind's pattern. */
  String said(int group) {
    return what.group(group);
  }

  PlacedPart partSaid(int group) {
    return Places.part(anatomy, text, said(group), column + what.start(group));
  }

  Net net() {
    return anatomy.net(pad());
  }

  Net.Segment segment() {
    return segment(0);
  }

  /** One of the pieces of track of a place that has more than one. */
  Net.Segment segment(int which) {
    List<Pad> ends = pads.subList(2 * which, 2 * which + 2);
    return anatomy.net(ends.get(0)).segments().stream()
        .filter(s -> ends.contains(s.from()) && ends.contains(s.to()))
        .findFirst()
        .orElseThrow();
  }

  /** The words of one bracket are wrong. */
  UnknownFault refuse(int group, String found, String right) {
    return new UnknownFault(text, column + what.start(group), found, right);
  }

  /** The place cannot have a fault of this kind. */
  UnknownFault unfit(FaultKinds kind, String because) {
    List<Fault> sites = kind.sites(anatomy);
    String example =
        sites.stream()
            .filter(f -> parts.isPresent() && f.place().equals(part().ref()))
            .findFirst()
            .or(() -> sites.stream().findFirst())
            .map(Fault::text)
            .orElse(kind.example());
    return new UnknownFault(text, 1, place + ", " + because, "for example '" + example + "'");
  }
}
