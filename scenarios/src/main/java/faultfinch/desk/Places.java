package faultfinch.desk;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
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
import java.util.function.Predicate;
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
  private static final Pattern PIN_BEHIND =
      Pattern.compile(
          "(?<= |^)([a-z]+\\d+)(?:\\.| (?:pin|pad|leg) | on | at | )([^ ]+)(?= |$)(?! m?v(?: |$))");
  private static final Pattern PIN_BEFORE =
      Pattern.compile(
          "(?<= |^)(?:(?:pin|pad|leg) )?([^ ]+)(?: (?:pin|pad|leg))? (?:of|on|at|off|from) "
              + "(?:the )?(?:[a-z]{2,} ){0,3}([a-z]+\\d+)(?= |$)");
  private static final Pattern PINS_BEFORE =
      Pattern.compile(
          "(?<= |^)(?:pins )?([^ ]+) (?:and|or|&) ([^ ]+)(?: both)? (?:of|on|at|off|from) "
              + "(?:the )?(?:[a-z]{2,} ){0,3}([a-z]+\\d+)(?= |$)");
  private static final Pattern PINS_BEHIND =
      Pattern.compile(
          "(?<= |^)([a-z]+\\d+)(?:\\.| pins | )([^ ]+) (?:and|or|&) (?:pin )?([^ ]+)(?= |$)");

  /** Pins in full, one after the other: "U2.A9 and U8.A0". */
  private static final Pattern PINS_IN_FULL =
      Pattern.compile(
          "(?<= |^)[a-z]+\\d+\\.[^ ,]+(?:(?:,? and |,? or |, ?| & )[a-z]+\\d+\\.[^ ,]+)+(?= |$)");

  private static final Pattern PIN_NAME = Pattern.compile("[a-z]{1,4}\\d{0,2}/?|\\d[a-z]\\d?");
  private static final Set<String> KEYS = Set.of("key", "keys");
  private static final Set<String> BETWEEN = Set.of("and", "or", "the");
  private static final Pattern NETS =
      Pattern.compile("(?<= |^)([a-z]+)(\\d{1,2}) ?(?:to|-|\\.\\.) ?\\1?(\\d{1,2})(?= |$)");

  /** Parts from one to another; "U4-11" is a pin. */
  private static final Pattern PARTS =
      Pattern.compile(
          "(?i)(?<= |^)([a-z]+)(\\d{1,2}) ?(?:to|thru|through|till|until|-|\\.\\.) ?\\1(\\d{1,2})(?= |,|$)");

  /** Nets by what is before their numbers: "the MD lines". */
  private static final Pattern NETS_CALLED =
      Pattern.compile("(?<= |^)([a-z]{1,4}) (?:lines|bus|nets|signals)(?= |$)");

  private static final List<String> SIDES = List.of("outputs", "inputs", "output", "input");

  private static final String ROLE = "role ";
  private static final String NET = "net ";
  private static final String ELSE = " else ";

  private final Board board;
  private final Vocabulary vocabulary;
  private final Map<String, PlacedPart> parts = new LinkedHashMap<>();
  private final Map<String, PlacedPart> roles = new LinkedHashMap<>();
  private final Map<Pad, Net> netOfPad;

  Places(Board board, Vocabulary vocabulary) {
    this.board = board;
    this.vocabulary = vocabulary;
    netOfPad = board.netOfPad();
    board.parts().forEach(p -> parts.put(p.ref().toLowerCase(Locale.ROOT), p));
    board.parts().stream()
        .sorted(Comparator.comparing((PlacedPart p) -> p.role().length()).reversed())
        .forEach(p -> calls(p.role().toLowerCase(Locale.ROOT), p));
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

  /** Whether the board has a part of this reference. */
  boolean isPart(String ref) {
    return parts.containsKey(ref.toLowerCase(Locale.ROOT));
  }

  /** Whether a part has a pin of this name or number. */
  boolean isPin(String ref, String pin) {
    return pad(ref.toLowerCase(Locale.ROOT), pin).isPresent();
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
    Optional<Place> pin = pins(text).or(() -> pin(text));
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
      int groups = 0;
      List<List<Pad>> called = new ArrayList<>();
      String left = text;
      for (Vocabulary.Group group : called("line", text)) {
        Optional<String> said = Vocabulary.in(left, group.words());
        if (said.isPresent()) {
          left = Vocabulary.masked(left, said.get());
          words.add(said.get());
          several |= said.get().endsWith("s") || said.get().endsWith("bus") || groups++ > 0;
          called.addAll(lines(group.which(), refs));
          rest = Vocabulary.masked(rest, said.get());
        }
      }
      for (Matcher range = NETS.matcher(rest); range.find(); ) {
        List<List<Pad>> nets = between(range, refs);
        if (!nets.isEmpty()) {
          several = true;
          words.add(range.group());
          lines.addAll(nets);
          rest = Vocabulary.masked(rest, range.group());
        }
      }
      Matcher numbered = NETS_CALLED.matcher(rest);
      if (called.isEmpty() && lines.isEmpty() && numbered.find()) {
        List<List<Pad>> nets = linesOf(NET + "(?i)" + numbered.group(1) + "\\d+", refs);
        if (nets.size() > 1) {
          several = true;
          words.add(numbered.group());
          lines.addAll(nets);
          rest = Vocabulary.masked(rest, numbered.group());
        }
      }
      for (String token : rest.split(" ")) {
        boolean sure =
            token.chars().anyMatch(Character::isDigit)
                || capitals.contains(token.toUpperCase(Locale.ROOT));
        List<List<Pad>> pins = sure ? pins(refs, token) : List.of();
        if (!pins.isEmpty()) {
          words.add(token);
          lines.addAll(pins);
          rest = Vocabulary.masked(rest, token);
        }
      }
      for (String token : rest.split(" ")) {
        net(token)
            .filter(
                n ->
                    !token.chars().allMatch(Character::isLetter)
                        || capitals.contains(n.name())
                        || capitals.contains(token.toUpperCase(Locale.ROOT)))
            .ifPresent(
                net -> {
                  words.add(token);
                  lines.add(at(net, refs));
                });
      }
      List<List<Pad>> named = List.copyOf(lines);
      lines.clear();
      lines.addAll(within(called, named));
    }
    if (refs.isEmpty() && lines.isEmpty()) {
      return Place.NONE;
    }
    if (!refs.isEmpty()) {
      lines.removeIf(l -> !touches(l, refs));
    }
    if (lines.isEmpty() && !feels && !rails(text).isEmpty()) {
      lines.addAll(rails(text));
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

  /**
   * Lines of a kind, and some by their names: "data lines D0 to D3" are these four, and "memory
   * data line D5" is the memories' own. Those that are of no such kind are spoken of beside it.
   */
  private List<List<Pad>> within(List<List<Pad>> called, List<List<Pad>> named) {
    List<List<Pad>> those = new ArrayList<>();
    for (List<Pad> line : named) {
      called.stream()
          .filter(c -> name(c).equals(name(line)))
          .findFirst()
          .or(() -> called.stream().filter(c -> name(c).endsWith(name(line))).findFirst())
          .ifPresent(those::add);
    }
    boolean all = !named.isEmpty() && those.size() == named.size();
    return all ? those : Stream.concat(called.stream(), named.stream()).toList();
  }

  private String name(List<Pad> line) {
    return Optional.ofNullable(netOfPad.get(line.get(0))).map(Net::name).orElse("");
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

  /** Groups of lines or parts that a text speaks of, those with the longest words first. */
  private List<Vocabulary.Group> called(String kind, String text) {
    return vocabulary.groups(kind).stream()
        .filter(g -> Vocabulary.in(text, g.words()).isPresent())
        .sorted(
            Comparator.comparing(
                    (Vocabulary.Group g) -> Vocabulary.in(text, g.words()).orElseThrow().length())
                .reversed())
        .toList();
  }

  private static boolean touches(List<Pad> line, Set<String> refs) {
    return line.stream().anyMatch(p -> refs.contains(p.ref()));
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

  /** Whether a pad is on a supply net. */
  boolean onRail(Pad pad) {
    Net net = netOfPad.get(pad);
    return net != null && board.supply().feeds(net.name());
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

  /** Nets of one name with numbers from the first to the last. */
  private List<List<Pad>> between(Matcher range, Set<String> refs) {
    List<List<Pad>> lines = new ArrayList<>();
    int to = Integer.parseInt(range.group(3));
    for (int i = Integer.parseInt(range.group(2)); i <= to; i++) {
      net(range.group(1) + i).ifPresent(net -> lines.add(at(net, refs)));
    }
    return lines;
  }

  /** Several pins in full; or two of one part: "D1 and D6 of U34", "U22 Q3 and Q7". */
  private Optional<Place> pins(String text) {
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

  /** The lines at pins of that name of these parts: "A4 of the memories". */
  private List<List<Pad>> pins(Set<String> refs, String name) {
    if (!PIN_NAME.matcher(name).matches()) {
      return List.of();
    }
    Map<Net, List<Pad>> lines = new LinkedHashMap<>();
    for (String ref : refs) {
      pad(ref.toLowerCase(Locale.ROOT), name)
          .ifPresent(
              pad -> lines.computeIfAbsent(netOfPad.get(pad), n -> new ArrayList<>()).add(pad));
    }
    lines.remove(null);
    return List.copyOf(lines.values());
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
    Optional<Pad> first = pad(ref, one);
    Optional<Pad> second = pad(ref, other);
    return first.isEmpty() || second.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Place(
                List.of(),
                List.of(List.of(first.get()), List.of(second.get())),
                Place.Quantity.EVERY,
                List.of(words.group())));
  }

  private Optional<Place> pin(String text) {
    Matcher before = PIN_BEFORE.matcher(text);
    for (int from = 0; before.find(from); from = before.start() + 1) {
      Optional<Pad> pad = pad(before.group(2), before.group(1));
      if (pad.isPresent()) {
        String words = before.group();
        return pad.map(p -> at(p, words));
      }
    }
    Matcher behind = PIN_BEHIND.matcher(text);
    for (int from = 0; behind.find(from); from = behind.start() + 1) {
      Optional<Pad> pad = pad(behind.group(1), behind.group(2));
      if (pad.isPresent()) {
        String words = behind.group();
        return pad.map(p -> at(p, words));
      }
    }
    return Optional.empty();
  }

  private static Place at(Pad pad, String words) {
    return new Place(List.of(), List.of(List.of(pad)), Place.Quantity.SOME, List.of(words));
  }

  private Optional<Pad> pad(String ref, String pin) {
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
      if (parts.containsKey(token) && (feels || net(token).isEmpty())) {
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
        called("part", text).stream()
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
            if (part != null && !article) {
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

  /** Lines of a group, by the first of its patterns that this board has any of. */
  private List<List<Pad>> lines(String which, Set<String> refs) {
    return Arrays.stream(which.split(ELSE))
        .map(pins -> linesOf(pins, refs))
        .filter(
            lines ->
                refs.isEmpty() ? !lines.isEmpty() : lines.stream().anyMatch(l -> touches(l, refs)))
        .findFirst()
        .orElse(List.of());
  }

  /** A rail that a part is said to want, and that does not reach it by itself. */
  private List<List<Pad>> rails(String text) {
    return called("line", text).stream()
        .limit(1)
        .flatMap(group -> lines(group.which(), Set.of()).stream())
        .filter(line -> onRail(line.get(0)))
        .toList();
  }

  private List<List<Pad>> linesOf(String pins, Set<String> refs) {
    if (pins.startsWith(NET)) {
      String name = pins.substring(NET.length());
      return board.nets().stream()
          .filter(n -> n.name().matches(name))
          .map(n -> at(n, refs))
          .toList();
    }
    Map<Net, List<Pad>> lines = new LinkedHashMap<>();
    for (PlacedPart part : board.parts()) {
      for (Pin pin : part.type().part().pinout().pins()) {
        Net net = netOfPad.get(new Pad(part.ref(), pin.name()));
        boolean tied = net != null && onSupply(net) && !pins.endsWith("SUPPLY");
        if (net != null && !tied && meant(pins, part, pin)) {
          List<Pad> pads = at(net, refs);
          if (!pads.isEmpty()) {
            lines.put(net, pads);
          }
        }
      }
    }
    return List.copyOf(lines.values());
  }

  private boolean onSupply(Net net) {
    return board.supply().feeds(net.name()) || net.name().equals(board.supply().groundNet());
  }

  private static boolean meant(String pins, PlacedPart part, Pin pin) {
    if (pins.startsWith(ROLE)) {
      return pin.role() == Pin.Role.valueOf(pins.substring(ROLE.length()));
    }
    String[] halves = pins.split(" ", 2);
    return part.type().type().matches(halves[0]) && pin.name().matches(halves[1]);
  }

  /** The pads of a net, of these parts only if any are named and the net reaches them. */
  private static List<Pad> at(Net net, Set<String> refs) {
    List<Pad> there = net.pads().stream().filter(p -> refs.contains(p.ref())).toList();
    return there.isEmpty() ? net.pads() : there;
  }

  private Optional<Net> net(String token) {
    return board.nets().stream()
        .filter(n -> n.name().equalsIgnoreCase(token) || n.name().equalsIgnoreCase(token + "/"))
        .findFirst();
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
    boolean both = BOTH.matcher(text).find();
    return several || every || both ? Place.Quantity.EVERY : Place.Quantity.SOME;
  }

  private boolean ends(String head, String word, String key) {
    return vocabulary.words(key).stream()
        .anyMatch(q -> q.equals(word) || (head + " ").endsWith(" " + q + " "));
  }
}
