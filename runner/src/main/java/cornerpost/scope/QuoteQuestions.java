package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.QUOTES;

import java.util.List;

/** The columns of sheet Quotes: suppliers' prices for lines of the cost plan. */
public final class QuoteQuestions {

  public static final Question LINE =
      Question.text(QUOTES, "Line").help("The id of the line, as the cost plan of a run shows it.");
  public static final Question SUPPLIER = Question.text(QUOTES, "Supplier").optional();
  public static final Question PRICE_FOR =
      Question.oneOf(QUOTES, "Price for", QuoteFor.class).standard(QuoteFor.WHOLE);
  public static final Question AMOUNT =
      Question.money(QUOTES, "Amount").help("Before tax, in the currency of the price book.");
  public static final Question DATE = Question.date(QUOTES, "Date").optional();
  public static final Question VALID_UNTIL = Question.date(QUOTES, "Valid until").optional();
  public static final Question USE =
      Question.yesNo(QUOTES, "Use it")
          .standard("yes")
          .help("One quote of a line can be used; keep the others with no.");
  public static final Question NOTE = Question.text(QUOTES, "Note").optional();

  public static final List<Question> ALL =
      List.of(LINE, SUPPLIER, PRICE_FOR, AMOUNT, DATE, VALID_UNTIL, USE, NOTE);

  private QuoteQuestions() {}
}
