package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.PROGRESS;

import cornerpost.measure.Unit;
import java.util.List;

/** The columns of sheet Progress: what has happened to tasks. */
public final class ProgressQuestions {

  public static final Question TASK =
      Question.text(PROGRESS, "Task")
          .help("The id of the task, as the schedule of a run shows it.");
  public static final Question ACTUAL_START = Question.date(PROGRESS, "Actual start").optional();
  public static final Question ACTUAL_FINISH = Question.date(PROGRESS, "Actual finish").optional();
  public static final Question REMAINING =
      Question.number(PROGRESS, "Remaining days", Unit.ONE)
          .upTo("100000")
          .optional()
          .help("Working days of its calendar still to do.");
  public static final Question COMPLETE =
      Question.share(PROGRESS, "Complete").upTo("1").optional().help("The share done.");

  public static final Question BOOKED =
      Question.date(PROGRESS, "Booked for")
          .optional()
          .help(
              "The day for which its crew, crane or inspector is firmly booked: the task does not"
                  + " start before, and no other order of work moves it.");

  public static final List<Question> ALL =
      List.of(TASK, ACTUAL_START, ACTUAL_FINISH, REMAINING, COMPLETE, BOOKED);

  private ProgressQuestions() {}
}
