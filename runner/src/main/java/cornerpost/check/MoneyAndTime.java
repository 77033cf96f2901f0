package cornerpost.check;

import static cornerpost.check.Check.Severity.NOTE;
import static cornerpost.check.Check.Severity.PROFESSIONAL;

import cornerpost.check.Check.Topic;
import cornerpost.measure.MeanMonth;
import cornerpost.measure.Unit;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.ProjectQuestions;
import cornerpost.takeoff.BuildTask;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;

/** The time paid for against the programme, money committed before the permit, contingency. */
final class MoneyAndTime implements CheckRule {

  @Override
  public List<Check> look(CheckInput in) {
    var found = new ArrayList<Check>();
    if (!in.work().tasks().isEmpty()) timeAllowed(in, found);
    if (!in.scope().generatesTasks()) return found;
    hire(in, found);
    beforePermit(in, found);
    contingency(in, found);
    lateOrders(in, found);
    bars(in, found);
    return found;
  }

  private static void timeAllowed(CheckInput in, List<Check> found) {
    var project = in.scope().project();
    if (!project.has(ProjectQuestions.TIME_ALLOWED)) return;
    var allowed = project.figure(ProjectQuestions.TIME_ALLOWED).in(Unit.ONE);
    var days = BigDecimal.valueOf(ChronoUnit.DAYS.between(in.start(), in.moveIn()) + 1);
    var months = days.divide(MeanMonth.DAYS, 1, RoundingMode.HALF_UP);
    boolean over = months.compareTo(allowed) > 0;
    found.add(
        new Check(
            "time-allowed",
            Topic.TIME,
            over ? PROFESSIONAL : NOTE,
            "From start to move-in the programme takes "
                + months
                + " months; the budget pays rent"
                + " and interest for "
                + allowed.stripTrailingZeros().toPlainString()
                + (over ? ": raise the time allowed, or shorten the work" : ""),
            "this plan",
            List.of(project.cell(ProjectQuestions.TIME_ALLOWED)),
            in.tasks(BuildTask.MOVE_IN.id())));
  }

  /** The months in which the site is open against those that hire and insurance are paid for. */
  private static void hire(CheckInput in, List<Check> found) {
    var opened = in.firstDays().get(BuildTask.SITE_SET_UP.id());
    var paid = in.measured("time/site-open").map(f -> f.in(Unit.count("month")));
    if (opened == null || paid.isEmpty()) return;
    var days = BigDecimal.valueOf(ChronoUnit.DAYS.between(opened, in.moveIn()) + 1);
    var months = days.divide(MeanMonth.DAYS, 1, RoundingMode.HALF_UP);
    boolean over = months.compareTo(paid.get()) > 0;
    found.add(
        new Check(
            "hire-time",
            Topic.MONEY,
            NOTE,
            "From the opening of the site to move-in the programme takes "
                + months
                + " months; the budget pays hire and insurance for "
                + paid.get().stripTrailingZeros().toPlainString()
                + (over
                    ? ". The cost to complete holds the rest, the total does not: raise the time"
                        + " allowed, or enter quotes for the hire of the whole time"
                    : ""),
            "this plan",
            List.of(in.scope().project().cell(ProjectQuestions.TIME_ALLOWED)),
            in.tasks(BuildTask.SITE_SET_UP.id(), BuildTask.MOVE_IN.id())));
  }

  private static void beforePermit(CheckInput in, List<Check> found) {
    var permit = in.lastDays().get(BuildTask.PERMIT_GRANTED.id());
    if (permit == null) return;
    var early =
        in.work().tasks().stream()
            .filter(t -> t.id().startsWith("order/"))
            .filter(t -> in.firstDays().containsKey(t.id()))
            .filter(t -> in.firstDays().get(t.id()).isBefore(permit))
            .toList();
    if (early.isEmpty()) return;
    found.add(
        new Check(
            "before-permit",
            Topic.MONEY,
            PROFESSIONAL,
            "Money would be committed before the permit is granted ("
                + permit
                + "): "
                + String.join(", ", early.stream().map(t -> t.name()).toList())
                + ". An order before zoning and permit are settled is the costliest mistake there is;"
                + " order only what can be returned, or wait",
            "common practice, no source",
            List.of(in.scope().project().cell(ProjectQuestions.PERMIT)),
            early.stream().map(t -> t.id()).toList()));
  }

  private static void contingency(CheckInput in, List<Check> found) {
    var estimate = in.estimate();
    var without = estimate.total().subtract(estimate.contingency());
    if (without.signum() <= 0) return;
    var share = estimate.contingency().divide(without, 4, RoundingMode.HALF_UP);
    var usual = in.limit("contingency-hard");
    boolean thin = share.compareTo(usual.value()) < 0;
    found.add(
        new Check(
            "contingency",
            Topic.MONEY,
            thin ? PROFESSIONAL : NOTE,
            "Contingency is "
                + share.movePointRight(2).setScale(1, RoundingMode.HALF_UP)
                + " % of the rest"
                + " of the bill; lenders usually ask for at least "
                + Say.share(usual)
                + " on a first build",
            in.source("contingency-hard"),
            List.of(
                in.scope().options().cell(OptionsQuestions.CONTINGENCY_SHELL),
                in.scope().options().cell(OptionsQuestions.CONTINGENCY_REST)),
            List.of()));
  }

  private static void bars(CheckInput in, List<Check> found) {
    if (in.shortOfBars().isEmpty()) return;
    found.add(
        new Check(
            "bars-short",
            Topic.MONEY,
            NOTE,
            "The bill's allowance for cutting buys fewer bars than the cutting plan takes: "
                + String.join("; ", in.shortOfBars())
                + ". Buy by the cutting plan, or join shorter ends where that is allowed",
            "this plan",
            List.of(),
            List.of()));
  }

  private static void lateOrders(CheckInput in, List<Check> found) {
    if (in.lateOrders().isEmpty()) return;
    found.add(
        new Check(
            "late-orders",
            Topic.TIME,
            PROFESSIONAL,
            "Already late to order at the status date: " + String.join(", ", in.lateOrders()),
            "this plan",
            List.of(),
            List.of()));
  }
}
