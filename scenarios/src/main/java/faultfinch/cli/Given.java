package faultfinch.cli;

import faultfinch.board.NearNames;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.cli.DefaultParser;
import org.apache.commons.cli.MissingArgumentException;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.apache.commons.cli.ParseException;
import org.apache.commons.cli.UnrecognizedOptionException;

/** The words given to a command, sorted into its options and the rest. */
final class Given {
  private final org.apache.commons.cli.CommandLine sorted;
  private final Words words;

  private Given(org.apache.commons.cli.CommandLine sorted, Words words) {
    this.sorted = sorted;
    this.words = words;
  }

  /**
   * Sorts the words.
   *
   * @throws Misuse if an option is unknown, lacks its value or is given too often
   */
  static Given of(Options options, List<String> given, Words words) {
    DefaultParser parser = DefaultParser.builder().setAllowPartialMatching(false).get();
    try {
      org.apache.commons.cli.CommandLine sorted =
          parser.parse(options, given.toArray(String[]::new));
      for (Option option : options.getOptions()) {
        String[] values = sorted.getOptionValues(option);
        if (values != null && values.length > 1 && !again(option)) {
          throw words.misuse("given.twice", option.getLongOpt(), values[0], values[1]);
        }
      }
      return new Given(sorted, words);
    } catch (UnrecognizedOptionException e) {
      String elsewhere = "given.elsewhere." + e.getOption();
      if (words.knows(elsewhere)) {
        throw words.misuse(elsewhere);
      }
      List<String> known =
          options.getOptions().stream().map(o -> "--" + o.getLongOpt()).sorted().toList();
      String near = NearNames.of(e.getOption(), known);
      throw words.misuse("given.unknown-option", e.getOption(), near);
    } catch (MissingArgumentException e) {
      Option option = e.getOption();
      throw words.misuse("given.no-value", option.getLongOpt(), option.getArgName());
    } catch (ParseException e) {
      throw new Misuse(e.getMessage());
    }
  }

  /** An option that takes one value. */
  static Option value(String name, String form) {
    return Option.builder().longOpt(name).hasArg().argName(form).get();
  }

  /** An option that takes one value and may be given again. */
  static Option values(String name, String form) {
    return Option.builder().longOpt(name).hasArg().argName(form).type(List.class).get();
  }

  /** Whether an option may be given again. */
  static boolean again(Option option) {
    return option.getType().equals(List.class);
  }

  /** An option that is there or not. */
  static Option flag(String name) {
    return Option.builder().longOpt(name).get();
  }

  boolean has(String option) {
    return sorted.hasOption(option);
  }

  Optional<String> text(String option) {
    return Optional.ofNullable(sorted.getOptionValue(option));
  }

  /** All values of an option, in the order given. */
  List<String> texts(String option) {
    String[] values = sorted.getOptionValues(option);
    return values == null ? List.of() : List.of(values);
  }

  /** Values of several options, each with the name of its option, in the order given. */
  List<Map.Entry<String, String>> inOrder(List<String> options) {
    return Arrays.stream(sorted.getOptions())
        .filter(o -> options.contains(o.getLongOpt()))
        .map(o -> Map.entry(o.getLongOpt(), o.getValue()))
        .toList();
  }

  /** All names of an option, which may stand between commas. */
  List<String> names(String option) {
    return texts(option).stream()
        .flatMap(v -> Arrays.stream(v.split(",", -1)))
        .map(String::strip)
        .toList();
  }

  /** The words that belong to no option. */
  List<String> rest() {
    return sorted.getArgList();
  }

  /**
   * A number of an option; both limits are allowed.
   *
   * @param otherwise the number if the option is not given
   */
  BigDecimal number(String option, String otherwise, String least, String most) {
    String text = text(option).orElse(otherwise);
    try {
      BigDecimal number = new BigDecimal(text);
      if (number.compareTo(new BigDecimal(least)) >= 0
          && number.compareTo(new BigDecimal(most)) <= 0) {
        return number;
      }
    } catch (NumberFormatException e) {
      // said below
    }
    throw words.misuse("given.no-number", option, text, least, most);
  }

  /** A whole number of an option; both limits are allowed. */
  long whole(String option, long otherwise, long least, long most) {
    String text = text(option).orElse(Long.toString(otherwise));
    try {
      long number = Long.parseLong(text);
      if (number >= least && number <= most) {
        return number;
      }
    } catch (NumberFormatException e) {
      // said below
    }
    throw words.misuse("given.no-whole-number", option, text, least, most);
  }

  /**
   * Refuses words that belong to no option.
   *
   * @throws Misuse naming the first of them
   */
  void nothingElse() {
    if (!rest().isEmpty()) {
      throw words.misuse("given.too-much", rest().get(0));
    }
  }
}
