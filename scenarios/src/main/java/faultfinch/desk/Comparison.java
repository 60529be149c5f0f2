package faultfinch.desk;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What an outcome can be in comparison with what a healthy board shows. */
enum Comparison {
  HEALTHY("healthy") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return outcome.equals(normal.same());
    }
  },
  WRONG("wrong") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return !outcome.equals(normal.same());
    }
  },
  /** As on a healthy board, but that signs may stand behind the prompt: a key brought them. */
  FINE("fine") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return PictureText.of(outcome).isButForTheLastRow(PictureText.of(normal.same()));
    }
  },
  /**
   * Everybody sees that it has started, whatever it counts, in whatever colours, with a cursor or
   * without.
   */
  STARTED("started") {
    @Override
    boolean holds(String outcome, Normal normal) {
      PictureText is = PictureText.of(outcome);
      PictureText right = PictureText.of(normal.same());
      return is.hasRowsOf(right) || is.endsAsButForOneRow(right) || isSpeltAlike(outcome, normal);
    }
  },
  /** The same letters and figures, and another set of colours; what has none leaves a gap. */
  SAME_LETTERS("same-letters") {
    @Override
    boolean holds(String outcome, Normal normal) {
      PictureText is = PictureText.of(outcome);
      PictureText right = PictureText.of(normal.same());
      boolean inks = is.inks().equals(right.inks());
      return is.letters().equals(right.letters()) && (!inks || is.rows().equals(right.rows()));
    }
  },
  OTHER_TEXT("other-text") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return !text(outcome).equals(text(normal.same()));
    }
  },
  NO_WORD("no-word") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return !PictureText.of(outcome).hasWordOf(PictureText.of(normal.same()));
    }
  },
  SOME_WORD("some-word") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return PictureText.of(outcome).hasWordOf(PictureText.of(normal.same()));
    }
  },
  /** Words stand there, or what an eye may take for them. */
  LEGIBLE("legible") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return SOME_WORD.holds(outcome, normal)
          || isLaidOutAlike(outcome, normal)
          || PictureText.of(outcome).isSpelt();
    }
  },
  /** Letters are none: lit cells among dark ones, or a glass full of them. */
  MISSHAPEN("misshapen") {
    @Override
    boolean holds(String outcome, Normal normal) {
      PictureText is = PictureText.of(outcome);
      return is.hasNoLetters() || is.isFilled();
    }
  },
  FILLED("filled") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return PictureText.of(outcome).isFilled();
    }
  },
  /** Filled, and with nothing but lit cells. */
  SOLID("solid") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return PictureText.of(outcome).isSolid();
    }
  },
  EVERY_SECOND_COLUMN("every-second-column") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return PictureText.of(outcome).isWrongInEverySecondColumn(PictureText.of(normal.same()));
    }
  },
  REPEATED("repeated") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return PictureText.of(outcome).isRepeated(PictureText.of(normal.same()));
    }
  },
  USUAL_INKS("usual-inks") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return PictureText.of(outcome).inks().equals(PictureText.of(normal.same()).inks());
    }
  },
  ONE_INK("one-ink") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return PictureText.of(outcome).inks().size() == 1;
    }
  },
  /** Nothing of what was typed is to be seen. */
  ECHO_NONE("echo-none") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return saysNothing(echo(outcome, normal));
    }
  },
  /** Something is to be seen, but not what was typed. */
  ECHO_PART("echo-part") {
    @Override
    boolean holds(String outcome, Normal normal) {
      String echo = echo(outcome, normal);
      return !saysNothing(echo) && !echo.equals(word(normal));
    }
  },
  ECHO_WHOLE("echo-whole") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return echo(outcome, normal).equals(word(normal))
          || isSpeltAlike(outcome, normal)
          || isLaidOutAlike(outcome, normal);
    }
  },
  /** What was typed is to be seen, and nothing came of it. */
  ECHO_ONLY("echo-only") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return ECHO_WHOLE.holds(outcome, normal) && where(normal).isLastOf(PictureText.of(outcome));
    }
  },
  /** Of what was typed nothing came, be it to be seen itself or not. */
  NO_ANSWER("no-answer") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return ECHO_NONE.holds(outcome, normal) || ECHO_ONLY.holds(outcome, normal);
    }
  },
  /** What follows the typed word is as long as on a healthy board, and most of its signs. */
  SAME_LIST("same-list") {
    @Override
    boolean holds(String outcome, Normal normal) {
      List<String> right = PictureText.of(normal.same()).rows();
      List<String> is = PictureText.of(outcome).rows();
      int first = PictureText.of(normal.start()).rows().size();
      boolean whole = is.size() == right.size() && first < right.size();
      for (int row = first; whole && row < right.size() - 1; row++) {
        whole = 2 * same(is.get(row), right.get(row)) > right.get(row).length();
      }
      return whole
          || is.size() > first && isSpeltAlike(outcome, normal)
          || isLaidOutAlike(outcome, normal);
    }
  },
  HIGHER("higher") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return moved(outcome, normal.same()) > 0;
    }
  },
  LOWER("lower") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return moved(outcome, normal.same()) < 0;
    }
  },
  /** As much memory is counted. */
  SAME_PAGES("same-pages") {
    @Override
    boolean holds(String outcome, Normal normal) {
      Matcher is = PAGES.matcher(outcome);
      Matcher should = PAGES.matcher(normal.same());
      boolean read = is.find();
      return read && should.find() && is.group(1).equals(should.group(1))
          || !read && EVERY_SECOND_COLUMN.holds(outcome, normal);
    }
  },
  /** The block behind the prompt is not there. */
  NO_CURSOR("no-cursor") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return PictureText.of(outcome).lacksCursorOf(PictureText.of(normal.same()));
    }
  },
  /** No word of the first row is there. */
  NO_TITLE("no-title") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return !PictureText.of(outcome).hasWordOfTitleOf(PictureText.of(normal.same()));
    }
  },
  /** No long row of lit cells is there. */
  NO_STRIP("no-strip") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return PictureText.of(outcome).hasNoStrip();
    }
  },
  /** Fewer notes sound than on a healthy board, but some. */
  FEWER_NOTES("fewer-notes") {
    @Override
    boolean holds(String outcome, Normal normal) {
      return notes(outcome) > 0 && notes(outcome) < notes(normal.same());
    }
  };

  /**
   * What a healthy board shows.
   *
   * @param same in the same look
   * @param start on its set before anything is typed; empty if it has none
   */
  record Normal(String same, String start) {}

  private static final Pattern NUMBER = Pattern.compile("-?\\d+(\\.\\d+)?");
  private static final Pattern PAGES = Pattern.compile("(\\d+) pages");
  private static final Pattern NOTE = Pattern.compile("\\d+(?= and| Hz)");

  private final String word;

  Comparison(String word) {
    this.word = word;
  }

  abstract boolean holds(String outcome, Normal normal);

  static Optional<Comparison> named(String word) {
    return Arrays.stream(values()).filter(c -> c.word.equals(word)).findFirst();
  }

  /** What can be read of an outcome; nothing if nothing can. */
  private static String text(String outcome) {
    return String.join("\n", PictureText.of(outcome).rows());
  }

  /**
   * Above 0 if the first number that differs is higher than on a good board, below 0 if it is
   * lower; 0 if none differs, or an outcome has none: of a chord one tone may stay.
   */
  private static int moved(String outcome, String good) {
    Matcher is = NUMBER.matcher(outcome);
    Matcher was = NUMBER.matcher(good);
    int moved = 0;
    while (moved == 0 && is.find() && was.find()) {
      moved = Double.compare(Double.parseDouble(is.group()), Double.parseDouble(was.group()));
    }
    return moved;
  }

  private static long notes(String outcome) {
    return NOTE.matcher(outcome).results().map(r -> r.group()).distinct().count();
  }

  /** Signs that stand at the same place. */
  private static int same(String one, String other) {
    int same = 0;
    for (int i = 0; i < Math.min(one.length(), other.length()); i++) {
      same += one.charAt(i) == other.charAt(i) ? 1 : 0;
    }
    return same;
  }

  private static Echo where(Normal normal) {
    return Echo.of(PictureText.of(normal.same()), PictureText.of(normal.start()));
  }

  static String echo(String outcome, Normal normal) {
    return where(normal).in(PictureText.of(outcome));
  }

  /** Wrong glyphs in the right places: everybody sees what it should be. */
  private static boolean isSpeltAlike(String outcome, Normal normal) {
    return Spelling.alike(
        "" + PictureText.of(outcome).rows(), "" + PictureText.of(normal.same()).rows());
  }

  /** Cells that are no letters any more, where words should be: many an eye reads them yet. */
  private static boolean isLaidOutAlike(String outcome, Normal normal) {
    PictureText is = PictureText.of(outcome);
    return is.hasNoLetters() && is.isLaidOutAs(PictureText.of(normal.same()));
  }

  /** Stray marks are nothing that was typed. */
  private static boolean saysNothing(String echo) {
    return echo.chars().noneMatch(Character::isLetterOrDigit);
  }

  private static String word(Normal normal) {
    return where(normal).word();
  }
}
