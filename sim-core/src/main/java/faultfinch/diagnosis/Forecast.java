package faultfinch.diagnosis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What a job is expected to come to if it is gone on with as planned, up to the check after the
 * repair that cures.
 *
 * @param price in minutes, with what pulls and damage count
 * @param minutes of the bench clock
 * @param innocentChips taken out by moves that do not cure
 * @param half of such jobs take no more minutes than this
 * @param eighth one job in eight takes more minutes than this
 * @param custom share of the jobs in which a custom part is fitted, 0 to 1
 */
public record Forecast(
    double price, double minutes, double innocentChips, int half, int eighth, double custom) {
  private static final double HALF = 0.5;
  private static final double SEVEN_EIGHTHS = 0.875;
  private static final double ROUNDING = 1e-9;

  /** One way a job can end, with its weight. */
  record End(double weight, double price, double minutes, int innocentChips, boolean custom) {}

  /** Of all ends; there must be one. */
  static Forecast of(List<End> ends) {
    double weight = 0;
    double price = 0;
    double minutes = 0;
    double innocent = 0;
    double custom = 0;
    for (End end : ends) {
      weight += end.weight;
      price += end.weight * end.price;
      minutes += end.weight * end.minutes;
      innocent += end.weight * end.innocentChips;
      custom += end.custom ? end.weight : 0;
    }
    List<End> rising = new ArrayList<>(ends);
    rising.sort(Comparator.comparingDouble(End::minutes));
    return new Forecast(
        price / weight,
        minutes / weight,
        innocent / weight,
        within(rising, HALF * weight),
        within(rising, SEVEN_EIGHTHS * weight),
        custom / weight);
  }

  /** Whole minutes within which ends of so much weight come. */
  private static int within(List<End> rising, double weight) {
    double sum = 0;
    for (End end : rising) {
      sum += end.weight;
      if (sum >= weight * (1 - ROUNDING)) {
        return (int) Math.ceil(end.minutes - ROUNDING);
      }
    }
    return (int) Math.ceil(rising.get(rising.size() - 1).minutes - ROUNDING);
  }
}
