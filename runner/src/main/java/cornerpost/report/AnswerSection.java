package cornerpost.report;

import cornerpost.check.Check;
import cornerpost.plan.DatedTask;
import cornerpost.plan.OrderRow;
import cornerpost.plan.Plan;
import cornerpost.scope.Foundation;
import cornerpost.scope.SiteQuestions;
import cornerpost.work.WorkTask;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The top of the page: the sentence, the figures, what to do next, what is wrong. */
final class AnswerSection {
  private static final int MOST_WRONG = 8;

  /** Longer ones are cut; they stand whole where the link leads. */
  private static final int MOST_LETTERS = 150;

  /** A figure in the row under the sentence. */
  public record Tile(String label, String value, String note) {}

  /** Something to do, or something wrong; the link may be empty. */
  public record Point(String sign, String text, String link) {}

  private final Plan plan;

  AnswerSection(Plan plan) {
    this.plan = plan;
  }

  void into(Map<String, Object> model) {
    model.put("sentence", sentence());
    model.put("tiles", tiles());
    model.put("next", next());
    var wrong = wrong();
    model.put("wrong", wrong.subList(0, Math.min(MOST_WRONG, wrong.size())));
    model.put("wrongMore", Math.max(0, wrong.size() - MOST_WRONG));
  }

  private boolean priced() {
    return plan.estimate().total().signum() > 0;
  }

  private String money(BigDecimal amount) {
    return Words.money(amount, plan.estimate().currency());
  }

  private String sentence() {
    var p = plan.programme();
    var s = new StringBuilder(what());
    if (p.tasks().isEmpty()) {
      if (priced()) s.append(" costs ").append(money(plan.estimate().total())).append(" all in");
      return Words.sentence(s.append(".").toString());
    }
    var moves = p.task("move-in").isPresent();
    s.append(moves ? " can be moved into on " : " is finished on ");
    s.append(Words.day(p.moveIn()));
    if (priced()) {
      s.append(" and costs ").append(money(plan.estimate().total())).append(" all in");
    }
    s.append(". ");
    if (priced()) {
      s.append("Both hold in ")
          .append(Words.percent(plan.risk().bothWithinPlan()))
          .append(" of the trials; with four chances in five it is ready by ")
          .append(Words.day(RiskWords.finish(plan, 0.8)))
          .append(" and, contingency left out, costs no more than ")
          .append(money(BigDecimal.valueOf(plan.risk().cost().quantile(0.8))))
          .append('.');
    } else {
      s.append("That day holds in ")
          .append(Words.percent(RiskWords.finishWithinPlan(plan)))
          .append(" of the trials; with four chances in five the work is done by ")
          .append(Words.day(RiskWords.finish(plan, 0.8)))
          .append('.');
    }
    return Words.sentence(s.toString());
  }

  /** {@code a home with a living room and a bedroom, made from one 40 ft high cube, on piers}. */
  private String what() {
    var scope = plan.scope();
    if (scope.boxes().isEmpty()) {
      int tasks = plan.programme().tasks().size();
      return "this plan of " + tasks + (tasks == 1 ? " task" : " tasks");
    }
    var rooms = scope.rooms().stream().map(r -> r.use().label()).distinct().toList();
    var boxes = new LinkedHashMap<String, Integer>();
    scope.boxes().forEach(b -> boxes.merge(b.size().label(), 1, Integer::sum));
    var words = new StringBuilder("a home");
    if (!rooms.isEmpty()) words.append(" (").append(list(rooms)).append(")");
    words.append(" made from ").append(list(counted(boxes)));
    words.append(scope.boxes().size() == 1 ? " container" : " containers");
    if (scope.site().has(SiteQuestions.FOUNDATION)) {
      words
          .append(" on ")
          .append(scope.site().option(SiteQuestions.FOUNDATION, Foundation.class).label());
    }
    return words.toString();
  }

  private static List<String> counted(Map<String, Integer> counts) {
    var words = new ArrayList<String>();
    counts.forEach((what, n) -> words.add(number(n) + " " + what));
    return words;
  }

  private static String number(int n) {
    var small = List.of("no", "one", "two", "three", "four", "five", "six");
    return n < small.size() ? small.get(n) : Integer.toString(n);
  }

  static String list(List<String> words) {
    if (words.size() < 2) return String.join("", words);
    int last = words.size() - 1;
    return String.join(", ", words.subList(0, last)) + " and " + words.get(last);
  }

  private List<Tile> tiles() {
    var tiles = new ArrayList<Tile>();
    var p = plan.programme();
    if (!p.tasks().isEmpty()) {
      boolean moves = p.task("move-in").isPresent();
      tiles.add(
          new Tile(
              moves ? "Move-in" : "Finish",
              Words.day(p.moveIn()),
              Words.number(p.durationDays(), 0) + " working days from " + Words.day(p.start())));
    }
    if (priced()) {
      tiles.add(
          new Tile(
              "Total cost",
              money(plan.estimate().total()),
              money(plan.estimate().contingency()) + " of it contingency"));
    }
    p.delivery()
        .ifPresent(
            d ->
                tiles.add(
                    new Tile(
                        "Delivery",
                        Words.day(d),
                        p.deliveryFloatDays()
                            .map(
                                f ->
                                    f > 0
                                        ? "may slip " + days(f) + " before move-in moves"
                                        : "any slip moves move-in")
                            .orElse(""))));
    var b = plan.finance().balance();
    if (b.loan().signum() > 0 || b.cash().signum() > 0) {
      boolean short_ = b.surplus().signum() < 0;
      tiles.add(
          new Tile(
              short_ ? "Money short" : "Money to spare",
              money(b.surplus().abs()),
              money(b.costToComplete()) + " still to pay"));
    }
    return tiles;
  }

  private static String days(int n) {
    return Words.days(BigDecimal.valueOf(n));
  }

  // ---- what to do --------------------------------------------------------------------------

  private List<Point> next() {
    var points = new ArrayList<Point>();
    var late = plan.orders().stream().filter(OrderRow::late).toList();
    if (!late.isEmpty()) {
      points.add(new Point("order", "Order now, already late: " + some(late) + ".", "#orders"));
    }
    plan.programme().tasks().stream()
        .filter(t -> !t.done() && t.drivesMoveIn())
        .filter(t -> t.task().kind() != WorkTask.Kind.MILESTONE)
        .min(Comparator.comparing(DatedTask::start))
        .ifPresent(
            t ->
                points.add(
                    new Point(
                        "work",
                        verb(t) + t.task().name() + ", " + span(t) + ". It drives the date.",
                        "#" + Anchors.task(t.id()))));
    var orders =
        plan.orders().stream()
            .filter(o -> !o.late() && !o.orderBy().isBefore(plan.statusDate()))
            .sorted(Comparator.comparing(OrderRow::orderBy).thenComparing(OrderRow::item))
            .toList();
    if (!orders.isEmpty()) {
      var day = orders.get(0).orderBy();
      var same = orders.stream().filter(o -> o.orderBy().equals(day)).toList();
      points.add(
          new Point("order", "Order by " + Words.day(day) + ": " + some(same) + ".", "#orders"));
    }
    for (var t : plan.programme().tasks()) {
      if (points.size() >= 3) break;
      var link = "#" + Anchors.task(t.id());
      boolean told = points.stream().anyMatch(q -> q.link().equals(link));
      if (!t.done() && !told && t.task().kind() != WorkTask.Kind.MILESTONE) {
        points.add(new Point("work", t.task().name() + ", " + span(t) + ".", link));
      }
    }
    return points.subList(0, Math.min(3, points.size()));
  }

  private static String verb(DatedTask t) {
    if (t.task().kind() == WorkTask.Kind.INSPECTION) return "Book: ";
    boolean done = t.task().kind() == WorkTask.Kind.WORK || t.task().kind() == WorkTask.Kind.OWN;
    if (!done) return "";
    return t.started() ? "Finish: " : "Start: ";
  }

  static String span(DatedTask t) {
    return t.firstDay().equals(t.lastDay())
        ? Words.day(t.firstDay())
        : Words.day(t.firstDay()) + " to " + Words.day(t.lastDay());
  }

  private static String some(List<OrderRow> rows) {
    var names = rows.stream().map(OrderRow::description).distinct().toList();
    if (names.size() <= 3) return list(names);
    return String.join(", ", names.subList(0, 2)) + " and " + (names.size() - 2) + " more";
  }

  // ---- what is wrong -----------------------------------------------------------------------

  private List<Point> wrong() {
    var points = new ArrayList<Point>();
    checks(Check.Severity.STOP, points);
    if (plan.finance().balance().surplus().signum() < 0 && hasMoney()) {
      points.add(
          new Point(
              "money",
              "The money does not finish the house: "
                  + money(plan.finance().balance().surplus().abs())
                  + " is missing.",
              "#lender"));
    }
    for (var t : plan.programme().tasks()) {
      if (!t.done() && t.totalFloatDays().signum() < 0) {
        points.add(
            new Point(
                "time",
                t.task().name()
                    + " misses its deadline by "
                    + Words.days(t.totalFloatDays().abs())
                    + ".",
                "#" + Anchors.task(t.id())));
      }
    }
    long late = plan.orders().stream().filter(OrderRow::late).count();
    if (late > 0) {
      points.add(
          new Point(
              "time", late == 1 ? "One order is late." : late + " orders are late.", "#orders"));
    }
    checks(Check.Severity.PROFESSIONAL, points);
    for (var q : plan.problems()) points.add(new Point("input", q.message() + ".", ""));
    for (var f : plan.programme().findings()) {
      if (!f.passed())
        points.add(new Point("time", Words.cut(f.message(), MOST_LETTERS), "#findings"));
    }
    return points;
  }

  private boolean hasMoney() {
    var b = plan.finance().balance();
    return b.loan().signum() > 0 || b.cash().signum() > 0;
  }

  private void checks(Check.Severity severity, List<Point> points) {
    for (var c : plan.checks()) {
      if (c.severity() == severity) {
        points.add(
            new Point(
                severity.label(),
                Words.cut(c.message(), MOST_LETTERS),
                "#" + Anchors.of("check", c.id())));
      }
    }
  }
}
