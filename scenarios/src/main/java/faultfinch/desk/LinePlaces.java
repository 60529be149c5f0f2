package faultfinch.desk;

import faultfinch.board.Board;
import faultfinch.board.Net;
import faultfinch.board.Pad;
import faultfinch.board.PlacedPart;
import faultfinch.signal.Pin;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Finds lines of a board in a text in small letters: by the name of a net, by what they are for.
 */
final class LinePlaces {
  private static final String ROLE = "role ";
  private static final String NET = "net ";

  /** Pins of the parts that are named, and not what else is on their lines. */
  private static final String OWN = "own ";

  private static final String ELSE = " else ";

  /** Nets of one name from one number to another: "D0 to D3". */
  private static final Pattern NETS =
      Pattern.compile("(?<= |^)([a-z]+)(\\d{1,2}) ?(?:to|-|\\.\\.) ?\\1?(\\d{1,2})(?= |$)");

  private static final Pattern NETS_CALLED =
      Pattern.compile("(?<= |^)([a-z]{1,4}) (?:lines|bus|nets|signals)(?= |$)");

  private static final Pattern NUMBER =
      Pattern.compile(
          "(?:no |number )?(\\d{1,2})(?= )(?! ?(?:m?v|volts?|m?a|k|k?ohms?|[km]?hz|of \\d+|and|or|to) )");

  private static final Pattern PIN_NAME = Pattern.compile("[a-z]{1,4}\\d{0,2}/?|\\d[a-z]\\d?");

  private final Board board;
  private final Vocabulary vocabulary;
  private final Map<Pad, Net> netOfPad;
  private final PinPlaces pinPlaces;

  LinePlaces(Board board, Vocabulary vocabulary, PinPlaces pinPlaces) {
    this.board = board;
    this.vocabulary = vocabulary;
    this.pinPlaces = pinPlaces;
    netOfPad = board.netOfPad();
  }

  /**
   * What is named.
   *
   * @param words that name it, as they stand in the text
   * @param several whether the words are of more than one
   */
  record Named(List<List<Pad>> lines, List<String> words, boolean several) {}

  /**
   * All lines that a text names.
   *
   * @param left the text without the words for parts
   * @param refs parts that it names; pins are theirs
   * @param capitals words of the text as typed: some nets are called like words
   * @param own lines that were found already
   */
  Named find(
      String text, String left, Set<String> refs, Set<String> capitals, List<List<Pad>> own) {
    List<List<Pad>> lines = new ArrayList<>(own);
    List<String> words = new ArrayList<>();
    boolean several = false;
    String rest = left;
    int groups = 0;
    List<List<Pad>> called = new ArrayList<>();
    String unsaid = text;
    for (Vocabulary.Group group : vocabulary.groupsIn("line", text)) {
      Optional<String> said = Vocabulary.in(unsaid, group.words());
      if (said.isPresent()) {
        List<List<Pad>> all = lines(group.which(), refs);
        Optional<String> number = number(unsaid, said.get());
        List<List<Pad>> one = number.map(n -> numbered(all, n)).orElse(List.of());
        String name = one.isEmpty() ? said.get() : said.get() + " " + number.get();
        unsaid = Vocabulary.masked(unsaid, name);
        words.add(name);
        several |= one.isEmpty() && (name.endsWith("s") || name.endsWith("bus")) || groups++ > 0;
        called.addAll(one.isEmpty() ? all : one);
        rest = Vocabulary.masked(rest, name);
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
    // "The clock input of U1" is its clock, and none of its other inputs.
    List<List<Pad>> named = called.isEmpty() ? lines : lines.subList(own.size(), lines.size());
    return new Named(within(called, named), words, several);
  }

  /** The number behind a name in a text, if it is no figure with a unit: "row line 3". */
  private static Optional<String> number(String text, String name) {
    String behind = " " + text + " ";
    int at = behind.indexOf(" " + name + " ");
    Matcher number = NUMBER.matcher(at < 0 ? "" : behind.substring(at + name.length() + 2));
    return number.lookingAt() ? Optional.of(number.group(1)) : Optional.empty();
  }

  private List<List<Pad>> numbered(List<List<Pad>> lines, String number) {
    return lines.stream().filter(line -> name(line).matches("\\D*" + number + "/?")).toList();
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

  /** Nets of one name with numbers from the first to the last. */
  private List<List<Pad>> between(Matcher range, Set<String> refs) {
    List<List<Pad>> lines = new ArrayList<>();
    int to = Integer.parseInt(range.group(3));
    for (int i = Integer.parseInt(range.group(2)); i <= to; i++) {
      net(range.group(1) + i).ifPresent(net -> lines.add(at(net, refs)));
    }
    return lines;
  }

  /** The lines at pins of that name of these parts: "A4 of the memories". */
  private List<List<Pad>> pins(Set<String> refs, String name) {
    if (!PIN_NAME.matcher(name).matches()) {
      return List.of();
    }
    Map<Net, List<Pad>> lines = new LinkedHashMap<>();
    for (String ref : refs) {
      pinPlaces
          .pad(ref.toLowerCase(Locale.ROOT), name)
          .ifPresent(
              pad -> lines.computeIfAbsent(netOfPad.get(pad), n -> new ArrayList<>()).add(pad));
    }
    lines.remove(null);
    return List.copyOf(lines.values());
  }

  /** Lines of a group, by the first of its patterns that this board has any of. */
  private List<List<Pad>> lines(String which, Set<String> refs) {
    return Arrays.stream(which.split(ELSE))
        .map(pins -> pins.startsWith(OWN) ? ownLines(pins, refs) : nearest(pins, refs))
        .filter(
            lines ->
                refs.isEmpty() ? !lines.isEmpty() : lines.stream().anyMatch(l -> touches(l, refs)))
        .findFirst()
        .orElse(List.of());
  }

  /**
   * Lines of such pins. If some are at such pins of the parts that are named, those are meant: the
   * data lines of a ROM are not the addresses that come from pins of a latch that are called so.
   */
  private List<List<Pad>> nearest(String pins, Set<String> refs) {
    List<List<Pad>> lines = linesOf(pins, refs);
    List<List<Pad>> own =
        pins.startsWith(NET) || pins.startsWith(ROLE)
            ? List.of()
            : lines.stream()
                .filter(l -> l.stream().anyMatch(p -> refs.contains(p.ref()) && isMeant(pins, p)))
                .toList();
    return own.isEmpty() ? lines : own;
  }

  /** Lines at pins of these parts themselves. */
  private List<List<Pad>> ownLines(String pins, Set<String> refs) {
    return linesOf(pins.substring(OWN.length()), refs).stream()
        .map(line -> line.stream().filter(p -> isMeant(pins.substring(OWN.length()), p)).toList())
        .filter(line -> line.stream().anyMatch(p -> refs.contains(p.ref())))
        .toList();
  }

  private boolean isMeant(String pins, Pad pad) {
    return board.parts().stream()
        .filter(part -> part.ref().equals(pad.ref()))
        .anyMatch(
            part ->
                part.type().part().pinout().pins().stream()
                    .anyMatch(pin -> pin.name().equals(pad.pin()) && meant(pins, part, pin)));
  }

  /** A rail that a part is said to want, and that does not reach it by itself. */
  List<List<Pad>> rails(String text) {
    return vocabulary.groupsIn("line", text).stream()
        .limit(1)
        .flatMap(group -> lines(group.which(), Set.of()).stream())
        .filter(line -> board.supply().feeds(name(line)))
        .toList();
  }

  /** Lines with such pins, or nets of such names; of these parts, if any are named. */
  List<List<Pad>> linesOf(String pins, Set<String> refs) {
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

  static boolean touches(List<Pad> line, Set<String> refs) {
    return line.stream().anyMatch(p -> refs.contains(p.ref()));
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

  /** The net of this name, with a slash behind it or not. */
  Optional<Net> net(String token) {
    return board.nets().stream()
        .filter(n -> n.name().equalsIgnoreCase(token) || n.name().equalsIgnoreCase(token + "/"))
        .findFirst();
  }
}
