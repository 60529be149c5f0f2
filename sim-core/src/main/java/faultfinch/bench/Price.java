package faultfinch.bench;

/**
 * What a move costs.
 *
 * @param minutes of the bench clock
 * @param pulls chips taken out of their place
 * @param damage expected, in minutes
 * @param total all of it in minutes, a pull at what the price list says
 */
public record Price(int minutes, int pulls, double damage, double total) {
  public static final Price NOTHING = new Price(0, 0, 0, 0);

  public Price plus(Price other) {
    return new Price(
        minutes + other.minutes, pulls + other.pulls, damage + other.damage, total + other.total);
  }
}
