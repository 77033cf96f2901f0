package cornerpost.workbook;

import cornerpost.scope.BaselineRow;
import cornerpost.workbook.parts.StoredBook;
import cornerpost.workbook.parts.StoredSheet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads the plans that were kept on sheet Baseline, which a run writes and the next one needs.
 * Columns are found by their names; a sheet of that name without them is the owner's own.
 */
final class BaselineRows {
  /** The columns that are read back, in their order on the sheet. */
  static final List<String> COLUMNS =
      List.of("Baseline", "Kept on", "Id", "Name", "Start then", "Finish then", "Amount then");

  private final StoredBook workbook;
  private final FaultLog faults;

  BaselineRows(StoredBook workbook, FaultLog faults) {
    this.workbook = workbook;
    this.faults = faults;
  }

  List<BaselineRow> read() {
    return workbook.sheets().stream()
        .filter(s -> s.title().equals(ResultSheet.BASELINE.title()))
        .findFirst()
        .map(this::read)
        .orElse(List.of());
  }

  private List<BaselineRow> read(StoredSheet sheet) {
    int header = Addresses.HEADER_ROW - 1;
    int[] at = new int[COLUMNS.size()];
    for (int k = 0; k < at.length; k++) {
      at[k] = column(sheet, header, COLUMNS.get(k));
      if (at[k] < 0) return List.of();
    }
    var rows = new ArrayList<BaselineRow>();
    for (int r : sheet.rows()) {
      if (r <= header || Held.of(sheet, r, at[2]).isNothing()) continue;
      var name = Held.of(sheet, r, at[0]);
      if (name.isNothing()) continue;
      var kept = date(sheet, r, at[1]);
      var amount = Held.of(sheet, r, at[6]);
      if (kept.isEmpty() || amount.kind() != Held.Kind.NUMBER) {
        faults.fault(
            new CellPlace(sheet.title(), r, kept.isEmpty() ? at[1] : at[6]),
            Held.of(sheet, r, kept.isEmpty() ? at[1] : at[6]).shown(),
            "expected what a run wrote there: " + COLUMNS.get(kept.isEmpty() ? 1 : 6));
        continue;
      }
      rows.add(
          new BaselineRow(
              EntryReader.text(name),
              kept.get(),
              EntryReader.text(Held.of(sheet, r, at[2])),
              EntryReader.text(Held.of(sheet, r, at[3])),
              date(sheet, r, at[4]),
              date(sheet, r, at[5]),
              amount.number()));
    }
    return rows;
  }

  private static Optional<LocalDate> date(StoredSheet sheet, int row, int column) {
    return Held.of(sheet, row, column).date();
  }

  private static int column(StoredSheet sheet, int row, String name) {
    for (var cell : sheet.row(row)) {
      var held = Held.of(sheet.book(), cell);
      if (held.kind() == Held.Kind.TEXT && Plain.same(held.text(), name)) return cell.column();
    }
    return -1;
  }
}
