package cornerpost.workbook;

import cornerpost.check.Check;
import cornerpost.fact.Facts;
import cornerpost.finance.Finance;
import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.plan.DatedTask;
import cornerpost.plan.EventPath;
import cornerpost.plan.OrderRow;
import cornerpost.plan.Plan;
import cornerpost.plan.Programme;
import cornerpost.plan.Slippage;
import cornerpost.price.CostLine;
import cornerpost.price.Estimator;
import cornerpost.price.HoursPerUnit;
import cornerpost.price.Item;
import cornerpost.price.LabourRate;
import cornerpost.price.PriceBook;
import cornerpost.price.Region;
import cornerpost.price.SupplierGroup;
import cornerpost.risk.RiskResult;
import cornerpost.risk.Spread;
import cornerpost.scope.CalendarEntry;
import cornerpost.scope.Party;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Quote;
import cornerpost.scope.Scope;
import cornerpost.scope.ScopeEdit;
import cornerpost.scope.Stage;
import cornerpost.scope.Trade;
import cornerpost.takeoff.BuildTask;
import cornerpost.takeoff.Line;
import cornerpost.takeoff.Resource;
import cornerpost.trace.Figure;
import cornerpost.work.WorkPlan;
import cornerpost.work.WorkTask;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Plans put together by hand: few lines, but every kind of line, sheet and chart. */
final class TestPlans {
  static final String FINGERPRINT = "0123456789ab";

  private TestPlans() {}

  private static final String FACTS =
      """
      id,name,value,unit,source,certainty
      box.40hc.length,length,12.192,m,ISO 668:2020,confirmed
      box.40hc.width,width,2.438,m,ISO 668:2020,confirmed
      box.40hc.inside-length,inside length,12.032,m,common practice no source,common practice
      box.40hc.inside-width,inside width,2.352,m,common practice no source,common practice
      waste.steel,waste of steel sections,0.075,,common practice no source,common practice
      time.share.shell,when the shell is paid for,0.4,,common practice no source,common practice
      time.share.finishes,when finishes are paid for,0.8,,common practice no source,common practice
      time.share.close_out,when close-out is paid for,1,,common practice no source,common practice
      time.share.containers,when boxes are paid for,0.3,,common practice no source,common practice
      """;

  static Facts facts() {
    try {
      return Facts.read(
          "test.csv", new ByteArrayInputStream(FACTS.getBytes(StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static PriceBook book(UnitSystem units, String currency, Map<String, String> changed) {
    var region =
        new Region(
            "Test region",
            Currency.getInstance(currency),
            units,
            LocalDate.of(2026, 7, 1),
            "Sales tax",
            new BigDecimal("0.0825"),
            "Invented for a test.",
            Optional.empty(),
            cornerpost.measure.NumberStyle.PLAIN,
            List.of());
    var items =
        List.of(
            item(
                "box-40hc",
                SupplierGroup.BOXES,
                Item.Kind.MATERIAL,
                "each",
                "1",
                "each",
                true,
                price(changed, "box-40hc", "4200"),
                true),
            item(
                "steel-tube",
                SupplierGroup.STEEL,
                Item.Kind.MATERIAL,
                "length",
                "6",
                "m",
                true,
                price(changed, "steel-tube", "41.35"),
                true),
            item(
                "sealant",
                SupplierGroup.PAINT,
                Item.Kind.MATERIAL,
                "cartridge",
                "11.5",
                "m",
                true,
                price(changed, "sealant", "7.95"),
                true),
            item(
                "paint",
                SupplierGroup.PAINT,
                Item.Kind.MATERIAL,
                "l",
                "9.3",
                "m2",
                false,
                price(changed, "paint", "12.333"),
                true),
            item(
                "crane",
                SupplierGroup.SITE_HIRE,
                Item.Kind.PLANT,
                "h",
                "1",
                "h",
                false,
                price(changed, "crane", "145"),
                false),
            item(
                "toilet-hire",
                SupplierGroup.SITE_HIRE,
                Item.Kind.TIME,
                "month",
                "1",
                "month",
                false,
                price(changed, "toilet-hire", "118.5"),
                false));
    var rates =
        List.of(
            new LabourRate(
                Trade.STEELWORK,
                new BigDecimal("48"),
                new BigDecimal(price(changed, "labour/steelwork", "56.5")),
                new BigDecimal("70"),
                2,
                false,
                "invented for a test"),
            new LabourRate(
                Trade.PAINTING,
                new BigDecimal("30"),
                new BigDecimal("35"),
                new BigDecimal("44"),
                1,
                false,
                "invented for a test"));
    var hours =
        List.of(
            new HoursPerUnit(
                "frame-opening",
                "Cut and frame an opening",
                Unit.M,
                new BigDecimal("0.6"),
                new BigDecimal("0.85"),
                new BigDecimal("1.3"),
                "invented for a test"),
            new HoursPerUnit(
                "paint-wall",
                "Paint",
                Unit.M2,
                new BigDecimal("0.1"),
                new BigDecimal("0.137"),
                new BigDecimal("0.2"),
                "invented for a test"));
    return new PriceBook("test-2026", region, items, rates, hours, List.of());
  }

  private static String price(Map<String, String> changed, String code, String usual) {
    return changed.getOrDefault(code, usual);
  }

  private static Item item(
      String code,
      SupplierGroup group,
      Item.Kind kind,
      String soldBy,
      String content,
      String contentUnit,
      boolean whole,
      String price,
      boolean taxed) {
    var likely = new BigDecimal(price);
    return new Item(
        code,
        group,
        "A " + code,
        kind,
        Unit.get(soldBy),
        new BigDecimal(content),
        Unit.get(contentUnit),
        whole,
        likely.multiply(new BigDecimal("0.9")),
        likely,
        likely.multiply(new BigDecimal("1.2")),
        taxed,
        14,
        "invented for a test");
  }

  static List<Line> lines(Scope scope, Facts facts) {
    var lines = new ArrayList<Line>();
    var box = scope.boxes().get(0);
    lines.add(
        Line.of(
            "box/A/buy",
            Stage.CONTAINERS,
            "Container A",
            Figure.count(1),
            Unit.EACH,
            "one for each row",
            Resource.Buy.of("box-40hc", BuildTask.CHOOSE_BOXES)));
    lines.add(
        Line.of(
            "box/A/crane",
            Stage.CONTAINERS,
            "Crane for A",
            Figure.workedOut(
                "crane-hours/A",
                "hours of the crane",
                new BigDecimal("3.25"),
                Unit.HOUR,
                "picks one by one"),
            Unit.HOUR,
            "worked out",
            Resource.Buy.of("crane", BuildTask.BOOK_CRANE)));
    var length = scope.units().choose(Unit.M, Unit.FT);
    var area = scope.units().choose(Unit.M2, Unit.SQ_FT);
    for (var o : scope.openings()) {
      var round = o.width().plus(o.height()).times(2);
      lines.add(
          Line.of(
              "opening/" + o.id() + "/frame-steel",
              Stage.SHELL,
              "Frame of " + o.id(),
              round,
              length,
              "all round",
              Resource.Buy.of("steel-tube", facts.figure("waste.steel"), BuildTask.SURVEY),
              Resource.Labour.of("frame-opening", task(Trade.STEELWORK))));
      lines.add(
          Line.of(
              "opening/" + o.id() + "/sealant",
              Stage.SHELL,
              "Sealant round " + o.id(),
              lines.get(lines.size() - 1).named().times(2),
              length,
              "inside and outside",
              Resource.Buy.of("sealant", BuildTask.SURVEY)));
    }
    var wall =
        box.fact(facts, "length")
            .times(Figure.constant("2.6", Unit.M))
            .minus(
                Figure.sum(
                    Dimension.AREA,
                    scope.openings().stream().map(o -> o.width().times(o.height())).toList()))
            .atLeastZero();
    lines.add(
        Line.of(
            "wall/paint",
            Stage.FINISHES,
            "=Painted \"walls\" & more",
            wall,
            area,
            "length by height less openings",
            Resource.Buy.of("paint", BuildTask.SURVEY),
            Resource.Labour.of("paint-wall", task(Trade.PAINTING))));
    lines.add(
        Line.of(
            "time/toilet",
            Stage.CLOSE_OUT,
            "Hire of a toilet",
            scope.project().figure(ProjectQuestions.TIME_ALLOWED),
            Unit.count("month"),
            "as long as it takes",
            Resource.Buy.of("toilet-hire", BuildTask.SITE_SET_UP)));
    return List.copyOf(lines);
  }

  private static BuildTask task(Trade trade) {
    for (var t : BuildTask.values()) {
      if (t.trade().filter(trade::equals).isPresent()) return t;
    }
    throw new IllegalStateException();
  }

  static Plan plan(Scope scope) {
    return plan(scope, Map.of());
  }

  /** A plan of a scope at the test's prices, some of them changed. */
  static Plan plan(Scope scope, Map<String, String> prices) {
    var facts = facts();
    var book =
        Optional.of(book(scope.units(), scope.units() == UnitSystem.US ? "USD" : "EUR", prices));
    var lines = lines(scope, facts);
    var result = Estimator.estimate(scope, lines, book, facts);
    var estimate =
        result.estimate().orElseThrow(() -> new AssertionError(result.problems().toString()));
    var tasks = tasks(estimate.lines());
    var work =
        new WorkPlan(
            tasks.stream().map(DatedTask::task).toList(),
            List.of(),
            List.of(new WorkPlan.CrewLimit("Steelwork", 1, "Weekdays")),
            List.<CalendarEntry>of(),
            List.of(),
            "Weekdays");
    return new Plan(
        scope,
        facts,
        book,
        lines,
        estimate,
        work,
        programme(tasks),
        orders(estimate.lines(), book.get()),
        List.of(),
        risk(estimate.total().doubleValue()),
        finance(estimate.byStage()),
        checks(),
        result.problems(),
        LocalDate.of(2027, 3, 8),
        FINGERPRINT);
  }

  private static List<DatedTask> tasks(List<CostLine> lines) {
    var start = LocalDate.of(2027, 3, 1);
    var tasks = new ArrayList<DatedTask>();
    var kinds = WorkTask.Kind.values();
    var named = lines.stream().flatMap(l -> l.task().stream()).distinct().toList();
    for (int i = 0; i < 14; i++) {
      var id = i < named.size() ? named.get(i) : "task-" + i;
      var first = start.plusDays(7L * i);
      var last = first.plusDays(4 + i % 3);
      var kind = i == 13 ? WorkTask.Kind.MILESTONE : kinds[i % kinds.length];
      var work =
          new WorkTask(
              id,
              i == 13 ? "Move in" : "Task number " + i,
              Stage.values()[Math.min(9, i * 10 / 14)],
              kind,
              Optional.of(Trade.STEELWORK),
              Optional.of(Party.HIRED),
              480L * 5,
              kind == WorkTask.Kind.WAIT,
              "Weekdays",
              Map.of("Steelwork", 1),
              Optional.empty(),
              Optional.empty(),
              2000,
              3000,
              hours(lines, id),
              true,
              "five days of one crew",
              List.of());
      boolean drives = i % 3 != 1;
      var floats = drives ? BigDecimal.ZERO : BigDecimal.valueOf(i % 2 == 0 ? 12 : 4);
      tasks.add(
          new DatedTask(
              work,
              first.atTime(8, 0),
              last.atTime(16, 0),
              first,
              last,
              BigDecimal.valueOf(5),
              first.atTime(8, 0),
              last.atTime(16, 0),
              first.plusDays(floats.longValue()).atTime(8, 0),
              last.plusDays(floats.longValue()).atTime(16, 0),
              first,
              last,
              first.plusDays(floats.longValue()),
              last.plusDays(floats.longValue()),
              floats,
              floats,
              drives,
              drives,
              i == 0,
              i == 1,
              i == 0 ? "the start of the plan" : "Task number " + (i - 1),
              i == 0 ? List.of() : List.of(tasks.get(i - 1).id())));
    }
    return tasks;
  }

  private static double hours(List<CostLine> lines, String id) {
    return lines.stream()
        .filter(l -> l.unit().equals(Unit.HOUR) && l.task().filter(id::equals).isPresent())
        .mapToDouble(l -> l.quantity().asDouble(Unit.HOUR))
        .sum();
  }

  private static Programme programme(List<DatedTask> tasks) {
    var last = tasks.get(tasks.size() - 1);
    var ids = tasks.stream().filter(DatedTask::drivesMoveIn).map(DatedTask::id).toList();
    var load = new ArrayList<Programme.CrewDay>();
    for (int w = 0; w < 14; w++) {
      var week = LocalDate.of(2027, 3, 1).plusWeeks(w);
      load.add(
          new Programme.CrewDay(
              "Steelwork", week, BigDecimal.valueOf(w % 4), BigDecimal.valueOf(5)));
      load.add(
          new Programme.CrewDay("Painting", week, new BigDecimal("1.5"), BigDecimal.valueOf(2)));
    }
    return new Programme(
        tasks,
        LocalDate.of(2027, 3, 1),
        last.lastDay(),
        last.lastDay(),
        Optional.of(LocalDate.of(2027, 4, 5)),
        BigDecimal.valueOf(65),
        true,
        BigDecimal.valueOf(60),
        BigDecimal.valueOf(5),
        false,
        ids,
        ids,
        ids,
        Optional.of(6),
        load,
        List.of(
            new Programme.NetworkFinding(
                "loose ends", true, "Every task leads to move-in.", List.of())),
        EventPath.NONE,
        Slippage.NONE);
  }

  private static List<OrderRow> orders(List<CostLine> lines, PriceBook book) {
    var rows = new ArrayList<OrderRow>();
    for (var item : book.items().values()) {
      var of =
          lines.stream().filter(l -> l.item().filter(item.code()::equals).isPresent()).toList();
      if (of.isEmpty()) continue;
      var buy =
          of.stream().map(l -> l.quantity().in(l.unit())).reduce(BigDecimal.ZERO, BigDecimal::add);
      var amount = of.stream().map(CostLine::money).reduce(BigDecimal.ZERO, BigDecimal::add);
      rows.add(
          new OrderRow(
              item.group(),
              item.code(),
              item.description(),
              item.soldBy(),
              buy,
              buy,
              amount,
              rounding(of, item),
              LocalDate.of(2027, 3, 30),
              LocalDate.of(2027, 3, 5 + rows.size()),
              14,
              rows.isEmpty() ? OrderRow.Standing.LATE : OrderRow.Standing.TO_COME,
              of.get(0).task().orElseThrow()));
    }
    return rows;
  }

  /** The line of packs where there is one; what a lone line is rounded up by is not seen here. */
  private static BigDecimal rounding(List<CostLine> of, Item item) {
    return of.stream()
        .filter(l -> item.wholeOnly() && l.quantityId().isEmpty())
        .map(CostLine::money)
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private static RiskResult risk(double total) {
    var cost = new double[400];
    var finish = new double[400];
    long day = LocalDateTime.of(2027, 6, 1, 16, 0).toLocalDate().toEpochDay() * 1440 + 960;
    for (int i = 0; i < 400; i++) {
      cost[i] = total * (0.85 + 0.3 * Math.sqrt(i / 400.0));
      finish[i] = day + 1440.0 * (i % 37);
    }
    return new RiskResult(
        400,
        1,
        "triangular",
        new Spread(cost),
        new Spread(finish),
        0.37,
        Map.of("task-13", 1.0),
        List.of(new RiskResult.Driver("box/A/buy:box-40hc", "Container A", 0.61, 350)),
        List.of(new RiskResult.Driver("task-12", "Task number 12", 0.48, 1900)));
  }

  private static Finance finance(Map<Stage, BigDecimal> byStage) {
    var months = new ArrayList<Finance.CashMonth>();
    var sum = BigDecimal.ZERO;
    for (int m = 0; m < 6; m++) {
      var out = BigDecimal.valueOf(1500L + 700L * m, 0);
      sum = sum.add(out);
      months.add(
          new Finance.CashMonth(
              YearMonth.of(2027, 3).plusMonths(m),
              out,
              sum,
              BigDecimal.valueOf(1000),
              new BigDecimal("12.34"),
              BigDecimal.valueOf(20000L - 900L * m),
              BigDecimal.valueOf(1000L * (m + 1))));
    }
    var stages = new ArrayList<Finance.StageMoney>();
    byStage.forEach(
        (s, budget) ->
            stages.add(
                new Finance.StageMoney(
                    s,
                    budget,
                    new BigDecimal("0.25"),
                    budget
                        .movePointLeft(2)
                        .multiply(BigDecimal.valueOf(25))
                        .setScale(2, java.math.RoundingMode.HALF_UP),
                    budget.subtract(
                        budget
                            .movePointLeft(2)
                            .multiply(BigDecimal.valueOf(25))
                            .setScale(2, java.math.RoundingMode.HALF_UP)))));
    return new Finance(
        months,
        List.of(
            new Finance.Draw(
                "draw-1",
                LocalDate.of(2027, 4, 15),
                "Shell watertight",
                Optional.empty(),
                new BigDecimal("9000"),
                new BigDecimal("900"),
                new BigDecimal("8100"),
                new BigDecimal("8100"),
                List.of("inspection of the shell"),
                List.of("photos")),
            new Finance.Draw(
                "draw-2",
                LocalDate.of(2027, 6, 15),
                "Certificate",
                Optional.empty(),
                new BigDecimal("4000"),
                new BigDecimal("-900"),
                new BigDecimal("4900"),
                new BigDecimal("13000"),
                List.of(),
                List.of("certificate of occupancy"))),
        stages,
        new Finance.Balance(
            new BigDecimal("40000"),
            new BigDecimal("27000"),
            new BigDecimal("20000"),
            new BigDecimal("9000"),
            new BigDecimal("310.5"),
            new BigDecimal("37689.5"),
            Optional.of(new BigDecimal("0.71")),
            Optional.empty()),
        List.of(
            new Finance.DelayEffect(
                Finance.Asked.ENTERED,
                "delivery",
                "Delivery of the boxes",
                10,
                "haulage",
                "supplier",
                4,
                LocalDate.of(2027, 6, 12),
                new BigDecimal("212.75"),
                "Six days are absorbed by float, four move move-in.")));
  }

  private static List<Check> checks() {
    return List.of(
        new Check(
            "room-width/Bedroom",
            Check.Topic.ROOMS,
            Check.Severity.PROFESSIONAL,
            "Bedroom is 2.2 m wide inside.",
            "International Residential Code 2021, R304",
            List.of("Rooms!C3"),
            List.of()),
        new Check(
            "wall-left/A",
            Check.Topic.STEEL,
            Check.Severity.STOP,
            "The long wall loses its corner posts: do not cut before an engineer has seen it.",
            "common practice, no source",
            List.of("Openings!E2"),
            List.of("task-12")),
        new Check(
            "fit/A",
            Check.Topic.FIT,
            Check.Severity.NOTE,
            "The box fits the road.",
            "common practice, no source",
            List.of(),
            List.of()));
  }

  static Scope quoted(Scope s, List<Quote> quotes) {
    return ScopeEdit.of(s).quotes(quotes).scope();
  }
}
