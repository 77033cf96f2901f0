package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.DELAYS;

import java.util.List;

/** The columns of sheet Delays. */
public final class DelayQuestions {

  public static final Question EVENT =
      Question.text(DELAYS, "Event").help("The id or the name of the task that comes later.");
  public static final Question DAYS =
      Question.whole(DELAYS, "Days").upTo("3660").help("Calendar days.");
  public static final Question CAUSE = Question.text(DELAYS, "Cause").optional();
  public static final Question BORNE_BY =
      Question.text(DELAYS, "Borne by").optional().help("Who bears what it costs.");

  public static final List<Question> ALL = List.of(EVENT, DAYS, CAUSE, BORNE_BY);

  private DelayQuestions() {}
}
