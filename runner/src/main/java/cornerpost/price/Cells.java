package cornerpost.price;

import cornerpost.measure.Unit;
import cornerpost.scope.Labelled;
import cornerpost.scope.Problem;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Reads the cells of one row of a price book; each that does not fit is noted, and read on. */
final class Cells {
  private final CsvTable.Row row;
  private final List<Problem> problems;
  private boolean whole = true;

  Cells(CsvTable.Row row, List<Problem> problems) {
    this.row = row;
    this.problems = problems;
  }

  /** Whether everything asked for so far was there and right. */
  boolean whole() {
    return whole;
  }

  <T> Optional<T> fault(String found, String expected) {
    whole = false;
    problems.add(row.fault(found, expected));
    return Optional.empty();
  }

  Optional<String> text(String column) {
    var text = row.get(column);
    return text.isEmpty()
        ? fault("no " + column, "a " + column + " in every row")
        : Optional.of(text);
  }

  Optional<BigDecimal> number(String column, String least, String most) {
    var text = row.get(column);
    if (text.isEmpty()) return fault("no " + column, "a number");
    var share = text.endsWith("%");
    try {
      var number = new BigDecimal(share ? text.substring(0, text.length() - 1).strip() : text);
      if (share) number = number.movePointLeft(2);
      if (number.compareTo(new BigDecimal(least)) < 0
          || !most.isEmpty() && number.compareTo(new BigDecimal(most)) > 0) {
        return fault(
            column + " " + text,
            most.isEmpty() ? "at least " + least : "a number from " + least + " to " + most);
      }
      return Optional.of(number);
    } catch (NumberFormatException e) {
      return fault(column + " '" + text + "'", "a number with a decimal point, such as 12.50");
    }
  }

  Optional<Integer> count(String column, int least) {
    var number = number(column, Integer.toString(least), "100000");
    if (number.isEmpty()) return Optional.empty();
    try {
      return Optional.of(number.get().intValueExact());
    } catch (ArithmeticException e) {
      return fault(column + " '" + row.get(column) + "'", "a whole number");
    }
  }

  Optional<Boolean> yes(String column) {
    return switch (row.get(column)) {
      case "yes" -> Optional.of(true);
      case "no" -> Optional.of(false);
      default -> fault(column + " '" + row.get(column) + "'", "yes or no");
    };
  }

  Optional<Unit> unit(String column) {
    var text = row.get(column);
    var unit = text.isEmpty() ? Optional.<Unit>empty() : Unit.find(text);
    return unit.isPresent()
        ? unit
        : fault(
            column + " '" + text + "'",
            "a unit such as m, ft, m2, sq ft, m3, cu yd, kg, lb, h, each, sheet, bag");
  }

  Optional<LocalDate> date(String column) {
    var text = row.get(column);
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeParseException e) {
      return fault(column + " '" + text + "'", "a day of the calendar, such as 2026-07-01");
    }
  }

  <E extends Enum<E> & Labelled> Optional<E> oneOf(String column, Class<E> type) {
    var text = row.get(column);
    var found = Labelled.find(type, text);
    return found.isPresent()
        ? found
        : fault(
            column + " '" + text + "'",
            "one of "
                + Arrays.stream(type.getEnumConstants())
                    .map(Labelled::label)
                    .collect(Collectors.joining("; ")));
  }

  /** Three numbers that do not fall; empty if one is missing or they fall. */
  Optional<Spread> spread(String least) {
    var low = number("low", least, "");
    var likely = number("likely", least, "");
    var high = number("high", least, "");
    if (low.isEmpty() || likely.isEmpty() || high.isEmpty()) return Optional.empty();
    var spread = new Spread(low.get(), likely.get(), high.get());
    return spread.rises()
        ? Optional.of(spread)
        : fault(
            "low " + low.get() + ", likely " + likely.get() + ", high " + high.get(),
            "low <= likely <= high");
  }

  record Spread(BigDecimal low, BigDecimal likely, BigDecimal high) {
    boolean rises() {
      return low.compareTo(likely) <= 0 && likely.compareTo(high) <= 0;
    }
  }
}
