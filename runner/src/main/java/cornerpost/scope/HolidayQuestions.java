package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.HOLIDAYS;

import java.util.List;

/** The columns of sheet Holidays. */
public final class HolidayQuestions {

  public static final Question DATE = Question.date(HOLIDAYS, "Date");
  public static final Question NAME = Question.text(HOLIDAYS, "Name").optional();

  public static final List<Question> ALL = List.of(DATE, NAME);

  private HolidayQuestions() {}
}
