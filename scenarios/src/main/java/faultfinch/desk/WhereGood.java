package faultfinch.desk;

import faultfinch.diagnosis.Sight;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Finds where something was measured by what a good board shows there: "row line 0 stands at 5 V,
 * the good board has 0.2 there". Of several places that words can mean it is those where a healthy
 * board shows just that; where they name none, it is any such place.
 */
final class WhereGood {
  private static final Pattern VOLTS = Pattern.compile("(?<![\\w.])-?\\d+(?:\\.\\d+)?(?![\\w.])");
  private static final String METER = "meter";

  private final Lookbook lookbook;
  private final Vocabulary vocabulary;
  private final Amounts amounts;
  private final Plain plain;

  WhereGood(Lookbook lookbook, Vocabulary vocabulary, Amounts amounts) {
    this.lookbook = lookbook;
    this.vocabulary = vocabulary;
    this.amounts = amounts;
    this.plain = new Plain(vocabulary);
  }

  /** A finding at those of its places where a good board shows what is told of one. */
  Phrases.Finding narrowed(Phrases.Finding finding, String text, String there) {
    String kind = finding.sights().get(0).looks().get(0).split(" ", 2)[0];
    Optional<Predicate<String>> good =
        LookPlaces.AT_PINS.contains(kind) ? good(kind, there) : Optional.empty();
    if (good.isEmpty()) {
      return finding;
    }
    List<Sight> sights =
        finding.sights().stream()
            .filter(s -> !matching(s.looks(), good.get()).isEmpty())
            .map(s -> new Sight(matching(s.looks(), good.get()), s.outcomes()))
            .toList();
    if (!sights.isEmpty()) {
      return new Phrases.Finding(finding.look(), finding.seen(), sights, finding.every());
    }
    // A line of that name carries something else: a pin of that name is meant.
    return anywhere(text, there, pinsCalled(text)).orElse(finding);
  }

  /**
   * A figure at one of the places where a good board has another.
   *
   * @param near a look is here only if its place is so, unless none is
   */
  Optional<Phrases.Finding> anywhere(String text, String there, Predicate<String> near) {
    Optional<Amounts.Amount> amount = amounts.find(plain.of(text).toLowerCase(Locale.ROOT));
    String kind = amount.map(Amounts.Amount::kind).orElse("");
    Optional<Predicate<String>> good =
        LookPlaces.AT_PINS.contains(kind) ? good(kind, there) : Optional.empty();
    if (good.isEmpty()) {
      return Optional.empty();
    }
    List<String> all = lookbook.looks().stream().filter(l -> l.startsWith(kind + " ")).toList();
    List<Sight> sights =
        matching(all, good.get()).stream()
            .filter(look -> near.test(look.split(" ")[1]))
            .filter(look -> !shown(look, amount.get()).isEmpty())
            .map(look -> new Sight(List.of(look), shown(look, amount.get())))
            .toList();
    return sights.isEmpty()
        ? Optional.empty()
        : Optional.of(new Phrases.Finding(kind, text, sights, false));
  }

  private List<String> shown(String look, Amounts.Amount amount) {
    return lookbook.outcomes(look).stream().filter(amount::covers).toList();
  }

  private List<String> matching(List<String> looks, Predicate<String> good) {
    return looks.stream().filter(look -> good.test(lookbook.outcomes(look).get(0))).toList();
  }

  /** Pads whose pin is called as a word of a text is. */
  private static Predicate<String> pinsCalled(String text) {
    Set<String> words =
        Arrays.stream(text.toUpperCase(Locale.ROOT).split("[ ,:;]+")).collect(Collectors.toSet());
    return pad -> words.contains(pad.substring(pad.indexOf('.') + 1));
  }

  /** What a healthy outcome of such a look must be, if something is told of a good board. */
  private Optional<Predicate<String>> good(String kind, String there) {
    String small = plain.of(there).toLowerCase(Locale.ROOT);
    Optional<Amounts.Amount> amount = amounts.find(small).or(() -> amounts.bare(small));
    if (amount.isEmpty() && kind.equals(METER)) {
      Matcher figure = VOLTS.matcher(small);
      amount = figure.find() ? amounts.find(figure.group() + " v") : amount;
    }
    if (amount.isPresent()) {
      return amount.filter(a -> a.kind().equals(kind)).map(a -> a::covers);
    }
    return vocabulary.ways().stream()
        .filter(way -> way.meaning().kind().equals(kind))
        .filter(way -> Vocabulary.in(small, List.of(way.words())).isPresent())
        .findFirst()
        .map(way -> o -> way.meaning().shows().covers(o, new Comparison.Normal(o, "")));
  }
}
