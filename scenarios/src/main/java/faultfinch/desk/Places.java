package faultfinch.desk;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.part.Element;
import faultfinch.part.PartCatalog;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Finds the places of a board in words: pins, nets, groups of lines, parts by name or by role. */
final class Places {
  /** Of two parts that are named together each is meant. */
  private static final Pattern BOTH = Pattern.compile("\\b[a-z]+\\d+ and [a-z]+\\d+\\b");

  private static final String BENCH_ROM = "bench rom";
  private static final Set<String> KEYS = Set.of("key", "keys");
  private static final Set<String> BETWEEN = Set.of("and", "or", "the");

  /** Parts from one to another; "U4-11" is a pin. */
  private static final Pattern PARTS =
      Pattern.compile(
          "(?i)(?<= |^)([a-z]+)(\\d{1,2}) ?(?:to|thru|through|till|until|-|\\.\\.) ?\\1(\\d{1,2})(?= |,|$)");

  /** Nets by what is before their numbers: "the MD lines". */
  private static final List<String> SIDES = List.of("outputs", "inputs", "output", "input");

  private static final String ROLE = "role ";

  private final Board board;
  private final Vocabulary vocabulary;
  private final Map<String, PlacedPart> parts = new LinkedHashMap<>();
  private final Map<String, PlacedPart> roles = new LinkedHashMap<>();
  private final Map<Pad, Net> netOfPad;
  private final PinPlaces pinPlaces;
  private final LinePlaces linePlaces;

  Places(Board board, Vocabulary vocabulary) {
    this.board = board;
    this.vocabulary = vocabulary;
    netOfPad = board.netOfPad();
    board.parts().forEach(p -> parts.put(p.ref().toLowerCase(Locale.ROOT), p));
    board.parts().stream()
        .sorted(Comparator.comparing((PlacedPart p) -> p.role().length()).reversed())
        .forEach(p -> calls(p.role().toLowerCase(Locale.ROOT), p));
    pinPlaces = new PinPlaces(parts);
    linePlaces = new LinePlaces(board, vocabulary, pinPlaces);
  }

  /** By its role, and by what stands before a colon in it. */
  private void calls(String role, PlacedPart part) {
    roles.putIfAbsent(role, part);
    int colon = role.indexOf(':');
    if (colon > 0) {
      roles.putIfAbsent(role.substring(0, colon), part);
    }
  }

  /** The letter of a key in small, or nothing if a part is no key with a letter. */
  String letter(String ref) {
    PlacedPart part = parts.get(ref.toLowerCase(Locale.ROOT));
    String role = part == null ? "" : part.role().toLowerCase(Locale.ROOT);
    return role.matches("key \\S") ? role.substring(role.length() - 1) : "";
  }

  /** Keys that are called by a word, "shift": the word in small letters, and the reference. */
  Stream<Map.Entry<String, String>> wordKeys() {
    return board.parts().stream()
        .filter(p -> p.role().matches("key [A-Z]{2,}"))
        .map(p -> Map.entry(p.role().substring(4).toLowerCase(Locale.ROOT), p.ref()));
  }

  /** The one part that is called so by what it is, if there is but one. */
  Optional<String> theOne(String words) {
    String small = words.toLowerCase(Locale.ROOT);
    Optional<String> role = Optional.ofNullable(roles.get(small)).map(PlacedPart::ref);
    return role.or(
        () ->
            vocabulary.groups("part").stream()
                .filter(g -> g.words().contains(small))
                .map(g -> board.parts().stream().filter(p -> isCalled(p, g.which())).toList())
                .filter(parts -> parts.size() == 1)
                .map(parts -> parts.get(0).ref())
                .findFirst());
  }

  /**
   * The one part of a type that is named by its number, or by the end of it, if there is but one.
   */
  Optional<String> theOneOfType(String number) {
    String end = number.toUpperCase(Locale.ROOT);
    List<PlacedPart> parts =
        board.parts().stream().filter(p -> p.type().type().endsWith(end)).toList();
    return parts.size() == 1 ? Optional.of(parts.get(0).ref()) : Optional.empty();
  }

  /** The net at a pin such as {@code u10.a3}, in small letters; empty if there is none. */
  Optional<String> netAt(String pin) {
    int dot = pin.indexOf('.');
    return pinPlaces
        .pad(pin.substring(0, dot), pin.substring(dot + 1))
        .map(netOfPad::get)
        .map(net -> net.name().toLowerCase(Locale.ROOT));
  }

  /** Whether the board has a part of this reference. */
  boolean isPart(String ref) {
    return parts.containsKey(ref.toLowerCase(Locale.ROOT));
  }

  /** Whether a part has a pin of this name or number. */
  boolean isPin(String ref, String pin) {
    return pinPlaces.pad(ref.toLowerCase(Locale.ROOT), pin).isPresent();
  }

  /** Whether the board has a line of this name. */
  boolean isLine(String name) {
    return linePlaces.net(name).isPresent();
  }

  /** A text with the references of parts, and pins behind them, in capitals. */
  String capitals(String text) {
    return Arrays.stream(text.split(" "))
        .map(w -> isPart(w.split("[.-]", 2)[0]) ? w.toUpperCase(Locale.ROOT) : w)
        .collect(Collectors.joining(" "));
  }

  /** What keys are marked with, by reference in small letters. */
  Map<String, String> keyMarks() {
    return board.parts().stream()
        .filter(p -> p.type() == PartCatalog.KEY && p.role().startsWith("key "))
        .collect(
            Collectors.toMap(p -> p.ref().toLowerCase(Locale.ROOT), p -> p.role().substring(4)));
  }

  /**
   * The place a text speaks of, as it was typed: some nets are called like words.
   *
   * @param feels whether warmth is spoken of, so that a name of both a part and a line is the part
   */
  Place find(String typed, boolean feels) {
    // The bench ROM is none of the board's.
    String text = Vocabulary.masked(typed.toLowerCase(Locale.ROOT), BENCH_ROM);
    Set<String> capitals = new LinkedHashSet<>(List.of(typed.split(" ")));
    Optional<Place> pin = pinPlaces.find(text);
    if (pin.isPresent()) {
      return pin.get();
    }
    Set<String> refs = new LinkedHashSet<>();
    List<String> words = new ArrayList<>();
    boolean several = parts(text, capitals, feels, refs, words);
    List<List<Pad>> lines = new ArrayList<>();
    if (refs.size() == 1 && !feels) {
      String side = side(text, refs.iterator().next(), lines);
      words.addAll(Stream.of(side).filter(w -> !w.isEmpty()).toList());
      several |= side.endsWith("s");
    }
    String rest = text;
    for (String w : words) {
      rest = Vocabulary.masked(rest, w);
    }
    if (!feels) {
      LinePlaces.Named named = linePlaces.find(text, rest, refs, capitals, lines);
      words.addAll(named.words());
      several |= named.several();
      lines = new ArrayList<>(named.lines());
    }
    if (refs.isEmpty() && lines.isEmpty()) {
      return Place.NONE;
    }
    if (refs.size() > 1 && Vocabulary.in(text, vocabulary.words("joined")).isPresent()) {
      return joined(refs, words);
    }
    if (!refs.isEmpty()) {
      lines.removeIf(l -> !LinePlaces.touches(l, refs));
    }
    if (lines.isEmpty() && !feels && !linePlaces.rails(text).isEmpty()) {
      lines.addAll(linePlaces.rails(text));
      refs.clear();
    }
    boolean some = (" " + text + " ").contains(" both ") && Math.max(refs.size(), lines.size()) > 2;
    return new Place(
        List.copyOf(refs),
        lines,
        // "Both" of more than two are not all of them.
        some ? Place.Quantity.SOME : quantity(text, words, several),
        words);
  }

  /** The lines on which these parts meet, and none of their other ends. */
  private Place joined(Set<String> refs, List<String> words) {
    List<List<Pad>> lines =
        board.nets().stream()
            .map(net -> net.pads().stream().filter(p -> refs.contains(p.ref())).toList())
            .filter(pads -> pads.stream().map(Pad::ref).distinct().count() == refs.size())
            .toList();
    return new Place(List.copyOf(refs), lines, Place.Quantity.EVERY, words);
  }

  /**
   * The word for one side of a part, "output", if it is in a text; what is on it joins the lines.
   */
  private String side(String text, String ref, List<List<Pad>> lines) {
    for (String side : SIDES) {
      if (Vocabulary.in(text, List.of(side)).isPresent()) {
        parts.get(ref.toLowerCase(Locale.ROOT)).type().part().pinout().pins().stream()
            .map(p -> new Pad(ref, p.name()))
            .filter(p -> isOn(p, side))
            .forEach(p -> lines.add(List.of(p)));
        return lines.isEmpty() ? "" : side;
      }
    }
    return "";
  }

  /** Whether a pad is an output, or an input, of its part. */
  boolean isOn(Pad pad, String side) {
    Pin pin =
        parts
            .get(pad.ref().toLowerCase(Locale.ROOT))
            .type()
            .part()
            .pinout()
            .find(pad.pin())
            .orElseThrow();
    boolean out = side.startsWith("out");
    return pin.name().equals(out ? "OUT" : "IN")
        || pin.role() == (out ? Pin.Role.OUTPUT : Pin.Role.INPUT);
  }

  /** Whether a pad is on the board's ground. */
  boolean onGround(Pad pad) {
    return Optional.ofNullable(netOfPad.get(pad))
        .filter(n -> n.name().equals(board.supply().groundNet()))
        .isPresent();
  }

  /** Whether a thing is spoken of that is no part of a board. */
  boolean isElsewhere(String text) {
    return Vocabulary.in(text, vocabulary.words("elsewhere")).isPresent();
  }

  boolean isRegulator(String ref) {
    return board.part(ref).orElseThrow().type().part() instanceof Element element
        && element.kind() == Element.Kind.REGULATOR;
  }

  /** Whether a pad is on a supply net. */
  boolean onRail(Pad pad) {
    Net net = netOfPad.get(pad);
    return net != null && board.supply().feeds(net.name());
  }

  /** Whether two pads are on the same supply net. */
  boolean onOneRail(Pad one, Pad other) {
    return onRail(one) && netOfPad.get(one).equals(netOfPad.get(other));
  }

  /** Parts of one letter with numbers from the first to the last. */
  private List<PlacedPart> between(MatchResult range) {
    int from = Integer.parseInt(range.group(2));
    int to = Integer.parseInt(range.group(3));
    return IntStream.rangeClosed(from, to)
        .mapToObj(i -> parts.get(range.group(1).toLowerCase(Locale.ROOT) + i))
        .filter(Objects::nonNull)
        .toList();
  }

  /** A text in which parts from one to another are all named: "K1 to K3" is "K1, K2, K3". */
  String spelt(String text) {
    return PARTS
        .matcher(text)
        .replaceAll(
            r -> {
              List<PlacedPart> all = between(r);
              return all.isEmpty()
                  ? r.group()
                  : all.stream().map(PlacedPart::ref).collect(Collectors.joining(", "));
            });
  }

  /** Whether the words were of several parts. */
  private boolean parts(
      String text, Set<String> capitals, boolean feels, Set<String> refs, List<String> words) {
    for (Matcher range = PARTS.matcher(text); range.find(); ) {
      List<PlacedPart> all = between(range);
      if (all.size() > 1) {
        all.forEach(p -> refs.add(p.ref()));
        words.add(range.group());
      }
    }
    if (!refs.isEmpty()) {
      return true;
    }
    for (String token : text.split(" ")) {
      if (parts.containsKey(token) && (feels || linePlaces.net(token).isEmpty())) {
        refs.add(parts.get(token).ref());
        words.add(token);
      }
    }
    if (refs.isEmpty()) {
      for (String token : text.split(" ")) {
        for (PlacedPart part : board.parts()) {
          String type = part.type().type().toLowerCase(Locale.ROOT);
          if (type.matches(".*\\d.*") && (type.equals(token) || type.equals("74" + token))) {
            refs.add(part.ref());
            words.add(token);
          }
        }
      }
    }
    if (!refs.isEmpty()) {
      return false;
    }
    keys(text, capitals, refs, words);
    if (!refs.isEmpty()) {
      return refs.size() > 1;
    }
    Optional<String> role = Vocabulary.in(text, longestFirst(roles.keySet()));
    if (role.isPresent()) {
      refs.add(roles.get(role.get()).ref());
      words.add(role.get());
      return false;
    }
    Optional<Vocabulary.Group> group =
        vocabulary.groupsIn("part", text).stream()
            .filter(g -> feels || !g.name().equals("whatever"))
            .findFirst();
    if (group.isEmpty()) {
      return false;
    }
    board.parts().stream()
        .filter(p -> isCalled(p, group.get().which()))
        .forEach(p -> refs.add(p.ref()));
    String called = Vocabulary.in(text, group.get().words()).orElseThrow();
    words.add(called);
    return called.endsWith("s");
  }

  private static boolean isCalled(PlacedPart part, String which) {
    return which.startsWith(ROLE)
        ? part.role().matches(which.substring(ROLE.length()))
        : part.type().type().matches(which);
  }

  private static List<String> longestFirst(Set<String> names) {
    return names.stream().sorted(Comparator.comparing(String::length).reversed()).toList();
  }

  /** Keys by what stands on them: "the R key", "keys A, E and I"; a small "a" is no name. */
  private void keys(String text, Set<String> capitals, Set<String> refs, List<String> words) {
    List<String> tokens = List.of(text.split("[ ,]+"));
    for (int at = 0; at < tokens.size(); at++) {
      if (KEYS.contains(tokens.get(at))) {
        for (int step : new int[] {-1, 1}) {
          for (int i = at + step; i >= 0 && i < tokens.size(); i += step) {
            String name = tokens.get(i);
            PlacedPart part = roles.get("key " + name);
            boolean article = name.equals("a") && !capitals.contains("A");
            boolean who = name.equals("i") && i + 1 < tokens.size() && isDone(tokens.get(i + 1));
            if (part != null && !article && !who) {
              refs.add(part.ref());
              words.add(name);
            } else if (!BETWEEN.contains(name)) {
              break;
            }
          }
        }
      }
    }
  }

  /** "The keys I tried" are no key I. */
  private static boolean isDone(String word) {
    return word.matches(
        "tried|try|press|pressed|hit|have|had|typed?|touch|touched|measured|checked");
  }

  private Place.Quantity quantity(String text, List<String> words, boolean several) {
    if (Vocabulary.in(text, vocabulary.words("some-of-many")).isPresent()) {
      return Place.Quantity.SOME;
    }
    String before = " " + text;
    for (String w : words) {
      int at = (" " + text + " ").indexOf(" " + w + " ");
      String head = before.substring(0, Math.min(before.length(), Math.max(0, at)));
      if (ends(head, w, "none")) {
        return Place.Quantity.NONE;
      }
      if (ends(head, w, "every")) {
        return Place.Quantity.EVERY;
      }
      if (ends(head, w, "some")) {
        return Place.Quantity.SOME;
      }
    }
    boolean every = Vocabulary.in(text, vocabulary.words("every")).isPresent();
    boolean both = BOTH.matcher(text).find() || anyJoined(text, words);
    return several || every || both ? Place.Quantity.EVERY : Place.Quantity.SOME;
  }

  /** All pads of the lines that the vocabulary calls so. */
  Set<Pad> padsOn(List<String> lines) {
    return lines.stream()
        .flatMap(line -> linePlaces.linesOf(line, Set.of()).stream())
        .flatMap(List::stream)
        .collect(Collectors.toUnmodifiableSet());
  }

  /** Whether two of the names stand in a text with nothing but an "and" between them. */
  private static boolean anyJoined(String text, List<String> words) {
    return words.stream()
        .anyMatch(
            one ->
                words.stream()
                    .anyMatch(
                        other -> (" " + text + " ").contains(" " + one + " and " + other + " ")));
  }

  private boolean ends(String head, String word, String key) {
    return vocabulary.words(key).stream()
        .anyMatch(q -> q.equals(word) || (head + " ").endsWith(" " + q + " "));
  }
}
