package cornerpost.workbook;

import cornerpost.measure.Unit;
import cornerpost.plan.Plan;
import cornerpost.price.CostLine;
import cornerpost.scope.Stage;
import cornerpost.trace.Figure;
import cornerpost.trace.Leaf;
import cornerpost.trace.Places;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where every figure of a plan stands in its result workbook. Rows are those people see. */
final class Addresses implements Places {
  /** Row 1 says what a sheet is for, row 2 is for totals, row 3 holds the column names. */
  static final int HEADER_ROW = 3;

  static final int FIRST_ROW = HEADER_ROW + 1;

  // Criteria on columns Taxed and Basis of the Cost plan.
  private static final String TAXED = ",\"yes\"";
  private static final String FIRM = ",\"<>price book\"";

  private final List<CostLine> costLines;
  private final Map<String, Integer> quantityRow = new HashMap<>();
  private final Map<String, Unit> quantityUnit = new HashMap<>();
  private final Map<String, Integer> costRow = new HashMap<>();
  private final Map<String, List<CostLine>> ofQuantity = new HashMap<>();
  private final Map<String, List<CostLine>> ofTask = new HashMap<>();
  private final Map<String, List<CostLine>> ofItem = new HashMap<>();
  private final Map<String, Unit> costUnit = new HashMap<>();
  private final Map<String, Integer> taskRow = new HashMap<>();
  private final Map<Leaf, Integer> priceRow = new LinkedHashMap<>();
  private final Map<Leaf, Integer> factRow = new LinkedHashMap<>();

  Addresses(Plan plan) {
    int row = FIRST_ROW;
    for (var line : plan.lines()) {
      quantityRow.put(line.id(), row++);
      quantityUnit.put(line.id(), line.shownIn());
    }
    // The engine's order, held to: a total must never stand among the rows it adds up.
    costLines =
        plan.estimate().lines().stream()
            .sorted(Comparator.comparing(CostLine::stage).thenComparing(CountsAs::of))
            .toList();
    row = FIRST_ROW;
    for (var line : costLines) {
      costRow.put(line.id(), row++);
      costUnit.put(line.id(), line.unit());
      line.quantityId().ifPresent(id -> add(ofQuantity, id, line));
      line.task().ifPresent(id -> add(ofTask, id, line));
      line.item().ifPresent(code -> add(ofItem, code, line));
    }
    row = FIRST_ROW;
    for (var task : plan.programme().tasks()) taskRow.put(task.id(), row++);
    for (var line : plan.lines()) note(line.quantity());
    for (var line : costLines) {
      note(line.quantity());
      note(line.bookRate());
      if (line.quote().isEmpty()) note(line.rate());
    }
    plan.keyFigures().floor().ifPresent(this::note);
  }

  /** What a line is, for totals over the Cost plan. */
  enum CountsAs {
    BASE("base"),
    PRICE_RISE("price rise"),
    TAX("tax"),
    CONTINGENCY("contingency");

    private final String label;

    CountsAs(String label) {
      this.label = label;
    }

    String label() {
      return label;
    }

    static CountsAs of(CostLine line) {
      return switch (line.kind()) {
        case ESCALATION -> PRICE_RISE;
        case TAX -> TAX;
        case CONTINGENCY -> CONTINGENCY;
        case MATERIAL, PLANT, SERVICE, FEE, TIME, LABOUR, OWN_LABOUR, OWN_ITEM, INTEREST -> BASE;
      };
    }
  }

  private static void add(Map<String, List<CostLine>> lists, String key, CostLine line) {
    lists.computeIfAbsent(key, k -> new ArrayList<>()).add(line);
  }

  private void note(Figure figure) {
    for (var leaf : figure.leaves()) {
      switch (leaf.kind()) {
        case PRICE -> priceRow.putIfAbsent(leaf, FIRST_ROW + priceRow.size());
        case FACT, WORKED -> factRow.putIfAbsent(leaf, FIRST_ROW + factRow.size());
        case CHOICE, ASSUMED -> {}
      }
    }
  }

  // ---- rows ---------------------------------------------------------------------------------

  /** The lines of a quantity, in the order of the Cost plan; the same for a task and an item. */
  List<CostLine> linesOfQuantity(String id) {
    return ofQuantity.getOrDefault(id, List.of());
  }

  List<CostLine> linesOfTask(String id) {
    return ofTask.getOrDefault(id, List.of());
  }

  List<CostLine> linesOfItem(String code) {
    return ofItem.getOrDefault(code, List.of());
  }

  /** The lines of the Cost plan in the order in which they stand there. */
  List<CostLine> costLines() {
    return costLines;
  }

  List<Leaf> prices() {
    return List.copyOf(priceRow.keySet());
  }

  List<Leaf> facts() {
    return List.copyOf(factRow.keySet());
  }

  Optional<Integer> quantityRow(String id) {
    return Optional.ofNullable(quantityRow.get(id));
  }

  Optional<Integer> costRow(String id) {
    return Optional.ofNullable(costRow.get(id));
  }

  Optional<Integer> taskRow(String id) {
    return Optional.ofNullable(taskRow.get(id));
  }

  Optional<Integer> priceRow(String code) {
    return priceRow.entrySet().stream()
        .filter(e -> e.getKey().key().equals(code))
        .map(Map.Entry::getValue)
        .findFirst();
  }

  int lastCostRow() {
    return Math.max(FIRST_ROW, HEADER_ROW + costLines.size());
  }

  int lastPriceRow() {
    return Math.max(FIRST_ROW, HEADER_ROW + priceRow.size());
  }

  int lastFactRow() {
    return Math.max(FIRST_ROW, HEADER_ROW + factRow.size());
  }

  // ---- references ---------------------------------------------------------------------------

  @Override
  public String cell(Leaf leaf) {
    return switch (leaf.kind()) {
      case PRICE -> at(ResultSheet.PRICES_USED, "C", known(priceRow, leaf));
      case FACT, WORKED -> at(ResultSheet.FACTS_USED, "C", known(factRow, leaf));
      case CHOICE, ASSUMED -> choice(leaf.key());
    };
  }

  private static int known(Map<Leaf, Integer> rows, Leaf leaf) {
    var row = rows.get(leaf);
    if (row == null) throw new IllegalStateException("No row for " + leaf);
    return row;
  }

  @Override
  public Shown named(String id) {
    var row = quantityRow.get(id);
    if (row != null) return new Shown(at(ResultSheet.QUANTITIES, "D", row), quantityUnit.get(id));
    row = costRow.get(id);
    if (row != null) return new Shown(at(ResultSheet.COST_PLAN, "D", row), costUnit.get(id));
    throw new IllegalStateException("No row is named '" + id + "'");
  }

  @Override
  public Optional<String> total(String key) {
    var parts = key.split("/");
    if (parts.length != 3 || !parts[0].equals("stage")) return Optional.empty();
    var stage = Stage.valueOf(parts[1]);
    return switch (parts[2]) {
      case "base" -> sum(stage, CountsAs.BASE, "");
      case "taxed" -> sum(stage, CountsAs.BASE, TAXED);
      case "firm" -> sum(stage, CountsAs.BASE, FIRM);
      case "firm-taxed" -> sum(stage, CountsAs.BASE, FIRM + TAXED);
      case "before-contingency" -> sum(stage, CountsAs.TAX, "");
      default -> Optional.empty();
    };
  }

  /**
   * The amounts of a stage up to and including lines of a kind. The range ends before the line that
   * asks: a total must not stand among what it adds up.
   */
  private Optional<String> sum(Stage stage, CountsAs upTo, String criteria) {
    var rows =
        costLines.stream()
            .filter(l -> l.stage() == stage && CountsAs.of(l).compareTo(upTo) <= 0)
            .map(l -> costRow.get(l.id()))
            .toList();
    if (rows.isEmpty()) return Optional.of("0");
    int first = rows.get(0);
    int last = rows.get(rows.size() - 1);
    var text = new StringBuilder("SUMIFS(").append(range(CostPlanColumn.AMOUNT, first, last));
    text.append(',').append(range(CostPlanColumn.STAGE, first, last)).append(',');
    text.append(quoted(stage.label()));
    if (criteria.contains(FIRM)) {
      text.append(',').append(range(CostPlanColumn.BASIS, first, last)).append(FIRM);
    }
    if (criteria.contains(TAXED)) {
      text.append(',').append(range(CostPlanColumn.TAXED, first, last)).append(TAXED);
    }
    return Optional.of(text.append(')').toString());
  }

  static String range(CostPlanColumn column, int first, int last) {
    return "'Cost plan'!" + column.range(first, last);
  }

  /** All rows of a column of the Cost plan. */
  String costColumn(CostPlanColumn column) {
    return range(column, FIRST_ROW, lastCostRow());
  }

  static String at(ResultSheet sheet, String column, int row) {
    return sheetName(sheet.title()) + "!$" + column + "$" + row;
  }

  /** {@code Site and foundation!B7} as {@code 'Site and foundation'!$B$7}. */
  static String choice(String label) {
    int mark = label.lastIndexOf('!');
    var cell = label.substring(mark + 1).replace("$", "");
    int letters = 0;
    while (letters < cell.length() && Character.isLetter(cell.charAt(letters))) letters++;
    return sheetName(label.substring(0, mark))
        + "!$"
        + cell.substring(0, letters)
        + "$"
        + cell.substring(letters);
  }

  static String sheetName(String title) {
    return title.matches("[A-Za-z]+") ? title : "'" + title.replace("'", "''") + "'";
  }

  /** A text inside a formula. */
  /** A range that stays where it is when copied; rows count from one, columns from nothing. */
  static String fixed(int row, int column, int lastRow, int lastColumn) {
    return "$"
        + SheetPage.letter(column)
        + "$"
        + row
        + ":$"
        + SheetPage.letter(lastColumn)
        + "$"
        + lastRow;
  }

  static String quoted(String text) {
    return "\"" + text.replace("\"", "\"\"") + "\"";
  }
}
