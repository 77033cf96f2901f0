package cornerpost.price;

import cornerpost.measure.NumberStyle;
import cornerpost.measure.UnitSystem;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Optional;

/**
 * What a price book says of its region.
 *
 * @param taxName what the tax is called there
 * @param taxRate share of the taxed amounts
 * @param priceDate the date the prices are of
 * @param notice said wherever prices are shown; an invented book says that it is invented
 * @param numbers how they are written there
 * @param climate twelve months, January first; empty where the book has none
 * @param winterDesign coldest design temperature, degrees Celsius
 */
public record Region(
    String name,
    Currency currency,
    UnitSystem units,
    LocalDate priceDate,
    String taxName,
    BigDecimal taxRate,
    String notice,
    Optional<BigDecimal> winterDesign,
    NumberStyle numbers,
    List<Month> climate) {

  /**
   * A month's weather.
   *
   * @param temperature mean outside temperature, degrees Celsius
   * @param humidity mean relative humidity, 0 to 1
   * @param wetDays days on which outside work stops
   */
  public record Month(BigDecimal temperature, BigDecimal humidity, BigDecimal wetDays) {}

  public Region {
    climate = List.copyOf(climate);
  }
}
