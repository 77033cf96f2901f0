package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.OWN_ITEMS;

import cornerpost.measure.Unit;
import java.util.List;

/** The columns of sheet Own items: lines the owner adds to the bill. */
public final class OwnItemQuestions {

  public static final Question ID =
      Question.text(OWN_ITEMS, "Id").help("A short name of its own: shed.");
  public static final Question STAGE = Question.oneOf(OWN_ITEMS, "Stage", Stage.class);
  public static final Question DESCRIPTION = Question.text(OWN_ITEMS, "Description");
  public static final Question QUANTITY =
      Question.number(OWN_ITEMS, "Quantity", Unit.ONE).standard("1").upTo("1000000");
  public static final Question UNIT =
      Question.text(OWN_ITEMS, "Unit").standard("each").help("What is counted: each, m2, day.");
  public static final Question RATE =
      Question.money(OWN_ITEMS, "Rate")
          .from("-10000000")
          .help("For one unit, before tax. Below nothing for a credit, such as a grant.");
  public static final Question PARTY =
      Question.oneOf(OWN_ITEMS, "Done by", Party.class).standard(Party.HIRED);
  public static final Question TAXED = Question.yesNo(OWN_ITEMS, "Taxed").standard("yes");
  public static final Question NOTE = Question.text(OWN_ITEMS, "Note").optional();

  public static final List<Question> ALL =
      List.of(ID, STAGE, DESCRIPTION, QUANTITY, UNIT, RATE, PARTY, TAXED, NOTE);

  private OwnItemQuestions() {}
}
