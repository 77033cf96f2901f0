package cornerpost.measure;

import static java.util.Objects.requireNonNull;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A unit of measure with its exact factor to the base unit of its dimension: metre, kilogram,
 * working hour, one of the currency, or one. Factors: international yard and pound of 1959 (foot
 * 0.3048 m, pound 0.45359237 kg); US liquid gallon of 231 cubic inches.
 *
 * <p>Counts ({@code each}, {@code sheet}, {@code month}) are all the number one: they differ in
 * name only.
 */
public record Unit(String symbol, Dimension dimension, Ratio toBase) {
  private static final Map<String, Unit> NAMED = new LinkedHashMap<>();

  public static final Unit ONE = named("", Dimension.NONE, "1");
  public static final Unit EACH = named("each", Dimension.NONE, "1");
  public static final Unit PERCENT = named("%", Dimension.NONE, "0.01");

  public static final Unit M = named("m", Dimension.LENGTH, "1");
  public static final Unit MM = named("mm", Dimension.LENGTH, "0.001");
  public static final Unit KM = named("km", Dimension.LENGTH, "1000");
  public static final Unit FT = named("ft", Dimension.LENGTH, "0.3048");
  public static final Unit IN = named("in", Dimension.LENGTH, "0.0254");
  public static final Unit MILE = named("mile", Dimension.LENGTH, "1609.344");

  public static final Unit M2 = named("m2", Dimension.AREA, "1");
  public static final Unit SQ_FT = named("sq ft", Dimension.AREA, "0.09290304");
  public static final Unit SQ_YD = named("sq yd", Dimension.AREA, "0.83612736");

  public static final Unit M3 = named("m3", Dimension.VOLUME, "1");
  public static final Unit LITRE = named("l", Dimension.VOLUME, "0.001");
  public static final Unit ML = named("ml", Dimension.VOLUME, "0.000001");
  public static final Unit CU_FT = named("cu ft", Dimension.VOLUME, "0.028316846592");
  public static final Unit CU_YD = named("cu yd", Dimension.VOLUME, "0.764554857984");
  public static final Unit GALLON = named("gal", Dimension.VOLUME, "0.003785411784");
  public static final Unit BOARD_FOOT = named("board ft", Dimension.VOLUME, "0.002359737216");

  public static final Unit KG = named("kg", Dimension.MASS, "1");
  public static final Unit TONNE = named("t", Dimension.MASS, "1000");
  public static final Unit LB = named("lb", Dimension.MASS, "0.45359237");

  /**
   * Pressure counts as mass per area under standard gravity, 9.80665 m/s2 (CGPM 1901): a load on
   * the ground is then a mass, as the trade speaks of it.
   */
  public static final Unit KPA =
      named(
          "kPa",
          Dimension.MASS.per(Dimension.AREA),
          new Ratio(new BigDecimal("1000"), new BigDecimal("9.80665")));

  public static final Unit PSF =
      named("psf", Dimension.MASS.per(Dimension.AREA), LB.toBase().over(SQ_FT.toBase()));

  /** Marks of a scale, which no factor converts: {@link Temperature} does. */
  public static final Unit CELSIUS = new Unit("°C", Dimension.NONE, Ratio.ONE);

  public static final Unit FAHRENHEIT = new Unit("°F", Dimension.NONE, Ratio.ONE);

  public static final Unit HOUR = named("h", Dimension.TIME, "1");

  /** Names that counts may carry; a price book may sell by any of them. */
  private static final Set<String> COUNTS =
      Set.of(
          "bag",
          "bar",
          "box",
          "bundle",
          "cartridge",
          "coil",
          "day",
          "disc",
          "kit",
          "length",
          "load",
          "lot",
          "month",
          "pack",
          "pair",
          "roll",
          "set",
          "sheet",
          "spool",
          "tin",
          "trip",
          "tub",
          "tube",
          "visit",
          "week",
          "cylinder",
          "point",
          "permit",
          "person",
          "board",
          "panel",
          "pail",
          "bottle",
          "year",
          "pallet",
          "piece",
          "run");

  public Unit {
    requireNonNull(symbol, "symbol");
    requireNonNull(dimension, "dimension");
    requireNonNull(toBase, "toBase");
  }

  // Spelled out, as a run of a second or two pays for linking what a record is given.
  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof Unit u
            && symbol.equals(u.symbol)
            && dimension.equals(u.dimension)
            && toBase.equals(u.toBase);
  }

  @Override
  public int hashCode() {
    return symbol.hashCode() * 31 + dimension.hashCode();
  }

  private static Unit named(String symbol, Dimension dimension, String factor) {
    return named(symbol, dimension, Ratio.of(factor));
  }

  private static Unit named(String symbol, Dimension dimension, Ratio factor) {
    var unit = new Unit(symbol, dimension, factor);
    NAMED.put(symbol, unit);
    return unit;
  }

  /** One of something, by name; all counts are the number one. */
  public static Unit count(String name) {
    return new Unit(name, Dimension.NONE, Ratio.ONE);
  }

  /** One major unit of a currency, by its ISO 4217 code. */
  public static Unit money(String currencyCode) {
    return new Unit(currencyCode, Dimension.MONEY, Ratio.ONE);
  }

  /** The base unit of a dimension, for numbers that carry no unit of their own. */
  public static Unit base(Dimension dimension) {
    return new Unit("", dimension, Ratio.ONE);
  }

  /** A unit by its symbol: {@code m2}, {@code sq ft}, {@code sheet}, {@code kg/m}. */
  public static Optional<Unit> find(String symbol) {
    var text = symbol.strip();
    var known = NAMED.get(text);
    if (known != null) return Optional.of(known);
    if (COUNTS.contains(text)) return Optional.of(count(text));
    int slash = text.indexOf('/');
    if (slash > 0) {
      var over = find(text.substring(0, slash));
      var under = find(text.substring(slash + 1));
      if (over.isPresent() && under.isPresent()) return Optional.of(over.get().per(under.get()));
    }
    return Optional.empty();
  }

  public static Unit get(String symbol) {
    return find(symbol)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "No unit '" + symbol + "'; known are " + NAMED.keySet() + " and " + COUNTS));
  }

  public Unit times(Unit other) {
    if (other.equals(ONE)) return this;
    if (equals(ONE)) return other;
    return new Unit(
        symbol + " " + other.symbol, dimension.times(other.dimension), toBase.times(other.toBase));
  }

  public Unit per(Unit other) {
    if (other.symbol.isEmpty() && other.dimension.equals(Dimension.NONE)) return this;
    return new Unit(
        symbol + "/" + other.symbol, dimension.per(other.dimension), toBase.over(other.toBase));
  }

  public boolean measures(Dimension wanted) {
    return dimension.equals(wanted);
  }

  /** The symbol, which {@link #get} reads back. */
  @Override
  public String toString() {
    return symbol;
  }
}
