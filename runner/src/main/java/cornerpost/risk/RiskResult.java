package cornerpost.risk;

import java.util.List;
import java.util.Map;

/**
 * Cost and finish simulated together.
 *
 * @param distribution of the single durations and amounts, in a word
 * @param cost total cost of each trial, contingency left out, in the currency
 * @param finish finish of each trial, minutes after 1970-01-01 00:00
 * @param bothWithinPlan share of trials that keep both the planned total and the planned finish
 * @param drivesShare share of trials in which a task drives the finish, by task id
 * @param costDrivers what moves the cost most, the first first
 * @param timeDrivers what moves the finish most
 */
public record RiskResult(
    int trials,
    long seed,
    String distribution,
    Spread cost,
    Spread finish,
    double bothWithinPlan,
    Map<String, Double> drivesShare,
    List<Driver> costDrivers,
    List<Driver> timeDrivers) {

  /**
   * Something that moves the outcome.
   *
   * @param correlation with the outcome, -1 to 1
   * @param deviation its own standard deviation, in money or in days of its calendar
   */
  public record Driver(String id, String name, double correlation, double deviation) {
    /** How much of its own spread the outcome takes over, in the unit of the deviation. */
    public double carried() {
      return correlation * deviation;
    }
  }
}
