package cornerpost.plan;

import cornerpost.measure.Spoken;
import cornerpost.measure.Unit;
import cornerpost.price.SupplierGroup;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;

/**
 * A row of the buying list: one item, for all the lines that use it.
 *
 * @param net what the work holds, in the unit it is sold by
 * @param buy what is bought: with waste, in whole ones where only those are sold
 * @param roundingCost what buying whole ones costs over the bare need with waste, before tax
 * @param neededOn the first planned day of the tasks that need it
 * @param orderBy the day to order: needed-on less lead time and margin
 * @param firstTask id of the first task that needs it; empty where none does
 * @param standing whether it is ordered, and whether it can and must be
 */
public record OrderRow(
    SupplierGroup group,
    String item,
    String description,
    Unit unit,
    BigDecimal net,
    BigDecimal buy,
    BigDecimal amount,
    BigDecimal roundingCost,
    LocalDate neededOn,
    LocalDate orderBy,
    int leadDays,
    Standing standing,
    String firstTask) {

  /** How far an order is. */
  public enum Standing {
    TO_COME(""),
    /** The order of its kind of supplier is noted as placed, or work with it has begun. */
    ORDERED("ordered"),
    /**
     * To order before the permit, of an owner who commits no money before it: a place with the
     * supplier that costs nothing to give back.
     */
    RESERVE("reserve: before the permit"),
    /** The day to order is before the status date. */
    LATE("late");

    private final String label;

    Standing(String label) {
      this.label = label;
    }

    /** For tables; empty for what is to come. */
    public String label() {
      return label;
    }
  }

  /**
   * For people: how far the order is, and of a late one, where its lead time outlasts the need,
   * when it can be there.
   *
   * @param status the day on which it is ordered, if it is late
   */
  public String said(LocalDate status) {
    var atBest = status.plusDays(leadDays);
    return standing == Standing.LATE && atBest.isAfter(neededOn)
        ? "late: on site " + Spoken.day(atBest) + " at best"
        : standing.label();
  }

  /** Their descriptions, what costs most first; of the same cost by item. */
  public static List<String> dearestFirst(List<OrderRow> rows) {
    return rows.stream()
        .sorted(Comparator.comparing(OrderRow::amount).reversed().thenComparing(OrderRow::item))
        .map(OrderRow::description)
        .toList();
  }

  public boolean late() {
    return standing == Standing.LATE;
  }
}
