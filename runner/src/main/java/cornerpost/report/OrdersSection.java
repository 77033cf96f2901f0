package cornerpost.report;

import cornerpost.plan.OrderRow;
import cornerpost.plan.OrderTotals;
import cornerpost.plan.Plan;
import cornerpost.price.SupplierGroup;
import cornerpost.work.WorkTask;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** The buying list by kind of supplier, the inspections, and who works when. */
final class OrdersSection {
  /** An item to buy. */
  public record Row(
      String description,
      String buy,
      String net,
      String amount,
      String needed,
      String orderBy,
      String standing,
      boolean late,
      String link) {}

  /**
   * What one kind of supplier has.
   *
   * @param more what whole ones cost over the bare need; empty for nothing
   */
  public record Group(String name, String total, String more, List<Row> rows) {}

  /**
   * An inspection or a milestone.
   *
   * @param asked the day to ask for an inspection; empty for a milestone
   * @param day of the visit, or when it happens
   * @param slack float in the planned order
   */
  public record Gate(
      String asked,
      String day,
      String name,
      String link,
      String kind,
      String slack,
      String waitsFor) {}

  private final Plan plan;

  OrdersSection(Plan plan) {
    this.plan = plan;
  }

  void into(Map<String, Object> model) {
    var groups = new ArrayList<Group>();
    for (var g : SupplierGroup.values()) {
      var rows =
          plan.orders().stream()
              .filter(o -> o.group() == g)
              .sorted(Comparator.comparing(OrderRow::orderBy).thenComparing(OrderRow::item))
              .map(this::row)
              .toList();
      if (rows.isEmpty()) continue;
      var more = OrderTotals.roundingByGroup(plan.orders()).get(g);
      groups.add(
          new Group(
              g.label(),
              Words.number(OrderTotals.byGroup(plan.orders()).get(g), 2),
              more.signum() > 0 ? Words.number(more, 2) : "",
              rows));
    }
    model.put("orderGroups", groups);
    var gates =
        plan.programme().tasks().stream()
            .filter(
                t ->
                    t.task().kind() == WorkTask.Kind.INSPECTION
                        || t.task().kind() == WorkTask.Kind.MILESTONE)
            .map(
                t ->
                    new Gate(
                        t.task().kind() == WorkTask.Kind.INSPECTION ? Words.day(t.firstDay()) : "",
                        Words.day(t.lastDay()),
                        t.task().name(),
                        "#" + Anchors.task(t.id()),
                        t.task().kind() == WorkTask.Kind.INSPECTION ? "inspection" : "milestone",
                        t.done() ? "done" : Words.days(plan.programme().floatOf(t)),
                        t.waitsFor()))
            .toList();
    model.put("gates", gates);
    model.put("hasOrders", !groups.isEmpty() || !plan.cutting().isEmpty() || !gates.isEmpty());
    model.put("cutting", plan.cutting().stream().map(p -> CuttingDrawing.of(p, plan)).toList());
    var crews = new CrewChart(plan);
    model.put("crewBands", PageModel.markup(crews.bands()));
    model.put("busiest", crews.busiest());
  }

  private Row row(OrderRow o) {
    return new Row(
        o.description(),
        Words.measured(o.buy(), o.unit()),
        Words.number(o.net()),
        Words.number(o.amount(), 2),
        Words.day(o.neededOn()),
        Words.day(o.orderBy()),
        o.said(plan.statusDate()),
        o.late(),
        plan.programme().task(o.firstTask()).isPresent() ? "#" + Anchors.task(o.firstTask()) : "");
  }
}
