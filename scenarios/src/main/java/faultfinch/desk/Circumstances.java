package faultfinch.desk;

import faultfinch.bench.BenchRom;
import faultfinch.board.Board;
import faultfinch.board.PlacedPart;
import faultfinch.diagnosis.Observation;
import faultfinch.diagnosis.Tally;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Takes out of a phrase all that is not what was seen: how the board stood, how often, how sure,
 * who says so. What is left is for {@link Phrases}.
 */
final class Circumstances {
  private static final Pattern OUT =
      Pattern.compile(
          "(?i)\\b(?:with (?:the )?)?([a-z]+\\d+)(?: (?:is|was))? (?:(?!(?-i:OUT))out(?!:? ?(?:is |at |reads |only |about |= ?)?-?\\d)|removed|pulled|unplugged|taken out)\\b(?: of (?:its|the) socket\\b)?:?"
              + "|\\b(?:without|removed|removing|unplugged|pulled|pulling|took out) (?:the )?([a-z]+\\d+)(?: out)?\\b(?! and )(?: of (?:its|the) socket\\b)?(?:, )?:?");

  /** Words behind which a part is named that is taken out: "with the sound chip out". */
  private static final Pattern TAKES_OUT =
      Pattern.compile(
          "(?i)(?:(?:as soon as|when|once|after|if) (?:i|you|we) )?(?<= |^)(without|removing|pulling|with|taking|take|took|lift|pull|remove|unplug) (?:the )?");

  private static final Pattern GONE =
      Pattern.compile("(?i)^ (?:(?:is|was) )?(?:out|removed|pulled|unplugged|taken out)(?= |$)");

  /** Words of the longest name of a part. */
  private static final int NAME_WORDS = 4;

  private static final Pattern VOLTS =
      Pattern.compile(
          "(?i)\\b(?:at|on|with) (?:a )?(\\d+(?:\\.\\d+)?) ?v (?:supply|from the bench supply|bench supply)\\b");
  private static final Pattern MINUTES =
      Pattern.compile("(?i)\\bafter (?:about )?(\\d+|[a-z]+) min(?:ute)?s?\\b");

  private static final Pattern COUNTED =
      Pattern.compile(
          "(?i)\\b(?:stations?|bytes?|differ|differs|cells|pages|addresses|locations|wrote)\\b");

  private static final Pattern STARTS =
      Pattern.compile("(?i)\\b(?:times?|tries|try|power-ons?|starts?)\\b");

  private static final int MOST_TIMES = 1000;

  private final Board board;
  private final Vocabulary vocabulary;
  private final Plain plain;
  private final Pattern times;
  private Optional<Places> places = Optional.empty();

  Circumstances(Board board, Vocabulary vocabulary) {
    this.board = board;
    this.vocabulary = vocabulary;
    plain = new Plain(vocabulary);
    String number =
        "(\\d+|" + String.join("|", vocabulary.pairs("numbers").keySet()) + "|every other)";
    times =
        Pattern.compile(
            "(?i)\\b(?:(every other) (?:time|try|power-on)"
                + "|"
                + number
                + "(?: times?| tries| power-ons?)? (?:in|of|out of) (?:every )?"
                + number
                + "(?: times| tries| power-ons| starts)?)(?= |$)");
  }

  /** Whether so many of so many are cells that a round counted, and no starts. */
  private static boolean isOfCells(String text, String counted) {
    return COUNTED.matcher(text).find() && !STARTS.matcher(counted).find();
  }

  /** A phrase and what belongs to it. */
  record Bared(
      String text,
      Conditions when,
      boolean bare,
      Tally tally,
      Observation.Doubt doubt,
      boolean undecided,
      boolean miscounted,
      boolean owner) {}

  /**
   * Takes a phrase apart.
   *
   * @param before how the board stood so far
   * @param doubt of the whole entry
   */
  Bared of(String phrase, Conditions before, Observation.Doubt doubt) {
    String text = plain.of(phrase);
    Conditions when = before;
    if (said(text, "usual")) {
      when = Conditions.USUAL;
      text = without(text, "usual");
    }
    List<String> out = new ArrayList<>();
    text = byReference(text);
    Matcher m = OUT.matcher(text);
    StringBuilder rest = new StringBuilder();
    while (m.find()) {
      String ref = m.group(1) != null ? m.group(1) : m.group(2);
      Optional<String> part = part(ref);
      part.ifPresent(out::add);
      m.appendReplacement(rest, Matcher.quoteReplacement(part.isPresent() ? " " : m.group()));
    }
    text = m.appendTail(rest).toString();
    if (!out.isEmpty()) {
      when = when.without(out);
    }
    Matcher volts = VOLTS.matcher(text);
    if (volts.find()) {
      when = when.at(new BigDecimal(volts.group(1)));
      text = volts.replaceFirst(" ");
    }
    for (Observation.Climate climate :
        List.of(Observation.Climate.COLD, Observation.Climate.WARM)) {
      String key = climate.name().toLowerCase(Locale.ROOT);
      if (said(text, key)) {
        when = when.in(climate);
        text = without(text, key);
      }
    }
    if (said(text, "return-leads")) {
      when = when.with(BenchRom.WITH_LEADS);
      text = without(text, "return-leads");
    } else if (said(text, "no-leads")) {
      when = when.with(BenchRom.ALONE);
      text = without(text, "no-leads");
    }
    if (said(text, "bench-rom")) {
      when = when.benchRom() ? when : when.with(BenchRom.ALONE);
      text = without(text, "bench-rom");
    }
    Optional<String> also =
        Vocabulary.in(text.toLowerCase(Locale.ROOT), vocabulary.words("otherwise"));
    if (also.isPresent()) {
      when = when.besides(also.get());
      text = without(text, "otherwise");
    }
    Matcher minutes = MINUTES.matcher(text);
    if (minutes.find()) {
      boolean settled = number(minutes.group(1)) >= vocabulary.figure("settled.minutes");
      // A finger is put on cases that have settled; for all else a warm board is another board.
      if (settled && !text.matches("(?i).*\\b(hot|warm|cold|cool)\\b.*")) {
        when = when.in(Observation.Climate.WARM);
      }
      text = minutes.replaceFirst(" ");
    }
    Tally tally = Tally.ONCE;
    Matcher often = times.matcher(text);
    boolean miscounted = false;
    if (often.find() && !isOfCells(text, often.group())) {
      int times = often.group(1) != null ? 1 : number(often.group(2));
      int of = often.group(1) != null ? 2 : number(often.group(3));
      miscounted = of < 1 || times > of || of > MOST_TIMES;
      tally = miscounted ? Tally.ONCE : new Tally(times, of);
      text = often.replaceFirst(" ");
    } else if (said(text, "now-and-then")) {
      tally = Tally.NOW_AND_THEN;
      text = without(text, "now-and-then");
    }
    boolean owner = said(text, "owner");
    text = owner ? without(text, "owner") : text;
    boolean undecided = said(text, "could-not-say");
    text = undecided ? without(text, "could-not-say") : text;
    Observation.Doubt sure = doubt;
    if (said(text, "hardly")) {
      sure = Observation.Doubt.HARDLY;
      text = without(text, "hardly");
    } else if (said(text, "fairly")) {
      sure = sure == Observation.Doubt.SURE ? Observation.Doubt.FAIRLY : sure;
      text = without(text, "fairly");
    }
    text = text.replaceAll("\\s+", " ").replaceAll("^[ :,;]+|[ :,;]+$", "");
    return new Bared(text, when, text.isEmpty(), tally, sure, undecided, miscounted, owner);
  }

  /** With the reference of a part that is taken out, where it is called by what it is. */
  private String byReference(String text) {
    Matcher m = TAKES_OUT.matcher(text);
    while (m.find()) {
      List<String> words = List.of(text.substring(m.end()).split(" "));
      for (int n = Math.min(NAME_WORDS, words.size()); n > 0; n--) {
        String name = String.join(" ", words.subList(0, n));
        String rest = text.substring(m.end() + name.length());
        Matcher gone = GONE.matcher(rest);
        boolean out = gone.find();
        boolean enough = out || m.group(1).matches("(?i)without|removing|pulling");
        Optional<String> ref =
            enough ? part(name).or(() -> places().theOne(name)) : Optional.empty();
        if (ref.isPresent()) {
          String behind = out ? rest.substring(gone.end()) : rest;
          return text.substring(0, m.start()) + "with " + ref.get() + " out" + behind;
        }
      }
    }
    return text;
  }

  /** Put together when it is first asked for: few entries speak of parts that are out. */
  private Places places() {
    if (places.isEmpty()) {
      places = Optional.of(new Places(board, vocabulary));
    }
    return places.get();
  }

  private Optional<String> part(String ref) {
    return board.parts().stream()
        .map(PlacedPart::ref)
        .filter(r -> r.equalsIgnoreCase(ref))
        .findFirst();
  }

  private int number(String word) {
    String small = word.toLowerCase(Locale.ROOT);
    String figure = vocabulary.pairs("numbers").getOrDefault(small, small);
    return figure.matches("\\d{1,6}") ? Integer.parseInt(figure) : 0;
  }

  private boolean said(String text, String key) {
    return Vocabulary.in(text.toLowerCase(Locale.ROOT), vocabulary.words(key)).isPresent();
  }

  /** Without the words of a list that stand in it, capitals or not. */
  private String without(String text, String key) {
    String either =
        vocabulary.words(key).stream().map(Pattern::quote).collect(Collectors.joining("|"));
    return text.replaceAll("(?i)(?<= |^)(?:" + either + ")(?= |$)", " ");
  }
}
