package cornerpost.plan;

import cornerpost.finance.CostReport.Treatment;
import cornerpost.finance.PlannedValue;
import cornerpost.measure.Ratio;
import cornerpost.price.CostLine;
import cornerpost.price.Estimate;
import cornerpost.scope.BaselineRow;
import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * When the work should have been done, for the planned value: by the plan that was kept as a
 * baseline, else by the plan before anything had happened.
 *
 * <p>Of several kept plans the last one kept before the status date counts; one kept on that day
 * knows the progress already. A task that the kept plan does not know has the dates of its stage
 * there, and where it does not know the stage either, those of the plan before anything had
 * happened. What a line costs is today's, as the revised budget stands: only the dates are those of
 * the kept plan.
 */
final class PlannedDates {
  /** Of a share that stands on a sheet as a number. */
  private static final int SHARE_DECIMALS = 10;

  /** First and last day. */
  private record Span(LocalDate first, LocalDate last) {
    static Optional<Span> of(Optional<BaselineRow> row) {
      return row.filter(r -> r.start().isPresent() && r.finish().isPresent())
          .map(r -> new Span(r.start().get(), r.finish().get()));
    }

    static Span of(LocalDate first, LocalDate last) {
      return new Span(first.isAfter(last) ? last : first, last);
    }

    /** The part of an amount that has come by a day: evenly, the last day counted. */
    BigDecimal by(LocalDate day, BigDecimal amount) {
      if (day.isBefore(first)) return BigDecimal.ZERO;
      if (!day.isBefore(last)) return amount;
      return amount
          .multiply(BigDecimal.valueOf(ChronoUnit.DAYS.between(first, day) + 1))
          .divide(BigDecimal.valueOf(ChronoUnit.DAYS.between(first, last) + 1), Ratio.PRECISION);
    }
  }

  private final Estimate estimate;
  private final LineTasks tasks;
  private final LocalDate status;
  private final Optional<String> name;
  private final Map<String, BaselineRow> kept = new HashMap<>();
  private final Supplier<LineTasks> unbegun;
  private Optional<LineTasks> before = Optional.empty();

  /**
   * @param tasks of today's plan
   * @param rows of kept plans
   * @param unbegun the tasks as planned before anything had happened; asked for only where needed
   */
  PlannedDates(
      Estimate estimate,
      LineTasks tasks,
      LocalDate status,
      List<BaselineRow> rows,
      Supplier<LineTasks> unbegun) {
    this.estimate = estimate;
    this.tasks = tasks;
    this.status = status;
    this.unbegun = unbegun;
    name = chosen(rows, status);
    for (var r : rows) if (name.filter(r.baseline()::equals).isPresent()) kept.put(r.id(), r);
  }

  /** The name of the kept plan that counts: one kept later knows the progress already. */
  private static Optional<String> chosen(List<BaselineRow> rows, LocalDate status) {
    return rows.stream()
        .filter(r -> r.keptOn().isBefore(status))
        .reduce((a, b) -> b)
        .map(BaselineRow::baseline);
  }

  private LineTasks before() {
    if (before.isEmpty()) before = Optional.of(unbegun.get());
    return before.get();
  }

  private Span whole() {
    return Span.of(Optional.ofNullable(kept.get(BaselineRow.TOTAL)))
        .orElseGet(
            () -> {
              var programme = before().programme();
              var start = programme.start();
              return new Span(
                  start, programme.moveIn().isBefore(start) ? start : programme.moveIn());
            });
  }

  /** What is paid by the month runs to the end, hire from the day the site is opened. */
  private Span running(CostLine l, Span whole) {
    var opened =
        ByTheMonth.opening(l).stream()
            .map(kept::get)
            .flatMap(r -> Span.of(Optional.ofNullable(r)).stream())
            .map(Span::first)
            .max(LocalDate::compareTo);
    var first =
        opened.orElseGet(
            () -> ByTheMonth.opening(l).isEmpty() ? whole.first() : ByTheMonth.begin(l, before()));
    return Span.of(first, whole.last());
  }

  private Span of(CostLine l) {
    return Span.of(tasks.due(l).map(t -> kept.get(t.id())))
        .or(() -> Span.of(Optional.ofNullable(kept.get(BaselineRow.STAGE + l.stage().label()))))
        .orElseGet(
            () -> {
              var plan = before();
              var task = plan.due(l);
              return Span.of(
                  task.map(DatedTask::firstDay).orElseGet(() -> plan.start(l.stage())),
                  task.map(DatedTask::lastDay).orElseGet(() -> plan.end(l.stage())));
            });
  }

  /** The parts of each stage planned by the end of each period, and by now. */
  PlannedValue.Parts by(List<Stage> stages) {
    var whole = whole();
    var first = whole.first();
    var last = whole.last();
    var amounts = new HashMap<Stage, Map<Span, BigDecimal>>(); // lines of the same days at once
    for (var l : estimate.lines()) {
      var treatment = StatusMaker.treatment(l.kind());
      if (l.money().signum() <= 0) continue;
      if (treatment == Treatment.TIME) {
        add(amounts, l, running(l, whole));
      } else if (treatment == Treatment.WORK) {
        add(amounts, l, of(l));
      }
    }
    var ends = new ArrayList<LocalDate>();
    var latest =
        amounts.values().stream()
            .flatMap(m -> m.keySet().stream())
            .map(Span::last)
            .max(LocalDate::compareTo)
            .orElse(last);
    var planEnd = latest.isAfter(last) ? latest : last;
    for (int k = 1; ends.isEmpty() || ends.get(ends.size() - 1).isBefore(planEnd); k++) {
      ends.add(first.plusMonths(k).minusDays(1));
    }
    var parts = ends.stream().map(e -> parts(stages, amounts, e)).toList();
    // Work of the status date itself is not done when the day begins.
    return new PlannedValue.Parts(
        name, stages, ends, parts, parts(stages, amounts, status.minusDays(1)), time(first, ends));
  }

  private static void add(Map<Stage, Map<Span, BigDecimal>> amounts, CostLine l, Span span) {
    amounts
        .computeIfAbsent(l.stage(), s -> new LinkedHashMap<>())
        .merge(span, l.money(), BigDecimal::add);
  }

  private static List<BigDecimal> parts(
      List<Stage> stages, Map<Stage, Map<Span, BigDecimal>> amounts, LocalDate day) {
    return stages.stream()
        .map(
            s -> {
              var all = BigDecimal.ZERO;
              var come = BigDecimal.ZERO;
              for (var x : amounts.getOrDefault(s, Map.of()).entrySet()) {
                all = all.add(x.getValue());
                come = come.add(x.getKey().by(day, x.getValue()));
              }
              return all.signum() == 0
                  ? BigDecimal.ONE
                  : rounded(come.divide(all, Ratio.PRECISION));
            })
        .toList();
  }

  /** Periods gone on the status date, the running one by its days. */
  private BigDecimal time(LocalDate first, List<LocalDate> ends) {
    if (!status.isAfter(first)) return BigDecimal.ZERO;
    var begin = first;
    int whole = 0;
    for (var e : ends) {
      if (status.isAfter(e)) {
        whole++;
        begin = e.plusDays(1);
      } else {
        return rounded(
            BigDecimal.valueOf(whole)
                .add(
                    BigDecimal.valueOf(ChronoUnit.DAYS.between(begin, status))
                        .divide(
                            BigDecimal.valueOf(ChronoUnit.DAYS.between(begin, e) + 1),
                            Ratio.PRECISION)));
      }
    }
    int k = ends.size();
    var from = ends.get(k - 1).plusDays(1);
    while (!from.plusMonths(1).isAfter(status)) {
      from = from.plusMonths(1);
      k++;
    }
    return rounded(
        BigDecimal.valueOf(k)
            .add(
                BigDecimal.valueOf(ChronoUnit.DAYS.between(from, status))
                    .divide(
                        BigDecimal.valueOf(ChronoUnit.DAYS.between(from, from.plusMonths(1))),
                        Ratio.PRECISION)));
  }

  private static BigDecimal rounded(BigDecimal share) {
    return share.setScale(SHARE_DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros();
  }
}
