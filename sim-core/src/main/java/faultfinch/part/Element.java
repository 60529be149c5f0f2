package faultfinch.part;

import faultfinch.signal.Pinout;
import java.util.List;
import java.util.regex.Pattern;

/** A passive part that joins nets: resistor, switch, diode, fuse, capacitor. */
public final class Element extends Part {

  /** The kinds of element; each knows what it joins. */
  public enum Kind {
    RESISTOR,
    PACK,
    POTENTIOMETER,
    CAPACITOR,
    DIODE,
    FUSE,
    SWITCH,
    SOUNDER,
    REGULATOR,
    JACK,
    /** Contacts that lead off the board; what is not plugged in joins nothing. */
    CONNECTOR
  }

  private static final Pattern OHMS = Pattern.compile("\\d{1,9}([kMR]\\d{0,6})?");
  private static final int CLOSED_OHMS = 50;
  private static final int FUSE_OHMS = 1;
  private static final int DIODE_OHMS = 10;

  /** Part of the track that stays between a wiper at its stop and the end. */
  private static final int WIPER_ENDS = 100;

  private final Kind kind;
  private final Pinout pinout;

  Element(Kind kind, Pinout pinout) {
    this.kind = kind;
    this.pinout = pinout;
  }

  public Kind kind() {
    return kind;
  }

  @Override
  public Pinout pinout() {
    return pinout;
  }

  /**
   * What the element joins. Supply parts join nothing here: the power model carries them.
   *
   * @param value as the board file gives it, such as {@code 4k7}; resistors need one
   * @param closed whether a switch is closed, a potentiometer pushed over to its end 1
   */
  public List<Join> joins(String value, boolean closed) {
    return switch (kind) {
      case RESISTOR -> List.of(new Join("1", "2", ohms(value), false));
      case PACK ->
          pinout.pins().stream()
              .filter(p -> !p.name().equals("COM"))
              .map(p -> new Join("COM", p.name(), ohms(value), false))
              .toList();
      case POTENTIOMETER -> turned(ohms(value), closed);
      case DIODE -> List.of(new Join("A", "K", DIODE_OHMS, true));
      case FUSE -> List.of(new Join("1", "2", FUSE_OHMS, false));
      case SWITCH -> closed ? List.of(new Join("1", "2", CLOSED_OHMS, false)) : List.of();
      case CAPACITOR, SOUNDER, REGULATOR, JACK, CONNECTOR -> List.of();
    };
  }

  /** Let go, a stick stands in the middle; 2 is the wiper, which never quite reaches an end. */
  private static List<Join> turned(int ohms, boolean over) {
    int first = Math.max(1, over ? ohms / WIPER_ENDS : ohms / 2);
    return List.of(
        new Join("1", "2", first, false), new Join("2", "3", Math.max(1, ohms - first), false));
  }

  /**
   * Ohms of a value as printed on a part, 0 or more: {@code 330}, {@code 4k7}, {@code 100k}, {@code
   * 1M}.
   *
   * @throws IllegalArgumentException if it is not such a value
   */
  public static int ohms(String value) {
    if (!OHMS.matcher(value).matches()) {
      throw notOhms(value);
    }
    String[] halves = value.split("[kMR]", -1);
    long unit = value.contains("k") ? 1_000 : value.contains("M") ? 1_000_000 : 1;
    long ohms = Long.parseLong(halves[0]) * unit;
    if (halves.length > 1 && !halves[1].isEmpty()) {
      long scale = (long) StrictMath.pow(10, halves[1].length());
      ohms += Long.parseLong(halves[1]) * unit / scale;
    }
    if (ohms > Integer.MAX_VALUE) {
      throw notOhms(value);
    }
    return (int) ohms;
  }

  /**
   * Farads of a capacitor's value as printed on it: {@code 100n}, {@code 4n7}, {@code 22u}, {@code
   * 47p}.
   *
   * @throws IllegalArgumentException if it is not such a value
   */
  public static double farads(String value) {
    if (!value.matches("\\d{1,6}[pnu]\\d{0,3}")) {
      throw new IllegalArgumentException(
          "found value '" + value + "', right would be for example 47p, 4n7, 100n or 22u");
    }
    int at = value.length() - value.replaceFirst("\\d+", "").length();
    double unit = value.charAt(at) == 'u' ? 1e-6 : value.charAt(at) == 'n' ? 1e-9 : 1e-12;
    return Double.parseDouble(value.replaceFirst("[pnu]", ".") + "0") * unit;
  }

  private static IllegalArgumentException notOhms(String value) {
    return new IllegalArgumentException(
        "found value '" + value + "', right would be for example 330, 4k7 or 1M");
  }
}
