package cornerpost.report;

import cornerpost.finance.Finance;
import cornerpost.measure.Spoken;
import cornerpost.plan.Plan;
import cornerpost.plan.Replanning;
import cornerpost.plan.Replanning.Move;
import cornerpost.plan.Replanning.SlipCurve;
import cornerpost.plan.Replanning.SlipPoint;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/** What steers the work once it goes on: late, other orders, days won back, the weeks to come. */
final class MovingSection {
  /** A row of words. */
  public record Row(String a, String b, String c, String d, String link) {}

  /** A crew with its weeks. */
  public record Crew(String name, List<Row> rows) {}

  private static final double WIDTH = 900;
  private static final double HEIGHT = 300;
  private static final double LEFT = 70;
  private static final double BOTTOM = 40;
  private static final double TOP = 16;
  private static final double RIGHT = 20;

  private final Plan plan;
  private final Replanning r;

  MovingSection(Plan plan) {
    this.plan = plan;
    r = plan.replanning();
  }

  void into(Map<String, Object> model) {
    model.put("late", r.slip().isPresent());
    model.put("enteredDelays", entered());
    model.put("lateWords", lateWords());
    model.put("dayCostWords", dayCostWords());
    model.put("moved", rows(r.moved()));
    model.put("slipChart", PageModel.markup(r.slip().map(MovingSection::days).orElse("")));
    model.put("slipCostChart", PageModel.markup(r.slip().map(this::costs).orElse("")));
    model.put("slipRows", r.slip().map(this::slipRows).orElse(List.of()));
    model.put("kinks", r.slip().map(MovingSection::kinks).orElse(List.of()));
    model.put("newWay", way());
    var q = r.resequencing();
    model.put("pull", q.map(x -> rows(x.pull())).orElse(List.of()));
    model.put("idle", q.map(MovingSection::idle).orElse(List.of()));
    model.put("soonest", q.map(x -> rows(x.soonest().moves())).orElse(List.of()));
    model.put("soonestWords", q.map(this::soonest).orElse(""));
    model.put("soonestAsMoved", q.map(x -> asMoved(x.soonest())).orElse(false));
    model.put("fewestAsMoved", q.map(x -> asMoved(x.fewest())).orElse(false));
    model.put("fewestAsSoonest", q.map(MovingSection::oneAnswer).orElse(false));
    model.put("fewest", q.map(x -> rows(x.fewest().moves())).orElse(List.of()));
    model.put("fewestWords", q.map(this::fewest).orElse(""));
    model.put("recoveryWords", r.recovery().map(this::recovery).orElse(""));
    model.put("recovery", r.recovery().map(MovingSection::steps).orElse(List.of()));
    model.put("baselineWords", r.baseline().map(this::baseline).orElse(""));
    model.put("baselineRows", r.baseline().map(this::stages).orElse(List.of()));
    model.put("ahead", r.ahead().map(this::crews).orElse(List.of()));
    model.put(
        "aheadWords",
        r.ahead().map(a -> Words.day(a.from()) + " to " + Words.day(a.to())).orElse(""));
  }

  private static String days(int n) {
    return Words.days(BigDecimal.valueOf(n));
  }

  private String money(BigDecimal amount) {
    return Words.money(amount, plan.estimate().currency());
  }

  private List<String> entered() {
    return plan.finance().delays().stream()
        .filter(d -> d.asked() == Finance.Asked.ENTERED)
        .map(
            d ->
                d.eventName()
                    + ", "
                    + days(d.days())
                    + " late: "
                    + MoneySection.why(d)
                    + ". Move-in "
                    + (d.moveInDays() == 0
                        ? "stays on " + Words.day(d.moveIn()) + "."
                        : "comes "
                            + days(d.moveInDays())
                            + " later, on "
                            + Words.day(d.moveIn())
                            + ", for "
                            + money(d.cost())
                            + "."))
        .toList();
  }

  private String lateWords() {
    return r.slip()
        .map(
            s ->
                s.lastDay()
                    .map(
                        d ->
                            s.eventName()
                                + " was due on "
                                + Words.day(s.planned())
                                + " and may come up to "
                                + Words.day(d)
                                + " without moving move-in.")
                    .orElse(s.eventName() + ": no slip of two months moves move-in."))
        .orElse("");
  }

  private String dayCostWords() {
    var d = r.dayCost();
    return "A day of delay costs "
        + money(d.aDay())
        + ": "
        + money(d.hire())
        + " for hire, insurance and rent, "
        + money(d.interest())
        + " interest."
        + (d.crane().signum() > 0
            ? " Booking the crane again costs " + money(d.crane()) + ", once."
            : "")
        + " This stands beside the total, which pays for the time allowed.";
  }

  private List<Row> rows(List<Move> moves) {
    return moves.stream()
        .map(
            m ->
                new Row(
                    m.name(),
                    m.crews(),
                    "from " + Words.day(m.from()) + " to " + Words.day(m.to()),
                    m.days() > 0 ? days(m.days()) + " later" : days(-m.days()) + " sooner",
                    "#" + Anchors.task(m.id())))
        .toList();
  }

  private List<Row> slipRows(SlipCurve s) {
    var rows = new ArrayList<Row>();
    for (var p : s.points()) {
      boolean bends = s.kinks().stream().anyMatch(k -> k.days() == p.days());
      if (p.days() % 7 != 0 && !bends && p.days() != s.points().size() - 1) continue;
      rows.add(
          new Row(
              days(p.days()),
              Words.day(p.moveIn()),
              days(p.moveInDays()),
              Words.number(p.cost(), 0),
              ""));
    }
    return rows;
  }

  private static List<String> kinks(SlipCurve s) {
    return s.kinks().stream().map(k -> days(k.days()) + ": " + k.words()).toList();
  }

  /** What has come onto the way from delivery to move-in, and what has left it. */
  private String way() {
    if (r.wayBefore().isEmpty()) return "";
    var now = plan.programme().deliveryToMoveIn();
    var came = named(now, r.wayBefore());
    var left = named(r.wayBefore(), now);
    if (came.isEmpty() && left.isEmpty()) return "The same steps as before the delays.";
    return (came.isEmpty() ? "" : "New on it: " + Spoken.list(came) + ". ")
        + (left.isEmpty() ? "" : "No longer on it: " + Spoken.list(left) + ".");
  }

  private List<String> named(List<String> ids, List<String> but) {
    return ids.stream()
        .filter(id -> !but.contains(id))
        .map(id -> plan.work().task(id).map(t -> t.name()).orElse(id))
        .toList();
  }

  private boolean asMoved(Replanning.Choice c) {
    return days(c.moves()).equals(days(r.moved()));
  }

  private static Map<String, LocalDate> days(List<Move> moves) {
    return moves.stream().collect(Collectors.toMap(Move::id, Move::to));
  }

  private static boolean oneAnswer(Replanning.Resequencing q) {
    return days(q.fewest().moves()).equals(days(q.soonest().moves()));
  }

  private String soonest(Replanning.Resequencing q) {
    return choice(q.soonest(), q) + (asMoved(q.soonest()) ? " The moves are those above." : "");
  }

  private String fewest(Replanning.Resequencing q) {
    var above = asMoved(q.fewest()) || oneAnswer(q);
    return choice(q.fewest(), q) + (above ? " The moves are those above." : "");
  }

  private static List<Row> idle(Replanning.Resequencing q) {
    return q.idle().stream()
        .map(
            i ->
                new Row(
                    i.crew(),
                    Words.day(i.from()) + " to " + Words.day(i.to()),
                    days(i.workingDays()),
                    i.was(),
                    ""))
        .toList();
  }

  private static String choice(Replanning.Choice c, Replanning.Resequencing q) {
    return "Move-in on "
        + Words.day(c.moveIn())
        + (c.moveIn().equals(q.present())
            ? ", as in the present order"
            : ", in the present order on " + Words.day(q.present()))
        + "; "
        + c.changes()
        + "; "
        + c.proof()
        + ".";
  }

  private String recovery(Replanning.Recovery x) {
    return "Wanted: "
        + Words.day(x.wanted())
        + "; planned: "
        + Words.day(x.from())
        + ". "
        + (x.steps().isEmpty()
            ? "No measure wins a day."
            : (x.reached() ? "It can be won back for " : "Not all can be won back; what can costs ")
                + money(x.cost())
                + ". Each measure shortens its task, or overlaps it, by half a working day at a time.");
  }

  private static List<Row> steps(Replanning.Recovery x) {
    return x.steps().stream()
        .map(
            s ->
                new Row(
                    Words.day(s.moveIn()),
                    Integer.toString(s.days()),
                    Words.number(s.cost(), 0),
                    String.join("; ", s.measures()),
                    Words.number(s.total(), 0)))
        .toList();
  }

  private String baseline(Replanning.Against a) {
    var total = a.total().map(t -> t.money()).orElse(BigDecimal.ZERO);
    return "Against “"
        + a.name()
        + "”, kept on "
        + Words.day(a.keptOn())
        + ": move-in "
        + (a.moveInDays() == 0
            ? "on the same day"
            : a.moveInDays() > 0
                ? days(a.moveInDays()) + " later"
                : days(-a.moveInDays()) + " sooner")
        + ", "
        + (total.signum() == 0
            ? "the same money"
            : money(total.abs()) + (total.signum() > 0 ? " more" : " less"))
        + "."
        + (a.names().size() > 1 ? " Kept so far: " + String.join(", ", a.names()) + "." : "");
  }

  private List<Row> stages(Replanning.Against a) {
    return a.rows().stream()
        .filter(x -> x.id().startsWith(cornerpost.scope.BaselineRow.STAGE))
        .map(
            x ->
                new Row(
                    x.name(),
                    x.now().flatMap(b -> b.finish()).map(Words::day).orElse("no longer there"),
                    x.then().isEmpty() ? "new" : Integer.toString(x.days()),
                    Words.number(x.money(), 0),
                    ""))
        .toList();
  }

  private List<Crew> crews(Replanning.LookAhead a) {
    return a.crews().stream()
        .map(
            c ->
                new Crew(
                    c.crew(),
                    c.items().stream()
                        .map(
                            i ->
                                new Row(
                                    i.name(),
                                    i.start().equals(i.finish())
                                        ? Words.day(i.start())
                                        : Words.day(i.start()) + " to " + Words.day(i.finish()),
                                    i.state()
                                        + (i.drives() ? ", drives move-in" : "")
                                        + i.booked().map(b -> ", booked").orElse(""),
                                    String.join("; ", i.ready()),
                                    "#" + Anchors.task(i.id())))
                        .toList()))
        .toList();
  }

  private static String days(SlipCurve s) {
    return chart(
        s,
        "slip",
        "Move-in against days by which " + s.eventName() + " comes later",
        "days move-in is later",
        SlipPoint::moveInDays);
  }

  private String costs(SlipCurve s) {
    var currency = plan.estimate().currency().getCurrencyCode();
    return chart(
        s,
        "slip-cost",
        "Cost against days by which " + s.eventName() + " comes later",
        currency + " the delay costs",
        p -> p.cost().doubleValue());
  }

  /** A number against days of slip, in steps; marks where the curve bends. */
  private static String chart(
      SlipCurve s, String id, String title, String upwards, ToDoubleFunction<SlipPoint> number) {
    int last = s.points().size() - 1;
    double most = Math.max(1, s.points().stream().mapToDouble(number).max().orElse(1));
    double step = Math.max(1, MoneyCharts.step(most));
    double top = Math.ceil(most / step) * step;
    double bottom = HEIGHT - BOTTOM;
    var svg =
        Svg.picture(
            id,
            "0 0 " + Svg.number(WIDTH) + " " + Svg.number(HEIGHT),
            "chart",
            "--chart-width:" + Svg.number(WIDTH) + "px",
            title,
            "Upwards: " + upwards + "; the same numbers stand in the table below.");
    for (double v = 0; v <= top + step / 2; v += step) {
      double y = bottom - v / top * (bottom - TOP);
      svg.line("grid", LEFT, y, WIDTH - RIGHT, y);
      svg.label("axis", LEFT - 8, y + 4, "end", Words.number(BigDecimal.valueOf(v), 0));
    }
    var path = new StringBuilder();
    for (var p : s.points()) {
      double x = LEFT + (WIDTH - LEFT - RIGHT) * p.days() / last;
      double y = bottom - number.applyAsDouble(p) / top * (bottom - TOP);
      path.append(p.days() == 0 ? "M" : " L")
          .append(Svg.number(x))
          .append(' ')
          .append(Svg.number(y));
      if (p.days() % 10 == 0) {
        svg.label("axis", x, bottom + 18, "middle", Integer.toString(p.days()));
      }
    }
    svg.add("path", "class", "spread", "d", path);
    for (var k : s.kinks()) {
      double x = LEFT + (WIDTH - LEFT - RIGHT) * k.days() / last;
      svg.line("plan-line", x, bottom - 8, x, bottom + 4);
    }
    svg.line("axis-line", LEFT, bottom, WIDTH - RIGHT, bottom);
    svg.label("axis", WIDTH / 2, HEIGHT - 4, "middle", "days late; upwards: " + upwards);
    return svg.done();
  }
}
