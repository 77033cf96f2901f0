package cornerpost.plan;

import cornerpost.price.SupplierGroup;
import java.math.BigDecimal;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** What the buying list comes to at each kind of supplier, before tax. */
public final class OrderTotals {
  private OrderTotals() {}

  /** Only groups with something to buy. */
  public static Map<SupplierGroup, BigDecimal> byGroup(List<OrderRow> orders) {
    return sums(orders, OrderRow::amount);
  }

  /** What buying whole ones costs over the bare need with waste. */
  public static Map<SupplierGroup, BigDecimal> roundingByGroup(List<OrderRow> orders) {
    return sums(orders, OrderRow::roundingCost);
  }

  private static Map<SupplierGroup, BigDecimal> sums(
      List<OrderRow> orders, Function<OrderRow, BigDecimal> what) {
    var totals = new EnumMap<SupplierGroup, BigDecimal>(SupplierGroup.class);
    for (var o : orders) totals.merge(o.group(), what.apply(o), BigDecimal::add);
    return totals;
  }
}
