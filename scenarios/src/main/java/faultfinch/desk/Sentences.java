package faultfinch.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Parts a report into its sentences. What is quoted in double quotes stays as it is. */
final class Sentences {
  /** A whole saying between single quotes, which is no word to be found on a set. */
  private static final Pattern QUOTED =
      Pattern.compile(
          "(?<=^|[ (:])'(?=\\S)((?:[^'\"]|(?<=\\w)'(?=\\w))*? (?:[^'\"]|(?<=\\w)'(?=\\w))*? (?:[^'\"]|(?<=\\w)'(?=\\w))*?(?<=\\S))'(?=[ .,;:!?)]|$)");

  /** What stands before a saying and says nothing itself. */
  private static final Pattern LABEL =
      Pattern.compile(
          "(?i)^(?:complaint|fault|symptoms?|report|observed|found|confirmed|bench|on the bench|test|tests|seen)"
              + " ?: +(?=\\S)");

  private static final Pattern OWNERS = Pattern.compile("(?i)^(?:customer|client|user|owner) ?: +");

  /** A stop behind a word, a figure or a unit; behind a word cut short none ends a sentence. */
  private static final Pattern END =
      Pattern.compile(
          "\"[^\"]*\"|((?<=[.!?]\")(?:[.] +| +(?=[A-Z]))|(?<!\\b(?i:approx|appr|max|min|resp|typ|incl|etc|fig|nos|no|nr|vs|ca|eg|ie|conn|exp|addr|subst|volt|temp|res|ref|cap|caps|mem))(?<=[a-z]{2}|Hz|\\d|[\\d ][VAk]|[A-Z]{2}|[a-zV0-9!?]['\")]{1,2})"
              + "(?:[.!]+ +(?=['\"(]?[A-Z0-9]|'[a-z])|\\.{2,} *(?=\\S)))");

  /** The stop of the last sentence has nothing behind it. */
  private static final Pattern LAST_STOP = Pattern.compile("(?<=[a-z0-9)]{2})[.!]+$");

  private Sentences() {}

  /** The sentences in their order, without the stops between them; the whole if there is one. */
  static List<String> of(String says) {
    String text = QUOTED.matcher(says).replaceAll("$1");
    text = OWNERS.matcher(LABEL.matcher(text).replaceFirst("")).replaceFirst("owner says ");
    List<String> sentences = new ArrayList<>();
    Matcher m = END.matcher(text);
    int from = 0;
    while (m.find()) {
      if (m.group(1) != null) {
        sentences.add(text.substring(from, m.start()));
        from = m.end();
      }
    }
    sentences.add(text.substring(from));
    return sentences.stream()
        .map(s -> LAST_STOP.matcher(LABEL.matcher(s.strip()).replaceFirst("")).replaceFirst(""))
        .filter(s -> !s.isBlank())
        .toList();
  }
}
