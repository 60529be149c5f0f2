package faultfinch.desk;

import faultfinch.diagnosis.Sight;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What is said of fuses: that they are blown, or whole. */
final class FuseWords {
  private static final String FUSE = "fuse";
  private static final String OPEN = "open";
  private static final String CONDUCTS = "conducts";
  private static final Pattern ACROSS = Pattern.compile("continuity ([A-Z]+\\d+)\\.1-\\1\\.2");

  private final Lookbook lookbook;
  private final Vocabulary vocabulary;

  FuseWords(Lookbook lookbook, Vocabulary vocabulary) {
    this.lookbook = lookbook;
    this.vocabulary = vocabulary;
  }

  /** What a phrase, as typed, says of one fuse or of all; empty if it is nothing of the sort. */
  Optional<Phrases.Finding> find(String text) {
    String small = text.toLowerCase(Locale.ROOT);
    Optional<String> good = Vocabulary.in(small, vocabulary.words("fuse.whole"));
    String rest = good.map(w -> Vocabulary.masked(small, w)).orElse(small);
    boolean whole = good.isPresent();
    boolean open = Vocabulary.in(rest, vocabulary.words("fuse.open")).isPresent();
    List<String> looks = looks(small);
    if (open == whole || looks.isEmpty()) {
      return Optional.empty();
    }
    List<Sight> sights =
        looks.stream()
            .map(look -> new Sight(List.of(look), List.of(open ? OPEN : CONDUCTS)))
            .toList();
    String called = looks.size() == 1 ? looks.get(0) : FUSE;
    return Optional.of(new Phrases.Finding(called, text, sights, whole));
  }

  /** Of the fuses that are named, or of all where a fuse is spoken of. */
  private List<String> looks(String small) {
    List<String> all = lookbook.looks().stream().filter(l -> ACROSS.matcher(l).matches()).toList();
    List<String> named =
        all.stream().filter(l -> Vocabulary.in(small, List.of(ref(l))).isPresent()).toList();
    boolean spoken = Vocabulary.in(small, List.of(FUSE, FUSE + "s")).isPresent();
    return named.isEmpty() && spoken ? all : named;
  }

  private static String ref(String look) {
    Matcher m = ACROSS.matcher(look);
    return m.matches() ? m.group(1).toLowerCase(Locale.ROOT) : "";
  }
}
