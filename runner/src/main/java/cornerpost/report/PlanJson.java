package cornerpost.report;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.plan.CuttingPlan;
import cornerpost.plan.OrderRow;
import cornerpost.plan.OrderTotals;
import cornerpost.plan.Plan;
import cornerpost.price.CostLine;
import cornerpost.price.PriceBook;
import cornerpost.scope.ProjectQuestions;
import cornerpost.takeoff.Line;
import cornerpost.trace.Figure;
import cornerpost.trace.Leaf;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;

/**
 * The plan as JSON, as {@code docs/plan.schema.json} describes it: every figure of the workbook at
 * full precision, in a stable order, with nothing of the machine or the clock in it.
 */
public final class PlanJson {
  /** Raised when a field of the fixed part changes its meaning or goes. */
  static final int VERSION = 1;

  private final Plan plan;
  private final JsonOut out = new JsonOut();

  private PlanJson(Plan plan) {
    this.plan = plan;
  }

  /** The whole plan, UTF-8. */
  public static byte[] write(Plan plan) {
    var json = new PlanJson(plan);
    json.out.object(json::whole);
    return json.out.done();
  }

  private void whole() {
    out.text("format", "cornerpost plan");
    out.number("formatVersion", VERSION);
    out.text("fingerprint", plan.fingerprint());
    out.object("project", this::project);
    out.object("totals", this::totals);
    out.object("keyFigures", this::keyFigures);
    out.objects("quantities", plan.lines(), this::quantity);
    out.objects("costLines", plan.estimate().lines(), this::costLine);
    out.objects("orders", plan.orders(), this::order);
    var rounding = OrderTotals.roundingByGroup(plan.orders());
    out.objects(
        "orderTotals",
        List.copyOf(OrderTotals.byGroup(plan.orders()).entrySet()),
        g -> {
          out.text("group", g.getKey().label());
          out.number("amount", g.getValue());
          out.number("roundingCost", rounding.get(g.getKey()));
        });
    out.objects("cuttingPlans", plan.cutting(), this::cutting);
    new ScheduleJson(plan, out).write();
    new MoneyJson(plan, out).write();
    new ReplanJson(plan, out).write();
    out.objects(
        "checks",
        plan.checks(),
        c -> {
          out.text("id", c.id());
          out.text("topic", c.topic().label());
          out.text("severity", c.severity().label());
          out.text("message", c.message());
          out.text("source", c.source());
          out.texts("cells", c.cells());
          out.texts("tasks", c.tasks());
        });
    out.objects(
        "problems",
        plan.problems(),
        p -> {
          out.text("severity", p.severity().name().toLowerCase(java.util.Locale.ROOT));
          out.text("sheet", p.sheet());
          out.text("cell", p.cell());
          out.text("found", p.found());
          out.text("expected", p.expected());
        });
    inputs();
  }

  private void project() {
    var project = plan.scope().project();
    out.text("name", project.text(ProjectQuestions.NAME));
    out.text("currency", plan.estimate().currency().getCurrencyCode());
    out.text("units", plan.scope().units().label());
    out.date("start", project.date(ProjectQuestions.START));
    out.date("statusDate", plan.statusDate());
    out.text("calendar", plan.work().defaultCalendar());
    out.text("priceBook", plan.book().map(PriceBook::name));
    out.text("region", plan.book().map(b -> b.region().name()));
    out.text("priceDate", plan.book().map(b -> b.region().priceDate()));
    out.text("priceNotice", plan.book().map(b -> b.region().notice()));
    out.text("taxName", plan.book().map(b -> b.region().taxName()));
    out.number("taxRate", plan.book().map(b -> b.region().taxRate()));
  }

  private void totals() {
    var e = plan.estimate();
    out.number("direct", e.direct());
    out.number("indirect", e.indirect());
    out.number("contingency", e.contingency());
    out.number("tax", e.tax());
    out.number("total", e.total());
    var byStage = new LinkedHashMap<String, BigDecimal>();
    e.byStage().forEach((stage, amount) -> byStage.put(stage.label(), amount));
    out.numbers("byStage", byStage);
  }

  private void keyFigures() {
    var e = plan.estimate();
    var figures = plan.keyFigures();
    out.number("floorArea", figures.floor().map(f -> f.in(figures.areaUnit())));
    out.text("areaUnit", figures.areaUnit().symbol());
    out.number("costPerArea", figures.costPerArea());
    out.number("directShare", figures.share(e.direct()));
    out.number("indirectShare", figures.share(e.indirect()));
    out.number("contingencyShare", figures.share(e.contingency()));
    out.number("taxShare", figures.share(e.tax()));
    var stages = new LinkedHashMap<String, BigDecimal>();
    e.byStage().forEach((stage, amount) -> stages.put(stage.label(), figures.share(amount)));
    out.numbers("stageShares", stages);
    var works = new LinkedHashMap<String, BigDecimal>();
    e.byWork().forEach((work, amount) -> works.put(work.label(), figures.share(amount)));
    out.numbers("workShares", works);
    var kinds = new LinkedHashMap<String, BigDecimal>();
    e.byKind().forEach((kind, amount) -> kinds.put(kind(kind), figures.share(amount)));
    out.numbers("kindShares", kinds);
  }

  private void quantity(Line l) {
    out.text("id", l.id());
    out.text("stage", l.stage().label());
    out.text("description", l.description());
    out.text("unit", l.shownIn().symbol());
    number("value", l.quantity().in(l.shownIn()));
    out.text("derivation", l.quantity().inWords(plan.scope().units()));
    out.text("because", l.because());
    out.objects("sources", l.quantity().leaves(), this::leaf);
    out.texts("buildsOn", l.quantity().names());
  }

  private void costLine(CostLine l) {
    out.text("id", l.id());
    out.text("quantityId", l.quantityId());
    out.text("stage", l.stage().label());
    out.text("kind", kind(l.kind()));
    out.text("description", l.description());
    out.text("unit", l.unit().symbol());
    number("quantity", l.quantity().in(l.unit()));
    number("rate", rate(l.rate(), l.unit()));
    out.number("amount", l.money());
    out.text("basis", l.basis().label());
    out.text("party", l.partyWord());
    number("bookRate", rate(l.bookRate(), l.unit()));
    number("low", l.low());
    number("high", l.high());
    out.yes("taxed", l.taxed());
    out.text("item", l.item());
    out.text("task", l.task());
    out.text("derivation", l.amount().inWords(plan.scope().units()));
    out.text("quoteSupplier", l.quote().map(q -> q.supplier()));
    out.text("quoteDate", l.quote().flatMap(q -> q.date()));
    out.text("quoteValidUntil", l.quote().flatMap(q -> q.validUntil()));
  }

  static String kind(CostLine.Kind kind) {
    return switch (kind) {
      case MATERIAL -> "material";
      case PLANT -> "plant";
      case SERVICE -> "service";
      case FEE -> "fee";
      case TIME -> "time";
      case LABOUR -> "labour";
      case OWN_LABOUR -> "own labour";
      case OWN_ITEM -> "own item";
      case INTEREST -> "interest";
      case ESCALATION -> "price rise";
      case TAX -> "tax";
      case CONTINGENCY -> "contingency";
    };
  }

  /** A rate in money for one of the line's unit; a share where the line is one of money. */
  private BigDecimal rate(Figure rate, Unit unit) {
    var money = Unit.money(plan.estimate().currency().getCurrencyCode());
    var each = rate.dimension().equals(Dimension.MONEY) ? money : money.per(unit);
    return rate.dimension().equals(each.dimension()) ? rate.in(each) : rate.value();
  }

  private void order(OrderRow o) {
    out.text("group", o.group().label());
    out.text("item", o.item());
    out.text("description", o.description());
    out.text("unit", o.unit().symbol());
    number("net", o.net());
    number("buy", o.buy());
    out.number("amount", o.amount());
    out.number("roundingCost", o.roundingCost());
    out.date("neededOn", o.neededOn());
    out.date("orderBy", o.orderBy());
    out.number("leadDays", o.leadDays());
    out.yes("late", o.late());
    out.text("standing", o.standing().label());
    out.text("firstTask", o.firstTask());
  }

  private void cutting(CuttingPlan p) {
    out.text("item", p.item());
    out.text("description", p.description());
    number("stock", p.stock());
    number("kerf", p.kerf());
    out.number("bars", p.bars());
    out.number("leastBars", p.leastBars());
    number("bought", p.bought());
    number("pieces", p.cutLength());
    number("sawn", p.sawn());
    number("left", p.left());
    number("unplanned", p.unplanned());
    out.number("loss", p.loss());
    out.objects(
        "cuts",
        p.cuts(),
        c -> {
          out.text("mark", c.mark());
          number("length", c.length());
          out.number("count", c.count());
          out.text("what", c.what());
        });
    out.objects(
        "patterns",
        p.patterns(),
        b -> {
          out.number("bars", b.bars());
          number("sawn", b.sawn());
          number("left", b.left());
          out.objects(
              "parts",
              b.parts(),
              part -> {
                out.text("mark", part.mark());
                number("length", part.length());
                out.number("count", part.count());
              });
        });
  }

  private void inputs() {
    var traced = Traced.of(plan);
    out.objects("pricesUsed", traced.prices(), this::leaf);
    out.objects("factsUsed", traced.facts(), this::leaf);
    out.objects("workedOut", traced.workedOut(), this::leaf);
    out.objects("choicesUsed", traced.choices(), this::leaf);
    out.objects(
        "entries",
        plan.scope().entered(),
        c -> {
          out.text("sheet", c.sheet().title());
          out.text("cell", c.cell());
          out.text("label", c.label());
          out.text("value", Words.entry(c.value()));
        });
  }

  private void leaf(Leaf l) {
    out.text("kind", l.kind().label());
    out.text("key", l.key());
    out.text("name", l.name());
    number("amount", l.amount());
    out.text("unit", l.unit().symbol());
    out.text("source", l.source());
  }

  /** Without zeros at the end: those tell nothing of a measured number. */
  private void number(String name, BigDecimal value) {
    out.number(name, value.stripTrailingZeros());
  }
}
