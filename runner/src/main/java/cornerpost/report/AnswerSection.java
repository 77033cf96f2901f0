package cornerpost.report;

import cornerpost.measure.Spoken;
import cornerpost.plan.AtAGlance;
import cornerpost.plan.DatedTask;
import cornerpost.plan.Plan;
import cornerpost.scope.Foundation;
import cornerpost.scope.RoomUse;
import cornerpost.scope.SiteQuestions;
import cornerpost.work.WorkTask;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The top of the page: the sentence, the figures, what to do next, what is wrong. */
final class AnswerSection {
  private static final int MOST_WRONG = 8;
  private static final int MOST_DATES = 10;

  /** A figure in the row under the sentence. */
  public record Tile(String label, String value, String note) {}

  /** Something to do, or something wrong; the link may be empty. */
  public record Point(String sign, String text, String link) {}

  /** A day that the plan hangs on; {@code state} says whether it drives move-in or is behind. */
  public record KeyDate(String name, String day, String state) {}

  private final Plan plan;

  AnswerSection(Plan plan) {
    this.plan = plan;
  }

  void into(Map<String, Object> model) {
    model.put("sentence", sentence());
    model.put("tiles", tiles());
    model.put("keyDates", keyDates());
    model.put("next", points(AtAGlance.next(plan)));
    var wrong = points(AtAGlance.wrong(plan));
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

  /** {@code a home (one living room and two bedrooms) made from one 40 ft high cube on piers}. */
  private String what() {
    var scope = plan.scope();
    if (scope.boxes().isEmpty()) {
      int tasks = plan.programme().tasks().size();
      return "this plan of " + tasks + (tasks == 1 ? " task" : " tasks");
    }
    var uses = new EnumMap<RoomUse, Integer>(RoomUse.class);
    scope.rooms().forEach(r -> uses.merge(r.use(), 1, Integer::sum));
    var rooms = uses.entrySet().stream().map(e -> rooms(e.getKey(), e.getValue())).toList();
    var boxes = new LinkedHashMap<String, Integer>();
    scope.boxes().forEach(b -> boxes.merge(b.size().label(), 1, Integer::sum));
    var words = new StringBuilder("a home");
    if (!rooms.isEmpty()) words.append(" (").append(Spoken.list(rooms)).append(")");
    words.append(" made from ").append(Spoken.list(counted(boxes)));
    words.append(scope.boxes().size() == 1 ? " container" : " containers");
    if (scope.site().has(SiteQuestions.FOUNDATION)) {
      words
          .append(" on ")
          .append(scope.site().option(SiteQuestions.FOUNDATION, Foundation.class).label());
    }
    return words.toString();
  }

  private static String rooms(RoomUse use, int count) {
    var one =
        switch (use) {
          case LIVING -> "living room";
          case LIVING_KITCHEN -> "living room with kitchen";
          case KITCHEN -> "kitchen";
          case BEDROOM -> "bedroom";
          case LIVING_SLEEPING -> "room for living, cooking and sleeping";
          case BATHROOM -> "bathroom";
          case HALL -> "hall";
          case UTILITY -> "utility room";
          case STORE -> "store room";
        };
    var many = one.contains("room ") ? one.replace("room ", "rooms ") : one + "s";
    return number(count) + " " + (count == 1 ? one : many);
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
                                        ? "may slip " + days(f) + " with the crews in this order"
                                        : "in this order any slip moves move-in")
                            .orElse(""))));
    var b = plan.finance().balance();
    if (b.loan().signum() > 0 || b.cash().signum() > 0) {
      boolean short_ = b.surplus().signum() < 0;
      tiles.add(
          new Tile(
              short_ ? "Money short" : "Money to spare",
              money(b.surplus().abs()),
              money(b.costToComplete()) + " still to pay, and interest"));
    }
    return tiles;
  }

  /** The milestones of the plan in order of days. */
  private List<KeyDate> keyDates() {
    return plan.programme().tasks().stream()
        .filter(t -> t.task().kind() == WorkTask.Kind.MILESTONE)
        .sorted(Comparator.comparing(DatedTask::lastDay).thenComparing(t -> t.task().name()))
        .limit(MOST_DATES)
        .map(t -> new KeyDate(t.task().name(), Words.day(t.lastDay()), state(t)))
        .toList();
  }

  private static String state(DatedTask t) {
    if (t.done()) return "done";
    return t.drivesMoveIn() ? "drives the date" : "";
  }

  private static String days(int n) {
    return Words.days(BigDecimal.valueOf(n));
  }

  // ---- what to do, what is wrong -----------------------------------------------------------

  private List<Point> points(List<AtAGlance.Point> points) {
    return points.stream().map(p -> new Point(p.sign(), p.text(), link(p))).toList();
  }

  private static String link(AtAGlance.Point p) {
    return switch (p.about()) {
      case ORDERS -> "#orders";
      case TASK -> "#" + Anchors.task(p.id());
      case CHECK -> "#" + Anchors.of("check", p.id());
      case MONEY -> "#lender";
      case MONTHS -> "#months";
      case MONTHS_TO_COME -> "#lender-months";
      case NETWORK -> "#findings";
      case INPUT -> "";
    };
  }

  static String span(DatedTask t) {
    return t.firstDay().equals(t.lastDay())
        ? Words.day(t.firstDay())
        : Words.day(t.firstDay()) + " to " + Words.day(t.lastDay());
  }
}
