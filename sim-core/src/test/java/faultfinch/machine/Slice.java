package faultfinch.machine;

import java.util.ArrayList;
import java.util.List;

/**
 * The share of a long sweep that one run takes. The system property {@code faultfinch.slice} says
 * which: {@code 2/4} is the second of four runs that together take all. Without it a run takes all.
 */
final class Slice {
  private static final String PROPERTY = "faultfinch.slice";

  private Slice() {}

  /** Every so-manieth of these, so that all slices last about as long. */
  static <T> List<T> of(List<T> all) {
    return of(all, System.getProperty(PROPERTY, "1/1"));
  }

  static <T> List<T> of(List<T> all, String slice) {
    if (!slice.matches("[1-9]\\d{0,2}/[1-9]\\d{0,2}")) {
      throw wrong(slice);
    }
    int which = Integer.parseInt(slice.substring(0, slice.indexOf('/')));
    int slices = Integer.parseInt(slice.substring(slice.indexOf('/') + 1));
    if (which > slices) {
      throw wrong(slice);
    }
    List<T> taken = new ArrayList<>();
    for (int i = which - 1; i < all.size(); i += slices) {
      taken.add(all.get(i));
    }
    return taken;
  }

  private static IllegalArgumentException wrong(String slice) {
    return new IllegalArgumentException(
        PROPERTY + ": found '" + slice + "', right would be a slice and how many, such as 2/4");
  }
}
