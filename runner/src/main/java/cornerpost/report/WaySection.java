package cornerpost.report;

import cornerpost.plan.DatedTask;
import cornerpost.plan.EventPath;
import cornerpost.plan.Plan;
import cornerpost.plan.Slippage;
import cornerpost.scope.Stage;
import cornerpost.work.WorkTask;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;

/** The driving path as steps, the bars by stage, and every task with its dates. */
final class WaySection {
  /** A step of the way. */
  public record Step(
      String name,
      String link,
      String dates,
      String lasts,
      String slack,
      String who,
      String sign) {}

  /** A row of the table of all tasks. */
  public record TaskRow(
      String anchor,
      String id,
      String name,
      String start,
      String finish,
      String lasts,
      String total,
      String free,
      String late,
      String state,
      boolean drives,
      String who,
      String waitsFor,
      String why) {}

  /** The tasks of a stage. */
  public record StageRows(String stage, List<TaskRow> rows) {}

  /** A way next in length: days to spare, and the steps that no longer way has. */
  public record NextWay(String spare, List<Step> steps) {}

  /** A row of the path that was asked for. */
  public record PathStep(
      String name,
      String link,
      String driver,
      String heldBy,
      String dates,
      String lasts,
      String working,
      String elapsed) {}

  /** A band of the bar chart. */
  public record Bars(String title, Object svg) {}

  private static final int A_WEEK = 5; // working days

  private final Plan plan;

  WaySection(Plan plan) {
    this.plan = plan;
  }

  void into(Map<String, Object> model) {
    var p = plan.programme();
    var driving = p.drivingPath();
    int delivery = driving.indexOf("delivery");
    boolean split = delivery > 0;
    model.put("drivingSteps", steps(split ? driving.subList(0, delivery) : driving));
    model.put("drivesFromDelivery", split);
    model.put(
        "deliverySteps",
        split
            ? steps(driving.subList(delivery, driving.size()))
            : delivery == 0 ? List.of() : steps(p.deliveryToMoveIn()));
    model.put("deliveryFrom", split ? Integer.toString(delivery + 1) : "1");
    model.put("deliverySentence", deliverySentence());
    model.put("crewSentence", crewSentence());
    model.put("nextWays", nextWays());
    boolean above = p.path().ids().equals(p.deliveryToMoveIn()) && !p.path().steps().isEmpty();
    model.put(
        "pathWords",
        p.path().words() + (above ? " Its steps stand above, from delivery to the keys." : ""));
    model.put("pathEnds", ends(p.path()));
    model.put("pathSteps", above ? List.of() : pathSteps(p.path()));
    model.put("pathWorking", Words.tenths(p.path().workingDays()));
    model.put("pathElapsed", Integer.toString(p.path().elapsedDays()));
    var bars = new BarChart(plan).bands();
    model.put(
        "bars", bars.stream().map(b -> new Bars(b.title(), PageModel.markup(b.svg()))).toList());
    model.put("stages", stages());
    model.put("findings", p.findings());
  }

  private List<Step> steps(List<String> ids) {
    var steps = new ArrayList<Step>();
    for (var id : ids) {
      plan.programme()
          .task(id)
          .ifPresent(
              t ->
                  steps.add(
                      new Step(
                          t.task().name(),
                          "#" + Anchors.task(id),
                          AnswerSection.span(t),
                          lasts(t),
                          slack(t),
                          who(t),
                          sign(t))));
    }
    return steps;
  }

  private String deliverySentence() {
    var p = plan.programme();
    if (p.delivery().isEmpty()) return "";
    var day = Words.day(p.delivery().get());
    return p.deliveryFloatDays()
        .map(
            f ->
                f > 0
                    ? "The boxes come on "
                        + day
                        + ". They may come "
                        + Words.days(java.math.BigDecimal.valueOf(f))
                        + " later, with the crews in this order, before move-in moves."
                    : "The boxes come on "
                        + day
                        + ". With the crews in this order, every day they come later moves move-in.")
        .orElse("The boxes come on " + day + ".");
  }

  private String crewSentence() {
    var p = plan.programme();
    if (!p.crewLimited()) {
      return "No crew is asked for more people than it has: the network alone sets the dates.";
    }
    String s =
        "Crews set some of the dates: the plan takes "
            + Words.number(p.durationDays(), 0)
            + " working days, and no order of work can take fewer than "
            + Words.number(p.lowerBoundDays(), 0)
            + ".";
    s +=
        " Float is that of the links alone: a step may have some and still drive the date, because"
            + " its crew is needed next.";
    return p.proved() ? s + " The plan is known to be the shortest." : s;
  }

  private List<StageRows> stages() {
    var all = new ArrayList<StageRows>();
    for (var s : Stage.values()) {
      var rows =
          plan.programme().tasks().stream()
              .filter(t -> t.task().stage() == s)
              .map(this::row)
              .toList();
      if (!rows.isEmpty()) all.add(new StageRows(s.label(), rows));
    }
    return all;
  }

  private TaskRow row(DatedTask t) {
    return new TaskRow(
        Anchors.task(t.id()),
        t.id(),
        t.task().name(),
        Words.day(t.firstDay()),
        Words.day(t.lastDay()),
        lasts(t),
        t.done() ? "" : Words.tenths(t.totalFloatDays()),
        t.done() ? "" : Words.tenths(t.freeFloatDays()),
        late(t),
        t.done() ? "done" : t.started() ? "under way" : "",
        t.drivesMoveIn(),
        who(t),
        t.waitsFor(),
        t.task().why());
  }

  /** By how many days move-in comes later if the task starts a working week late. */
  private String late(DatedTask t) {
    var slip = plan.programme().slippage().tasks().get(t.id());
    return slip == null ? "" : slip.finishMoves().get(Slippage.DELAYS.indexOf(A_WEEK)).toString();
  }

  /**
   * The ways from delivery to move-in that are next in length, each by what only it goes through.
   */
  private List<NextWay> nextWays() {
    var ways = plan.programme().slippage().nearPaths();
    var told = new HashSet<String>();
    var next = new ArrayList<NextWay>();
    for (var way : ways) {
      var own = way.ids().stream().filter(told::add).toList();
      if (way == ways.get(0)) continue;
      next.add(new NextWay(Words.days(way.floatDays()), steps(own)));
    }
    return next;
  }

  private String ends(EventPath path) {
    if (path.from().isEmpty() || path.to().isEmpty()) return "";
    return " from " + name(path.from().get()) + " to " + name(path.to().get());
  }

  private String name(String id) {
    return plan.programme().task(id).map(t -> t.task().name()).orElse(id);
  }

  private List<PathStep> pathSteps(EventPath path) {
    var rows = new ArrayList<PathStep>();
    for (var s : path.steps()) {
      plan.programme()
          .task(s.id())
          .ifPresent(
              t ->
                  rows.add(
                      new PathStep(
                          s.name(),
                          "#" + Anchors.task(s.id()),
                          s.driver(),
                          s.heldBy(),
                          AnswerSection.span(t),
                          lasts(t),
                          Words.tenths(s.workingDays()),
                          Integer.toString(s.elapsedDays()))));
    }
    return rows;
  }

  /** What drives the date has none to give, whatever float the links alone leave it. */
  private static String slack(DatedTask t) {
    if (t.done()) return "done";
    if (t.drivesMoveIn() && t.totalFloatDays().signum() > 0) return "drives";
    return t.totalFloatDays().signum() == 0
        ? "no float"
        : "float " + Words.days(t.totalFloatDays());
  }

  private static String lasts(DatedTask t) {
    if (t.task().kind() == WorkTask.Kind.MILESTONE) return "";
    var days = Words.days(t.durationDays());
    return t.task().elapsed() ? days + " elapsed" : days;
  }

  private static String who(DatedTask t) {
    var trade = t.task().trade().map(x -> x.label()).orElse("");
    var party = t.task().party().map(x -> x.label()).orElse("");
    return trade.isEmpty() || party.isEmpty() ? trade + party : trade + ", " + party;
  }

  private static String sign(DatedTask t) {
    return switch (t.task().kind()) {
      case INSPECTION -> "hold point";
      case WAIT -> "wait";
      case ORDER -> "order";
      case MILESTONE -> "milestone";
      case WORK, OWN -> "";
    };
  }
}
