package cornerpost.price;

import cornerpost.scope.Labelled;
import cornerpost.scope.Trade;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Price books for tests: whole unless a test breaks them. */
public final class TestBook {
  static final String ITEM_HEADER =
      "code,group,description,kind,sold by,content,content unit,whole,low,likely,high,taxed,lead"
          + " days,source";
  static final String HOURS_HEADER = "activity,description,per,low,likely,high,source";

  private final Map<String, String> files = new LinkedHashMap<>();
  private final List<String> items = new ArrayList<>();
  private final List<String> hours = new ArrayList<>();

  public TestBook() {
    region("EUR", "metric", "2026-07-01", "0.0825");
    files.put(
        "climate.csv",
        "month,temperature,humidity,wet days\n"
            + java.util.stream.IntStream.rangeClosed(1, 12)
                .mapToObj(m -> m + ",10,0.8,3\n")
                .collect(Collectors.joining()));
    files.put("holidays.csv", "date,name\n2027-01-01,New Year's Day\n");
    labour("30", "40", "55", "no");
  }

  public TestBook region(String currency, String units, String date, String tax) {
    files.put(
        "region.csv",
        String.join(
            "\n",
            "key,value",
            "name,Testing",
            "currency," + currency,
            "units," + units,
            "price date," + date,
            "tax name,Tax",
            "tax rate," + tax,
            "notice,\"For tests, invented\"",
            "winter design temperature,-10",
            ""));
    return this;
  }

  /** The same rate for every trade. */
  public TestBook labour(String low, String likely, String high, String taxed) {
    files.put(
        "labour.csv",
        "trade,low,likely,high,usual crew,taxed,source\n"
            + Arrays.stream(Trade.values())
                .map(Labelled::label)
                .map(t -> String.join(",", t, low, likely, high, "2", taxed, "test") + "\n")
                .collect(Collectors.joining()));
    return this;
  }

  public TestBook item(
      String code, String soldBy, String content, String unit, String whole, String prices) {
    return item(code, "Timber and sheet", soldBy, content, unit, whole, prices, "no", "0");
  }

  public TestBook item(
      String code,
      String group,
      String soldBy,
      String content,
      String unit,
      String whole,
      String prices,
      String taxed,
      String lead) {
    items.add(
        String.join(
            ",",
            code,
            quoted(group),
            code,
            "material",
            soldBy,
            content,
            unit,
            whole,
            prices,
            taxed,
            lead,
            "test"));
    return this;
  }

  private static String quoted(String text) {
    return "\"" + text + "\"";
  }

  public TestBook hours(String activity, String per, String hours) {
    this.hours.add(String.join(",", activity, activity, per, hours, "test"));
    return this;
  }

  /** Replaces a file; {@code null} takes it away. */
  TestBook file(String path, String text) {
    files.put(path, text);
    return this;
  }

  public Map<String, byte[]> files() {
    var all = new LinkedHashMap<>(files);
    if (items.isEmpty()) item("no-item", "each", "1", "each", "no", "1,1,1");
    if (hours.isEmpty()) hours("no-activity", "each", "1,1,1");
    if (!all.containsKey("items/all.csv"))
      all.put("items/all.csv", ITEM_HEADER + "\n" + String.join("\n", items) + "\n");
    if (!all.containsKey("hours/all.csv"))
      all.put("hours/all.csv", HOURS_HEADER + "\n" + String.join("\n", hours) + "\n");
    var bytes = new LinkedHashMap<String, byte[]>();
    all.forEach(
        (f, t) -> {
          if (t != null) bytes.put(f, t.getBytes(StandardCharsets.UTF_8));
        });
    return bytes;
  }

  public PriceBook book() {
    var result = PriceBookReader.read("testing", files());
    return result
        .book()
        .orElseThrow(() -> new AssertionError("The book has faults: " + result.problems()));
  }
}
