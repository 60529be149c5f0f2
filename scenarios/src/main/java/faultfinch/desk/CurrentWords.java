package faultfinch.desk;

import faultfinch.bench.CurrentPaths;
import faultfinch.bench.RailPaths;
import faultfinch.diagnosis.CurrentRows;
import faultfinch.diagnosis.Sight;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What came of following a current along a net: "current tracer on D1 points at U34". */
final class CurrentWords {
  private static final Pattern PART =
      Pattern.compile("(?<= |^)([a-z]+\\d+)(?:[. ](?:pin )?([^ ]+))?");

  private static final Pattern ON =
      Pattern.compile("\\b(?:on|(?<!points )at) ([a-z]+\\d+\\.[^ ]+)");

  private final Lookbook lookbook;
  private final Vocabulary vocabulary;

  /** The name of the net at a pin, if it has one; both in small letters. */
  private final Function<String, Optional<String>> netOf;

  CurrentWords(Lookbook lookbook, Vocabulary vocabulary, Function<String, Optional<String>> netOf) {
    this.lookbook = lookbook;
    this.vocabulary = vocabulary;
    this.netOf = netOf;
  }

  /** What a phrase says of a followed current; empty if it is of none, or none goes so. */
  Optional<Phrases.Finding> find(String text) {
    String small = text.toLowerCase(Locale.ROOT).replaceAll("[,:;]", " ").replaceAll(" +", " ");
    Optional<String> tool = Vocabulary.in(small, vocabulary.words("flow.said"));
    if (tool.isEmpty()) {
      return Optional.empty();
    }
    String rest = Vocabulary.masked(onNet(small), tool.get());
    List<String> looks =
        lookbook.looks().stream()
            .filter(look -> look.startsWith(CurrentRows.look("")))
            .filter(look -> Vocabulary.in(rest, List.of(net(look))).isPresent())
            .toList();
    return looks.stream()
        .findFirst()
        .flatMap(look -> finding(look, text, Vocabulary.masked(rest, net(look))))
        .or(() -> quiet(looks, text, rest));
  }

  /** A text in which the pin that the tracer is on stands for its net. */
  private String onNet(String small) {
    Matcher on = ON.matcher(small);
    return on.find()
        ? netOf.apply(on.group(1)).map(net -> on.replaceFirst("on " + net)).orElse(small)
        : small;
  }

  /** That nothing flows, along each net that is named. */
  private Optional<Phrases.Finding> quiet(List<String> looks, String text, String rest) {
    if (looks.isEmpty() || Vocabulary.in(rest, vocabulary.words("flow.none")).isEmpty()) {
      return Optional.empty();
    }
    List<Sight> sights = looks.stream().map(look -> new Sight(List.of(look), quiet(look))).toList();
    String called =
        CurrentRows.look(
            looks.stream().map(CurrentWords::net).collect(Collectors.joining(" and ")));
    return Optional.of(new Phrases.Finding(called, text, sights, true));
  }

  /** On a net of the supply something flows on every board. */
  private List<String> quiet(String look) {
    return lookbook.outcomes(look).stream()
        .filter(o -> o.equals(CurrentPaths.NOTHING) || o.equals(RailPaths.AS_IT_SHOULD))
        .toList();
  }

  private static String net(String look) {
    return look.substring(CurrentRows.look("").length()).toLowerCase(Locale.ROOT);
  }

  private Optional<Phrases.Finding> finding(String look, String text, String rest) {
    List<String> meant = new ArrayList<>(lookbook.outcomes(look));
    boolean named = false;
    Matcher m = PART.matcher(rest);
    while (m.find()) {
      String part = " " + m.group(1) + ".";
      String pin = m.group(2) == null ? "" : part + m.group(2);
      boolean known = meant.stream().anyMatch(o -> small(o).contains(part));
      boolean exact =
          !pin.isEmpty()
              && meant.stream()
                  .anyMatch(o -> small(o).endsWith(pin) || small(o).contains(pin + " "));
      named |= known;
      if (exact) {
        meant.removeIf(o -> !small(o).endsWith(pin) && !small(o).contains(pin + " "));
      } else if (known) {
        meant.removeIf(o -> !small(o).contains(part));
      }
    }
    return named
        ? Optional.of(
            new Phrases.Finding(look, text, List.of(new Sight(List.of(look), meant)), true))
        : Optional.empty();
  }

  private static String small(String outcome) {
    return " " + outcome.toLowerCase(Locale.ROOT);
  }
}
