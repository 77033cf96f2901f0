package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import cornerpost.measure.UnitSystem;
import cornerpost.plan.Plan;
import cornerpost.plan.Planner;
import cornerpost.plan.RunOptions;
import cornerpost.takeoff.RandomHouses;
import cornerpost.trace.Figure;
import cornerpost.trace.Leaf;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.CellType;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Sheet Facts used lists the facts that a plan rests on: each of them, and no other. */
class FactsUsedTest {
  private static final Pattern POINTS_AT =
      Pattern.compile("(?:'|&apos;)Facts used(?:'|&apos;)!\\$?C\\$?(\\d+)");
  private static final RunOptions FEW =
      new RunOptions(
          Optional.empty(), List.of(), OptionalLong.of(1), OptionalInt.of(50), "0123456789ab");

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "one-bedroom-40hc.xlsx",
        "studio-20hc-metric.xlsx",
        "two-bedroom-two-boxes.xlsx",
        "mid-build-late-delivery.xlsx"
      })
  void of_an_example_the_rows_are_the_facts_its_figures_reach(String example) throws IOException {
    var input = Examples.workbook(example);
    var plan = Examples.plan(input);
    holds(plan, ResultWorkbook.write(input, plan));
  }

  @ParameterizedTest(name = "seed {0}, {1}")
  @CsvSource({
    "1, METRIC",
    "2, US",
    "3, METRIC",
    "5, US",
    "8, METRIC",
    "13, US",
    "21, METRIC",
    "34, US"
  })
  void of_a_house_drawn_the_rows_are_the_facts_its_figures_reach(long seed, UnitSystem units)
      throws IOException {
    var scope = RandomHouses.of(seed, units);
    var book = Examples.book(units == UnitSystem.US ? "quarrow-plains-2026" : "velmark-coast-2026");
    var result = Planner.plan(scope, Facts.supplied(), Optional.of(book), FEW);
    var plan = result.plan().orElseThrow(() -> new AssertionError(result.problems().toString()));
    holds(plan, ResultWorkbook.write(OwnersBook.of(scope), plan));
  }

  private static void holds(Plan plan, byte[] result) throws IOException {
    var reached = reached(plan);
    var rows = rows(result);
    assertThat(reached).hasSizeGreaterThan(60);
    assertThat(new TreeSet<>(rows.values())).isEqualTo(reached);
    assertThat(rows).as("each in one row").hasSameSizeAs(reached);
    // A cell of the sheet itself that looks at its own value is no use of a fact.
    assertThat(pointedAt(result)).isEqualTo(rows.keySet());
  }

  /** Ids of facts and worked-out numbers behind every quantity and every line of the bill. */
  private static Set<String> reached(Plan plan) {
    var leaves = new HashSet<Leaf>();
    for (var line : plan.lines()) leaves.addAll(line.quantity().allLeaves());
    for (var line : plan.estimate().lines()) {
      for (Figure f : List.of(line.quantity(), line.bookRate(), line.amount())) {
        leaves.addAll(f.allLeaves());
      }
    }
    // the floor area, for the cost of a square metre on the Summary
    plan.keyFigures().floor().ifPresent(f -> leaves.addAll(f.allLeaves()));
    return leaves.stream()
        .filter(l -> l.kind() == Leaf.Kind.FACT || l.kind() == Leaf.Kind.WORKED)
        .map(Leaf::key)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** The id in each row of a fact: those whose kind says so, before the entries of the run. */
  private static TreeMap<Integer, String> rows(byte[] result) {
    var rows = new TreeMap<Integer, String>();
    for (var row : OwnersBook.open(result).getSheet("Facts used")) {
      var kind = row.getCell(5);
      if (row.getRowNum() < Addresses.HEADER_ROW || kind == null) continue;
      if (kind.getCellType() != CellType.STRING) continue;
      var text = kind.getStringCellValue();
      if (text.startsWith("fact") || text.startsWith("worked out")) {
        rows.put(row.getRowNum() + 1, row.getCell(0).getStringCellValue());
      }
    }
    return rows;
  }

  /** Rows of the sheet that formulas of other sheets point at. */
  private static Set<Integer> pointedAt(byte[] result) throws IOException {
    var found = new TreeSet<Integer>();
    try (var zip = new ZipInputStream(new ByteArrayInputStream(result))) {
      for (var part = zip.getNextEntry(); part != null; part = zip.getNextEntry()) {
        if (!part.getName().startsWith("xl/worksheets/sheet")) continue;
        var text = new String(zip.readAllBytes(), StandardCharsets.UTF_8);
        var at = POINTS_AT.matcher(text);
        while (at.find()) found.add(Integer.parseInt(at.group(1)));
      }
    }
    return found;
  }
}
