package cornerpost.plan;

import cornerpost.check.Check;
import cornerpost.finance.Finance;
import cornerpost.measure.Spoken;
import cornerpost.plan.OrderRow.Standing;
import cornerpost.price.Goods;
import cornerpost.work.WorkTask;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a plan says first: the next things to do, and what is wrong. Every document says the same.
 */
public final class AtAGlance {
  private static final int NEXT_SHOWN = 3;

  /** What a point is about: where a reader goes to see more. */
  public enum About {
    ORDERS,
    TASK,
    CHECK,
    MONEY,
    MONTHS,
    MONTHS_TO_COME,
    NETWORK,
    INPUT
  }

  /**
   * Something to do, or something wrong.
   *
   * @param id of the task or the check it is about; otherwise empty
   * @param sign one or two words in front: how grave it is, or what it touches
   * @param by the day it is to be done or begun by
   */
  public record Point(About about, String id, String sign, String text, Optional<LocalDate> by) {}

  private final Plan plan;

  private AtAGlance(Plan plan) {
    this.plan = plan;
  }

  // ---- what to do ---------------------------------------------------------------------------

  /**
   * At most three, the earliest first: what is late to order, what drives move-in, what to order
   * next.
   */
  public static List<Point> next(Plan plan) {
    return new AtAGlance(plan).next();
  }

  private List<Point> next() {
    var points = new ArrayList<Point>();
    var late = plan.orders().stream().filter(OrderRow::late).toList();
    if (!late.isEmpty()) {
      points.add(order("Order now, already late: ", late, plan.statusDate()));
    }
    plan.programme().tasks().stream()
        .filter(t -> !t.done() && t.drivesMoveIn())
        .filter(t -> t.task().kind() != WorkTask.Kind.MILESTONE)
        .min(Comparator.comparing(DatedTask::start))
        .ifPresent(
            t ->
                points.add(
                    work(t, verb(t) + t.task().name() + ", " + span(t) + ". It drives the date.")));
    var orders =
        plan.orders().stream()
            .filter(o -> o.standing() == Standing.TO_COME || o.standing() == Standing.RESERVE)
            .sorted(Comparator.comparing(OrderRow::orderBy).thenComparing(OrderRow::item))
            .toList();
    if (!orders.isEmpty()) {
      var day = orders.get(0).orderBy();
      var standing = orders.get(0).standing();
      var same =
          orders.stream().filter(o -> o.orderBy().equals(day) && o.standing() == standing).toList();
      var what = standing == Standing.RESERVE ? "Reserve, before the permit, by " : "Order by ";
      points.add(order(what + Spoken.day(day) + ": ", same, day));
    }
    for (var t : plan.programme().tasks()) {
      if (points.size() >= NEXT_SHOWN) break;
      boolean told = points.stream().anyMatch(p -> p.id().equals(t.id()));
      if (!t.done() && !told && t.task().kind() != WorkTask.Kind.MILESTONE) {
        points.add(work(t, t.task().name() + ", " + span(t) + "."));
      }
    }
    return points.stream()
        .limit(NEXT_SHOWN)
        .sorted(Comparator.comparing(p -> p.by().orElse(plan.statusDate())))
        .toList();
  }

  private static Point order(String what, List<OrderRow> rows, LocalDate by) {
    var goods = Goods.said(OrderRow.dearestFirst(rows));
    return new Point(About.ORDERS, "", "order", what + goods + ".", Optional.of(by));
  }

  private Point work(DatedTask t, String text) {
    var day = t.started() ? plan.statusDate() : t.firstDay();
    return new Point(About.TASK, t.id(), "work", text, Optional.of(day));
  }

  private static String verb(DatedTask t) {
    return switch (t.task().kind()) {
      case INSPECTION -> "Book: ";
      case WORK, OWN -> t.started() ? "Finish: " : "Start: ";
      case WAIT, ORDER, MILESTONE -> "";
    };
  }

  private static String span(DatedTask t) {
    return t.firstDay().equals(t.lastDay())
        ? Spoken.day(t.firstDay())
        : Spoken.day(t.firstDay()) + " to " + Spoken.day(t.lastDay());
  }

  // ---- what is wrong ------------------------------------------------------------------------

  /** The gravest first: what stops the plan, money, time, what a professional settles, input. */
  public static List<Point> wrong(Plan plan) {
    return new AtAGlance(plan).wrong();
  }

  private List<Point> wrong() {
    var points = new ArrayList<Point>();
    checks(Check.Severity.STOP, points);
    money(points);
    late(points);
    for (var t : plan.programme().tasks()) {
      if (t.done() || t.totalFloatDays().signum() >= 0) continue;
      var by = Spoken.days(t.totalFloatDays().abs());
      var text = t.task().name() + " misses its deadline by " + by + ".";
      points.add(new Point(About.TASK, t.id(), "time", text, Optional.empty()));
    }
    checks(Check.Severity.PROFESSIONAL, points);
    for (var p : plan.problems()) {
      points.add(new Point(About.INPUT, "", "input", p.message() + ".", Optional.empty()));
    }
    for (var f : plan.programme().findings()) {
      if (f.passed()) continue;
      var text = Spoken.firstSentence(f.message());
      points.add(new Point(About.NETWORK, "", "time", text, Optional.empty()));
    }
    return points;
  }

  private void late(List<Point> points) {
    for (var d : plan.finance().delays()) {
      if (d.asked() != Finance.Asked.ENTERED || d.days() == 0) continue;
      var what = d.eventName() + ", " + Spoken.days(BigDecimal.valueOf(d.days())) + " late";
      var text =
          d.moveInDays() == 0
              ? what + ", moves nothing at the end."
              : what
                  + ", moves move-in by "
                  + Spoken.days(BigDecimal.valueOf(d.moveInDays()))
                  + " to "
                  + Spoken.day(d.moveIn())
                  + " and costs "
                  + said(d.cost())
                  + ".";
      points.add(new Point(About.TASK, d.event(), "late", text, Optional.empty()));
    }
  }

  private void checks(Check.Severity severity, List<Point> points) {
    for (var c : plan.checks()) {
      if (c.severity() != severity) continue;
      var text = Spoken.firstSentence(c.message());
      points.add(new Point(About.CHECK, c.id(), severity.label(), text, Optional.empty()));
    }
  }

  private void money(List<Point> points) {
    var balance = plan.finance().balance();
    boolean told = balance.loan().signum() > 0 || balance.cash().signum() > 0;
    if (!told) return;
    if (balance.surplus().signum() < 0) {
      var text =
          "The money does not finish the house: " + said(balance.surplus().abs()) + " is missing.";
      points.add(new Point(About.MONEY, "", "money", text, Optional.empty()));
    }
    var without = new TreeMap<YearMonth, BigDecimal>();
    ownCash()
        .forEach(
            (month, cash) -> {
              if (cash.signum() < 0) without.put(month, cash);
            });
    if (without.isEmpty()) return;
    var worst = Collections.min(without.entrySet(), Map.Entry.comparingByValue());
    var text =
        "Bills fall due before the lender pays: your cash is "
            + said(worst.getValue().abs())
            + " short at the end of "
            + Spoken.month(worst.getKey())
            + (without.size() == 1 ? "." : ", and short in " + without.size() + " months.");
    var about = plan.finance().status().isPresent() ? About.MONTHS_TO_COME : About.MONTHS;
    points.add(new Point(about, "", "money", text, Optional.empty()));
  }

  /** At the end of each month to come: from what has moved where money has, else as planned. */
  private Map<YearMonth, BigDecimal> ownCash() {
    var cash = new TreeMap<YearMonth, BigDecimal>();
    var status = plan.finance().status();
    if (status.isPresent()) {
      status.get().outlook().months().forEach(m -> cash.put(m.span().month(), m.cash()));
      return cash;
    }
    var now = YearMonth.from(plan.statusDate());
    for (var m : plan.finance().months()) {
      if (!m.month().isBefore(now)) cash.put(m.month(), m.cash());
    }
    return cash;
  }

  private String said(BigDecimal amount) {
    return Spoken.money(amount, plan.estimate().currency());
  }
}
