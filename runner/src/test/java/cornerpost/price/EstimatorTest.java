package cornerpost.price;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.CrewEntry;
import cornerpost.scope.DurationUnit;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.OwnItem;
import cornerpost.scope.OwnTask;
import cornerpost.scope.Party;
import cornerpost.scope.Problem;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.Quote;
import cornerpost.scope.QuoteFor;
import cornerpost.scope.Scope;
import cornerpost.scope.ScopeEdit;
import cornerpost.scope.Stage;
import cornerpost.takeoff.BuildTask;
import cornerpost.takeoff.Houses;
import cornerpost.takeoff.Line;
import cornerpost.takeoff.Resource;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EstimatorTest {
  private static final Facts FACTS = Facts.supplied();

  /** No price rise and no contingency, so that a line can be looked at by itself. */
  private static final Map<Question, Object> PLAIN =
      Map.of(
          OptionsQuestions.ESCALATION, "0",
          OptionsQuestions.CONTINGENCY_SHELL, "0",
          OptionsQuestions.CONTINGENCY_REST, "0");

  private static Scope plain() {
    return Houses.oneBedroom(UnitSystem.METRIC, PLAIN);
  }

  private static Line line(String id, String amount, Unit unit, Resource... resources) {
    return Line.of(
        id, Stage.INSULATION, id, Figure.constant(amount, unit), unit, "given", resources);
  }

  private static Resource buy(String item) {
    return Resource.Buy.of(item, BuildTask.WALL_BOARD);
  }

  private static Resource buy(String item, String waste) {
    return Resource.Buy.of(item, Figure.constant(waste, Unit.ONE), BuildTask.WALL_BOARD);
  }

  private static Resource work(String activity, BuildTask task) {
    return Resource.Labour.of(activity, task);
  }

  private static Estimate estimate(Scope scope, TestBook book, Line... lines) {
    var result = Estimator.estimate(scope, List.of(lines), Optional.of(book.book()), FACTS);
    return result.estimate().orElseThrow(() -> new AssertionError(result.problems()));
  }

  private static CostLine find(Estimate estimate, String id) {
    return estimate.lines().stream()
        .filter(l -> l.id().equals(id))
        .findFirst()
        .orElseThrow(
            () ->
                new AssertionError(
                    id + " in " + estimate.lines().stream().map(CostLine::id).toList()));
  }

  private static BigDecimal sum(Estimate e, String idStem) {
    return e.lines().stream()
        .filter(l -> l.id().startsWith(idStem))
        .map(CostLine::money)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static Scope with(Scope s, List<Quote> quotes) {
    return with(s, quotes, List.of(), List.of(), List.of());
  }

  private static Scope with(
      Scope s,
      List<Quote> quotes,
      List<OwnItem> items,
      List<OwnTask> tasks,
      List<CrewEntry> crews) {
    return ScopeEdit.of(s).quotes(quotes).ownItems(items).ownTasks(tasks).crews(crews).scope();
  }

  private static Quote quote(String line, QuoteFor quoteFor, String amount, int row) {
    return new Quote(
        line,
        "Supplier " + row,
        quoteFor,
        new BigDecimal(amount),
        Optional.empty(),
        Optional.empty(),
        true,
        "Quotes!D" + row);
  }

  // 60 m2 x 1.10 x 9.00 = 594.00; 60 x 0.22 = 13.2 h x 28 x 1.3 = 480.48; together 1 074.48.
  // By hand: definition of a line's cost, common practice, no source.
  @Test
  void hanging_plasterboard_costs_board_with_waste_and_hours_at_the_rate() {
    var book =
        new TestBook()
            .item("board", "m2", "1", "m2", "no", "8,9,11")
            .hours("hang", "m2", "0.18,0.22,0.26")
            .labour("30", "36.40", "50", "no");
    var hired = Houses.hired();
    var scope = hiredPlain();
    assertThat(hired.assignment(cornerpost.scope.Trade.BOARDING).party()).isEqualTo(Party.HIRED);
    var e =
        estimate(
            scope,
            book,
            line("b", "60", Unit.M2, buy("board", "0.1"), work("hang", BuildTask.WALL_BOARD)));
    assertThat(find(e, "b:board").money()).isEqualByComparingTo("594.00");
    assertThat(find(e, "b:hang").quantity().in(Unit.HOUR)).isEqualByComparingTo("13.2");
    assertThat(find(e, "b:hang").money()).isEqualByComparingTo("480.48");
    assertThat(sum(e, "b:")).isEqualByComparingTo("1074.48");
    assertThat(find(e, "b:board").low()).isEqualByComparingTo("528");
    assertThat(find(e, "b:board").high()).isEqualByComparingTo("726");
  }

  private static Scope hiredPlain() {
    return Houses.hired(PLAIN);
  }

  // Half up after guard digits: 0.125 -> 0.13, 0.135 -> 0.14, 2.675 -> 2.68, 1.005 -> 1.01
  // (by hand; binary doubles would give 2.67 and 1.00).
  @ParameterizedTest
  @CsvSource({"0.125, 0.13", "0.135, 0.14", "2.675, 2.68", "1.005, 1.01", "0.004999, 0.00"})
  void half_a_cent_is_rounded_up_once_a_line(String price, String amount) {
    var book =
        new TestBook().item("thing", "each", "1", "each", "no", price + "," + price + "," + price);
    var e = estimate(plain(), book, line("t", "1", Unit.EACH, buy("thing")));
    assertThat(find(e, "t:thing").money()).isEqualByComparingTo(amount);
  }

  // 5 lines of 0.59 at 8.25 %: 0.05 a line would be 0.25; on the stage's 2.95 it is 0.24.
  @Test
  void tax_is_rounded_once_a_stage_not_once_a_line() {
    var book =
        new TestBook()
            .item("t", "Timber and sheet", "each", "1", "each", "no", "0.59,0.59,0.59", "yes", "0")
            .item("u", "each", "1", "each", "no", "100,100,100");
    var e =
        estimate(
            plain(),
            book,
            line("1", "1", Unit.EACH, buy("t")),
            line("2", "1", Unit.EACH, buy("t")),
            line("3", "1", Unit.EACH, buy("t")),
            line("4", "1", Unit.EACH, buy("t")),
            line("5", "1", Unit.EACH, buy("t")),
            line("untaxed", "1", Unit.EACH, buy("u")));
    assertThat(find(e, "tax/insulation").quantity().value()).isEqualByComparingTo("2.95");
    assertThat(find(e, "tax/insulation").money()).isEqualByComparingTo("0.24");
    assertThat(e.tax()).isEqualByComparingTo("0.24");
  }

  // 250 000 at 4 % a year for 14 months = 261 705.13: C (1 + e)^(months / 12), by hand.
  // 2025-12-31 to 2026-12-31 is 365 days = 11.99 months; the stage adds its share of the time
  // allowed: 70 % of it, here (14 - 11.99) / 0.7 months.
  @Test
  void prices_rise_to_the_time_of_buying() {
    var choices = new HashMap<>(PLAIN);
    choices.put(OptionsQuestions.ESCALATION, "0.04");
    choices.put(ProjectQuestions.START, LocalDate.of(2026, 12, 31));
    choices.put(
        ProjectQuestions.TIME_ALLOWED,
        Figure.choice(
            "Project!B9",
            "months",
            new BigDecimal("2.01").divide(new BigDecimal("0.7"), java.math.MathContext.DECIMAL64),
            Unit.count("month")));
    var book =
        new TestBook()
            .region("USD", "metric", "2025-12-31", "0")
            .item("all", "each", "1", "each", "no", "250000,250000,250000");
    var e =
        estimate(
            Houses.oneBedroom(UnitSystem.METRIC, choices),
            book,
            line("x", "1", Unit.EACH, buy("all")));
    assertThat(find(e, "price-rise/insulation").money()).isEqualByComparingTo("11705.13");
  }

  // (1.04)^0.5 = 1.0198: by hand.
  @Test
  void six_months_at_four_per_cent_are_just_under_two_per_cent() {
    var choices = new HashMap<>(PLAIN);
    choices.put(OptionsQuestions.ESCALATION, "0.04");
    choices.put(ProjectQuestions.START, LocalDate.of(2026, 1, 1));
    choices.put(
        ProjectQuestions.TIME_ALLOWED,
        Figure.choice(
            "Project!B9",
            "months",
            new BigDecimal("6").divide(new BigDecimal("0.7"), java.math.MathContext.DECIMAL64),
            Unit.count("month")));
    var book = new TestBook().item("all", "each", "1", "each", "no", "10000,10000,10000");
    var e =
        estimate(
            Houses.oneBedroom(UnitSystem.METRIC, choices),
            book,
            line("x", "1", Unit.EACH, buy("all")));
    // The prices are of July 2026, after the start: the way to it counts as nothing.
    assertThat(find(e, "price-rise/insulation").money()).isEqualByComparingTo("198.04");
  }

  @Test
  void tax_is_taken_with_the_price_rise_and_contingency_on_all_of_it() {
    var choices = new HashMap<Question, Object>();
    choices.put(OptionsQuestions.ESCALATION, "0.1");
    choices.put(OptionsQuestions.CONTINGENCY_REST, "0.12");
    choices.put(ProjectQuestions.START, LocalDate.of(2026, 1, 1));
    choices.put(
        ProjectQuestions.TIME_ALLOWED,
        Figure.choice(
            "Project!B9",
            "months",
            new BigDecimal("12").divide(new BigDecimal("0.7"), java.math.MathContext.DECIMAL128),
            Unit.count("month")));
    var book =
        new TestBook()
            .region("EUR", "metric", "2026-07-01", "0.2")
            .item("t", "Timber and sheet", "each", "1", "each", "no", "100,100,100", "yes", "0")
            .item("u", "each", "1", "each", "no", "50,50,50");
    var e =
        estimate(
            Houses.oneBedroom(UnitSystem.METRIC, choices),
            book,
            line("x", "1", Unit.EACH, buy("t")),
            line("y", "1", Unit.EACH, buy("u")));
    // By hand: 150 x 10 % = 15; tax 100 x 1.1 x 20 % = 22; contingency (150 + 15 + 22) x 12 %.
    assertThat(find(e, "price-rise/insulation").money()).isEqualByComparingTo("15.00");
    assertThat(find(e, "tax/insulation").money()).isEqualByComparingTo("22.00");
    assertThat(find(e, "contingency/insulation").money()).isEqualByComparingTo("22.44");
    assertThat(e.byStage().get(Stage.INSULATION)).isEqualByComparingTo("209.44");
    assertThat(e.direct()).isEqualByComparingTo("150");
    assertThat(e.indirect()).isEqualByComparingTo("15");
    assertThat(e.total()).isEqualByComparingTo("209.44");
  }

  // Rate 8.25 %, 233 900 lent, half drawn on average, 7 months: 5 628.22 by the quick rule
  // loan x average share x rate x months / 12, by hand.
  @Test
  void interest_in_the_budget_is_that_of_the_average_loan_drawn() {
    var choices = new HashMap<>(PLAIN);
    choices.put(LoanQuestions.AMOUNT, "233900");
    choices.put(LoanQuestions.RATE, "0.0825");
    choices.put(LoanQuestions.AVERAGE_DRAWN, "0.5");
    choices.put(ProjectQuestions.TIME_ALLOWED, "7");
    choices.put(OptionsQuestions.RENT, "910.50");
    var e = estimate(Houses.oneBedroom(UnitSystem.METRIC, choices), new TestBook());
    assertThat(find(e, "interest").money()).isEqualByComparingTo("5628.22");
    assertThat(find(e, "rent").money()).isEqualByComparingTo("6373.50");
  }

  @Test
  void a_pack_used_by_one_line_is_rounded_up_in_that_line() {
    var book = new TestBook().item("board", "sheet", "2.88", "m2", "yes", "20,24,30");
    var e = estimate(plain(), book, line("a", "60", Unit.M2, buy("board", "0.1")));
    // 60 x 1.1 / 2.88 = 22.9: 23 sheets of 24.00.
    assertThat(find(e, "a:board").quantity().value()).isEqualByComparingTo("23");
    assertThat(find(e, "a:board").money()).isEqualByComparingTo("552.00");
    assertThat(e.lines()).noneMatch(l -> l.id().startsWith("packs:"));
  }

  @Test
  void a_pack_shared_by_lines_is_rounded_up_once_for_all() {
    var book = new TestBook().item("board", "sheet", "2.88", "m2", "yes", "20,24,30");
    var e =
        estimate(
            plain(),
            book,
            line("a", "14.4", Unit.M2, buy("board", "0.1")),
            line("b", "2.88", Unit.M2, buy("board")),
            line("c", "1.44", Unit.M2, buy("board")));
    // 5.5 + 1 + 0.5 sheets are seven whole ones: nothing to add.
    assertThat(find(e, "a:board").quantity().value()).isEqualByComparingTo("5.5");
    assertThat(find(e, "packs:board").quantity().value()).isEqualByComparingTo("0");
    var more =
        estimate(
            plain(),
            book,
            line("a", "14.4", Unit.M2, buy("board", "0.1")),
            line("b", "2.88", Unit.M2, buy("board")));
    assertThat(find(more, "packs:board").quantity().value()).isEqualByComparingTo("0.5");
    assertThat(sum(more, "packs")).isEqualByComparingTo("12.00");
    assertThat(more.total()).isEqualByComparingTo("168.00"); // 7 sheets of 24.00
  }

  @Test
  void a_line_quoted_as_a_whole_brings_its_own_packs() {
    var book = new TestBook().item("board", "sheet", "2.88", "m2", "yes", "20,24,30");
    var scope = with(plain(), List.of(quote("a:board", QuoteFor.WHOLE, "99.99", 2)));
    var e =
        estimate(
            scope,
            book,
            line("a", "14.4", Unit.M2, buy("board")),
            line("b", "1.44", Unit.M2, buy("board")));
    assertThat(find(e, "packs:board").quantity().value()).isEqualByComparingTo("0.5");
    assertThat(find(e, "a:board").money()).isEqualByComparingTo("99.99");
  }

  @Test
  void a_quote_replaces_the_price_of_the_book_and_stays_an_entry() {
    var book = new TestBook().item("board", "sheet", "2.88", "m2", "no", "20,24,30");
    var scope =
        with(
            plain(),
            List.of(
                quote("a:board", QuoteFor.UNIT, "21.50", 2),
                quote("b:board", QuoteFor.WHOLE, "100", 3)));
    var e =
        estimate(
            scope,
            book,
            line("a", "28.8", Unit.M2, buy("board")),
            line("b", "14.4", Unit.M2, buy("board")));
    var each = find(e, "a:board");
    assertThat(each.money()).isEqualByComparingTo("215.00");
    assertThat(each.basis()).isEqualTo(CostLine.Basis.QUOTE);
    assertThat(each.bookRate().value()).isEqualByComparingTo("24");
    assertThat(each.amount().leaves()).anyMatch(l -> l.key().equals("Quotes!D2"));
    assertThat(each.low()).isEqualByComparingTo("215");
    var whole = find(e, "b:board");
    assertThat(whole.money()).isEqualByComparingTo("100");
    assertThat(whole.rate().value()).isEqualByComparingTo("20");
    assertThat(whole.amount().leaves()).extracting(l -> l.key()).containsExactly("Quotes!D3");
  }

  @Test
  void quotes_and_own_amounts_do_not_rise() {
    var choices = new HashMap<>(PLAIN);
    choices.put(OptionsQuestions.ESCALATION, "0.1");
    var scope =
        with(
            Houses.oneBedroom(UnitSystem.METRIC, choices),
            List.of(quote("a:t", QuoteFor.WHOLE, "70", 2)));
    var book =
        new TestBook()
            .item("t", "Timber and sheet", "each", "1", "each", "no", "100,100,100", "yes", "0");
    var alone = estimate(scope, book, line("a", "1", Unit.EACH, buy("t")));
    assertThat(alone.lines()).noneMatch(l -> l.id().startsWith("price-rise/insulation"));
    assertThat(find(alone, "tax/insulation").quantity().value()).isEqualByComparingTo("70");
    var two =
        estimate(
            scope, book, line("a", "1", Unit.EACH, buy("t")), line("b", "1", Unit.EACH, buy("t")));
    assertThat(find(two, "price-rise/insulation").quantity().value()).isEqualByComparingTo("100");
  }

  @Test
  void two_used_quotes_for_a_line_are_a_fault_and_stray_or_ended_ones_a_remark() {
    var book = new TestBook().item("t", "each", "1", "each", "no", "1,1,1");
    var ended =
        new Quote(
            "b:t",
            "Late",
            QuoteFor.UNIT,
            BigDecimal.TEN,
            Optional.empty(),
            Optional.of(LocalDate.of(2027, 2, 28)),
            true,
            "Quotes!D7");
    var quotes =
        List.of(
            quote("gone:t", QuoteFor.UNIT, "5", 4),
            quote("tax/insulation", QuoteFor.WHOLE, "5", 5),
            ended);
    var lines = List.of(line("a", "1", Unit.EACH, buy("t")), line("b", "1", Unit.EACH, buy("t")));
    var result = Estimator.estimate(with(plain(), quotes), lines, Optional.of(book.book()), FACTS);
    assertThat(result.estimate()).isPresent();
    assertThat(result.problems())
        .allMatch(p -> p.severity() == Problem.Severity.REMARK)
        .extracting(Problem::cell)
        .containsExactlyInAnyOrder("D4", "D5", "D7");
    assertThat(find(result.estimate().get(), "b:t").money()).isEqualByComparingTo("10");

    var twice = List.of(quote("a:t", QuoteFor.UNIT, "5", 2), quote("a:t", QuoteFor.WHOLE, "6", 3));
    var refused = Estimator.estimate(with(plain(), twice), lines, Optional.of(book.book()), FACTS);
    assertThat(refused.estimate()).isEmpty();
    assertThat(refused.problems())
        .singleElement()
        .extracting(Problem::message)
        .asString()
        .startsWith("Quotes!D3: a second used quote for 'a:t'");
  }

  @Test
  void the_owners_hours_cost_nothing_and_take_longer() {
    var book =
        new TestBook()
            .item("t", "each", "1", "each", "no", "1,1,1")
            .hours("hang", "m2", "0.2,0.25,0.5");
    // Boarding is the owner's in this house; the owner's time factor is 1.5.
    var e = estimate(plain(), book, line("b", "40", Unit.M2, work("hang", BuildTask.WALL_BOARD)));
    var own = find(e, "b:hang:own");
    assertThat(own.kind()).isEqualTo(CostLine.Kind.OWN_LABOUR);
    assertThat(own.quantity().in(Unit.HOUR)).isEqualByComparingTo("15");
    assertThat(own.money()).isEqualByComparingTo("0");
    assertThat(e.lines()).noneMatch(l -> l.id().equals("b:hang"));
    var hours = e.hours().get(0);
    assertThat(hours.low()).isEqualByComparingTo("12");
    assertThat(hours.high()).isEqualByComparingTo("30");
  }

  @Test
  void mixed_work_is_split_by_the_owners_share_of_the_trades_hours() {
    var book = new TestBook().hours("tile", "m2", "1,1,1");
    // Tiling is mixed, half each: 10 h hired at 40, 10 h x 1.5 of the owner's.
    var e = estimate(plain(), book, line("w", "20", Unit.M2, work("tile", BuildTask.WALL_TILES)));
    assertThat(find(e, "w:tile").quantity().in(Unit.HOUR)).isEqualByComparingTo("10");
    assertThat(find(e, "w:tile").money()).isEqualByComparingTo("400");
    assertThat(find(e, "w:tile:own").quantity().in(Unit.HOUR)).isEqualByComparingTo("15");
    assertThat(e.hours()).hasSize(2);
  }

  @Test
  void everything_that_a_book_lacks_is_named_at_once() {
    var book =
        new TestBook()
            .item("steel", "kg", "1", "kg", "no", "1,1,1")
            .hours("lay", "m", "1,1,1")
            .file(
                "labour.csv",
                "trade,low,likely,high,usual crew,taxed,source\nFraming,1,2,3,2,no,x\n");
    var lines =
        List.of(
            line("a", "1", Unit.M2, buy("nails"), buy("glue"), work("hang", BuildTask.WALL_BOARD)),
            line("b", "1", Unit.M2, buy("nails"), buy("steel")),
            line("c", "1", Unit.M2, work("lay", BuildTask.WALL_STUDS)),
            line("d", "1", Unit.M, work("lay", BuildTask.WALL_STUDS)),
            line("e", "1", Unit.M, work("lay", BuildTask.ELECTRICAL_FIRST)));
    var result = Estimator.estimate(Houses.hired(), lines, Optional.of(book.book()), FACTS);
    assertThat(result.estimate()).isEmpty();
    assertThat(result.problems().stream().map(Problem::found))
        .containsExactlyInAnyOrder(
            "no item 'nails', needed by a, b",
            "no item 'glue', needed by a",
            "item 'steel' holds kg, needed by b",
            "no hours for 'hang', needed by a",
            "hours for 'lay' are per m, needed by c",
            "no rate for trade 'Boarding and plastering', needed by a",
            "no rate for trade 'Electrical', needed by e");
  }

  @ParameterizedTest
  @CsvSource({"LOW, 8, 16", "LIKELY, 10, 30", "HIGH, 13, 65"})
  void the_price_point_takes_prices_rates_and_hours_alike(
      String point, String material, String labour) {
    var choices = new HashMap<>(PLAIN);
    choices.put(OptionsQuestions.PRICE_POINT, cornerpost.scope.PricePoint.valueOf(point));
    var book =
        new TestBook()
            .item("t", "each", "1", "each", "no", "8,10,13")
            .hours("do", "each", "0.5,0.75,1")
            .labour("32", "40", "65", "no");
    var e =
        estimate(
            Houses.hired(choices),
            book,
            line("a", "1", Unit.EACH, buy("t"), work("do", BuildTask.WALL_BOARD)));
    assertThat(find(e, "a:t").money()).isEqualByComparingTo(material);
    assertThat(find(e, "a:do").money()).isEqualByComparingTo(labour);
  }

  @Test
  void own_items_and_own_tasks_are_priced_without_a_book() {
    var none = new HashMap<>(PLAIN);
    none.put(ProjectQuestions.GENERATED_TASKS, cornerpost.scope.GeneratedTasks.NONE);
    var rate = Figure.choice("Crews!D2", "rate", new BigDecimal("35.25"), Unit.ONE);
    var crews = List.of(new CrewEntry("Gang", 3, Optional.empty(), Optional.of(rate), "Crews!A2"));
    var task =
        new OwnTask(
            "T1",
            "Dig",
            new BigDecimal("2.5"),
            DurationUnit.DAYS,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Map.of("Gang", 2),
            "Own tasks!A2");
    var item =
        new OwnItem(
            "piano",
            Stage.FINISHES,
            "Piano",
            Figure.choice("Own items!D2", "quantity", new BigDecimal("3"), Unit.ONE),
            "each",
            Figure.choice("Own items!F2", "rate", new BigDecimal("33.335"), Unit.ONE),
            Party.OWNER,
            false,
            "Own items!A2");
    var scope =
        with(
            Houses.oneBedroom(UnitSystem.METRIC, none),
            List.of(),
            List.of(item),
            List.of(task),
            crews);
    var result = Estimator.estimate(scope, List.of(), Optional.empty(), FACTS);
    var e = result.estimate().orElseThrow();
    assertThat(e.currency().getCurrencyCode()).isEqualTo("USD");
    // 2.5 days of 8 h x 2 x 35.25; 3 x 33.335 = 100.005, half up.
    assertThat(find(e, "own-task/T1").money()).isEqualByComparingTo("1410.00");
    assertThat(find(e, "own/piano").money()).isEqualByComparingTo("100.01");
    assertThat(e.total()).isEqualByComparingTo("1510.01");
  }

  @Test
  void two_own_items_of_one_id_are_a_fault() {
    var one = Figure.choice("Own items!D2", "one", BigDecimal.ONE, Unit.ONE);
    var first =
        new OwnItem("x", Stage.FINISHES, "X", one, "each", one, Party.OWNER, false, "Own items!A2");
    var second =
        new OwnItem("x", Stage.OUTSIDE, "Y", one, "each", one, Party.OWNER, false, "Own items!A3");
    var scope = with(plain(), List.of(), List.of(first, second), List.of(), List.of());
    var result = Estimator.estimate(scope, List.of(), Optional.of(new TestBook().book()), FACTS);
    assertThat(result.estimate()).isEmpty();
    assertThat(result.problems())
        .singleElement()
        .extracting(Problem::message)
        .asString()
        .startsWith("Own items!A3: the id 'x' again");
  }

  @Test
  void quantities_without_a_price_book_are_a_fault() {
    var result =
        Estimator.estimate(
            plain(), List.of(line("a", "1", Unit.EACH, buy("t"))), Optional.empty(), FACTS);
    assertThat(result.estimate()).isEmpty();
    assertThat(result.problems()).singleElement().extracting(Problem::sheet).isEqualTo("Project");
  }

  @Test
  void an_own_rate_of_a_trades_crew_replaces_the_books() {
    var crews =
        List.of(
            new CrewEntry(
                "Boarding and plastering",
                2,
                Optional.empty(),
                Optional.of(Figure.choice("Crews!D3", "rate", BigDecimal.TEN, Unit.ONE)),
                "Crews!A3"));
    var scope = with(Houses.hired(PLAIN), List.of(), List.of(), List.of(), crews);
    var book = new TestBook().hours("hang", "m2", "1,1,1");
    var e = estimate(scope, book, line("a", "3", Unit.M2, work("hang", BuildTask.WALL_BOARD)));
    assertThat(find(e, "a:hang").money()).isEqualByComparingTo("30");
    assertThat(find(e, "a:hang").basis()).isEqualTo(CostLine.Basis.OWN);
    assertThat(find(e, "a:hang").bookRate().value()).isEqualByComparingTo("40");
  }
}
