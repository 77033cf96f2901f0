package cornerpost.report;

import cornerpost.finance.CostReport;
import cornerpost.finance.DrawEvent;
import cornerpost.finance.EarnedValue;
import cornerpost.finance.Flag;
import cornerpost.finance.LoanStatus;
import cornerpost.finance.Outlook;
import cornerpost.finance.StageValue;
import cornerpost.finance.Stress;
import cornerpost.scope.Stage;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The part of the JSON that tells where the loan stands. */
final class StatusJson {
  private final LoanStatus status;
  private final JsonOut out;

  StatusJson(LoanStatus status, JsonOut out) {
    this.status = status;
    this.out = out;
  }

  void write(String currency) {
    out.text("verdict", status.verdict(currency));
    out.text("bringBy", status.bringBy());
    out.object("holding", this::holding);
    // Before money has moved the lines are those of the bill: nothing stands beside them.
    out.objects("lines", status.moneyMoved() ? status.rows() : List.of(), this::line);
    out.objects("scheduleOfValues", status.stages(), this::stage);
    out.object("request", this::request);
    out.object("contingency", this::contingency);
    out.object("interestReserve", this::reserve);
    out.objects("toCome", status.outlook().months(), this::month);
    whatIf(status.stresses(), out);
    out.object("earnedValue", () -> earnedValue(status.value()));
    signs(status.flags(), out);
    out.date("finish", status.facts().finish());
    out.text("maturity", status.terms().maturity());
  }

  static void whatIf(List<Stress> stresses, JsonOut out) {
    out.objects(
        "whatIf",
        stresses,
        s -> {
          out.text("name", s.name());
          out.number("delay", s.delay());
          out.number("prices", s.prices());
          out.number("surplus", s.surplus());
        });
  }

  static void signs(List<Flag> flags, JsonOut out) {
    out.objects(
        "signs",
        flags,
        f -> {
          out.text("sign", f.sign().name().toLowerCase(Locale.ROOT).replace('_', '-'));
          out.text("words", f.sign().label());
          out.yes("raised", f.raised());
          out.number("figure", f.untold().isPresent() ? Optional.empty() : Optional.of(f.figure()));
          out.text("untold", f.untold());
        });
  }

  private void holding() {
    var h = status.holding();
    out.number("loan", h.loan());
    out.number("drawn", h.drawn());
    out.number("undrawn", h.undrawn());
    out.number("ownCash", h.ownCash());
    out.number("paid", h.paid());
    out.number("cash", h.cash());
    out.number("toComplete", h.toComplete());
    out.number("retained", h.retained());
    out.number("payable", h.payable());
    out.number("notInvoiced", h.notInvoiced());
    out.number("interestToCome", h.interestToCome());
    out.number("needed", h.needed());
    out.number("surplus", h.surplus());
  }

  private void line(CostReport.Row r) {
    var e = r.entered();
    out.text("id", r.line().id());
    out.text("stage", r.line().stage().map(Stage::label));
    out.text("description", r.line().description());
    out.text("reckonedAs", r.line().treatment().label());
    out.number("amountToday", r.line().amount());
    out.number("quantityToday", r.line().quantity());
    out.number("original", r.original());
    out.number("changes", e.changes());
    out.number("revised", r.revised());
    out.number("committed", e.committed());
    out.number("uncommitted", r.uncommitted());
    out.number("invoiced", e.invoiced());
    out.number("paid", e.paid());
    out.number("retained", e.retained());
    out.number("payable", r.payable());
    out.number("progress", r.line().progress());
    out.number("share", r.share());
    out.number("inPlace", r.inPlace());
    out.number("stored", e.stored());
    out.number("toDate", r.toDate());
    out.number("toComplete", r.toComplete());
    out.number("atCompletion", r.atCompletion());
    out.number("variance", r.variance());
    out.number("byPrice", r.byPrice());
    out.number("byQuantity", r.byQuantity());
    out.number("byScope", r.byScope());
    out.number("byTime", r.byTime());
    out.number("overRevised", r.over());
    out.number("earned", r.earned());
    out.number("drawn", e.drawn());
    out.yes("quoteEnded", r.line().quoteEnded());
  }

  private void stage(StageValue s) {
    out.text("stage", s.stage().label());
    out.number("original", s.original());
    out.number("changes", s.changes());
    out.number("revised", s.revised());
    out.number("earned", s.earned());
    out.number("stored", s.stored());
    out.number("drawn", s.drawn());
    out.number("ahead", s.ahead());
    out.number("toFinish", s.toFinish());
  }

  private void request() {
    var r = status.request();
    out.number("inPlace", r.inPlace());
    out.number("own", r.own());
    out.number("part", r.part());
    out.number("held", r.held());
    out.number("before", r.before());
    out.number("due", r.due());
    out.number("above", r.above());
    out.number("toFinish", r.toFinish());
  }

  private void contingency() {
    var c = status.contingency();
    out.number("original", c.original());
    out.number("left", c.left());
    out.number("workLeft", c.workLeft());
    out.number("required", c.required());
    out.number("used", c.used());
    out.number("progress", c.progress());
    out.number("pace", c.pace());
    out.number("kept", c.kept());
    out.number("release", c.release());
    out.number("toBring", c.toBring());
  }

  private void reserve() {
    var r = status.reserve();
    out.number("budget", r.budget());
    out.number("charged", r.charged());
    out.number("left", r.left());
    out.number("toCome", r.toCome());
    out.number("beyond", r.beyond());
    out.number("months", r.months());
  }

  private void month(Outlook.Month m) {
    out.text("month", m.span().month().toString());
    out.number("days", m.span().days());
    out.text("draws", m.span().draw().map(DrawEvent::name));
    out.number("due", m.due());
    out.number("inPlace", m.inPlace());
    out.number("part", m.earned());
    out.number("held", m.held());
    out.number("draw", m.draw());
    out.number("interest", m.interest());
    out.number("cash", m.cash());
    out.number("owed", m.owed());
    out.number("undrawn", m.undrawn());
    out.number("toPay", m.toPay());
    out.number("interestToCome", m.interestToCome());
    out.number("surplus", m.surplus());
  }

  private void earnedValue(EarnedValue v) {
    out.text("baseline", status.plannedPeriods().baseline());
    out.number("budget", v.budget());
    out.number("planned", v.planned());
    out.number("earned", v.earned());
    out.number("actual", v.actual());
    out.number("costVariance", v.costVariance());
    out.number("scheduleVariance", v.scheduleVariance());
    out.number("costIndex", v.costIndex());
    out.number("scheduleIndex", v.scheduleIndex());
    out.number("atCompletionAsSoFar", v.atCompletionAsSoFar());
    out.number("atCompletionAsBudgeted", v.atCompletionAsBudgeted());
    out.number("atCompletionByBoth", v.atCompletionByBoth());
    out.number("toGoAsSoFar", v.toGoAsSoFar());
    out.number("varianceAsSoFar", v.varianceAsSoFar());
    out.number("atCompletionByLine", status.workAtCompletion());
    out.number("toCompleteIndex", v.toCompleteIndex());
    out.number("timeGone", v.time());
    out.number("duration", v.duration());
    out.number("earnedSchedule", v.schedule());
    out.number("timeIndex", v.timeIndex());
    out.number("durationAtCompletion", v.durationAtCompletion());
    var p = status.plannedPeriods();
    out.objects(
        "periods",
        p.ends(),
        e -> {
          out.date("ends", e);
          out.number("planned", p.values().get(p.ends().indexOf(e)));
        });
  }
}
