package cornerpost.report;

import cornerpost.finance.Finance;
import cornerpost.plan.Plan;
import cornerpost.risk.RiskResult;
import cornerpost.risk.Spread;
import java.util.List;
import java.util.TreeMap;
import java.util.function.DoubleFunction;

/** The part of the JSON that tells of money against time, and of what may come otherwise. */
final class MoneyJson {
  /** Shares of the trials at which outcomes are given. */
  static final List<Integer> PERCENTILES =
      List.of(1, 5, 10, 20, 25, 30, 40, 50, 60, 70, 75, 80, 90, 95, 99);

  private final Plan plan;
  private final JsonOut out;

  MoneyJson(Plan plan, JsonOut out) {
    this.plan = plan;
    this.out = out;
  }

  void write() {
    out.object("finance", this::finance);
    out.object("risk", this::risk);
  }

  private void made(Finance.Made m) {
    out.number("work", m.work());
    out.number("byTheMonth", m.byTheMonth());
    out.number("interest", m.interest());
    out.number("notLent", m.notLent());
  }

  private void finance() {
    var f = plan.finance();
    out.objects(
        "months",
        f.months(),
        m -> {
          out.text("month", m.month().toString());
          out.number("out", m.out());
          out.number("cumulativeOut", m.cumulativeOut());
          out.number("drawn", m.drawn());
          out.number("interest", m.interest());
          out.number("cash", m.cash());
          out.number("borrowed", m.borrowed());
        });
    out.objects(
        "draws",
        f.draws(),
        d -> {
          out.text("id", d.id());
          out.date("date", d.date());
          out.text("event", d.event());
          d.made().ifPresent(m -> out.object("made", () -> made(m)));
          out.number("earned", d.earned());
          out.number("retained", d.retained());
          out.number("paid", d.paid());
          out.number("cumulativePaid", d.cumulativePaid());
          out.texts("inspections", d.inspections());
          out.texts("papers", d.papers());
        });
    out.objects(
        "stages",
        f.stages(),
        s -> {
          out.text("stage", s.stage().label());
          out.number("budget", s.budget());
          out.number("done", s.done());
          out.number("inPlace", s.inPlace());
          out.number("toComplete", s.toComplete());
        });
    out.object("balance", () -> balance(f.balance()));
    out.object(
        "interest",
        () -> {
          out.number("allowance", f.interest().allowance());
          out.number("charged", f.interest().charged());
          out.number("beyond", f.interest().beyond());
          out.number("ifAdded", f.interest().ifAdded());
        });
    out.objects(
        "delays",
        f.delays(),
        d -> {
          out.text("asked", d.asked().label());
          out.text("event", d.event());
          out.text("eventName", d.eventName());
          out.number("days", d.days());
          out.text("cause", d.cause());
          out.text("borneBy", d.borneBy());
          out.number("moveInDays", d.moveInDays());
          out.date("moveIn", d.moveIn());
          out.number("cost", d.cost());
          out.text("words", d.words());
        });
    if (f.status().isPresent()) {
      var status = new StatusJson(f.status().get(), out);
      out.object("status", () -> status.write(plan.estimate().currency().getCurrencyCode()));
    } else {
      out.text("status", java.util.Optional.empty());
    }
  }

  private void balance(Finance.Balance b) {
    out.number("loan", b.loan());
    out.number("undrawn", b.undrawn());
    out.number("cash", b.cash());
    out.number("costToComplete", b.costToComplete());
    out.number("interestToCome", b.interestToCome());
    out.number("surplus", b.surplus());
    out.number("loanToCost", b.loanToCost());
    out.number("loanToValue", b.loanToValue());
  }

  private void risk() {
    var r = plan.risk();
    out.number("trials", r.trials());
    out.number("seed", r.seed());
    out.text("distribution", r.distribution());
    out.object(
        "cost",
        () -> {
          spread(r.cost(), Double::valueOf);
          out.number("mean", r.cost().mean());
          out.number(
              "shareWithinPlan", r.cost().shareWithin(plan.estimate().total().doubleValue()));
        });
    out.object(
        "finish",
        () -> {
          spread(r.finish(), m -> Words.iso(Words.moment(m)));
          out.number("shareWithinPlan", RiskWords.finishWithinPlan(plan));
        });
    out.number("bothWithinPlan", r.bothWithinPlan());
    out.numbers("drivesShare", new TreeMap<>(r.drivesShare()));
    out.objects("costDrivers", r.costDrivers(), this::driver);
    out.objects("timeDrivers", r.timeDrivers(), this::driver);
  }

  private void spread(Spread s, DoubleFunction<Object> shown) {
    outcome("least", shown.apply(s.least()));
    for (int p : PERCENTILES) outcome("p" + p, shown.apply(s.quantile(p / 100.0)));
    outcome("most", shown.apply(s.most()));
  }

  private void outcome(String name, Object value) {
    if (value instanceof Double d) out.number(name, d);
    else out.text(name, value.toString());
  }

  private void driver(RiskResult.Driver d) {
    out.text("id", d.id());
    out.text("name", d.name());
    out.number("correlation", d.correlation());
    out.number("deviation", d.deviation());
  }
}
