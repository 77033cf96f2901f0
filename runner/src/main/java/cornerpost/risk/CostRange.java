package cornerpost.risk;

import java.util.List;
import java.util.Optional;

/**
 * An uncertain amount of money, tax and price rise included.
 *
 * @param task the task whose hours it pays: it then moves with that task's duration
 * @param running what makes it grow with time; empty where time does not
 */
public record CostRange(
    String id, String name, Range amount, Optional<String> task, Optional<Running> running) {
  /**
   * What is paid for by time: the amount buys so many minutes of the clock, up to the finish.
   *
   * @param from tasks with whose latest start the time begins; without any, with the project
   * @param minutesPaidFor above nothing
   */
  public record Running(List<String> from, double minutesPaidFor) {
    public Running {
      from = List.copyOf(from);
    }
  }
}
