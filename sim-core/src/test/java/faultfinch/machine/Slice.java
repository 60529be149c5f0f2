package faultfinch.machine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The share of a long sweep that one run takes. The system property {@code faultfinch.slice} says
 * which: {@code 2/4} is the second of four runs that together take all. Without it a run takes all.
 */
final class Slice {
  private static final String PROPERTY = "faultfinch.slice";

  private Slice() {}

  /**
   * Every so-manieth of these, so that all slices last about as long.
   *
   * @param run what is equal for those that share a run and so stay together
   */
  static <T> List<T> of(List<T> all, Function<T, ?> run) {
    return of(all, run, System.getProperty(PROPERTY, "1/1"));
  }

  static <T> List<T> of(List<T> all, Function<T, ?> run, String slice) {
    if (!slice.matches("[1-9]\\d{0,2}/[1-9]\\d{0,2}")) {
      throw wrong(slice);
    }
    int which = Integer.parseInt(slice.substring(0, slice.indexOf('/')));
    int slices = Integer.parseInt(slice.substring(slice.indexOf('/') + 1));
    if (which > slices) {
      throw wrong(slice);
    }
    Map<Object, Integer> runs = new HashMap<>();
    List<T> taken = new ArrayList<>();
    for (T each : all) {
      int number = runs.computeIfAbsent(run.apply(each), k -> runs.size());
      if (number % slices == which - 1) {
        taken.add(each);
      }
    }
    return taken;
  }

  private static IllegalArgumentException wrong(String slice) {
    return new IllegalArgumentException(
        PROPERTY + ": found '" + slice + "', right would be a slice and how many, such as 2/4");
  }
}
