package cornerpost.price;

import cornerpost.measure.NumberStyle;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.HolidayEntry;
import cornerpost.scope.Problem;
import cornerpost.scope.Trade;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Reads a price book from its files. Every fault is found in one go, each with file and line, what
 * was found and what would be right; any fault and there is no book. {@code docs/price-book.md}
 * says how to write one.
 */
public final class PriceBookReader {
  private static final List<String> REGION_KEYS =
      List.of(
          "name",
          "currency",
          "units",
          "price date",
          "tax name",
          "tax rate",
          "notice",
          "winter design temperature",
          "numbers");

  /** The keys that a region may leave out. */
  private static final Set<String> OPTIONAL_KEYS = Set.of("winter design temperature", "numbers");

  private final String name;
  private final Map<String, byte[]> files;
  private final List<Problem> problems = new ArrayList<>();
  private final Map<String, Use> firstUse = new HashMap<>();

  private PriceBookReader(String name, Map<String, byte[]> files) {
    this.name = name;
    this.files = new TreeMap<>(files);
  }

  /**
   * @param name the name of the book's folder
   * @param files by path relative to that folder, with slashes: {@code region.csv}, {@code
   *     items/ground.csv}; others than {@code .csv} are passed over
   */
  public static Result read(String name, Map<String, byte[]> files) {
    return new PriceBookReader(name, files).read();
  }

  /**
   * @param book empty if there is any fault
   * @param problems faults and remarks; their sheet is the file, their cell the line
   */
  public record Result(Optional<PriceBook> book, List<Problem> problems) {
    public Result {
      problems = List.copyOf(problems);
    }
  }

  private Result read() {
    var climate = climate();
    var region = region(climate);
    var holidays = holidays();
    var rates = rates();
    var hours = hours();
    var items = items();
    boolean faulty = problems.stream().anyMatch(p -> p.severity() == Problem.Severity.FAULT);
    return new Result(
        faulty
            ? Optional.empty()
            : region.map(r -> new PriceBook(name, r, items, rates, hours, holidays)),
        problems);
  }

  private String path(String file) {
    return name + "/" + file;
  }

  private List<CsvTable.Row> table(String file, String... columns) {
    return CsvTable.read(path(file), files.get(file), List.of(columns), problems).rows();
  }

  private boolean has(String file, String without) {
    if (files.containsKey(file)) return true;
    problems.add(
        without.isEmpty()
            ? Problem.fault(path(file), "", "no such file", "every price book has one")
            : Problem.remark(path(file), "", "no such file", without));
    return false;
  }

  private List<String> folder(String folder) {
    var found =
        files.keySet().stream()
            .filter(f -> f.startsWith(folder + "/") && f.toLowerCase(Locale.ROOT).endsWith(".csv"))
            .toList();
    if (found.isEmpty()) {
      problems.add(
          Problem.fault(path(folder), "", "no .csv file in this folder", "at least one table"));
    }
    return found;
  }

  /** Notes a key that was used before; file and line of the first use stand in the message. */
  private boolean isNew(Cells cells, CsvTable.Row row, String kind, String key) {
    var use = new Use(kind, row.file() + " line " + row.line());
    // Items and activities make ids of cost lines alike, so they share no code.
    boolean makesIds = kind.equals("code") || kind.equals("activity");
    var before = firstUse.putIfAbsent((makesIds ? "id" : kind) + ":" + key, use);
    if (before == null) return true;
    cells.fault(
        kind + " '" + key + "' again", "each once; it is the " + before.kind + " of " + before.at);
    return false;
  }

  private record Use(String kind, String at) {}

  private Optional<Region> region(List<Region.Month> climate) {
    if (!has("region.csv", "")) return Optional.empty();
    var byKey = new HashMap<String, CsvTable.Row>();
    for (var row : table("region.csv", "key", "value")) {
      var key = row.get("key").toLowerCase(Locale.ROOT);
      if (!REGION_KEYS.contains(key)) {
        problems.add(row.fault("key '" + key + "'", "one of " + String.join("; ", REGION_KEYS)));
      } else if (byKey.put(key, row) != null) {
        problems.add(row.fault("key '" + key + "' again", "each key once"));
      }
    }
    for (var key : REGION_KEYS) {
      if (!byKey.containsKey(key) && !OPTIONAL_KEYS.contains(key)) {
        problems.add(
            Problem.fault(path("region.csv"), "", "no key '" + key + "'", "a row for this key"));
      }
    }
    var texts = List.of("name", "tax name", "notice");
    boolean complete =
        REGION_KEYS.stream().allMatch(k -> byKey.containsKey(k) || OPTIONAL_KEYS.contains(k));
    for (var key : texts) {
      if (byKey.containsKey(key)) new Cells(byKey.get(key), problems).text("value");
    }
    var currency = cell(byKey, "currency").flatMap(this::currency);
    var units =
        cell(byKey, "units")
            .flatMap(
                c ->
                    UnitSystem.find(byKey.get("units").get("value"))
                        .or(
                            () ->
                                c.fault(
                                    "units '" + byKey.get("units").get("value") + "'",
                                    "metric or US customary")));
    var date = cell(byKey, "price date").flatMap(c -> c.date("value"));
    var rate = cell(byKey, "tax rate").flatMap(c -> c.number("value", "0", "1"));
    var winter =
        cell(byKey, "winter design temperature").flatMap(c -> c.number("value", "-60", "30"));
    var numbers = cell(byKey, "numbers").flatMap(this::numbers).orElse(NumberStyle.PLAIN);
    if (!complete || currency.isEmpty() || units.isEmpty() || date.isEmpty() || rate.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Region(
            byKey.get("name").get("value"),
            currency.get(),
            units.get(),
            date.get(),
            byKey.get("tax name").get("value"),
            rate.get(),
            byKey.get("notice").get("value"),
            winter,
            numbers,
            climate));
  }

  private Optional<Cells> cell(Map<String, CsvTable.Row> byKey, String key) {
    return Optional.ofNullable(byKey.get(key)).map(r -> new Cells(r, problems));
  }

  private Optional<Currency> currency(Cells cells) {
    var code = cells.text("value");
    if (code.isEmpty()) return Optional.empty();
    return Currency.getAvailableCurrencies().stream()
        .filter(c -> c.getCurrencyCode().equals(code.get()))
        .findFirst()
        .or(
            () ->
                cells.fault(
                    "currency '" + code.get() + "'", "a code of ISO 4217, such as USD or EUR"));
  }

  private Optional<NumberStyle> numbers(Cells cells) {
    return cells
        .text("value")
        .flatMap(
            sample ->
                NumberStyle.find(sample)
                    .or(
                        () ->
                            cells.fault(
                                "numbers '" + sample + "'",
                                "one of " + String.join("; ", NumberStyle.SAMPLES))));
  }

  private List<Region.Month> climate() {
    var missing = "without it nothing is said about moisture and weather";
    if (!has("climate.csv", missing)) return List.of();
    var months = new TreeMap<Integer, Region.Month>();
    int before = problems.size();
    for (var row : table("climate.csv", "month", "temperature", "humidity", "wet days")) {
      var c = new Cells(row, problems);
      var month = c.number("month", "1", "12").map(BigDecimal::intValue);
      var temperature = c.number("temperature", "-60", "50");
      var humidity = c.number("humidity", "0", "1");
      var wet = c.number("wet days", "0", "31");
      if (month.isPresent() && !isNew(c, row, "month", month.get().toString())) continue;
      if (c.whole()) {
        months.put(
            month.orElseThrow(),
            new Region.Month(temperature.orElseThrow(), humidity.orElseThrow(), wet.orElseThrow()));
      }
    }
    if (months.size() != 12 && problems.size() == before) {
      problems.add(
          Problem.fault(
              path("climate.csv"), "", months.size() + " months", "twelve rows, month 1 to 12"));
    }
    return List.copyOf(months.values());
  }

  private List<HolidayEntry> holidays() {
    if (!has("holidays.csv", "without it no day but the owner's own holidays rests")) {
      return List.of();
    }
    var all = new ArrayList<HolidayEntry>();
    for (var row : table("holidays.csv", "date", "name")) {
      var c = new Cells(row, problems);
      Optional<LocalDate> date = c.date("date");
      var holiday = c.text("name");
      if (date.isPresent() && !isNew(c, row, "holiday", date.get().toString())) continue;
      if (c.whole()) {
        all.add(
            new HolidayEntry(
                date.orElseThrow(), holiday.orElseThrow(), row.file() + " line " + row.line()));
      }
    }
    return all;
  }

  private List<LabourRate> rates() {
    var all = new ArrayList<LabourRate>();
    if (!has("labour.csv", "")) return all;
    for (var row :
        table("labour.csv", "trade", "low", "likely", "high", "usual crew", "taxed", "source")) {
      var c = new Cells(row, problems);
      var trade = c.oneOf("trade", Trade.class);
      var spread = c.spread("0");
      var crew = c.count("usual crew", 1);
      var taxed = c.yes("taxed");
      var source = c.text("source");
      trade.ifPresent(t -> isNew(c, row, "trade", t.label()));
      if (!c.whole()) continue;
      var s = spread.orElseThrow();
      all.add(
          new LabourRate(
              trade.orElseThrow(),
              s.low(),
              s.likely(),
              s.high(),
              crew.orElseThrow(),
              taxed.orElseThrow(),
              source.orElseThrow()));
    }
    if (problems.stream().noneMatch(p -> p.sheet().equals(path("labour.csv")))) {
      Arrays.stream(Trade.values())
          .filter(t -> all.stream().noneMatch(r -> r.trade() == t))
          .forEach(
              t ->
                  problems.add(
                      Problem.remark(
                          path("labour.csv"),
                          "",
                          "no row for trade '" + t.label() + "'",
                          "it cannot be hired with this book")));
    }
    return all;
  }

  private List<HoursPerUnit> hours() {
    var all = new ArrayList<HoursPerUnit>();
    for (var file : folder("hours")) {
      for (var row :
          table(file, "activity", "description", "per", "low", "likely", "high", "source")) {
        var c = new Cells(row, problems);
        var activity = c.text("activity");
        var description = c.text("description");
        var per = c.unit("per");
        var spread = c.spread("0");
        var source = c.text("source");
        activity.ifPresent(a -> isNew(c, row, "activity", a));
        if (!c.whole()) continue;
        var s = spread.orElseThrow();
        all.add(
            new HoursPerUnit(
                activity.orElseThrow(),
                description.orElseThrow(),
                per.orElseThrow(),
                s.low(),
                s.likely(),
                s.high(),
                source.orElseThrow()));
      }
    }
    return all;
  }

  private List<Item> items() {
    var all = new ArrayList<Item>();
    for (var file : folder("items")) {
      for (var row :
          table(
              file,
              "code",
              "group",
              "description",
              "kind",
              "sold by",
              "content",
              "content unit",
              "whole",
              "low",
              "likely",
              "high",
              "taxed",
              "lead days",
              "source")) {
        item(row).ifPresent(all::add);
      }
    }
    return all;
  }

  private Optional<Item> item(CsvTable.Row row) {
    var c = new Cells(row, problems);
    var code = c.text("code");
    var group = c.oneOf("group", SupplierGroup.class);
    var description = c.text("description");
    var kind = c.oneOf("kind", Item.Kind.class);
    var soldBy = c.unit("sold by");
    var content = c.number("content", "0", "");
    if (content.isPresent() && content.get().signum() == 0) c.fault("content 0", "more than 0");
    var contentUnit = c.unit("content unit");
    var whole = c.yes("whole");
    var spread = c.spread("0");
    var taxed = c.yes("taxed");
    var lead = c.count("lead days", 0);
    var source = c.text("source");
    code.ifPresent(k -> isNew(c, row, "code", k));
    if (!c.whole()) return Optional.empty();
    var s = spread.orElseThrow();
    return Optional.of(
        new Item(
            code.orElseThrow(),
            group.orElseThrow(),
            description.orElseThrow(),
            kind.orElseThrow(),
            soldBy.orElseThrow(),
            content.orElseThrow(),
            contentUnit.orElse(Unit.ONE),
            whole.orElseThrow(),
            s.low(),
            s.likely(),
            s.high(),
            taxed.orElseThrow(),
            lead.orElseThrow(),
            source.orElseThrow()));
  }
}
