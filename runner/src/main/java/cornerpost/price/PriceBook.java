package cornerpost.price;

import cornerpost.measure.Unit;
import cornerpost.scope.HolidayEntry;
import cornerpost.scope.PricePoint;
import cornerpost.scope.Trade;
import cornerpost.trace.Figure;
import cornerpost.trace.Leaf;
import java.math.BigDecimal;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The prices, rates and hours of a region, and the days on which it rests. */
public final class PriceBook {
  private final String name;
  private final Region region;
  private final Map<String, Item> items;
  private final Map<Trade, LabourRate> rates;
  private final Map<String, HoursPerUnit> hours;
  private final List<HolidayEntry> holidays;

  public PriceBook(
      String name,
      Region region,
      List<Item> items,
      List<LabourRate> rates,
      List<HoursPerUnit> hours,
      List<HolidayEntry> holidays) {
    this.name = name;
    this.region = region;
    this.items = byKey(items, Item::code);
    this.rates = byKey(rates, LabourRate::trade);
    this.hours = byKey(hours, HoursPerUnit::activity);
    this.holidays = List.copyOf(holidays);
  }

  private static <K, V> Map<K, V> byKey(List<V> rows, java.util.function.Function<V, K> key) {
    var map = new LinkedHashMap<K, V>();
    for (var r : rows) {
      if (map.put(key.apply(r), r) != null) {
        throw new IllegalArgumentException("Two rows for '" + key.apply(r) + "'");
      }
    }
    return Collections.unmodifiableMap(map);
  }

  /** The name of its folder. */
  public String name() {
    return name;
  }

  public Region region() {
    return region;
  }

  public Map<String, Item> items() {
    return items;
  }

  public Map<Trade, LabourRate> rates() {
    return rates;
  }

  public Map<String, HoursPerUnit> hours() {
    return hours;
  }

  public List<HolidayEntry> holidays() {
    return holidays;
  }

  public Optional<Item> findItem(String code) {
    return Optional.ofNullable(items.get(code));
  }

  public Optional<LabourRate> findRate(Trade trade) {
    return Optional.ofNullable(rates.get(trade));
  }

  public Optional<HoursPerUnit> findHours(String activity) {
    return Optional.ofNullable(hours.get(activity));
  }

  public Unit money() {
    return Unit.money(region.currency().getCurrencyCode());
  }

  /** The price of one of an item, as a traceable number; its key is the item's code. */
  public Figure price(Item item, PricePoint point) {
    return leaf(
        item.code(),
        item.description(),
        at(point, item.low(), item.likely(), item.high()),
        money().per(item.soldBy()),
        item.source());
  }

  /** The price of an hour of a trade; its key is {@code labour/} and the trade's name. */
  public Figure price(LabourRate rate, PricePoint point) {
    return leaf(
        rateKey(rate.trade()),
        "hour, " + rate.trade().label(),
        at(point, rate.low(), rate.likely(), rate.high()),
        money().per(Unit.HOUR),
        rate.source());
  }

  /** The hours for one unit of an activity; its key is {@code hours/} and the activity's code. */
  public Figure hours(HoursPerUnit row, PricePoint point) {
    return leaf(
        "hours/" + row.activity(),
        row.description(),
        at(point, row.low(), row.likely(), row.high()),
        Unit.HOUR.per(row.per()),
        row.source());
  }

  /** The rate of tax; its key is {@code tax}. */
  public Figure taxRate() {
    return leaf("tax", region.taxName(), region.taxRate(), Unit.ONE, region.name());
  }

  public static String rateKey(Trade trade) {
    return "labour/" + trade.name().toLowerCase(java.util.Locale.ROOT);
  }

  private static Figure leaf(String key, String name, BigDecimal amount, Unit unit, String source) {
    return Figure.of(new Leaf(Leaf.Kind.PRICE, key, name, amount, unit, source));
  }

  public static BigDecimal at(
      PricePoint point, BigDecimal low, BigDecimal likely, BigDecimal high) {
    return switch (point) {
      case LOW -> low;
      case LIKELY -> likely;
      case HIGH -> high;
    };
  }
}
