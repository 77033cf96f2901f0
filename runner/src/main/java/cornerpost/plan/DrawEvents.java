package cornerpost.plan;

import cornerpost.finance.DrawEvent;
import cornerpost.measure.Spoken;
import cornerpost.scope.DrawBasis;
import cornerpost.scope.Stage;
import cornerpost.takeoff.BuildTask;
import cornerpost.work.WorkTask;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * The days on which the lender is asked for a draw, and the inspections that it wants to see
 * passed. None before the loan is closed.
 */
final class DrawEvents {
  /** What the last draw is for. */
  static final String COMPLETE = "House complete";

  private final LineTasks lines;
  private final Programme programme;
  private final LocalDate completion;
  private final LocalDate closing;

  private DrawEvents(LineTasks lines, LocalDate completion) {
    this.lines = lines;
    programme = lines.programme();
    this.completion = completion;
    closing =
        programme
            .task(BuildTask.LOAN_CLOSING.id())
            .map(DatedTask::lastDay)
            .orElse(programme.start());
  }

  /**
   * In order of date, the last at completion.
   *
   * @param completion when the house is complete and everything paid
   */
  static List<DrawEvent> of(LineTasks lines, DrawBasis basis, LocalDate completion) {
    return new DrawEvents(lines, completion).events(basis);
  }

  private record Reached(LocalDate date, String name) {}

  private List<DrawEvent> events(DrawBasis basis) {
    var reached =
        switch (basis) {
          case STAGE -> stages();
          case MONTH -> months();
          case INSPECTED -> inspections();
        };
    var events = new ArrayList<DrawEvent>();
    var before = LocalDate.MIN;
    for (var r : reached) {
      var date = r.date().isBefore(closing) ? closing : r.date();
      if (date.isBefore(completion)) {
        events.add(new DrawEvent(date, r.name(), passed(before, date), false));
        before = date;
      }
    }
    events.add(new DrawEvent(completion, COMPLETE, passed(before, completion), true));
    return events;
  }

  /** The inspections passed after one day and up to another. */
  private List<String> passed(LocalDate after, LocalDate until) {
    return programme.tasks().stream()
        .filter(t -> t.task().kind() == WorkTask.Kind.INSPECTION)
        .filter(t -> t.lastDay().isAfter(after) && !t.lastDay().isAfter(until))
        .sorted(Comparator.comparing(DatedTask::lastDay))
        .map(t -> t.task().name())
        .toList();
  }

  private List<Reached> stages() {
    return Arrays.stream(Stage.values())
        .filter(s -> !lines.of(s).isEmpty())
        .map(s -> new Reached(lines.end(s), "Stage " + s.label() + " finished"))
        .sorted(Comparator.comparing(Reached::date))
        .toList();
  }

  private List<Reached> months() {
    var reached = new ArrayList<Reached>();
    var last = YearMonth.from(completion);
    for (var m = YearMonth.from(programme.start()); m.isBefore(last); m = m.plusMonths(1)) {
      reached.add(new Reached(m.atEndOfMonth(), Spoken.month(m) + " ended"));
    }
    return reached;
  }

  private List<Reached> inspections() {
    return programme.tasks().stream()
        .filter(t -> t.task().kind() == WorkTask.Kind.INSPECTION)
        .map(t -> new Reached(t.lastDay(), t.task().name() + " passed"))
        .sorted(Comparator.comparing(Reached::date))
        .toList();
  }
}
