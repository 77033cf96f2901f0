package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.OWN_LINKS;

import cornerpost.measure.Unit;
import java.util.List;

/** The columns of sheet Own links: a row for each link between two tasks, own or generated. */
public final class OwnLinkQuestions {

  public static final Question BEFORE =
      Question.text(OWN_LINKS, "Before").help("The id of the task that comes first.");
  public static final Question AFTER =
      Question.text(OWN_LINKS, "After").help("The id of the task that waits for it.");
  public static final Question RELATION =
      Question.oneOf(OWN_LINKS, "Relation", LinkRelation.class)
          .standard(LinkRelation.FINISH_TO_START);
  public static final Question LAG =
      Question.number(OWN_LINKS, "Lag", Unit.ONE)
          .from("-100000")
          .upTo("100000")
          .standard("0")
          .help("Below nothing: a lead.");
  public static final Question LAG_UNIT =
      Question.oneOf(OWN_LINKS, "Lag unit", DurationUnit.class).standard(DurationUnit.DAYS);

  public static final List<Question> ALL = List.of(BEFORE, AFTER, RELATION, LAG, LAG_UNIT);

  private OwnLinkQuestions() {}
}
