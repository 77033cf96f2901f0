package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.CALENDARS;

import cornerpost.measure.Unit;
import java.util.List;

/** The columns of sheet Calendars: working weeks. */
public final class CalendarQuestions {

  public static final Question NAME = Question.text(CALENDARS, "Name");
  public static final Question MONDAY = hours("Monday");
  public static final Question TUESDAY = hours("Tuesday");
  public static final Question WEDNESDAY = hours("Wednesday");
  public static final Question THURSDAY = hours("Thursday");
  public static final Question FRIDAY = hours("Friday");
  public static final Question SATURDAY = hours("Saturday");
  public static final Question SUNDAY = hours("Sunday");

  public static final Question HOLIDAYS_KEPT =
      Question.yesNo(CALENDARS, "Holidays kept")
          .standard("yes")
          .help("Whether it rests on the days of sheet Holidays and of the price book.");

  /** The hours columns, Monday first. */
  public static final List<Question> WEEK =
      List.of(MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY, SATURDAY, SUNDAY);

  public static final List<Question> ALL =
      List.of(NAME, MONDAY, TUESDAY, WEDNESDAY, THURSDAY, FRIDAY, SATURDAY, SUNDAY, HOLIDAYS_KEPT);

  private CalendarQuestions() {}

  private static Question hours(String day) {
    return Question.number(CALENDARS, day, Unit.HOUR)
        .upTo("24")
        .standard("0")
        .help("Hours worked.");
  }
}
