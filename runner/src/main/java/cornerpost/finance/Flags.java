package cornerpost.finance;

import cornerpost.finance.CostReport.Row;
import cornerpost.finance.CostReport.Treatment;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Predicate;

/** The signs that an examiner looks for, each raised or not. */
public final class Flags {
  /** Share of the schedule of values by which claims may run ahead of cost. */
  public static final BigDecimal FRONT_LOAD = new BigDecimal("0.05"); // common practice, no source

  /** Supervisory limit for one to four family construction: 12 CFR 34 subpart D, appendix A. */
  public static final BigDecimal MOST_LOAN_TO_VALUE = new BigDecimal("0.85");

  private static final String NOT_GIVEN = "not given";

  private final List<Flag> all = new ArrayList<>();

  private Flags() {}

  /** Whether a line is large, unfinished work at a price that nobody is held to. */
  public static boolean noFirmPrice(Row r, BigDecimal total, LoanTerms terms) {
    return r.line().treatment() == Treatment.WORK
        && terms.largeLine().signum() > 0
        && r.line().amount().compareTo(total.multiply(terms.largeLine())) >= 0
        && r.line().amount().signum() > 0
        && r.entered().committed().signum() == 0
        && r.share().compareTo(BigDecimal.ONE) < 0
        && !r.line().firm();
  }

  /** All of them, raised or not. */
  static List<Flag> of(
      LoanTerms terms,
      List<Row> rows,
      Outlook outlook,
      Holding h,
      List<StageValue> stages,
      DrawRequest request,
      Contingency c,
      LoanStatus.Facts facts) {
    var flags = new Flags();
    flags.money(Sign.SHORT, below(h.surplus()));
    var least =
        outlook.months().stream()
            .map(Outlook.Month::cash)
            .min(BigDecimal::compareTo)
            .orElse(h.cash());
    flags.money(Sign.CASH, below(least));
    flags.money(Sign.ABOVE_LOAN, below(h.undrawn()));
    flags.money(Sign.TOO_MUCH, request.above());
    flags.money(
        Sign.AHEAD,
        stages.stream().map(StageValue::ahead).reduce(BigDecimal.ZERO, BigDecimal::add));
    var front = claimed(rows).subtract(spent(rows));
    flags.all.add(new Flag(Sign.FRONT, front.compareTo(FRONT_LOAD) > 0, front, false));
    flags.money(Sign.OVER, Outlook.sum(rows, Row::over));
    flags.money(Sign.CONTINGENCY, c.lacking());
    flags.money(
        Sign.NO_QUOTE,
        CostReport.sum(rows, r -> noFirmPrice(r, facts.total(), terms), r -> r.line().amount()));
    flags.count(Sign.ENDED, rows.stream().filter(Flags::quoteEnded).count());
    if (facts.licensed().isPresent()) flags.count(Sign.LICENSED, facts.licensed().getAsInt());
    else flags.all.add(Flag.untold(Sign.LICENSED, "not examined"));
    flags.money(Sign.EARLY, Outlook.sum(rows, r -> below(r.payable())));
    flags.time(terms, facts.finish());
    flags.value(terms);
    return flags.all;
  }

  private static boolean quoteEnded(Row r) {
    return r.line().quoteEnded() && r.entered().committed().signum() == 0;
  }

  private static BigDecimal below(BigDecimal amount) {
    return amount.negate().max(BigDecimal.ZERO);
  }

  private void time(LoanTerms terms, LocalDate finish) {
    if (terms.maturity().isEmpty()) {
      all.add(Flag.untold(Sign.MATURITY, NOT_GIVEN));
      return;
    }
    count(Sign.MATURITY, Math.max(0, ChronoUnit.DAYS.between(terms.maturity().get(), finish)));
  }

  private void value(LoanTerms terms) {
    if (terms.value().isEmpty()) {
      all.add(Flag.untold(Sign.VALUE, NOT_GIVEN));
      return;
    }
    var most = terms.value().get().multiply(MOST_LOAN_TO_VALUE);
    money(Sign.VALUE, terms.loan().subtract(most).max(BigDecimal.ZERO));
  }

  /** Share of the schedule of values in place; nothing of nothing. */
  public static BigDecimal claimed(List<Row> rows) {
    return share(rows, Row::earned, Row::revised);
  }

  /** Share of the cost in place; nothing of nothing. */
  public static BigDecimal spent(List<Row> rows) {
    return share(rows, Row::inPlace, Row::atCompletion);
  }

  private static BigDecimal share(
      List<Row> rows, Function<Row, BigDecimal> part, Function<Row, BigDecimal> whole) {
    Predicate<Row> work = r -> r.line().treatment().earns();
    return Shares.over(CostReport.sum(rows, work, part), CostReport.sum(rows, work, whole))
        .orElse(BigDecimal.ZERO);
  }

  private void money(Sign sign, BigDecimal amount) {
    all.add(new Flag(sign, amount.signum() > 0, amount, true));
  }

  private void count(Sign sign, long number) {
    all.add(new Flag(sign, number > 0, BigDecimal.valueOf(number), false));
  }
}
