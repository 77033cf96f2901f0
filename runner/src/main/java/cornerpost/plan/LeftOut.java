package cornerpost.plan;

import cornerpost.price.CostLine;
import cornerpost.scope.Answers;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.Question;
import java.util.ArrayList;
import java.util.List;

/** What the total does not hold, in sentences; every document says the same. */
public final class LeftOut {
  private LeftOut() {}

  /** Always something; what the owner could enter and did not comes last. */
  public static List<String> of(Plan plan) {
    var out = new ArrayList<String>();
    out.add("Land, what buying it costs, and taxes on it.");
    if (plan.estimate().lines().stream().anyMatch(l -> l.kind() == CostLine.Kind.OWN_LABOUR)) {
      out.add("The owner's own hours: they stand in the bill without money.");
    }
    out.add("Moving in; after it removal, insurance and upkeep.");
    if (none(OptionsQuestions.RENT, plan.scope().options())) {
      out.add("Rent elsewhere until move-in: none is entered.");
    }
    if (none(FinishesQuestions.FURNITURE, plan.scope().finishes())) {
      out.add("Loose furniture: no allowance is entered.");
    }
    if (plan.finance().balance().loan().signum() == 0) {
      out.add("Interest: no loan is entered.");
    }
    return out;
  }

  private static boolean none(Question question, Answers answers) {
    return answers.findFigure(question).map(f -> f.isZero()).orElse(true);
  }
}
