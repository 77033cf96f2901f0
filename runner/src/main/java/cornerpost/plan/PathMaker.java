package cornerpost.plan;

import cornerpost.measure.Spoken;
import cornerpost.schedule.Link;
import cornerpost.schedule.PathBetween;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Puts the longest path between two events into steps with days and words. */
final class PathMaker {
  private final Sequence sequence;
  private final WaitWords words;
  private final Map<String, DatedTask> tasks;

  private PathMaker(Sequence sequence, WaitWords words, List<DatedTask> tasks) {
    this.sequence = sequence;
    this.words = words;
    this.tasks = tasks.stream().collect(Collectors.toMap(DatedTask::id, Function.identity()));
  }

  /**
   * @param drivingPath its ends stand in where the usual events are not in the plan
   */
  static EventPath of(
      PathChoice choice,
      Sequence sequence,
      WaitWords words,
      List<DatedTask> tasks,
      List<String> drivingPath) {
    if (!choice.missing().isEmpty()) {
      return EventPath.none(choice.from(), choice.to(), choice.missing());
    }
    if (drivingPath.isEmpty()) return EventPath.NONE;
    var from = choice.from().orElse(drivingPath.get(0));
    var to = choice.to().orElse(drivingPath.get(drivingPath.size() - 1));
    return new PathMaker(sequence, words, tasks).path(from, to);
  }

  private EventPath path(String from, String to) {
    var times = sequence.ordered();
    return times
        .longestPath(from, to)
        .map(p -> path(from, to, p))
        .orElseGet(() -> EventPath.none(Optional.of(from), Optional.of(to), apart(from, to)));
  }

  private String apart(String from, String to) {
    var said =
        "No path leads from "
            + name(from)
            + " to "
            + name(to)
            + ": neither the links nor the order of the crews make the second wait for the first.";
    return sequence.ordered().longestPath(to, from).isEmpty()
        ? said
        : said + " One leads from " + name(to) + " to " + name(from) + ".";
  }

  private EventPath path(String from, String to, PathBetween path) {
    var steps = new ArrayList<EventPath.Step>();
    DatedTask before = null;
    for (int i = 0; i < path.ids().size(); i++) {
      var t = tasks.get(path.ids().get(i));
      steps.add(
          i == 0
              ? step(t, t.start(), t.firstDay(), "the path begins here", "")
              : step(t, before.finish(), before.lastDay(), path.links().get(i - 1)));
      before = t;
    }
    var first = tasks.get(from);
    var last = tasks.get(to);
    var slack = Days.of(path.slackMinutes(), sequence.ordered().timing(to).dayMinutes());
    var calendar = sequence.network().defaultCalendar().name();
    var working = working(first.start(), last.finish());
    var alone = working(first.start(), path.end());
    int elapsed = elapsed(first.firstDay(), last.lastDay());
    return new EventPath(
        Optional.of(from),
        Optional.of(to),
        steps,
        calendar,
        working,
        alone,
        elapsed,
        slack,
        length(steps.size(), first, last, working, elapsed) + held(last, alone, slack));
  }

  private EventPath.Step step(DatedTask t, LocalDateTime after, LocalDate afterDay, Link link) {
    var timing = sequence.ordered().timing(t.id());
    boolean open = !t.done() && !t.started();
    boolean drives = timing.drivers().contains(link);
    return step(
        t,
        after,
        afterDay,
        t.done() ? "done, " + after(link) : words.of(link),
        open && !drives ? t.waitsFor() : "");
  }

  /** Of what is over nobody says that it waits. */
  private String after(Link link) {
    var before = name(link.before());
    return switch (link.relation()) {
      case FINISH_TO_START, FINISH_TO_FINISH -> "after " + before;
      case START_TO_START, START_TO_FINISH -> "after the start of " + before;
    };
  }

  private EventPath.Step step(
      DatedTask t, LocalDateTime after, LocalDate afterDay, String driver, String heldBy) {
    return new EventPath.Step(
        t.id(),
        t.task().name(),
        driver,
        t.firstDay(),
        t.lastDay(),
        t.durationDays(),
        t.task().elapsed() ? "elapsed days" : t.task().calendar(),
        working(after, t.finish()),
        elapsed(afterDay, t.lastDay()),
        heldBy);
  }

  private BigDecimal working(LocalDateTime from, LocalDateTime to) {
    var calendar = sequence.network().defaultCalendar();
    return Days.of(calendar.between(from, to), calendar.dayMinutes());
  }

  private static int elapsed(LocalDate from, LocalDate to) {
    return Math.toIntExact(ChronoUnit.DAYS.between(from, to));
  }

  private String name(String id) {
    return tasks.get(id).task().name();
  }

  private String length(
      int steps, DatedTask first, DatedTask last, BigDecimal working, int elapsed) {
    return "From "
        + first.task().name()
        + ", "
        + Spoken.day(first.firstDay())
        + ", to "
        + last.task().name()
        + ", "
        + Spoken.day(last.lastDay())
        + ": "
        + elapsed
        + (elapsed == 1 ? " elapsed day, " : " elapsed days, ")
        + Spoken.tenths(working)
        + (Spoken.tenths(working).equals("1") ? " working day" : " working days")
        + " of calendar "
        + sequence.network().defaultCalendar().name()
        + ", "
        + steps
        + (steps == 1 ? " step." : " steps.");
  }

  private static String held(DatedTask last, BigDecimal alone, BigDecimal slack) {
    var end = last.task().name();
    if (last.done()) return "";
    return slack.signum() == 0
        ? " Nothing outside the path makes " + end + " later."
        : " The path alone takes "
            + days(alone)
            + "; something outside it makes "
            + end
            + " "
            + days(slack)
            + " later.";
  }

  private static String days(BigDecimal days) {
    var shown = Spoken.tenths(days);
    return shown + (shown.equals("1") ? " day" : " days");
  }
}
