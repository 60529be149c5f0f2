package faultfinch.desk;

import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds pins that a text in small letters names with their part: "U9.A0", "pin 5 of U9". */
final class PinPlaces {
  private static final Pattern PIN_BEHIND =
      Pattern.compile(
          "(?<= |^)([a-z]+\\d+)(?:\\.| (?:pin|pad|leg) | on | at | )([^ ]+)(?= |$)(?! m?v(?: |$))");
  private static final Pattern PIN_BEFORE =
      Pattern.compile(
          "(?<= |^)(?:(?:pin|pad|leg) )?([^ ]+)(?: (?:pin|pad|leg))? (?:of|on|at|off|from) "
              + "(?:the )?(?:[a-z]{2,} ){0,3}((?:74)?[a-z]+\\d+)(?= |$)");
  private static final Pattern PINS_BEFORE =
      Pattern.compile(
          "(?<= |^)(?:pins )?([^ ]+) (?:and|or|&) ([^ ]+)(?: both)? (?:of|on|at|off|from) "
              + "(?:the )?(?:[a-z]{2,} ){0,3}((?:74)?[a-z]+\\d+)(?= |$)");
  private static final Pattern PINS_BEHIND =
      Pattern.compile(
          "(?<= |^)([a-z]+\\d+)(?:\\.| pins | )([^ ]+) (?:and|or|&) (?:pin )?([^ ]+)(?= |$)");

  /** Pins in full, one after the other: "U2.A9 and U8.A0". */
  private static final Pattern PINS_IN_FULL =
      Pattern.compile(
          "(?<= |^)[a-z]+\\d+\\.[^ ,]+(?:(?:,? and |,? or |, ?| & )[a-z]+\\d+\\.[^ ,]+)+(?= |$)");

  private final Map<String, PlacedPart> parts;

  /**
   * @param parts by reference in small letters
   */
  PinPlaces(Map<String, PlacedPart> parts) {
    this.parts = parts;
  }

  /** The pins of a text; empty if none stands there with its part. */
  Optional<Place> find(String text) {
    return several(text).or(() -> one(text));
  }

  /** Several pins in full; or two of one part: "D1 and D6 of U34", "U22 Q3 and Q7". */
  private Optional<Place> several(String text) {
    Matcher full = PINS_IN_FULL.matcher(text);
    if (full.find()) {
      Optional<Place> all = inFull(full.group());
      if (all.isPresent()) {
        return all;
      }
    }
    Matcher before = PINS_BEFORE.matcher(text);
    if (before.find()) {
      Optional<Place> both = both(before.group(3), before.group(1), before.group(2), before);
      if (both.isPresent()) {
        return both;
      }
    }
    Matcher behind = PINS_BEHIND.matcher(text);
    return behind.find()
        ? both(behind.group(1), behind.group(2), behind.group(3), behind)
        : Optional.empty();
  }

  private Optional<Place> inFull(String words) {
    List<List<Pad>> pads = new ArrayList<>();
    String[] pins = words.split(",? and |,? or |, ?| & ");
    for (String pin : pins) {
      int dot = pin.indexOf('.');
      pad(pin.substring(0, dot), pin.substring(dot + 1)).ifPresent(p -> pads.add(List.of(p)));
    }
    Place.Quantity quantity = words.contains(" or ") ? Place.Quantity.SOME : Place.Quantity.EVERY;
    return pads.size() < pins.length
        ? Optional.empty()
        : Optional.of(new Place(List.of(), pads, quantity, List.of(words)));
  }

  private Optional<Place> both(String ref, String one, String other, Matcher words) {
    List<Pad> first = pads(ref, one);
    List<Pad> second = pads(ref, other);
    return first.isEmpty() || second.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Place(
                List.of(), List.of(first, second), Place.Quantity.EVERY, List.of(words.group())));
  }

  private Optional<Place> one(String text) {
    Matcher before = PIN_BEFORE.matcher(text);
    for (int from = 0; before.find(from); from = before.start() + 1) {
      List<Pad> pads = pads(before.group(2), before.group(1));
      if (!pads.isEmpty()) {
        return Optional.of(at(pads, before.group()));
      }
    }
    Matcher behind = PIN_BEHIND.matcher(text);
    for (int from = 0; behind.find(from); from = behind.start() + 1) {
      List<Pad> pads = pads(behind.group(1), behind.group(2));
      if (!pads.isEmpty()) {
        return Optional.of(at(pads, behind.group()));
      }
    }
    return Optional.empty();
  }

  private static Place at(List<Pad> pads, String words) {
    return new Place(List.of(), List.of(pads), Place.Quantity.SOME, List.of(words));
  }

  /** The pin of a part, or of any that has the type that is named: "pin 1 of the LS244". */
  private List<Pad> pads(String ref, String pin) {
    Optional<Pad> one = pad(ref, pin);
    if (one.isPresent()) {
      return List.of(one.get());
    }
    List<Pad> pads = new ArrayList<>();
    for (Map.Entry<String, PlacedPart> part : parts.entrySet()) {
      String type = part.getValue().type().type();
      if (type.equalsIgnoreCase(ref) || type.equalsIgnoreCase("74" + ref)) {
        pad(part.getKey(), pin).ifPresent(pads::add);
      }
    }
    return pads;
  }

  /** The pad of a part, in small letters, that has this name or number. */
  Optional<Pad> pad(String ref, String pin) {
    PlacedPart part = parts.get(ref);
    if (part == null) {
      return Optional.empty();
    }
    // Of Q and Q/ the one that is named; whoever has but one of them may leave the slash out.
    return pad(part, p -> p.name().equalsIgnoreCase(pin))
        .or(() -> pad(part, p -> p.name().equalsIgnoreCase(pin + "/")))
        .or(() -> pad(part, p -> String.valueOf(p.number()).equals(pin)));
  }

  private static Optional<Pad> pad(PlacedPart part, Predicate<Pin> which) {
    return part.type().part().pinout().pins().stream()
        .filter(which)
        .findFirst()
        .map(p -> new Pad(part.ref(), p.name()));
  }
}
