package cornerpost.finance;

import cornerpost.finance.CostReport.Row;
import cornerpost.finance.CostReport.Treatment;
import cornerpost.measure.Money;
import cornerpost.measure.Ratio;
import cornerpost.scope.DayCount;
import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Where a loan for building stands once money has moved: the lender's figures.
 *
 * @param rows of the cost report, the interest last
 * @param plannedPeriods cumulative planned value at the end of each period of the plan
 * @param value earned value
 * @param hireADay what a day of what is paid by the month costs, over its budget
 */
public record LoanStatus(
    LoanTerms terms,
    List<Row> rows,
    Outlook outlook,
    Holding holding,
    List<StageValue> stages,
    Request request,
    Contingency contingency,
    List<Stress> stresses,
    Planned plannedPeriods,
    EarnedValue value,
    List<Flag> flags,
    Facts facts,
    int decimals) {

  /**
   * What money is there and what it is needed for, today.
   *
   * @param notInvoiced work in place that nobody has sent an invoice for
   * @param surplus below nothing is what the borrower must bring
   */
  public record Holding(
      BigDecimal loan,
      BigDecimal drawn,
      BigDecimal undrawn,
      BigDecimal ownCash,
      BigDecimal paid,
      BigDecimal cash,
      BigDecimal toComplete,
      BigDecimal retained,
      BigDecimal payable,
      BigDecimal notInvoiced,
      BigDecimal interestToCome,
      BigDecimal needed,
      BigDecimal surplus) {}

  /**
   * A stage on the schedule of values.
   *
   * @param original scheduled value; {@code revised} with approved changes
   * @param earned work in place at scheduled value
   * @param ahead drawn above what is in place and stored
   * @param toFinish revised less in place and stored
   */
  public record StageValue(
      Stage stage,
      BigDecimal original,
      BigDecimal changes,
      BigDecimal revised,
      BigDecimal earned,
      BigDecimal stored,
      BigDecimal drawn,
      BigDecimal ahead,
      BigDecimal toFinish) {}

  /**
   * What can be drawn today; the arithmetic of Form RD 1924-18.
   *
   * @param inPlace and stored, all stages
   * @param own the borrower's cash, spent first
   * @param part the loan's part of what is in place
   */
  public record Request(
      BigDecimal inPlace,
      BigDecimal own,
      BigDecimal part,
      BigDecimal held,
      BigDecimal before,
      BigDecimal due,
      BigDecimal toFinish) {}

  /**
   * The reserve.
   *
   * @param required for the work left, at the share of the original budget
   * @param used share of the original; {@code progress} share of the work; {@code pace} the one
   *     over the other: above one it burns faster than the work goes
   */
  public record Contingency(
      BigDecimal original,
      BigDecimal left,
      BigDecimal workLeft,
      BigDecimal required,
      Optional<BigDecimal> used,
      Optional<BigDecimal> progress,
      Optional<BigDecimal> pace) {}

  /** What a setback would leave: {@code delay} and {@code prices} are its costs. */
  public record Stress(String name, BigDecimal delay, BigDecimal prices, BigDecimal surplus) {}

  /**
   * The plan before any progress.
   *
   * @param ends last day of each period, calendar months from the planned start
   * @param parts by period, by stage of {@code stages}: share of the stage planned by its end
   * @param now the same on the status date
   * @param time gone on the status date, in periods
   */
  public record Planned(
      List<Stage> stages,
      List<LocalDate> ends,
      List<List<BigDecimal>> parts,
      List<BigDecimal> now,
      BigDecimal time,
      List<BigDecimal> budgets,
      List<BigDecimal> values,
      BigDecimal valueNow) {

    /** With the budgets of its stages, the amounts. */
    static Planned of(PlannedParts p, List<Row> rows, int decimals) {
      var budgets =
          p.stages().stream()
              .map(
                  s ->
                      Outlook.sum(
                          rows.stream()
                              .filter(r -> r.line().treatment().earns())
                              .filter(r -> r.line().stage().equals(Optional.of(s)))
                              .toList(),
                          Row::revised))
              .toList();
      var values = p.parts().stream().map(x -> value(budgets, x, decimals)).toList();
      return new Planned(
          p.stages(),
          p.ends(),
          p.parts(),
          p.now(),
          p.time(),
          budgets,
          values,
          value(budgets, p.now(), decimals));
    }

    private static BigDecimal value(
        List<BigDecimal> budgets, List<BigDecimal> parts, int decimals) {
      var sum = BigDecimal.ZERO.setScale(decimals);
      for (int i = 0; i < budgets.size(); i++) {
        sum = sum.add(Money.halfUp(budgets.get(i).multiply(parts.get(i)), decimals));
      }
      return sum;
    }
  }

  /** The dated part of {@link Planned}. */
  public record PlannedParts(
      List<Stage> stages,
      List<LocalDate> ends,
      List<List<BigDecimal>> parts,
      List<BigDecimal> now,
      BigDecimal time) {}

  /**
   * What the money rests on and does not change.
   *
   * @param hireFactor cost of a day over the amount of what is paid by the month, tax with it
   * @param licensed checks on licensed trades that the owner does himself
   * @param total of the cost plan
   */
  public record Facts(
      LocalDate status, LocalDate finish, BigDecimal hireFactor, int licensed, BigDecimal total) {}

  /** Something an examiner looks for. */
  public enum Sign {
    SHORT("Money short of what is needed", "to be brought before the next draw"),
    CASH("Cash below nothing in a coming month", "to be bridged until the lender pays"),
    AHEAD(
        "Draws ahead of the work in place", "stop draws for these stages until the work is there"),
    FRONT(
        "Schedule of values front-loaded", "early stages claim more than their share of the cost"),
    OVER("Lines above their revised budget", "to be covered by contingency or by the borrower"),
    CONTINGENCY(
        "Contingency below the budget's share of the work left", "too little for what may come"),
    NO_QUOTE("Large lines without quote or contract", "ask for quotes or contracts"),
    ENDED("Quotes that have ended", "ask for new ones"),
    LICENSED(
        "Licensed trades done by the owner", "ask for the licence or the department's consent"),
    EARLY("Paid before it was invoiced", "ask for the invoices or the order with its deposit"),
    MATURITY("Finish after the loan matures, days", "extend the loan or shorten the work"),
    VALUE("Loan above 85 % of the value on completion", "above the supervisory limit");

    private final String label;
    private final String advice;

    Sign(String label, String advice) {
      this.label = label;
      this.advice = advice;
    }

    /** What it asks for. */
    public String advice() {
      return advice;
    }

    public String label() {
      return label;
    }
  }

  /**
   * A sign, raised or not.
   *
   * @param figure the amount or the number it is raised by
   * @param money whether the figure is an amount
   */
  public record Flag(Sign sign, boolean raised, BigDecimal figure, boolean money) {}

  /** Share of the schedule of values by which claims may run ahead of cost. */
  public static final BigDecimal FRONT_LOAD = new BigDecimal("0.05"); // common practice, no source

  /** Supervisory limit for one to four family construction: 12 CFR 34 subpart D, appendix A. */
  public static final BigDecimal MOST_LOAN_TO_VALUE = new BigDecimal("0.85");

  public LoanStatus {
    rows = List.copyOf(rows);
    stages = List.copyOf(stages);
    stresses = List.copyOf(stresses);
    flags = List.copyOf(flags);
  }

  /**
   * Puts the figures together.
   *
   * @param work rows of the cost report without the interest
   * @param interest the row of the interest with what is to come
   */
  public static LoanStatus of(
      LoanTerms terms,
      List<Row> work,
      Row interest,
      Outlook outlook,
      PlannedParts planned,
      Facts facts,
      int decimals) {
    var rows = new ArrayList<>(work);
    rows.add(interest);
    var holding = holding(terms, work, interest, decimals);
    var stages = stages(rows, decimals);
    var plan = Planned.of(planned, rows, decimals);
    var earned = sum(rows, earns(), Row::earned);
    var actual = sum(rows, earns(), r -> r.toDate().subtract(r.entered().stored()));
    var value = EarnedValue.of(plan.values(), plan.valueNow(), earned, actual, plan.time());
    var contingency = contingency(rows, value, decimals);
    var stresses = stresses(terms, rows, outlook, holding, facts, decimals);
    return new LoanStatus(
        terms,
        rows,
        outlook,
        holding,
        stages,
        request(terms, stages, holding.drawn(), decimals),
        contingency,
        stresses,
        plan,
        value,
        flags(terms, rows, outlook, holding, stages, contingency, facts),
        facts,
        decimals);
  }

  /** The answer in a sentence, with the currency's code. */
  public String verdict(String currency) {
    var amount =
        currency
            + " "
            + String.format(java.util.Locale.ROOT, "%,." + decimals + "f", holding.surplus().abs());
    return holding.surplus().signum() < 0
        ? OUT_OF_BALANCE + amount
        : IN_BALANCE + amount + LEFT_OVER;
  }

  public static final String OUT_OF_BALANCE = "Out of balance: the borrower must bring ";
  public static final String IN_BALANCE = "In balance: ";
  public static final String LEFT_OVER = " would be left over";

  /** Of the work alone, line by line: contingency and interest left out. */
  public BigDecimal workAtCompletion() {
    return sum(rows, earns(), Row::atCompletion);
  }

  /** The stages without the interest: what is in place and what remains, at today's prices. */
  public List<Finance.StageMoney> stageMoney() {
    var money = new ArrayList<Finance.StageMoney>();
    for (var stage : Stage.values()) {
      var of =
          rows.stream()
              .filter(r -> r.line().treatment() != Treatment.INTEREST)
              .filter(r -> r.line().stage().equals(Optional.of(stage)))
              .toList();
      if (of.isEmpty()) continue;
      var inPlace = Outlook.sum(of, Row::inPlace);
      var toComplete = Outlook.sum(of, Row::toComplete);
      money.add(
          new Finance.StageMoney(
              stage,
              Outlook.sum(of, Row::revised).setScale(decimals),
              over(inPlace, inPlace.add(toComplete)).orElse(BigDecimal.ZERO).stripTrailingZeros(),
              inPlace.setScale(decimals),
              toComplete.setScale(decimals)));
    }
    return money;
  }

  private static Predicate<Row> earns() {
    return r -> r.line().treatment().earns();
  }

  private static BigDecimal sum(
      List<Row> rows, Predicate<Row> which, Function<Row, BigDecimal> part) {
    return Outlook.sum(rows.stream().filter(which).toList(), part);
  }

  private static Holding holding(LoanTerms terms, List<Row> work, Row interest, int decimals) {
    var rows = new ArrayList<>(work);
    rows.add(interest);
    var drawn = Outlook.sum(rows, r -> r.entered().drawn());
    var paid = Outlook.sum(rows, r -> r.entered().paid());
    var undrawn = terms.loan().subtract(drawn);
    var cash = terms.cash().add(drawn).subtract(paid);
    var toComplete = Outlook.sum(work, Row::toComplete);
    var retained = Outlook.sum(rows, r -> r.entered().retained());
    var payable = Outlook.sum(rows, Row::payable);
    var notInvoiced = Outlook.sum(rows, Row::notInvoiced);
    var needed = toComplete.add(retained).add(payable).add(notInvoiced).add(interest.toComplete());
    return new Holding(
        terms.loan().setScale(decimals),
        drawn.setScale(decimals),
        undrawn.setScale(decimals),
        terms.cash().setScale(decimals),
        paid.setScale(decimals),
        cash.setScale(decimals),
        toComplete.setScale(decimals),
        retained.setScale(decimals),
        payable.setScale(decimals),
        notInvoiced.setScale(decimals),
        interest.toComplete(),
        needed.setScale(decimals),
        undrawn.add(cash).subtract(needed).setScale(decimals));
  }

  private static List<StageValue> stages(List<Row> rows, int decimals) {
    var stages = new ArrayList<StageValue>();
    for (var stage : Arrays.asList(Stage.values())) {
      var of = rows.stream().filter(r -> r.line().stage().equals(Optional.of(stage))).toList();
      if (of.isEmpty()) continue;
      var revised = Outlook.sum(of, Row::revised);
      var earned = Outlook.sum(of, Row::earned);
      var stored = Outlook.sum(of, r -> r.entered().stored());
      var drawn = Outlook.sum(of, r -> r.entered().drawn());
      stages.add(
          new StageValue(
              stage,
              Outlook.sum(of, Row::original).setScale(decimals),
              Outlook.sum(of, r -> r.entered().changes()).setScale(decimals),
              revised.setScale(decimals),
              earned.setScale(decimals),
              stored.setScale(decimals),
              drawn.setScale(decimals),
              drawn.subtract(earned).subtract(stored).max(BigDecimal.ZERO).setScale(decimals),
              revised.subtract(earned).subtract(stored).setScale(decimals)));
    }
    return stages;
  }

  private static Request request(
      LoanTerms terms, List<StageValue> stages, BigDecimal drawn, int decimals) {
    BigDecimal inPlace = BigDecimal.ZERO;
    for (var s : stages) inPlace = inPlace.add(s.earned()).add(s.stored());
    var part = inPlace.subtract(terms.cash()).max(BigDecimal.ZERO).min(terms.loan());
    var held = terms.retainage().held(part, terms.loan(), decimals);
    var form = new PaymentRequest(terms.loan(), part, held, drawn);
    return new Request(
        inPlace.setScale(decimals),
        terms.cash().setScale(decimals),
        part.setScale(decimals),
        held.setScale(decimals),
        drawn.setScale(decimals),
        form.due().max(BigDecimal.ZERO).setScale(decimals),
        form.toFinish().setScale(decimals));
  }

  private static Contingency contingency(List<Row> rows, EarnedValue value, int decimals) {
    Predicate<Row> reserve = r -> r.line().treatment() == Treatment.CONTINGENCY;
    var original = sum(rows, reserve, Row::original);
    var left = sum(rows, reserve, Row::revised);
    var workLeft = sum(rows, earns(), Row::toComplete);
    var work = sum(rows, earns(), Row::original);
    var required =
        work.signum() == 0
            ? BigDecimal.ZERO
            : Money.halfUp(original.multiply(workLeft).divide(work, Ratio.PRECISION), decimals);
    var used = over(original.subtract(left), original);
    var progress = value.complete();
    return new Contingency(
        original.setScale(decimals),
        left.setScale(decimals),
        workLeft.setScale(decimals),
        required.setScale(decimals),
        used,
        progress,
        used.flatMap(u -> progress.flatMap(p -> over(u, p))));
  }

  private static Optional<BigDecimal> over(BigDecimal a, BigDecimal b) {
    return b.signum() == 0 ? Optional.empty() : Optional.of(a.divide(b, Ratio.PRECISION));
  }

  private static List<Stress> stresses(
      LoanTerms terms,
      List<Row> rows,
      Outlook outlook,
      Holding holding,
      Facts facts,
      int decimals) {
    var days = BigDecimal.valueOf(7L * terms.stressWeeks());
    var byMonth = sum(rows, r -> r.line().treatment() == Treatment.TIME, r -> r.line().amount());
    var months = outlook.months();
    var owed = months.isEmpty() ? holding.drawn() : months.get(months.size() - 1).owed();
    var hire = Money.halfUp(byMonth.multiply(facts.hireFactor()).multiply(days), decimals);
    var interest =
        new Interest(terms.rate(), terms.dayCount(), decimals).of(owed, days.longValueExact());
    var delay = hire.add(interest);
    var open =
        sum(
            rows,
            r ->
                (r.line().treatment() == Treatment.WORK || r.line().treatment() == Treatment.ON_TOP)
                    && r.entered().committed().signum() == 0,
            Row::toComplete);
    var prices = Money.halfUp(open.multiply(terms.stressPrices()), decimals);
    var none = BigDecimal.ZERO.setScale(decimals);
    return List.of(
        new Stress("As it stands", none, none, holding.surplus()),
        new Stress("Later", delay, none, holding.surplus().subtract(delay)),
        new Stress("Dearer", none, prices, holding.surplus().subtract(prices)),
        new Stress(
            "Later and dearer", delay, prices, holding.surplus().subtract(delay).subtract(prices)));
  }

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

  private static List<Flag> flags(
      LoanTerms terms,
      List<Row> rows,
      Outlook outlook,
      Holding h,
      List<StageValue> stages,
      Contingency c,
      Facts facts) {
    var flags = new ArrayList<Flag>();
    var zero = BigDecimal.ZERO;
    money(flags, Sign.SHORT, h.surplus().negate().max(zero));
    var least =
        outlook.months().stream()
            .map(Outlook.Month::cash)
            .min(BigDecimal::compareTo)
            .orElse(h.cash());
    money(flags, Sign.CASH, least.negate().max(zero));
    money(flags, Sign.AHEAD, stages.stream().map(StageValue::ahead).reduce(zero, BigDecimal::add));
    var front = frontLoad(rows);
    flags.add(new Flag(Sign.FRONT, front.compareTo(FRONT_LOAD) > 0, front, false));
    money(flags, Sign.OVER, Outlook.sum(rows, Row::over));
    money(flags, Sign.CONTINGENCY, c.required().subtract(c.left()).max(zero));
    money(
        flags,
        Sign.NO_QUOTE,
        sum(rows, r -> noFirmPrice(r, facts.total(), terms), r -> r.line().amount()));
    count(
        flags,
        Sign.ENDED,
        rows.stream()
            .filter(r -> r.line().quoteEnded() && r.entered().committed().signum() == 0)
            .count());
    count(flags, Sign.LICENSED, facts.licensed());
    money(flags, Sign.EARLY, Outlook.sum(rows, r -> r.payable().negate().max(zero)));
    long late =
        terms
            .maturity()
            .map(m -> java.time.temporal.ChronoUnit.DAYS.between(m, facts.finish()))
            .orElse(0L);
    count(flags, Sign.MATURITY, Math.max(0, late));
    var overValue =
        terms
            .value()
            .map(v -> terms.loan().subtract(v.multiply(MOST_LOAN_TO_VALUE)).max(zero))
            .orElse(zero);
    money(flags, Sign.VALUE, overValue);
    return flags;
  }

  /** Share of the schedule of values in place, less the share of the cost that is. */
  private static BigDecimal frontLoad(List<Row> rows) {
    var claimed = over(sum(rows, earns(), Row::earned), sum(rows, earns(), Row::revised));
    var spent = over(sum(rows, earns(), Row::inPlace), sum(rows, earns(), Row::atCompletion));
    return claimed.orElse(BigDecimal.ZERO).subtract(spent.orElse(BigDecimal.ZERO));
  }

  private static void money(List<Flag> flags, Sign sign, BigDecimal amount) {
    flags.add(new Flag(sign, amount.signum() > 0, amount, true));
  }

  private static void count(List<Flag> flags, Sign sign, long number) {
    flags.add(new Flag(sign, number > 0, BigDecimal.valueOf(number), false));
  }

  /** Days that a year of the interest has. */
  public static int yearDays(DayCount count) {
    return count == DayCount.ACTUAL_365 ? 365 : 360;
  }
}
