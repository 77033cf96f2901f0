package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.LOAN;

import java.util.List;

/** What sheet Loan asks. */
public final class LoanQuestions {
  public static final Question AMOUNT = Question.money(LOAN, "Loan").standard("0");
  public static final Question CASH = Question.money(LOAN, "Borrower's cash").standard("0");
  public static final Question RATE =
      Question.share(LOAN, "Interest a year").standard("0.08").upTo("1");
  public static final Question DAY_COUNT =
      Question.oneOf(LOAN, "Day count", DayCount.class).standard(DayCount.ACTUAL_365);
  public static final Question DRAWS =
      Question.oneOf(LOAN, "Draws by", DrawBasis.class).standard(DrawBasis.STAGE);
  public static final Question RETAINAGE =
      Question.share(LOAN, "Retainage").standard("0.1").upTo("0.5");
  public static final Question RETAINAGE_HALVED =
      Question.yesNo(LOAN, "Retainage halved half way")
          .standard("no")
          .help("Half of what is held back is paid once half the loan is earned.");
  public static final Question AVERAGE_DRAWN =
      Question.share(LOAN, "Average share drawn")
          .standard("0.5")
          .upTo("1")
          .help("For the interest in the budget: half is usual.");
  public static final Question VALUE = Question.money(LOAN, "Value on completion").optional();
  public static final Question MATURITY = Question.date(LOAN, "Maturity").optional();

  public static final List<Question> ALL =
      List.of(
          AMOUNT,
          CASH,
          RATE,
          DAY_COUNT,
          DRAWS,
          RETAINAGE,
          RETAINAGE_HALVED,
          AVERAGE_DRAWN,
          VALUE,
          MATURITY);

  private LoanQuestions() {}
}
