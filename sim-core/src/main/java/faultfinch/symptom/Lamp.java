package faultfinch.symptom;

import java.util.List;

/**
 * What a lamp does, as seen.
 *
 * @param says dark, lit, or how fast it blinks
 */
public record Lamp(String says) {
  static final Lamp NONE = new Lamp("there is none");

  /** Judges samples taken at equal times. */
  static Lamp seen(List<Boolean> lit, int sampleMilliseconds) {
    if (lit.isEmpty()) {
      return NONE;
    }
    int first = -1;
    int last = -1;
    int changes = 0;
    for (int i = 1; i < lit.size(); i++) {
      if (!lit.get(i).equals(lit.get(i - 1))) {
        changes++;
        first = first < 0 ? i : first;
        last = i;
      }
    }
    if (changes == 0) {
      return new Lamp(lit.get(0) ? "lit" : "dark");
    }
    if (changes == 1) {
      return new Lamp(lit.get(lit.size() - 1) ? "goes on" : "goes out");
    }
    double half = (double) (last - first) * sampleMilliseconds / (changes - 1);
    return new Lamp("blinks " + pace(1000 / (2 * half)));
  }

  /** Steps of about a factor of two, which an eye can tell. */
  private static String pace(double hertz) {
    double[] edges = {0.7, 1.4, 2.8, 5.6};
    String[] paces = {
      "less than once a second", "once a second", "twice a second", "four times a second"
    };
    for (int i = 0; i < edges.length; i++) {
      if (hertz < edges[i]) {
        return paces[i];
      }
    }
    return "faster than four times a second";
  }
}
