package cornerpost.plan;

import cornerpost.measure.Spoken;
import cornerpost.scope.ProgressEntry;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * An entry of sheet Progress made to agree with itself and with the status date. Each thing that
 * cannot be is said, with how it is planned round.
 *
 * <p>What is finished counts before what was begun, and a day that has not come before neither: a
 * finish in the future has not happened, nor a start. A finish before its start takes the start to
 * its own day. Work begun on no day was begun on the status date.
 *
 * @param entry as it is planned with
 * @param said what cannot be and what is taken instead, in pairs
 */
record SettledProgress(ProgressEntry entry, List<Said> said) {
  /** What was found and how it is planned. */
  record Said(String found, String taken) {}

  /**
   * @param status the day up to which things can have happened
   * @param milestone whether the task takes no time, so that its start is its finish
   */
  static SettledProgress of(ProgressEntry e, LocalDate status, boolean milestone) {
    var said = new ArrayList<Said>();
    var task = "task '" + e.task() + "'";
    var start = e.actualStart();
    var finish = e.actualFinish();
    var left = e.remaining();
    var complete = e.complete();
    if (finish.filter(d -> d.isAfter(status)).isPresent()) {
      said.add(
          new Said(
              task
                  + " finished on "
                  + Spoken.day(finish.get())
                  + ", after the status date, "
                  + Spoken.day(status),
              "planned as not finished"));
      finish = Optional.empty();
      if (complete.filter(c -> c.compareTo(BigDecimal.ONE) >= 0).isPresent()) {
        complete = Optional.empty();
      }
    }
    if (start.filter(d -> d.isAfter(status)).isPresent()) {
      said.add(
          new Said(
              task
                  + " started on "
                  + Spoken.day(start.get())
                  + ", after the status date, "
                  + Spoken.day(status),
              finish.isPresent()
                  ? "taken as begun on the day it was finished"
                  : "planned as not begun"));
      start = finish;
      if (finish.isEmpty()) {
        left = Optional.empty();
        complete = Optional.empty();
      }
    }
    if (finish.isPresent() && start.filter(finish.get()::isBefore).isPresent()) {
      said.add(
          new Said(
              task
                  + " finished on "
                  + Spoken.day(finish.get())
                  + ", before it started on "
                  + Spoken.day(start.get()),
              "taken as begun on the day it was finished"));
      start = finish;
    }
    if (finish.isPresent() && start.isEmpty()) {
      if (!milestone) {
        said.add(
            new Said(
                task + " is finished but not started",
                "taken as begun on the day it was finished"));
      }
      start = finish;
    }
    boolean begun = left.isPresent() || complete.filter(c -> c.signum() > 0).isPresent();
    if (finish.isEmpty() && start.isEmpty() && begun) {
      said.add(
          new Said(task + " has begun, but no day is given", "taken as begun on the status date"));
      start = Optional.of(status);
    }
    if (finish.isPresent() && left.filter(r -> r.signum() > 0).isPresent()) {
      said.add(new Said(task + " is finished, yet days remain", "planned as finished"));
      left = Optional.empty();
    }
    if (finish.isPresent() && complete.filter(c -> c.compareTo(BigDecimal.ONE) < 0).isPresent()) {
      said.add(new Said(task + " is finished, yet not complete", "planned as finished"));
      complete = Optional.empty();
    }
    return new SettledProgress(
        new ProgressEntry(e.task(), start, finish, left, complete, e.booked(), e.cell()), said);
  }
}
