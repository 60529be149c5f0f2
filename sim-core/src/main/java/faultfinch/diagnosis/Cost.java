package faultfinch.diagnosis;

/**
 * What a step costs.
 *
 * @param minutes of work
 * @param pulls chips taken out of their places
 * @param damage expected, in minutes
 */
public record Cost(double minutes, int pulls, double damage) {

  /** Minutes that taking out a chip weighs beside its work. */
  public static final int MINUTES_A_PULL = 20;

  /** Nothing spent. */
  public static final Cost NOTHING = new Cost(0, 0, 0);

  public Cost {
    if (!(minutes >= 0) || pulls < 0 || !(damage >= 0)) {
      throw new IllegalArgumentException(
          "found a cost of "
              + minutes
              + " min, "
              + pulls
              + " pulls, "
              + damage
              + " min of damage, right would be none below 0");
    }
  }

  /** All of it in minutes. */
  public double total() {
    return minutes + MINUTES_A_PULL * pulls + damage;
  }

  /** Both together. */
  public Cost plus(Cost other) {
    return new Cost(minutes + other.minutes, pulls + other.pulls, damage + other.damage);
  }
}
