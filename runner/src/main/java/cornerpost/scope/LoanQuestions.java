package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.LOAN;

import java.util.List;

/** What sheet Loan asks. */
public final class LoanQuestions {
  public static final Question AMOUNT =
      Question.money(LOAN, "Loan")
          .standard("0")
          .help("What the lender lends. 0: built without a loan.");
  public static final Question CASH =
      Question.money(LOAN, "Borrower's cash").standard("0").help("Your own money for the build.");
  public static final Question RATE =
      Question.share(LOAN, "Interest a year").standard("0.08").upTo("1");
  public static final Question DAY_COUNT =
      Question.oneOf(LOAN, "Day count", DayCount.class)
          .standard(DayCount.ACTUAL_365)
          .help("How the loan agreement counts days for interest.");
  public static final Question INTEREST_IS =
      Question.oneOf(LOAN, "Interest is", InterestPayment.class)
          .standard(InterestPayment.PAID)
          .help("Paid each month, or added to what is owed.");
  public static final Question DRAWS =
      Question.oneOf(LOAN, "Draws by", DrawBasis.class)
          .standard(DrawBasis.STAGE)
          .help("What lets you ask the lender for the next payment.");
  public static final Question RETAINAGE =
      Question.share(LOAN, "Retainage")
          .standard("0.1")
          .upTo("0.5")
          .help("What the lender holds back from each draw until the end.");
  public static final Question RETAINAGE_HALVED =
      Question.yesNo(LOAN, "Retainage halved half way")
          .standard("no")
          .help("Half of what is held back is paid once half the loan is earned.");
  public static final Question AVERAGE_DRAWN =
      Question.share(LOAN, "Average share drawn")
          .standard("0.5")
          .upTo("1")
          .help("For the interest in the budget: half is usual.");
  public static final Question VALUE =
      Question.money(LOAN, "Value on completion")
          .optional()
          .help("What the finished house will be worth, by an appraisal. May stay empty.");
  public static final Question MATURITY =
      Question.date(LOAN, "Maturity")
          .optional()
          .help("The day by which the loan is repaid or replaced. May stay empty.");

  public static final Question DEPOSIT =
      Question.share(LOAN, "Deposit with orders")
          .standard("0")
          .upTo("1")
          .help("The share of a material's price that is paid on the day to order it by.");
  public static final Question INVOICE_DAYS =
      Question.whole(LOAN, "Days to pay invoices")
          .standard("0")
          .upTo("180")
          .help("From delivery, or from the end of the work, to the day it is paid.");
  public static final Question CONTINGENCY_RULE =
      Question.oneOf(LOAN, "Contingency to keep", ContingencyRule.class)
          .standard(ContingencyRule.IN_STEP)
          .help("What the lender wants left for the work to come.");
  public static final Question STRESS_WEEKS =
      Question.whole(LOAN, "What if: weeks later")
          .standard("4")
          .upTo("104")
          .help("By how much later the lender's review tries the end of the work.");
  public static final Question STRESS_PRICES =
      Question.share(LOAN, "What if: prices up")
          .standard("0.1")
          .upTo("2")
          .help("On what is neither ordered nor under contract.");
  public static final Question LARGE_LINE =
      Question.share(LOAN, "Quotes wanted from")
          .standard("0.02")
          .upTo("1")
          .help("Lines of at least this share of the total should have a quote or a contract.");

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
          MATURITY,
          INTEREST_IS,
          DEPOSIT,
          INVOICE_DAYS,
          CONTINGENCY_RULE,
          STRESS_WEEKS,
          STRESS_PRICES,
          LARGE_LINE);

  private LoanQuestions() {}
}
