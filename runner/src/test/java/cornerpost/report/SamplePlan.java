package cornerpost.report;

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
import cornerpost.price.Estimate;
import cornerpost.price.Item;
import cornerpost.price.PriceBook;
import cornerpost.price.Region;
import cornerpost.price.SupplierGroup;
import cornerpost.risk.RiskResult;
import cornerpost.risk.Spread;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.CalendarEntry;
import cornerpost.scope.DurationUnit;
import cornerpost.scope.HolidayEntry;
import cornerpost.scope.LinkRelation;
import cornerpost.scope.Party;
import cornerpost.scope.Problem;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Scope;
import cornerpost.scope.Stage;
import cornerpost.takeoff.BuildTask;
import cornerpost.takeoff.Line;
import cornerpost.trace.Figure;
import cornerpost.trace.Leaf;
import cornerpost.work.WorkLink;
import cornerpost.work.WorkPlan;
import cornerpost.work.WorkTask;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Currency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;

/**
 * A plan put together by hand, as a run would hand it over. Its dates and amounts are invented; the
 * box is the 40 ft high cube and the 20 ft box of ISO 668:2020, table 1 (outside), and ISO
 * 1496-1:2013, minimum inside (from memory: inside sizes are usual ones of makers).
 */
final class SamplePlan {
  static final LocalDate START = LocalDate.of(2027, 3, 1);
  static final LocalDate STATUS = LocalDate.of(2027, 3, 15);

  private static final String BOXES =
      """
      id,name,value,unit,source,certainty
      box.40hc.length,outside length,12192,mm,ISO 668:2020 table 1,confirmed
      box.40hc.width,outside width,2438,mm,ISO 668:2020 table 1,confirmed
      box.40hc.height,outside height,2896,mm,ISO 668:2020 table 1,confirmed
      box.40hc.inside-length,inside length,12032,mm,makers' data,from memory
      box.40hc.inside-width,inside width,2352,mm,makers' data,from memory
      box.40hc.inside-height,inside height,2698,mm,makers' data,from memory
      box.20.length,outside length,6058,mm,ISO 668:2020 table 1,confirmed
      box.20.width,outside width,2438,mm,ISO 668:2020 table 1,confirmed
      box.20.height,outside height,2591,mm,ISO 668:2020 table 1,confirmed
      box.20.inside-length,inside length,5898,mm,makers' data,from memory
      box.20.inside-width,inside width,2352,mm,makers' data,from memory
      box.20.inside-height,inside height,2393,mm,makers' data,from memory
      """;

  private final Scope scope;
  private final Currency currency;
  private final List<DatedTask> tasks = new ArrayList<>();
  private final List<Line> lines = new ArrayList<>();
  private final List<CostLine> bill = new ArrayList<>();

  private SamplePlan(Scope scope, String currency) {
    this.scope = scope;
    this.currency = Currency.getInstance(currency);
  }

  static Facts facts() {
    try {
      return Facts.read("boxes", new ByteArrayInputStream(BOXES.getBytes(StandardCharsets.UTF_8)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static SampleChoices house(UnitSystem units) {
    var c =
        new SampleChoices(units)
            .say(ProjectQuestions.NAME, "Quarrow Field house")
            .say(ProjectQuestions.START, START)
            .say(ProjectQuestions.STATUS, STATUS)
            .box(BoxQuestions.ID, "A", BoxQuestions.SIZE, "40 ft high cube");
    if (units == UnitSystem.METRIC) {
      c.room("Living", "A", "living and kitchen", "5.8", "partition, no door")
          .room("Bath", "A", "bathroom", "2.132", "partition, sliding door")
          .room("Bedroom", "A", "bedroom", "4.1", "open, no partition")
          .opening("D1", "A", "right side", "sliding door", "2400", "2100", "0", "1.25")
          .opening("W1", "A", "left side", "window", "1200", "1000", "1000", "2.5")
          .opening("W2", "A", "left side", "window", "600", "600", "1500", "6.6")
          .opening("W3", "A", "right side", "window", "1500", "1200", "900", "9.0")
          .opening("W4", "A", "blind end", "window", "900", "1200", "900", "0.7")
          .opening("V1", "A", "left side", "vent", "150", "150", "2200", "7.5");
    } else {
      c.room("Living", "A", "living and kitchen", "19", "partition, no door")
          .room("Bath", "A", "bathroom", "7", "partition, hinged door")
          .room("Bedroom", "A", "bedroom", "13.4", "open, no partition")
          .opening("D1", "A", "right side", "sliding door", "96", "82", "0", "4")
          .opening("W1", "A", "left side", "window", "48", "40", "40", "8")
          .opening("W3", "A", "right side", "window", "60", "48", "36", "29.5")
          .opening("W4", "A", "blind end", "window", "36", "48", "36", "2.25");
    }
    return c;
  }

  static Plan metric() {
    return of(house(UnitSystem.METRIC).scope(), "EUR");
  }

  static Plan us() {
    return of(house(UnitSystem.US).scope(), "USD");
  }

  static Plan of(Scope scope, String currency) {
    return new SamplePlan(scope, currency).plan();
  }

  /** So many tasks of the owner's, one after another; no house, no prices. */
  static Plan tasksOnly(int count) {
    var choices =
        new SampleChoices(UnitSystem.US)
            .say(ProjectQuestions.NAME, "Barn")
            .say(ProjectQuestions.START, START)
            .say(ProjectQuestions.GENERATED_TASKS, "none");
    return new SamplePlan(choices.scope(), "USD").bare(count);
  }

  private Plan bare(int count) {
    for (int i = 0; i < count; i++) {
      var t =
          new WorkTask(
              "own-" + i,
              "Own task " + i,
              Stage.PREPARATION,
              WorkTask.Kind.OWN,
              Optional.empty(),
              Optional.empty(),
              480,
              false,
              "Weekdays",
              Map.of(),
              Optional.empty(),
              Optional.empty(),
              480,
              480,
              0,
              false,
              "as entered",
              List.of());
      var day = working(START.plusDays(i));
      tasks.add(dated(t, day, day, "1", "0", i == 0 ? "" : "own-" + (i - 1), true));
    }
    var ids = tasks.stream().map(DatedTask::id).toList();
    var finish = count == 0 ? START : tasks.get(count - 1).lastDay();
    var programme =
        new Programme(
            tasks,
            START,
            finish,
            finish,
            Optional.empty(),
            new BigDecimal(count),
            false,
            new BigDecimal(count),
            BigDecimal.ZERO,
            true,
            ids,
            ids,
            List.of(),
            Optional.empty(),
            List.of(),
            List.of(),
            EventPath.NONE,
            Slippage.NONE);
    var none = new Spread(new double[] {0});
    var end =
        new Spread(
            new double[] {
              RiskWordsOrigin.minutes(
                  count == 0 ? START.atStartOfDay() : tasks.get(count - 1).finish())
            });
    var zero = BigDecimal.ZERO;
    return new Plan(
        scope,
        facts(),
        Optional.empty(),
        List.of(),
        new Estimate(currency, List.of(), List.of()),
        work(),
        programme,
        List.of(),
        List.of(),
        new RiskResult(1, 1, "beta", none, end, 1, Map.of(), List.of(), List.of()),
        new Finance(
            List.of(),
            List.of(),
            List.of(),
            new Finance.Balance(
                zero, zero, zero, zero, zero, zero, Optional.empty(), Optional.empty()),
            List.of()),
        List.of(),
        List.of(),
        START,
        "ba9876543210");
  }

  private Plan plan() {
    measure();
    network();
    var estimate = new Estimate(currency, bill, List.of("shell/area"));
    var total = estimate.total();
    return new Plan(
        scope,
        facts(),
        Optional.of(book()),
        lines,
        estimate,
        work(),
        programme(),
        orders(),
        List.of(),
        risk(total),
        finance(total),
        checks(),
        List.of(
            Problem.remark(
                "Quotes", "A4", "found a quote for 'opening/W9/unit'", "that line is gone")),
        STATUS,
        "0123456789ab");
  }

  private PriceBook book() {
    return new PriceBook(
        "quarrow-plains-2026",
        new Region(
            "Quarrow Plains",
            currency,
            scope.units(),
            LocalDate.of(2026, 9, 1),
            "sales tax",
            new BigDecimal("0.07"),
            "All prices are invented for demonstration.",
            Optional.of(new BigDecimal("-12")),
            cornerpost.measure.NumberStyle.PLAIN,
            List.of()),
        List.of(item()),
        List.of(),
        List.of(),
        List.of());
  }

  private static Item item() {
    return new Item(
        "board-12",
        SupplierGroup.BOARDS,
        "Plasterboard 12.5 mm",
        Item.Kind.MATERIAL,
        Unit.count("sheet"),
        new BigDecimal("2.88"),
        Unit.M2,
        true,
        new BigDecimal("9"),
        new BigDecimal("11.5"),
        new BigDecimal("16"),
        true,
        5,
        "invented for demonstration");
  }

  // ---- quantities and money ----------------------------------------------------------------

  private void measure() {
    var area = Unit.M2;
    var facts = facts();
    var floor = facts.figure("box.40hc.inside-length").times(facts.figure("box.40hc.inside-width"));
    line("floor/A/area", Stage.FRAMING, "Inside floor of box A", floor, area, null, "0");
    if (!scope.openings().isEmpty()) {
      var o = scope.openings().get(0);
      var hole = o.width().times(o.height());
      line(
          "opening/" + o.id() + "/cut-area",
          Stage.SHELL,
          "Steel cut out for " + o.id(),
          hole,
          area,
          "Steelwork",
          "240");
    }
    line(
        "footing/pads/concrete",
        Stage.FOUNDATION,
        "Concrete in pads",
        Figure.workedOut("pads", "pads", new BigDecimal("1.92"), Unit.M3, "six pads"),
        Unit.M3,
        "Ready-mixed concrete",
        "165");
    line(
        "lining/walls/board",
        Stage.INSULATION,
        "Board on the walls",
        floor.times(Figure.constant("2.2", Unit.ONE)),
        area,
        "Plasterboard",
        "11.5");
    line(
        "box/A/purchase",
        Stage.CONTAINERS,
        "Box A",
        Figure.count(1),
        Unit.EACH,
        "40 ft high cube, one trip",
        "4200");
    line(
        "kitchen/units",
        Stage.FINISHES,
        "Kitchen units",
        Figure.constant("3", Unit.M),
        Unit.M,
        "Kitchen units, middle",
        "900");
    line(
        "electrics/points",
        Stage.SERVICES,
        "Electrical points",
        Figure.count(38),
        Unit.EACH,
        "Electrical point, complete",
        "95");
    line(
        "deck/boards",
        Stage.OUTSIDE,
        "Deck boards",
        Figure.constant("29", Unit.M2),
        area,
        "Deck board, softwood",
        "42");
    line(
        "permit/fee",
        Stage.PREPARATION,
        "Permit",
        Figure.count(1),
        Unit.EACH,
        "Permit and plan check",
        "1900");
    line(
        "clean/final",
        Stage.CLOSE_OUT,
        "Final clean",
        Figure.count(1),
        Unit.EACH,
        "Final clean and skip",
        "650");
    for (var s : Stage.values()) {
      var base =
          bill.stream()
              .filter(l -> l.stage() == s && l.kind().base())
              .map(CostLine::amount)
              .toList();
      if (base.isEmpty()) continue;
      var sum = Figure.total("stage/" + s + "/base", s.label(), Dimension.MONEY, base);
      money(
          "tax/" + s.name().toLowerCase(java.util.Locale.ROOT), s, CostLine.Kind.TAX, sum, "0.07");
      money(
          "contingency/" + s.name().toLowerCase(java.util.Locale.ROOT),
          s,
          CostLine.Kind.CONTINGENCY,
          sum,
          "0.1");
    }
  }

  private void money(String id, Stage stage, CostLine.Kind kind, Figure base, String share) {
    var rate =
        Figure.of(
            new Leaf(Leaf.Kind.PRICE, "tax", "share", new BigDecimal(share), Unit.ONE, "invented"));
    bill.add(
        new CostLine(
            id,
            Optional.empty(),
            stage,
            kind,
            kind + " on " + stage.label(),
            base,
            Unit.money(currency.getCurrencyCode()),
            rate,
            rate,
            base.times(rate).roundedToMinor(2),
            CostLine.Basis.PRICE_BOOK,
            Party.HIRED,
            Optional.empty(),
            Optional.empty(),
            false,
            Optional.empty(),
            BigDecimal.ONE,
            BigDecimal.TEN));
  }

  private void line(
      String id, Stage stage, String name, Figure quantity, Unit unit, String item, String price) {
    var line = Line.of(id, stage, name, quantity, unit, "length times width");
    lines.add(line);
    if (item == null) return;
    var cash = Unit.money(currency.getCurrencyCode());
    var code = id.replace('/', '-');
    var rate =
        Figure.of(
            new Leaf(
                Leaf.Kind.PRICE,
                code,
                item,
                new BigDecimal(price),
                cash.per(unit),
                "invented for demonstration"));
    var amount = line.named().times(rate).roundedToMinor(2);
    bill.add(
        new CostLine(
            id + ":" + code,
            Optional.of(id),
            stage,
            CostLine.Kind.MATERIAL,
            item,
            line.named(),
            unit,
            rate,
            rate,
            amount,
            CostLine.Basis.PRICE_BOOK,
            bill.size() % 2 == 0 ? Party.HIRED : Party.OWNER,
            Optional.of("delivery"),
            Optional.of(code),
            true,
            Optional.empty(),
            amount.value().multiply(new BigDecimal("0.8")),
            amount.value().multiply(new BigDecimal("1.3"))));
  }

  // ---- time ---------------------------------------------------------------------------------

  private static final List<BuildTask> ORDER =
      List.of(
          BuildTask.SURVEY,
          BuildTask.DRAWINGS,
          BuildTask.PERMIT_APPLY,
          BuildTask.PERMIT_REVIEW,
          BuildTask.PERMIT_GRANTED,
          BuildTask.SET_OUT,
          BuildTask.EXCAVATE,
          BuildTask.FOOTING_INSPECTION,
          BuildTask.POUR,
          BuildTask.CURE,
          BuildTask.DELIVERY,
          BuildTask.SET_BOXES,
          BuildTask.CUT_OPENINGS,
          BuildTask.WELD_FRAMES,
          BuildTask.SET_WINDOWS,
          BuildTask.WATERTIGHT,
          BuildTask.ROOF_FRAME,
          BuildTask.WALL_STUDS,
          BuildTask.ELECTRICAL_FIRST,
          BuildTask.ROUGH_IN_INSPECTION,
          BuildTask.WALL_INSULATION,
          BuildTask.WALL_BOARD,
          BuildTask.JOINTS_DRY,
          BuildTask.PAINT_WALLS,
          BuildTask.KITCHEN_UNITS,
          BuildTask.DECK_BOARDS,
          BuildTask.FINAL_INSPECTION,
          BuildTask.CERTIFICATE,
          BuildTask.MOVE_IN);

  private void network() {
    var at = START;
    String before = "";
    for (var b : ORDER) {
      int days =
          switch (b.kind()) {
            case MILESTONE -> 0;
            case INSPECTION -> 1;
            case WAIT -> 12;
            case WORK -> 2 + b.ordinal() % 6;
          };
      boolean aside = b == BuildTask.ROOF_FRAME || b == BuildTask.DECK_BOARDS;
      var floatDays = new BigDecimal(aside ? "11" : b == BuildTask.SURVEY ? "3.5" : "0");
      var first = working(at);
      var last = first;
      for (int d = 1; d < days; d++) last = working(last.plusDays(1));
      tasks.add(task(b, first, last, days, floatDays, before));
      if (!aside) {
        at = days == 0 ? last : last.plusDays(1);
        before = b.id();
      }
    }
    tasks.add(order(SupplierGroup.WINDOWS));
  }

  private static LocalDate working(LocalDate day) {
    while (day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY) {
      day = day.plusDays(1);
    }
    return day;
  }

  private DatedTask order(SupplierGroup group) {
    var t =
        new WorkTask(
            "order/" + group.name().toLowerCase(java.util.Locale.ROOT),
            "Order and delivery: " + group.label(),
            Stage.PREPARATION,
            WorkTask.Kind.ORDER,
            Optional.empty(),
            Optional.empty(),
            42 * 1440L,
            true,
            "Weekdays",
            Map.of(),
            Optional.empty(),
            Optional.empty(),
            30 * 1440L,
            60 * 1440L,
            0,
            false,
            "lead time in the price book",
            List.of());
    return dated(t, START, START.plusDays(41), "42", "30", "", false);
  }

  private DatedTask task(
      BuildTask b, LocalDate first, LocalDate last, int days, BigDecimal floatDays, String before) {
    var kind = WorkTask.Kind.valueOf(b.kind().name());
    var t =
        new WorkTask(
            b.id(),
            b.title(),
            b.stage(),
            kind,
            b.trade(),
            b.trade().map(x -> scope.assignment(x).party()),
            days * 480L,
            false,
            "Weekdays",
            b.trade().map(x -> Map.of(x.label(), 2)).orElse(Map.of()),
            Optional.empty(),
            Optional.empty(),
            days * 400L,
            days * 700L,
            days * 16.0,
            false,
            "hours of two people",
            List.of());
    return dated(
        t,
        first,
        last,
        Integer.toString(days),
        floatDays.toPlainString(),
        before,
        floatDays.signum() == 0);
  }

  private static DatedTask dated(
      WorkTask t,
      LocalDate first,
      LocalDate last,
      String days,
      String floatDays,
      String before,
      boolean drives) {
    var start = first.atTime(LocalTime.of(8, 0));
    var finish = days.equals("0") ? start : last.atTime(LocalTime.of(16, 0));
    var slack = new BigDecimal(floatDays).setScale(0, java.math.RoundingMode.DOWN).longValue();
    return new DatedTask(
        t,
        start,
        finish,
        first,
        last,
        new BigDecimal(days),
        start,
        finish,
        start.plusDays(slack),
        finish.plusDays(slack),
        first,
        last,
        first.plusDays(slack),
        last.plusDays(slack),
        new BigDecimal(floatDays),
        BigDecimal.ZERO,
        drives,
        drives,
        last.isBefore(STATUS),
        first.isBefore(STATUS),
        before.isEmpty() ? "starts with the project" : "waits for " + before,
        before.isEmpty() ? List.of() : List.of(before));
  }

  private WorkPlan work() {
    var links = new ArrayList<WorkLink>();
    String before = "";
    for (var t : tasks) {
      if (!before.isEmpty()) {
        links.add(
            new WorkLink(
                before,
                t.id(),
                LinkRelation.FINISH_TO_START,
                links.size() == 1 ? 960 : 0,
                links.size() == 2 ? DurationUnit.ELAPSED_DAYS : DurationUnit.DAYS,
                "one after another"));
      }
      before = t.id();
    }
    var eight = new BigDecimal("8");
    var none = BigDecimal.ZERO;
    return new WorkPlan(
        tasks.stream().map(DatedTask::task).toList(),
        links,
        List.of(new WorkPlan.CrewLimit("Steelwork and openings", 2, "Weekdays")),
        List.of(
            new CalendarEntry(
                "Weekdays",
                List.of(eight, eight, eight, eight, eight, none, none),
                true,
                "supplied")),
        List.of(new HolidayEntry(LocalDate.of(2027, 7, 5), "Midsummer day", "book")),
        "Weekdays");
  }

  private Programme programme() {
    var driving = tasks.stream().filter(DatedTask::drivesMoveIn).map(DatedTask::id).toList();
    var fromDelivery = driving.subList(driving.indexOf("delivery"), driving.size());
    var moveIn = tasks.stream().filter(t -> t.id().equals("move-in")).findFirst().orElseThrow();
    var load = new ArrayList<Programme.CrewDay>();
    for (var crew : Set.of("Steelwork and openings")) {
      for (int w = 0; w < 6; w++) {
        load.add(
            new Programme.CrewDay(
                crew,
                LocalDate.of(2027, 5, 3).plusWeeks(w),
                new BigDecimal(w % 3 * 4),
                BigDecimal.TEN));
      }
    }
    return new Programme(
        tasks,
        START,
        moveIn.lastDay(),
        moveIn.lastDay(),
        tasks.stream().filter(t -> t.id().equals("delivery")).map(DatedTask::firstDay).findFirst(),
        new BigDecimal("107"),
        true,
        new BigDecimal("104.5"),
        new BigDecimal("2.5"),
        false,
        driving,
        driving,
        fromDelivery,
        Optional.of(4),
        load,
        List.of(
            new Programme.NetworkFinding(
                "Every task is tied in",
                true,
                "all tasks have something before and after them",
                List.of())),
        EventPath.NONE,
        Slippage.NONE);
  }

  private List<OrderRow> orders() {
    return List.of(
        new OrderRow(
            SupplierGroup.BOXES,
            "box-40hc",
            "40 ft high cube, one trip",
            Unit.EACH,
            BigDecimal.ONE,
            BigDecimal.ONE,
            new BigDecimal("4200.00"),
            BigDecimal.ZERO,
            LocalDate.of(2027, 4, 26),
            LocalDate.of(2027, 3, 8),
            42,
            OrderRow.Standing.LATE,
            "delivery"),
        new OrderRow(
            SupplierGroup.BOARDS,
            "board-12",
            "Plasterboard 12.5 mm",
            Unit.count("sheet"),
            new BigDecimal("21.62"),
            new BigDecimal("24"),
            new BigDecimal("276.00"),
            new BigDecimal("4.60"),
            LocalDate.of(2027, 6, 14),
            LocalDate.of(2027, 6, 2),
            5,
            OrderRow.Standing.TO_COME,
            "wall-board"),
        new OrderRow(
            SupplierGroup.BOARDS,
            "compound",
            "Jointing compound; ready, mixed",
            Unit.count("tub"),
            new BigDecimal("1.4"),
            new BigDecimal("2"),
            new BigDecimal("48.00"),
            new BigDecimal("14.40"),
            LocalDate.of(2027, 6, 20),
            LocalDate.of(2027, 6, 2),
            5,
            OrderRow.Standing.TO_COME,
            "joints"));
  }

  private RiskResult risk(BigDecimal total) {
    var random = new Random(7);
    var cost = new double[400];
    var finish = new double[400];
    var last = RiskWordsOrigin.minutes(tasks.get(tasks.size() - 2).finish());
    for (int i = 0; i < cost.length; i++) {
      cost[i] = total.doubleValue() * (0.9 + 0.3 * random.nextDouble());
      finish[i] = last + (random.nextDouble() - 0.3) * 40 * 1440;
    }
    var shares = new LinkedHashMap<String, Double>();
    shares.put("permit-review", 0.93);
    shares.put("cure", 0.41);
    return new RiskResult(
        400,
        7,
        "beta",
        new Spread(cost),
        new Spread(finish),
        0.31,
        shares,
        List.of(new RiskResult.Driver("kitchen/units", "Kitchen units", 0.52, 410.5)),
        List.of(new RiskResult.Driver("permit-review", "Permit review", 0.7, 7200)));
  }

  /** The engine's clock: minutes since 1970-01-01 00:00. */
  private static final class RiskWordsOrigin {
    static double minutes(LocalDateTime at) {
      return java.time.Duration.between(LocalDateTime.of(1970, 1, 1, 0, 0), at).toMinutes();
    }
  }

  private Finance finance(BigDecimal total) {
    var months = new ArrayList<Finance.CashMonth>();
    var sum = BigDecimal.ZERO;
    for (int m = 0; m < 7; m++) {
      var out =
          m == 6
              ? total.subtract(sum)
              : total.divide(BigDecimal.valueOf(7), 2, java.math.RoundingMode.HALF_UP);
      sum = sum.add(out);
      months.add(
          new Finance.CashMonth(
              YearMonth.of(2027, 3).plusMonths(m),
              out,
              sum,
              m % 2 == 1 ? new BigDecimal("4000") : BigDecimal.ZERO,
              new BigDecimal("12.50"),
              new BigDecimal("20000").subtract(sum.multiply(new BigDecimal("0.5"))),
              new BigDecimal(4000 * ((m + 1) / 2))));
    }
    var stages = new ArrayList<Finance.StageMoney>();
    for (var s : Stage.values()) {
      stages.add(
          new Finance.StageMoney(
              s,
              BigDecimal.valueOf(1000),
              new BigDecimal("0.25"),
              BigDecimal.valueOf(250),
              BigDecimal.valueOf(750)));
    }
    return new Finance(
        months,
        List.of(
            new Finance.Draw(
                "d1",
                LocalDate.of(2027, 5, 7),
                "Foundation finished",
                Optional.of(
                    new Finance.Made(
                        new BigDecimal("5000.00"),
                        new BigDecimal("900.00"),
                        new BigDecimal("44.44"),
                        new BigDecimal("1500.00"))),
                new BigDecimal("4444.44"),
                new BigDecimal("444.44"),
                new BigDecimal("4000.00"),
                new BigDecimal("4000.00"),
                List.of("footing inspection"),
                List.of("photographs"))),
        stages,
        new Finance.Balance(
            new BigDecimal("12000"),
            new BigDecimal("8000"),
            new BigDecimal("9000"),
            new BigDecimal("14000"),
            new BigDecimal("300"),
            new BigDecimal("2700"),
            Optional.of(new BigDecimal("0.61")),
            Optional.empty()),
        List.of(
            new Finance.DelayEffect(
                Finance.Asked.ENTERED,
                "delivery",
                "Boxes delivered",
                10,
                "late truck",
                "haulier",
                6,
                LocalDate.of(2027, 9, 1),
                new BigDecimal("640.00"),
                "Ten days, of which four are float.")));
  }

  private List<Check> checks() {
    return List.of(
        new Check(
            "room-width/Bedroom",
            Check.Topic.ROOMS,
            Check.Severity.NOTE,
            "Bedroom is 2,184 mm wide inside; 2,134 mm asked.",
            "IRC 2021 R304.2",
            List.of("Rooms!D4"),
            List.of()),
        new Check(
            "opening-share/A/right",
            Check.Topic.STEEL,
            Check.Severity.PROFESSIONAL,
            "32 % of the right side of box A is cut away.",
            "common practice, no source",
            List.of("Openings!E2"),
            List.of("cut-openings")),
        new Check(
            "hot-work",
            Check.Topic.SAFETY,
            Check.Severity.STOP,
            "Cutting beside a treated timber floor: take the floor up first.",
            "common practice, no source",
            List.of("Containers!I2"),
            List.of("cut-openings")));
  }
}
