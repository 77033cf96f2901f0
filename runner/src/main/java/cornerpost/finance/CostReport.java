package cornerpost.finance;

import cornerpost.measure.Money;
import cornerpost.measure.Ratio;
import cornerpost.scope.ContingencyRule;
import cornerpost.scope.LedgerEntry;
import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Where the money of each cost line stands: what was budgeted, committed, invoiced, paid and held
 * back, what is in place, what it takes to finish, and why it will cost more or less than budgeted.
 *
 * <p>What remains is the remaining part of the line at today's price or quote, or the rest of the
 * contract if that is more; never the budget less what was paid. Where an increase was approved of
 * work that is not finished, it counts at once: the line then costs the revised budget at least,
 * for its price or quote may not tell of the change yet. A line that brings money in, such as what
 * is sold, has an amount below nothing; its receipts are entered below nothing too.
 */
public final class CostReport {
  private static final BigDecimal ZERO = BigDecimal.ZERO;

  private CostReport() {}

  /** How a line is reckoned. */
  public enum Treatment {
    WORK("work"),
    /** Paid by the month. */
    TIME("time"),
    /** Price rise and tax: in step with the other lines of the stage. */
    ON_TOP("on top"),
    CONTINGENCY("contingency"),
    INTEREST("interest"),
    /** Money moved for a line that the cost plan no longer has. */
    GONE("no longer in the plan");

    private final String label;

    Treatment(String label) {
      this.label = label;
    }

    public String label() {
      return label;
    }

    /** Work that earns value: neither a reserve nor the price of money. */
    public boolean earns() {
      return this == WORK || this == TIME || this == ON_TOP;
    }
  }

  /**
   * A line of the cost plan as it stands today.
   *
   * @param stage empty for a line that the plan no longer has
   * @param amount at today's price or quote
   * @param quantity in the unit of the line
   * @param progress share of the work in place by what the programme knows, 0 to 1
   * @param leastToCome what is paid by the month: days still to come over the days paid for; else 0
   * @param firm whether a quote holds its price
   * @param quoteEnded whether that quote ended before the status date
   * @param noted the task on sheet Progress whose share this is; empty where it is worked out
   */
  public record Line(
      String id,
      Optional<Stage> stage,
      String description,
      Treatment treatment,
      BigDecimal amount,
      BigDecimal quantity,
      BigDecimal progress,
      BigDecimal leastToCome,
      boolean firm,
      boolean quoteEnded,
      Optional<String> noted) {}

  /** What stands on the cost ledger for a line, its rows added up and rounded to the minor unit. */
  public record Entered(
      Optional<BigDecimal> budget,
      Optional<BigDecimal> quantity,
      BigDecimal changes,
      BigDecimal committed,
      BigDecimal invoiced,
      BigDecimal paid,
      BigDecimal retained,
      Optional<BigDecimal> inPlace,
      BigDecimal stored,
      BigDecimal drawn) {
    static final Entered NONE =
        new Entered(
            Optional.empty(),
            Optional.empty(),
            ZERO,
            ZERO,
            ZERO,
            ZERO,
            ZERO,
            Optional.empty(),
            ZERO,
            ZERO);

    private Entered and(LedgerEntry e) {
      return new Entered(
          sum(budget, e.originalBudget()),
          sum(quantity, e.originalQuantity()),
          changes.add(e.changes()),
          committed.add(e.committed()),
          invoiced.add(e.invoiced()),
          paid.add(e.paid()),
          retained.add(e.retained()),
          sum(inPlace, e.inPlace()),
          stored.add(e.stored()),
          drawn.add(e.drawn()));
    }

    private static Optional<BigDecimal> sum(Optional<BigDecimal> a, Optional<BigDecimal> b) {
      if (a.isEmpty()) return b;
      return Optional.of(a.get().add(b.orElse(ZERO)));
    }

    private Entered rounded(int decimals) {
      return new Entered(
          budget.map(b -> Money.halfUp(b, decimals)),
          quantity,
          Money.halfUp(changes, decimals),
          Money.halfUp(committed, decimals),
          Money.halfUp(invoiced, decimals),
          Money.halfUp(paid, decimals),
          Money.halfUp(retained, decimals),
          inPlace,
          Money.halfUp(stored, decimals),
          Money.halfUp(drawn, decimals));
    }
  }

  /** A part of the rows that are meant, added up. */
  public static BigDecimal sum(
      List<Row> rows, Predicate<Row> which, Function<Row, BigDecimal> part) {
    return rows.stream().filter(which).map(part).reduce(ZERO, BigDecimal::add);
  }

  /** The key under which a line's entries are found: ids differ in more than case. */
  public static String key(String id) {
    return id.strip().toLowerCase(Locale.ROOT);
  }

  /** The ledger by line, in the order of its first rows. */
  public static Map<String, Entered> entered(List<LedgerEntry> ledger, int decimals) {
    var sums = new LinkedHashMap<String, Entered>();
    for (var e : ledger) {
      sums.put(key(e.line()), sums.getOrDefault(key(e.line()), Entered.NONE).and(e));
    }
    sums.replaceAll((k, v) -> v.rounded(decimals));
    return sums;
  }

  /**
   * A line's money. All amounts rounded to the minor unit.
   *
   * @param original budget: as entered, else the cost plan's amount
   * @param revised original with approved changes
   * @param uncommitted revised less committed
   * @param payable invoiced, neither paid nor retained
   * @param share of the work in place: as entered, else from progress
   * @param inPlace that share of today's amount
   * @param toDate what the line has cost: invoiced, or what is in place and stored if that is more
   * @param toComplete what remains
   * @param atCompletion to date and to complete
   * @param variance at completion less original: the sum of the four that follow
   * @param earned that share of the revised budget
   */
  public record Row(
      Line line,
      Entered entered,
      BigDecimal original,
      BigDecimal revised,
      BigDecimal uncommitted,
      BigDecimal payable,
      BigDecimal share,
      BigDecimal inPlace,
      BigDecimal toDate,
      BigDecimal toComplete,
      BigDecimal atCompletion,
      BigDecimal variance,
      BigDecimal byPrice,
      BigDecimal byQuantity,
      BigDecimal byScope,
      BigDecimal byTime,
      BigDecimal earned) {

    /** Estimated above the revised budget by this much; nothing where it is not. */
    public BigDecimal over() {
      return line.treatment() == Treatment.CONTINGENCY
          ? ZERO
          : atCompletion.subtract(revised).max(ZERO);
    }

    /** Cost that nobody has sent an invoice for yet. */
    public BigDecimal notInvoiced() {
      return toDate.subtract(entered.invoiced());
    }

    /** Still to be paid for this line. */
    public BigDecimal toPay() {
      return atCompletion.subtract(entered.paid());
    }
  }

  /**
   * The rows of all lines but the interest.
   *
   * @param lines by stage; within a stage what is reckoned on top of others after them
   */
  public static List<Row> rows(
      List<Line> lines, Map<String, Entered> ledger, ContingencyRule rule, int decimals) {
    var rows = new ArrayList<Row>();
    var inPlace = new EnumMap<Stage, BigDecimal>(Stage.class);
    var whole = new EnumMap<Stage, BigDecimal>(Stage.class);
    for (var l : lines) {
      var e = ledger.getOrDefault(key(l.id()), Entered.NONE);
      boolean base = l.treatment() == Treatment.WORK || l.treatment() == Treatment.TIME;
      var share = e.inPlace().orElseGet(() -> base ? l.progress() : share(l, inPlace, whole));
      var row = row(l, e, share, rule, decimals);
      rows.add(row);
      if (base) {
        inPlace.merge(l.stage().orElseThrow(), row.inPlace(), BigDecimal::add);
        whole.merge(l.stage().orElseThrow(), row.inPlace().add(row.toComplete()), BigDecimal::add);
      }
    }
    return rows;
  }

  private static BigDecimal share(
      Line l, Map<Stage, BigDecimal> inPlace, Map<Stage, BigDecimal> whole) {
    var all = l.stage().map(s -> whole.getOrDefault(s, ZERO)).orElse(ZERO);
    return all.signum() == 0
        ? ZERO
        : inPlace.get(l.stage().orElseThrow()).divide(all, Ratio.PRECISION);
  }

  private static Row row(Line l, Entered e, BigDecimal share, ContingencyRule rule, int decimals) {
    boolean reserve = l.treatment() == Treatment.CONTINGENCY;
    boolean gone = l.treatment() == Treatment.GONE;
    var original = e.budget().orElse(l.amount());
    var revised = gone ? ZERO.setScale(decimals) : original.add(e.changes());
    var part = Money.halfUp(l.amount().multiply(share), decimals);
    var inPlace = reserve ? ZERO.setScale(decimals) : part;
    // Months that are used up are not the end of what is paid by the month: the days to move-in
    // are.
    boolean goesOn = l.treatment() == Treatment.TIME && l.leastToCome().signum() > 0;
    boolean done = share.compareTo(BigDecimal.ONE) >= 0 && !goesOn;
    boolean income = l.amount().signum() < 0 && !reserve && !gone;
    var spent = income ? e.invoiced().min(e.paid()) : e.invoiced().max(e.paid());
    var there = inPlace.add(e.stored());
    BigDecimal toDate;
    if (reserve || gone) toDate = spent;
    else if (income) toDate = done && spent.signum() < 0 ? spent : spent.min(there);
    else if (done && spent.signum() > 0) toDate = spent.max(e.committed());
    else toDate = spent.max(there);
    BigDecimal toComplete;
    if (reserve) {
      toComplete = rule == ContingencyRule.ALL_LEFT ? revised.max(ZERO) : l.amount().subtract(part);
    } else if (gone) {
      toComplete = ZERO;
    } else if (income) {
      toComplete = done ? ZERO : l.amount().subtract(there).min(ZERO);
    } else {
      var least = done ? ZERO : Money.halfUp(l.amount().multiply(l.leastToCome()), decimals);
      toComplete =
          l.amount().subtract(there).max(least).max(e.committed().subtract(toDate)).max(ZERO);
      if (l.treatment() == Treatment.WORK && e.changes().signum() > 0) {
        toComplete = toComplete.max(revised.subtract(there));
      }
      if (done) toComplete = e.committed().subtract(toDate).max(ZERO);
    }
    return row(l, e, original, revised, share, inPlace, toDate, toComplete, decimals);
  }

  /** The interest: what the lender charged, and what is to come. */
  public static Row interest(Line l, Map<String, Entered> ledger, BigDecimal toCome, int decimals) {
    var e = ledger.getOrDefault(key(l.id()), Entered.NONE);
    var original = e.budget().orElse(l.amount());
    var spent = e.invoiced().max(e.paid());
    return row(l, e, original, original.add(e.changes()), ZERO, spent, spent, toCome, decimals);
  }

  private static Row row(
      Line l,
      Entered e,
      BigDecimal original,
      BigDecimal revised,
      BigDecimal share,
      BigDecimal inPlace,
      BigDecimal toDate,
      BigDecimal toComplete,
      int decimals) {
    var atCompletion = toDate.add(toComplete);
    var variance = atCompletion.subtract(original);
    boolean gone = l.treatment() == Treatment.GONE;
    boolean late = l.treatment() == Treatment.TIME || l.treatment() == Treatment.INTEREST;
    var byScope = gone ? variance : e.changes();
    var byTime = late ? variance.subtract(byScope) : ZERO;
    var byQuantity = ZERO;
    if (l.treatment() == Treatment.WORK && e.quantity().filter(q -> q.signum() > 0).isPresent()) {
      byQuantity =
          Money.halfUp(
              original
                  .multiply(l.quantity().subtract(e.quantity().get()))
                  .divide(e.quantity().get(), Ratio.PRECISION),
              decimals);
    }
    var byPrice = variance.subtract(byScope).subtract(byTime).subtract(byQuantity);
    BigDecimal earned = ZERO;
    if (l.treatment().earns()) {
      earned = Money.halfUp(revised.multiply(share.min(BigDecimal.ONE)), decimals);
    }
    if (l.treatment() == Treatment.INTEREST) earned = toDate.min(revised.max(ZERO));
    return new Row(
        l,
        e,
        scaled(original, decimals),
        scaled(revised, decimals),
        scaled(revised.subtract(e.committed()), decimals),
        scaled(e.invoiced().subtract(e.paid()).subtract(e.retained()), decimals),
        share,
        scaled(inPlace, decimals),
        scaled(toDate, decimals),
        scaled(toComplete, decimals),
        scaled(atCompletion, decimals),
        scaled(variance, decimals),
        scaled(byPrice, decimals),
        scaled(byQuantity, decimals),
        scaled(byScope, decimals),
        scaled(byTime, decimals),
        scaled(earned, decimals));
  }

  private static BigDecimal scaled(BigDecimal amount, int decimals) {
    return amount.setScale(decimals);
  }
}
