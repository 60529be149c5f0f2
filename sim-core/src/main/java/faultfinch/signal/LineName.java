package faultfinch.signal;

/**
 * A pin's name taken apart: the bus it belongs to and its line, as in {@code Y0/} or {@code A12}.
 */
record LineName(String bus, int line) implements Comparable<LineName> {

  /** A name without a number is a bus of its own with line -1. */
  static LineName of(String name) {
    int end = name.endsWith("/") ? name.length() - 1 : name.length();
    int start = end;
    while (start > 0 && Character.isDigit(name.charAt(start - 1))) {
      start--;
    }
    return start == end
        ? new LineName(name, -1)
        : new LineName(name.substring(0, start), Integer.parseInt(name.substring(start, end)));
  }

  /** Whether a name is a line of this bus. */
  static boolean in(String name, String bus) {
    if (!name.startsWith(bus)) {
      return false;
    }
    LineName parts = of(name);
    return parts.line >= 0 && parts.bus.equals(bus);
  }

  @Override
  public int compareTo(LineName other) {
    int byBus = bus.compareTo(other.bus);
    return byBus != 0 ? byBus : Integer.compare(line, other.line);
  }
}
