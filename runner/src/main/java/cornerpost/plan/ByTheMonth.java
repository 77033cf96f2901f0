package cornerpost.plan;

import cornerpost.fact.Facts;
import cornerpost.measure.MeanMonth;
import cornerpost.measure.Ratio;
import cornerpost.measure.Unit;
import cornerpost.price.CostLine;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Scope;
import cornerpost.takeoff.BuildTask;
import cornerpost.takeoff.Line;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What is paid by the month: from which day it runs, for how many months the budget pays, and when
 * each month falls due.
 *
 * <p>Rent elsewhere runs from the start of the project. Hire, insurance and power run from the day
 * the site is opened, or from their own task if that comes later: before it nothing stands there.
 * Both run to move-in. A month is counted from the day on which it began, and is paid whole.
 */
final class ByTheMonth {
  private static final Unit MONTHS = Unit.count("month");
  private static final String SITE_OPEN = "time/site-open";

  private final Optional<BigDecimal> allowed;
  private final Optional<BigDecimal> siteOpen;
  private final Facts facts;

  ByTheMonth(Scope scope, List<Line> lines, Facts facts) {
    this.facts = facts;
    allowed = scope.project().findFigure(ProjectQuestions.TIME_ALLOWED).map(f -> f.in(MONTHS));
    siteOpen =
        lines.stream()
            .filter(l -> l.id().equals(SITE_OPEN))
            .map(l -> l.quantity().in(MONTHS))
            .findFirst();
  }

  /**
   * A month of a line, or what the budget has left for it.
   *
   * @param due the day it is asked for
   * @param gone its last day
   * @param months one, less where the budget pays for no more, or all that is left at the end
   */
  record Month(LocalDate due, LocalDate gone, BigDecimal months) {}

  /** The tasks with the later of which a line begins to run; none for the start of the project. */
  static List<String> opening(CostLine l) {
    return l.item().isEmpty()
        ? List.of()
        : Stream.concat(Stream.of(BuildTask.SITE_SET_UP.id()), l.task().stream())
            .distinct()
            .toList();
  }

  /** The day from which it runs, not after move-in. */
  static LocalDate begin(CostLine l, LineTasks tasks) {
    var programme = tasks.programme();
    var day =
        opening(l).stream()
            .flatMap(id -> tasks.task(id).stream())
            .map(DatedTask::firstDay)
            .max(LocalDate::compareTo)
            .orElse(programme.start());
    var end = end(programme);
    return day.isAfter(end) ? end : day;
  }

  private static LocalDate end(Programme programme) {
    return programme.moveIn().isBefore(programme.start()) ? programme.start() : programme.moveIn();
  }

  /** Months that the budget pays for; nothing where no time allowed is entered. */
  private BigDecimal months(CostLine l) {
    return (l.item().isEmpty() ? allowed : siteOpen.or(() -> allowed)).orElse(BigDecimal.ZERO);
  }

  /** Days that the budget pays for. */
  BigDecimal days(CostLine l) {
    return months(l).multiply(MeanMonth.DAYS);
  }

  /** The share of the days paid for that is gone at a day: above one where these are used up. */
  BigDecimal gone(CostLine l, LineTasks tasks, LocalDate status) {
    return share(l, ChronoUnit.DAYS.between(begin(l, tasks), status));
  }

  /** Days from the status date to move-in that it still runs, over those paid for. */
  BigDecimal toCome(CostLine l, LineTasks tasks, LocalDate status) {
    var begin = begin(l, tasks);
    var from = begin.isAfter(status) ? begin : status;
    return share(l, ChronoUnit.DAYS.between(from, tasks.programme().moveIn()) + 1);
  }

  private BigDecimal share(CostLine l, long days) {
    var paid = days(l);
    return days <= 0 || paid.signum() == 0
        ? BigDecimal.ZERO
        : BigDecimal.valueOf(days).divide(paid, Ratio.PRECISION);
  }

  /**
   * The months as the budget pays for them: at its price until it is used up. What it has left at
   * move-in stands on that day. Together they are the months of the budget.
   */
  List<Month> budgeted(CostLine l, LineTasks tasks) {
    var left = months(l);
    var paid = new ArrayList<Month>();
    for (var m : running(l, tasks)) {
      var part = left.min(m.months());
      left = left.subtract(part);
      if (part.signum() > 0) paid.add(new Month(m.due(), m.gone(), part));
    }
    return paid;
  }

  /**
   * Every month to move-in, also those that the budget does not pay for, and what it has left then.
   */
  List<Month> running(CostLine l, LineTasks tasks) {
    var all = new ArrayList<Month>();
    var begin = begin(l, tasks);
    var end = end(tasks.programme());
    for (int k = 0; !begin.plusMonths(k).isAfter(end); k++) {
      var first = begin.plusMonths(k);
      var next = begin.plusMonths(k + 1).minusDays(1);
      var last = next.isAfter(end) ? end : next;
      all.add(new Month(isInAdvance(l) ? first : last, last, BigDecimal.ONE));
    }
    var left = months(l).subtract(BigDecimal.valueOf(all.size()));
    if (left.signum() > 0) all.add(new Month(end, end, left));
    return all;
  }

  /** Whether a month is paid on its first day; else it is invoiced on its last. */
  boolean isInAdvance(CostLine l) {
    var id = "time.due." + l.item().orElse("rent");
    return facts.find(id).filter(f -> facts.figure(id).in(MONTHS).signum() == 0).isPresent();
  }
}
