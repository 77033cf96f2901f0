package cornerpost.workbook;

import cornerpost.scope.Answer;
import cornerpost.scope.Answers;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Scope;
import cornerpost.workbook.parts.StoredCell;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The choices as they stood at this run. Each is compared, live, with what its cell holds now, so
 * that the workbook itself says when dates and worked-out numbers are out of date.
 */
final class RunMark {
  /** Rows of an owner's sheet that are counted. */
  private static final int MOST_ROWS = 2000;

  private final ResultRun run;
  private final SheetPage page;

  private RunMark(ResultRun run, SheetPage page) {
    this.run = run;
    this.page = page;
  }

  /** Writes the rows from {@code row} on; the next free row. */
  static int write(ResultRun run, SheetPage page, int row) {
    return new RunMark(run, page).write(row);
  }

  private int write(int first) {
    int row = first;
    for (var e : choices().entrySet()) {
      if (choice(row, e.getKey(), e.getValue())) row++;
    }
    for (var sheet : OwnerSheet.values()) {
      if (count(row, sheet)) row++;
    }
    return row;
  }

  /** Every cell that takes part, by label, with what is asked there; the empty ones too. */
  private Map<String, String> choices() {
    var scope = run.plan.scope();
    var all = new LinkedHashMap<String, String>();
    for (var e : scope.entered()) all.putIfAbsent(e.cell(), e.label());
    for (var answers : answers(scope)) {
      // A map of answers has no order of its own; cells in reading order give the same bytes.
      answers.all().entrySet().stream()
          .sorted(Comparator.comparingLong(e -> order(e.getValue())))
          .forEach(e -> all.putIfAbsent(e.getValue().cell(), e.getKey().label()));
    }
    return all;
  }

  private static long order(Answer answer) {
    return CellPlace.find(answer.cell()).map(p -> (long) p.row() << 32 | p.column()).orElse(-1L);
  }

  private static List<Answers> answers(Scope scope) {
    var all = new ArrayList<Answers>();
    all.add(scope.project());
    scope.boxes().forEach(b -> all.add(b.row()));
    scope.rooms().forEach(r -> all.add(r.row()));
    scope.openings().forEach(o -> all.add(o.row()));
    all.addAll(
        List.of(
            scope.site(),
            scope.deckAndRoof(),
            scope.envelope(),
            scope.services(),
            scope.finishes(),
            scope.loan(),
            scope.options()));
    return all;
  }

  /** Whether there is such a cell; a place without one needs no row. */
  private boolean choice(int row, String label, String asked) {
    var place = CellPlace.find(label);
    if (place.isEmpty()) return false;
    var sheet = run.workbook.sheet(place.get().sheet());
    if (sheet.isEmpty()) return false;
    var cell = sheet.get().cell(place.get().row(), place.get().column());
    var held = cell.map(c -> Held.of(run.workbook, c)).orElse(Held.NOTHING);
    if (held.kind() == Held.Kind.ERROR || held.kind() == Held.Kind.UNREADABLE) return false;
    var at = Addresses.choice(label);
    var now = "$C" + row;
    var then = "$G" + row;
    var formula = "IF(" + at + "=\"\",\"\"," + at + ")";
    page.text(row, 0, label, page.wrapped());
    page.text(row, 1, asked, page.wrapped());
    String changed;
    if (held.kind() == Held.Kind.NUMBER && isNumber(cell.orElseThrow())) {
      double value = Double.parseDouble(cell.get().value().strip());
      var look = held.dateFormat() ? page.dateLook() : page.number("#,##0.######");
      page.formula(row, 2, formula, value, look);
      page.number(row, 6, value, look.inInk(SheetStyle.QUIET));
      changed =
          "IF(ISNUMBER("
              + now
              + "),IF(ABS("
              + now
              + "-"
              + then
              + ")>0.000000001*(1+ABS("
              + then
              + ")),1,0),1)";
    } else {
      var text = SheetPage.fitting(textOf(held, cell));
      page.formula(row, 2, formula, text, page.wrapped());
      page.text(row, 6, text, page.wrapped().inInk(SheetStyle.QUIET));
      changed = "IF(EXACT(" + now + "&\"\"," + then + "&\"\"),0,1)";
    }
    finish(row, "choice", changed);
    page.link(row, 0, at.replace("$", ""));
    return true;
  }

  private static boolean isNumber(StoredCell cell) {
    return cell.type().equals("n");
  }

  /** Text as the cell has it, spaces and all, which is what a formula sees. */
  private static String textOf(Held held, Optional<StoredCell> cell) {
    return switch (held.kind()) {
      case TEXT -> held.text();
      case TRUTH -> held.truth() ? "TRUE" : "FALSE";
      default -> cell.map(StoredCell::value).orElse("");
    };
  }

  /** Whether a formula that counts texts and numbers by their length would count it. */
  private boolean isFilled(StoredCell cell) {
    return switch (cell.type()) {
      case "s" -> !run.workbook.sharedText(Integer.parseInt(cell.value().strip())).isEmpty();
      case "inlineStr" -> !cell.text().isEmpty();
      case "e" -> false;
      default -> !cell.value().isEmpty();
    };
  }

  private void finish(int row, String kind, String changed) {
    page.text(row, 4, kind.equals("choice") ? "your entry" : "your sheet", page.plain());
    page.text(row, 5, kind);
    page.formula(row, 7, changed, 0, page.number("0").inInk(SheetStyle.QUIET));
  }

  /** How many cells are filled: the first column of a table, the entries of a form. */
  private boolean count(int row, OwnerSheet which) {
    var found = run.workbook.sheet(which.title());
    if (found.isEmpty() || which.shape() == OwnerSheet.Shape.TEXT) return false;
    int column = which.shape() == OwnerSheet.Shape.TABLE ? 0 : 1;
    int filled = 0;
    for (int r : found.get().rows()) {
      if (r < MOST_ROWS && found.get().cell(r, column).filter(c -> isFilled(c)).isPresent())
        filled++;
    }
    var letter = SheetPage.letter(column);
    page.text(row, 0, which.title(), page.wrapped());
    page.text(
        row,
        1,
        which.shape() == OwnerSheet.Shape.TABLE ? "cells filled in the first column" : "entries",
        page.wrapped());
    var range =
        Addresses.sheetName(which.title()) + "!$" + letter + "$1:$" + letter + "$" + MOST_ROWS;
    // By length: programs differ in whether an empty text, or a number, counts as text.
    page.formula(row, 2, "SUMPRODUCT(--(LEN(" + range + ")>0))", filled, page.number("0"));
    page.number(row, 6, filled, page.number("0").inInk(SheetStyle.QUIET));
    finish(row, "count", "IF($C" + row + "=$G" + row + ",0,1)");
    return true;
  }
}
