package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.OWN_TASKS;

import cornerpost.measure.Unit;
import java.util.List;

/**
 * The fixed columns of sheet Own tasks. After them stands a column for each crew, headed with its
 * name, for the number needed.
 */
public final class OwnTaskQuestions {

  public static final Question ID =
      Question.text(OWN_TASKS, "Id").help("A short name of its own: T1.");
  public static final Question NAME =
      Question.text(OWN_TASKS, "Name").optional().help("Empty: the id.");
  public static final Question DURATION =
      Question.number(OWN_TASKS, "Duration", Unit.ONE).upTo("100000").help("0 for a milestone.");
  public static final Question DURATION_UNIT =
      Question.oneOf(OWN_TASKS, "Duration unit", DurationUnit.class)
          .standard(DurationUnit.DAYS)
          .help(
              "h: working hours. d: working days of the task's calendar. elapsed d: 24 hours, through nights, weekends and holidays.");
  public static final Question OPTIMISTIC =
      Question.number(OWN_TASKS, "Optimistic", Unit.ONE)
          .upTo("100000")
          .optional()
          .help("If all goes well, in the duration's unit. With Pessimistic, or not at all.");
  public static final Question PESSIMISTIC =
      Question.number(OWN_TASKS, "Pessimistic", Unit.ONE)
          .upTo("100000")
          .optional()
          .help("If it goes badly, in the duration's unit. With Optimistic, or not at all.");
  public static final Question CALENDAR =
      Question.from(OWN_TASKS, "Calendar", Question.OwnList.CALENDARS)
          .optional()
          .help("Empty: the project's.");
  public static final Question NOT_BEFORE = Question.date(OWN_TASKS, "Not before").optional();
  public static final Question DEADLINE = Question.date(OWN_TASKS, "Deadline").optional();

  public static final List<Question> ALL =
      List.of(
          ID,
          NAME,
          DURATION,
          DURATION_UNIT,
          OPTIMISTIC,
          PESSIMISTIC,
          CALENDAR,
          NOT_BEFORE,
          DEADLINE);

  private OwnTaskQuestions() {}
}
