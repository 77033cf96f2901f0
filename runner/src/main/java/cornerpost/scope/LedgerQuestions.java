package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.COST_LEDGER;

import cornerpost.measure.Unit;
import java.util.List;

/** The columns of sheet Cost ledger: the money already moved, line by line of the cost plan. */
public final class LedgerQuestions {
  public static final Question LINE =
      Question.text(COST_LEDGER, "Line")
          .help(
              "The id of the line, as the cost plan of a run shows it; interest for what the lender"
                  + " charged. Rows of one line add up.");
  public static final Question ORIGINAL_BUDGET =
      Question.money(COST_LEDGER, "Original budget")
          .optional()
          .help(
              "When the loan was made; copy Id and Amount of the cost plan once to hold it. Without"
                  + " it the cost plan's amount counts.");
  public static final Question ORIGINAL_QUANTITY =
      Question.number(COST_LEDGER, "Original quantity", Unit.ONE)
          .optional()
          .help(
              "Of that budget, in the unit of the line: splits a variance into quantity and price.");
  public static final Question CHANGES =
      Question.money(COST_LEDGER, "Approved changes")
          .from("-1000000000")
          .optional()
          .help(
              "Up or down. An increase counts at once: the line then costs its revised budget at least."
                  + " Hold the original budget, or a price raised for it counts twice. After a decrease"
                  + " lower the price or quote too. What contingency pays for is taken off the line"
                  + " contingency/ of a stage.");
  public static final Question COMMITTED =
      Question.money(COST_LEDGER, "Committed").optional().help("By order or contract.");
  public static final Question INVOICED =
      Question.money(COST_LEDGER, "Invoiced")
          .from("-1000000000")
          .optional()
          .help(
              "Before tax; tax goes to the line tax/ of its stage. Below nothing for what a line brings"
                  + " in.");
  public static final Question PAID =
      Question.money(COST_LEDGER, "Paid")
          .from("-1000000000")
          .optional()
          .help("Below nothing for what was received.");
  public static final Question RETAINED =
      Question.money(COST_LEDGER, "Retained")
          .optional()
          .help("Of what is invoiced, held back until the work is complete.");
  public static final Question IN_PLACE =
      Question.share(COST_LEDGER, "Work in place")
          .upTo("1")
          .optional()
          .help("As inspected. Without it what sheet Progress says counts.");
  public static final Question STORED =
      Question.money(COST_LEDGER, "Stored materials")
          .optional()
          .help("On site and not yet built in; not part of the work in place.");
  public static final Question DRAWN =
      Question.money(COST_LEDGER, "Drawn").optional().help("Of the loan, for this line so far.");
  public static final Question NOTE = Question.text(COST_LEDGER, "Note").optional();

  public static final List<Question> ALL =
      List.of(
          LINE,
          ORIGINAL_BUDGET,
          ORIGINAL_QUANTITY,
          CHANGES,
          COMMITTED,
          INVOICED,
          PAID,
          RETAINED,
          IN_PLACE,
          STORED,
          DRAWN,
          NOTE);

  private LedgerQuestions() {}
}
