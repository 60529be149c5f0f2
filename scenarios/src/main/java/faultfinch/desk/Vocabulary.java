package faultfinch.desk;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeSet;

/** The words of vocabulary.properties: what technicians say, and what it is in looks. */
final class Vocabulary {

  /** For any kind of look. */
  static final String ANY = "any";

  private static final String WORDS = ".words";

  /**
   * Something a look can show.
   *
   * @param kind of look, by the word it begins with; or {@link #ANY}
   */
  record Meaning(String kind, String name, Shows shows) {

    /** Whether it says that all is as it should be, and nothing else. */
    boolean isHealthy() {
      return shows.terms().equals(List.of("healthy"));
    }
  }

  /**
   * One way to say it.
   *
   * @param beside whether it counts only beside a subject or a place
   */
  record Way(String words, boolean beside, Meaning meaning) {}

  /** A group of pins or parts, and the ways to call it; longer ways first. */
  record Group(String name, List<String> words, String which) {}

  private final Map<String, String> texts = new LinkedHashMap<>();
  private final List<Way> ways = new ArrayList<>();
  private final Map<String, List<String>> lists = new HashMap<>();
  private final Map<String, Map<String, String>> paired = new HashMap<>();
  private final Map<String, List<String>> longest = new HashMap<>();
  private final Map<String, List<Group>> grouped = new HashMap<>();

  private Vocabulary(Properties properties) {
    for (String key : new TreeSet<>(properties.stringPropertyNames())) {
      texts.put(key, properties.getProperty(key).strip());
    }
    for (String key : texts.keySet()) {
      String[] names = key.split("\\.");
      boolean group = List.of("line", "part", "report", "alone", "station").contains(names[0]);
      if (key.endsWith(WORDS) && !group) {
        Shows shows = Shows.of(texts.get(key.replace(WORDS, ".shows")));
        Meaning meaning = new Meaning(names[0], names[1], shows);
        for (String way : list(key)) {
          boolean beside = way.startsWith("+");
          ways.add(new Way(way.substring(beside ? 1 : 0), beside, meaning));
        }
      }
    }
    ways.sort(Comparator.comparing((Way w) -> w.words().length()).reversed());
  }

  /** The vocabulary that comes with the program. */
  static Vocabulary shipped() {
    Properties properties = new Properties();
    try (InputStream in = Vocabulary.class.getResourceAsStream("vocabulary.properties")) {
      properties.load(in);
    } catch (IOException e) {
      throw new IllegalStateException("vocabulary.properties cannot be read", e);
    }
    return new Vocabulary(properties);
  }

  /** Every way to say what something showed, longer ones first. */
  List<Way> ways() {
    return ways;
  }

  /** Words that say that this kind of look is meant; none for a kind nobody names. */
  List<String> subjects(String kind) {
    return texts.containsKey(kind + ".subject") ? list(kind + ".subject") : List.of();
  }

  /** Groups of {@code line}, {@code part}, {@code report} or {@code alone}. */
  List<Group> groups(String sort) {
    return grouped.computeIfAbsent(sort, this::grouped);
  }

  private List<Group> grouped(String sort) {
    List<Group> groups = new ArrayList<>();
    for (String key : texts.keySet()) {
      if (key.startsWith(sort + ".") && key.endsWith(WORDS)) {
        String name = key.substring(sort.length() + 1, key.length() - WORDS.length());
        String which =
            List.of("pins", "types", "says").stream()
                .map(w -> texts.get(sort + "." + name + "." + w))
                .filter(t -> t != null)
                .findFirst()
                .orElseGet(() -> "role " + texts.get(sort + "." + name + ".roles"));
        groups.add(new Group(name, longestFirst(list(key)), which));
      }
    }
    return List.copyOf(groups);
  }

  /** Groups that a text in small letters speaks of, those with the longest words first. */
  List<Group> groupsIn(String sort, String text) {
    return groups(sort).stream()
        .filter(g -> in(text, g.words()).isPresent())
        .sorted(
            Comparator.comparing((Group g) -> in(text, g.words()).orElseThrow().length())
                .reversed())
        .toList();
  }

  /** The words of a list, longer ones first. */
  List<String> words(String key) {
    return longest.computeIfAbsent(key, k -> longestFirst(list(k)));
  }

  /** Examples of what is said of a kind of look; none for most. */
  List<String> examples(String kind) {
    String key = "example." + kind.replace(' ', '-');
    return texts.containsKey(key) ? list(key) : List.of();
  }

  double figure(String key) {
    return Double.parseDouble(texts.get(key));
  }

  /** One thing for another, in the order of the file. */
  Map<String, String> pairs(String key) {
    return paired.computeIfAbsent(key, this::paired);
  }

  private Map<String, String> paired(String key) {
    Map<String, String> pairs = new LinkedHashMap<>();
    for (String pair : list(key)) {
      String[] halves = pair.split(" > ");
      pairs.put(halves[0], halves[1]);
    }
    return Collections.unmodifiableMap(pairs);
  }

  /** Which of these words stands in a text, the longest; words stand between blanks. */
  static Optional<String> in(String text, List<String> words) {
    String padded = " " + text + " ";
    return words.stream().filter(w -> padded.contains(" " + w + " ")).findFirst();
  }

  /** The text with the first of these words replaced by a bar, which is no word. */
  static String masked(String text, String words) {
    String padded = " " + text + " ";
    int at = padded.indexOf(" " + words + " ");
    return at < 0
        ? text
        : (padded.substring(0, at) + " | " + padded.substring(at + words.length() + 2)).strip();
  }

  private List<String> list(String key) {
    return lists.computeIfAbsent(key, k -> List.of(texts.get(k).split(", *")));
  }

  private static List<String> longestFirst(List<String> words) {
    return words.stream().sorted(Comparator.comparing(String::length).reversed()).toList();
  }
}
