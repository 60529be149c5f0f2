package faultfinch.desk;

import faultfinch.board.Pad;
import faultfinch.symptom.EveryKey;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Which looks of a kind are meant by a place in words. */
final class LookPlaces {
  /** What nobody needs to do anything for. */
  static final List<String> AT_A_GLANCE = List.of("screen", "listen", "lamp");

  /** What is typed is read off the set. */
  static final List<String> ON_THE_SET = List.of(Phrases.TYPED, EveryKey.NAME);

  /** Looks at the whole board. */
  static final List<String> OWNERS =
      List.of("screen", "listen", "lamp", "typed", "bench", "current");

  /** Looks at pins. */
  static final List<String> AT_PINS = List.of("probe", "meter", "counter", "continuity", "ohms");

  private final Lookbook lookbook;
  private final Places places;

  /** Pads of parts of which no pin is named. */
  private static final int MOST_PADS = 64;

  LookPlaces(Lookbook lookbook, Places places) {
    this.lookbook = lookbook;
    this.places = places;
  }

  /** The looks of a kind at a place, each list a line of which one look was made. */
  List<List<String>> of(String kind, Place place, boolean apart, String text) {
    boolean atPad = text.contains(" pad");
    List<List<String>> looks = new ArrayList<>();
    if (OWNERS.contains(kind)) {
      looks.add(List.of(kind.equals("bench") ? BenchWords.LOOK : kind));
    } else if (AT_PINS.contains(kind)) {
      List<List<Pad>> lines =
          place.lines().isEmpty() ? padsOf(kind, place.refs(), text) : place.lines();
      if (place.refs().size() > 1 && place.lines().isEmpty() && lines.size() > MOST_PADS) {
        // A level at "some chip" tells nothing.
        return List.of();
      }
      for (List<Pad> line : lines) {
        List<String> pins = line.stream().map(p -> at(kind, p, atPad)).filter(this::known).toList();
        List<String> at = pins.isEmpty() && kind.equals("ohms") ? onTheRail(line) : pins;
        if (apart) {
          at.forEach(look -> looks.add(List.of(look)));
        } else {
          looks.add(at);
        }
      }
    } else {
      boolean anywhere =
          place.refs().isEmpty() && kind.equals("finger") && !places.isElsewhere(text);
      if (anywhere) {
        lookbook.looks().stream()
            .filter(l -> l.startsWith(kind + " "))
            .forEach(l -> looks.add(List.of(l)));
      }
      place.refs().forEach(ref -> looks.add(List.of(kind + " " + ref)));
    }
    return looks.stream()
        .map(line -> line.stream().filter(this::known).toList())
        .filter(line -> !line.isEmpty())
        .toList();
  }

  /** Ohms of a rail are read where it is fed, and the same at every pin of it. */
  private List<String> onTheRail(List<Pad> line) {
    return lookbook.looks().stream()
        .filter(look -> look.startsWith("ohms "))
        .filter(
            look -> line.stream().anyMatch(pad -> places.onOneRail(pad, padOf(look).orElseThrow())))
        .toList();
  }

  /** The pad of a look at a pin, whichever the instrument; empty if it is of no pin. */
  static Optional<Pad> padOf(String look) {
    String[] words = look.split(" ");
    int dot = words.length < 2 ? -1 : words[1].indexOf('.');
    return dot > 0
        ? Optional.of(new Pad(words[1].substring(0, dot), words[1].substring(dot + 1)))
        : Optional.empty();
  }

  /** The first pad of a line at which such a look can be made, or all of them if none can. */
  List<Pad> first(String kind, List<Pad> line) {
    return line.stream()
        .filter(p -> known(at(kind, p, false)))
        .findFirst()
        .map(List::of)
        .orElse(line);
  }

  boolean known(String look) {
    return lookbook.looks().contains(look);
  }

  private static String at(String kind, Pad pad, boolean atPad) {
    String side = atPad ? " at the pad" : " at the pin";
    return kind + " " + pad.text() + (kind.equals("probe") ? side : "");
  }

  /** Every pad of these parts where such a look can be made, each a line of its own. */
  private List<List<Pad>> padsOf(String kind, List<String> refs, String text) {
    List<List<Pad>> pads = new ArrayList<>();
    Optional<String> side =
        List.of("output", "input", "outputs", "inputs", "out", "in").stream()
            .filter(w -> Vocabulary.in(text, List.of(w)).isPresent())
            .findFirst()
            // Volts of a regulator are those it gives.
            .or(
                () ->
                    Optional.of("output")
                        .filter(w -> kind.equals("meter"))
                        .filter(w -> refs.stream().allMatch(places::isRegulator)));
    for (String look : lookbook.looks()) {
      String[] words = look.split(" ");
      int dot = words.length < 2 ? -1 : words[1].indexOf('.');
      if (words[0].equals(kind)
          && dot > 0
          && refs.contains(words[1].substring(0, dot))
          && !look.endsWith("pad")
          && !words[1].substring(dot + 2).contains("-")) {
        Pad pad = new Pad(words[1].substring(0, dot), words[1].substring(dot + 1));
        if (side.map(w -> places.isOn(pad, w)).orElse(!places.onGround(pad))) {
          pads.add(List.of(pad));
        }
      }
    }
    return pads;
  }

  List<String> near(String kind) {
    return lookbook.looks().stream().filter(l -> l.startsWith(kind)).limit(3).toList();
  }

  /** Whether some look of this kind can show an outcome. */
  boolean canShow(String kind, String outcome) {
    return lookbook.looks().stream()
        .filter(l -> l.equals(kind) || l.startsWith(kind + " "))
        .anyMatch(l -> lookbook.outcomes(l).contains(outcome));
  }
}
