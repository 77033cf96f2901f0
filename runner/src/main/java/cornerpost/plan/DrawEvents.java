package cornerpost.plan;

import cornerpost.finance.DrawEvent;
import cornerpost.scope.DrawBasis;
import cornerpost.scope.Stage;
import cornerpost.takeoff.BuildTask;
import cornerpost.work.WorkTask;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The days on which the lender is asked for a draw, and what it wants to see. None before the loan
 * is closed.
 */
final class DrawEvents {
  private static final String PAPERS =
      "receipts, and lien releases from those paid with the draw before";
  private static final String AT_THE_END =
      "final inspection, certificate of occupancy, and lien releases from all who worked or"
          + " supplied; what was held back is paid";

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

  private record Reached(LocalDate date, String name, String needs) {}

  private List<DrawEvent> events(DrawBasis basis) {
    var reached =
        switch (basis) {
          case STAGE -> stages();
          case MONTH -> months();
          case INSPECTED -> inspections();
        };
    var events = new ArrayList<DrawEvent>();
    for (var r : reached) {
      var date = r.date().isBefore(closing) ? closing : r.date();
      if (date.isBefore(completion)) {
        events.add(new DrawEvent(date, r.name(), r.needs(), false));
      }
    }
    events.add(new DrawEvent(completion, "House complete", AT_THE_END, true));
    return events;
  }

  private List<Reached> stages() {
    var reached = new ArrayList<Reached>();
    for (var stage : Stage.values()) {
      var tasks = lines.of(stage);
      if (!tasks.isEmpty()) {
        var inspections =
            tasks.stream()
                .filter(t -> t.task().kind() == WorkTask.Kind.INSPECTION)
                .map(t -> t.task().name())
                .toList();
        reached.add(
            new Reached(
                lines.end(stage),
                "Stage " + stage.label() + " finished",
                (inspections.isEmpty() ? "" : String.join(", ", inspections) + " passed; ")
                    + "the lender's inspection of the stage; "
                    + PAPERS));
      }
    }
    reached.sort(Comparator.comparing(Reached::date));
    return reached;
  }

  private List<Reached> months() {
    var reached = new ArrayList<Reached>();
    var last = YearMonth.from(completion);
    for (var m = YearMonth.from(programme.start()); m.isBefore(last); m = m.plusMonths(1)) {
      reached.add(
          new Reached(
              m.atEndOfMonth(),
              "Month " + m + " ended",
              "the lender's inspection of the work in place; " + PAPERS));
    }
    return reached;
  }

  private List<Reached> inspections() {
    return programme.tasks().stream()
        .filter(t -> t.task().kind() == WorkTask.Kind.INSPECTION)
        .map(
            t ->
                new Reached(
                    t.lastDay(),
                    t.task().name() + " passed",
                    "the record of the inspection, with the share of the work in place; " + PAPERS))
        .sorted(Comparator.comparing(Reached::date))
        .toList();
  }
}
