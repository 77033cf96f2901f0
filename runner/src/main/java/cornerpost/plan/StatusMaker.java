package cornerpost.plan;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.toSet;

import cornerpost.finance.CostReport;
import cornerpost.finance.CostReport.Line;
import cornerpost.finance.CostReport.Treatment;
import cornerpost.finance.DrawEvent;
import cornerpost.finance.Interest;
import cornerpost.finance.LoanStatus;
import cornerpost.finance.LoanTerms;
import cornerpost.finance.Outlook;
import cornerpost.finance.Payment;
import cornerpost.measure.Money;
import cornerpost.measure.Ratio;
import cornerpost.price.CostLine;
import cornerpost.price.Estimate;
import cornerpost.scope.ProgressEntry;
import cornerpost.scope.Scope;
import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;

/**
 * Brings the cost ledger, the bill and the dates together into where the loan stands.
 *
 * <p>The dates give shares by stage and month only, made from the amounts of the bill and never
 * from what was entered as money: so the amounts that follow from an entry can be live.
 */
final class StatusMaker {
  /** Of a share that stands on a sheet as a number. */
  private static final int SHARE_DECIMALS = 10;

  private final Scope scope;
  private final Estimate estimate;
  private final LineTasks tasks;
  private final LoanTerms terms;
  private final ByTheMonth monthly;
  private final List<Payment> payments;
  private final List<DrawEvent> events;
  private final LocalDate status;
  private final LocalDate end;
  private final int decimals;
  private final Map<String, ProgressEntry> noted;

  /**
   * @param payments for when money falls due, what is paid by the month to move-in
   */
  StatusMaker(
      Scope scope,
      Estimate estimate,
      LineTasks tasks,
      LoanTerms terms,
      ByTheMonth monthly,
      List<Payment> payments,
      List<DrawEvent> events,
      LocalDate status,
      LocalDate completion) {
    this.scope = scope;
    this.estimate = estimate;
    this.tasks = tasks;
    this.terms = terms;
    this.monthly = monthly;
    this.payments = payments;
    this.events = events;
    this.status = status;
    end = completion.isBefore(status) ? status : completion;
    decimals = Money.minorDigits(estimate.currency());
    noted = ProgressMap.entries(scope, tasks.work(), status);
  }

  /**
   * Where the loan stands.
   *
   * @param progress share of the work in place by cost line, from the programme
   * @param planned the dated part of the planned value
   * @param hireADay what is paid by the month, for a day
   */
  LoanStatus make(
      Map<String, BigDecimal> progress,
      PlannedDates planned,
      BigDecimal hireADay,
      OptionalInt licensed) {
    var ledger = CostReport.entered(scope.ledger(), decimals);
    var lines = lines(progress, ledger);
    var rows = CostReport.rows(lines, ledger, terms.contingency(), decimals);
    var interestLine = interestLine();
    var none = BigDecimal.ZERO.setScale(decimals);
    var charged = CostReport.interest(interestLine, ledger, none, decimals);
    var stages = stages(rows);
    var outlook = Outlook.of(terms, stages, spans(stages), rows, Optional.of(charged), decimals);
    var interest = CostReport.interest(interestLine, ledger, outlook.interest(), decimals);
    var facts =
        new LoanStatus.Facts(
            status,
            tasks.programme().moveIn(),
            hireFactor(rows, hireADay),
            licensed,
            estimate.total());
    return LoanStatus.of(terms, rows, interest, outlook, planned.by(stages), facts, decimals);
  }

  // ---- lines --------------------------------------------------------------------------------

  private List<Line> lines(
      Map<String, BigDecimal> progress, Map<String, CostReport.Entered> ledger) {
    var lines = new ArrayList<Line>();
    var known = new HashSet<String>();
    var byStage = estimate.lines().stream().collect(groupingBy(CostLine::stage));
    for (var stage : Stage.values()) {
      var of = byStage.getOrDefault(stage, List.of());
      for (int turn = 0; turn < 2; turn++) { // what is reckoned on top comes after the rest
        for (var l : of) {
          if (onTop(l.kind()) != (turn == 1)) continue;
          var key = CostReport.key(l.id());
          known.add(key);
          if (l.kind() == CostLine.Kind.INTEREST) continue;
          if (l.money().signum() == 0 && !ledger.containsKey(key)) continue;
          lines.add(line(l, progress));
        }
      }
    }
    for (var e : scope.ledger()) {
      var key = CostReport.key(e.line());
      if (known.add(key) && !key.equals("interest")) lines.add(gone(e.line()));
    }
    return lines;
  }

  private static boolean onTop(CostLine.Kind kind) {
    return treatment(kind) == Treatment.ON_TOP || treatment(kind) == Treatment.CONTINGENCY;
  }

  static Treatment treatment(CostLine.Kind kind) {
    return switch (kind) {
      case MATERIAL, PLANT, SERVICE, FEE, LABOUR, OWN_LABOUR, OWN_ITEM -> Treatment.WORK;
      case TIME -> Treatment.TIME;
      case INTEREST -> Treatment.INTEREST;
      case ESCALATION, TAX -> Treatment.ON_TOP;
      case CONTINGENCY -> Treatment.CONTINGENCY;
    };
  }

  private Line line(CostLine l, Map<String, BigDecimal> progress) {
    var quoteEnded =
        l.quote().flatMap(q -> q.validUntil()).filter(v -> v.isBefore(status)).isPresent();
    var share = progress.getOrDefault(l.id(), BigDecimal.ZERO);
    return new Line(
        l.id(),
        Optional.of(l.stage()),
        l.description(),
        treatment(l.kind()),
        l.money(),
        l.quantity().in(l.unit()),
        rounded(share),
        l.kind() == CostLine.Kind.TIME ? rounded(monthly.toCome(l, tasks, status)) : zero(),
        l.basis() == CostLine.Basis.QUOTE,
        quoteEnded && share.compareTo(BigDecimal.ONE) < 0,
        noted(l));
  }

  /** Where the share of a running task is what the owner noted. */
  private Optional<String> noted(CostLine l) {
    if (l.kind() == CostLine.Kind.MATERIAL) return Optional.empty();
    return tasks
        .due(l)
        .filter(t -> t.started() && !t.done() && t.task().minutes() > 0)
        .map(t -> noted.get(t.id()))
        .filter(e -> e.complete().isPresent())
        .map(ProgressEntry::task);
  }

  private Line gone(String id) {
    return new Line(
        id,
        Optional.empty(),
        "No longer in the plan",
        Treatment.GONE,
        BigDecimal.ZERO.setScale(decimals),
        BigDecimal.ZERO,
        zero(),
        zero(),
        false,
        false,
        Optional.empty());
  }

  private Line interestLine() {
    var line =
        estimate.lines().stream().filter(l -> l.kind() == CostLine.Kind.INTEREST).findFirst();
    return new Line(
        line.map(CostLine::id).orElse("interest"),
        Optional.of(line.map(CostLine::stage).orElse(Stage.CLOSE_OUT)),
        line.map(CostLine::description).orElse("Interest"),
        Treatment.INTEREST,
        line.map(CostLine::money).orElse(BigDecimal.ZERO.setScale(decimals)),
        line.map(l -> l.quantity().in(l.unit())).orElse(BigDecimal.ZERO),
        zero(),
        zero(),
        true,
        false,
        Optional.empty());
  }

  private static BigDecimal zero() {
    return BigDecimal.ZERO;
  }

  private static BigDecimal rounded(BigDecimal share) {
    return share.setScale(SHARE_DECIMALS, RoundingMode.HALF_UP).stripTrailingZeros();
  }

  private BigDecimal hireFactor(List<CostReport.Row> rows, BigDecimal hireADay) {
    var byMonth =
        rows.stream()
            .filter(r -> r.line().treatment() == Treatment.TIME)
            .map(r -> r.line().amount())
            .reduce(BigDecimal.ZERO, BigDecimal::add);
    return byMonth.signum() == 0 ? zero() : rounded(hireADay.divide(byMonth, Ratio.PRECISION));
  }

  // ---- months to come -----------------------------------------------------------------------

  private static List<Stage> stages(List<CostReport.Row> rows) {
    return rows.stream()
        .flatMap(r -> r.line().stage().stream())
        .distinct()
        .sorted(Comparator.naturalOrder())
        .toList();
  }

  private List<Outlook.Span> spans(List<Stage> stages) {
    var interest = new Interest(terms.rate(), terms.dayCount(), decimals);
    var time =
        estimate.lines().stream()
            .filter(l -> l.kind() == CostLine.Kind.TIME)
            .map(CostLine::id)
            .collect(toSet());
    Predicate<Payment> byTheMonth = p -> time.contains(p.costLine());
    var due = stages.stream().map(s -> byDay(p -> p.stage() == s, Payment::due)).toList();
    var place =
        Stream.concat(
                stages.stream().map(s -> byTheMonth.negate().and((Payment p) -> p.stage() == s)),
                Stream.of(byTheMonth))
            .map(of -> byDay(of, Payment::inPlace))
            .toList();
    var spans = new ArrayList<Outlook.Span>();
    var last = YearMonth.from(end);
    for (var m = YearMonth.from(status); !m.isAfter(last); m = m.plusMonths(1)) {
      boolean ending = m.equals(last);
      var from = m.atDay(1).isBefore(status) ? status : m.atDay(1);
      var to = ending ? end : m.plusMonths(1).atDay(1);
      var by = ending ? LocalDate.MAX : m.atEndOfMonth();
      spans.add(
          new Outlook.Span(
              m,
              from,
              to,
              interest.days(from, to),
              draw(m, ending),
              due.stream().map(d -> share(d, by)).toList(),
              place.stream().map(d -> share(d, by)).toList()));
    }
    return spans;
  }

  /** The draw asked for in a month; of several the last, with the inspections of all. */
  private Optional<DrawEvent> draw(YearMonth m, boolean ending) {
    if (terms.loan().signum() == 0) return Optional.empty();
    var of =
        events.stream()
            .filter(e -> YearMonth.from(e.date()).equals(m) && !e.date().isBefore(status))
            .toList();
    if (of.isEmpty() && !ending) return Optional.empty();
    var names = of.stream().map(DrawEvent::name).toList();
    return Optional.of(
        new DrawEvent(
            ending ? end : of.get(of.size() - 1).date(),
            ending ? DrawEvents.COMPLETE : String.join("; ", names),
            of.stream().flatMap(e -> e.inspections().stream()).toList(),
            ending));
  }

  /** What is planned from the status date on: by day, all that has come by then. */
  private NavigableMap<LocalDate, BigDecimal> byDay(
      Predicate<Payment> of, Function<Payment, LocalDate> day) {
    var amounts = new TreeMap<LocalDate, BigDecimal>();
    for (var p : payments) {
      if (!of.test(p) || p.amount().signum() <= 0) continue;
      var at = day.apply(p);
      if (!at.isBefore(status)) amounts.merge(at, p.amount(), BigDecimal::add);
    }
    var sum = BigDecimal.ZERO;
    for (var e : amounts.entrySet()) {
      sum = sum.add(e.getValue());
      e.setValue(sum);
    }
    return amounts;
  }

  /** The part that has come by a day. */
  private static BigDecimal share(NavigableMap<LocalDate, BigDecimal> amounts, LocalDate by) {
    if (amounts.isEmpty()) return BigDecimal.ONE; // late already: it comes at once
    var come = amounts.floorEntry(by);
    if (come == null) return BigDecimal.ZERO;
    return rounded(come.getValue().divide(amounts.lastEntry().getValue(), Ratio.PRECISION));
  }
}
