package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.CREWS;

import java.util.List;

/** The columns of sheet Crews. */
public final class CrewQuestions {

  public static final Question NAME = Question.text(CREWS, "Name");
  public static final Question AVAILABLE =
      Question.whole(CREWS, "Number available").upTo("10000").help("How many can work at once.");
  public static final Question CALENDAR =
      Question.from(CREWS, "Calendar", Question.OwnList.CALENDARS)
          .optional()
          .help("Empty: works whenever the task's calendar does.");
  public static final Question RATE =
      Question.money(CREWS, "Rate")
          .optional()
          .help("Money for an hour of one of them, before tax.");

  public static final List<Question> ALL = List.of(NAME, AVAILABLE, CALENDAR, RATE);

  private CrewQuestions() {}
}
