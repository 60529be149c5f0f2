package faultfinch.machine;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;

/**
 * What guards a supply and has acted.
 *
 * @param blown references of fuses, in the order they went
 * @param limits milliamperes that regulators give in the mean which shut down for heat and come
 *     back, by reference
 */
record Trips(Set<String> blown, Map<String, Integer> limits) {
  /** Nothing yet. */
  Trips() {
    this(new LinkedHashSet<>(), new LinkedHashMap<>());
  }
}
