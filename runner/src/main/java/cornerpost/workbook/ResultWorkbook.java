package cornerpost.workbook;

import cornerpost.plan.Plan;
import cornerpost.workbook.parts.BookEdit;
import cornerpost.workbook.parts.DamagedFileException;
import cornerpost.workbook.parts.StoredBook;
import cornerpost.workbook.parts.StoredSheet;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;

/**
 * Writes a plan into the owner's workbook. Their sheets stay as they are; the result sheets are
 * added behind them, or filled again where they stand already. Quantities and money are live
 * formulas with their values beside them.
 */
public final class ResultWorkbook {
  /** Each fills a sheet of its own, the long ones first. */
  private static final List<Consumer<ResultRun>> WRITERS =
      List.of(
          SheetCostPlan::write,
          SheetQuantities::write,
          SheetSchedule::write,
          SheetFactsUsed::write,
          SheetBuyingList::write,
          SheetCuttingPlans::write,
          SheetPricesUsed::write,
          SheetBarChart::write,
          SheetLongestPath::write,
          SheetInspections::write,
          SheetCrewLoad::write,
          SheetCashFlow::write,
          SheetDraws::write,
          SheetCostToComplete::write,
          SheetCostReport::write,
          SheetScheduleOfValues::write,
          SheetMoneyToCome::write,
          SheetEarnedValue::write,
          SheetLenderReview::write,
          SheetDelayEffects::write,
          SheetBaseline::write,
          SheetLookAhead::write,
          SheetResequencing::write,
          SheetRecovery::write,
          SheetRisk::write,
          SheetChecks::write,
          SheetSummary::write);

  private ResultWorkbook() {}

  /**
   * Whether a file is a result as this class writes it, not saved by another program since: its
   * parts stand in the order of their names, which no office program keeps.
   *
   * @throws IOException if the file cannot be read
   */
  public static boolean isAsWritten(Path file) throws IOException {
    try (var zip = new ZipFile(file.toFile())) {
      var parts = zip.stream().map(ZipEntry::getName).toList();
      return parts.stream().sorted().toList().equals(parts);
    } catch (ZipException notAWorkbook) {
      return false;
    }
  }

  /**
   * The workbook with its results. The same workbook and plan give the same bytes.
   *
   * @param ownersWorkbook an .xlsx, of the owner's or of an earlier run; it is not changed
   * @throws UncheckedIOException if the bytes are not an .xlsx; reading them before shows that as a
   *     problem
   */
  public static byte[] write(byte[] ownersWorkbook, Plan plan) {
    try {
      return write(StoredBook.read(ownersWorkbook), plan);
    } catch (DamagedFileException e) {
      throw new UncheckedIOException(new IOException("Not an .xlsx workbook", e));
    }
  }

  /** The same for a workbook that was read already. */
  public static byte[] write(StoredBook ownersWorkbook, Plan plan) {
    var edit = new BookEdit(ownersWorkbook);
    boolean fresh = !edit.has(ResultSheet.SUMMARY.title());
    var run = new ResultRun(plan, edit);
    prepareSheets(run, edit);
    fill(run);
    for (var s : run.pages.keySet()) SheetPrint.setUp(run, s);
    // In one order, so that the same plan gives the same bytes whoever filled which sheet.
    for (var page : run.pages.values()) page.number(run.styles);
    run.pages.values().parallelStream().forEach(SheetPage::finish);
    if (fresh) edit.show(ResultSheet.SUMMARY.title());
    return edit.packed();
  }

  private static void prepareSheets(ResultRun run, BookEdit edit) {
    var behind = "";
    for (var s : ResultSheet.values()) {
      if (!s.isNeeded(run.plan.finance()) && !edit.has(s.title())) {
        continue;
      }
      var there = edit.book().sheet(s.title());
      if (there.isPresent() && !isOurs(there.get())) setAside(edit, s.title());
      var sheet = edit.sheet(s.title(), behind);
      behind = sheet.title();
      run.pages.put(s, new SheetPage(sheet, run.styles.plain(), edit.book().from1904()));
    }
  }

  /** A sheet with a result's name is ours if it says so on top, or has nothing on it. */
  private static boolean isOurs(StoredSheet sheet) {
    if (sheet.lastRow() < 0) return true;
    var top = Held.of(sheet, 0, 0);
    return top.kind() == Held.Kind.TEXT && top.text().contains(ResultSheet.MARK);
  }

  /** The owner's own sheet of that name is kept, under a name that says whose it is. */
  private static void setAside(BookEdit edit, String title) {
    var stem = title + " (own";
    var name = stem + ")";
    for (int n = 2; edit.has(name); n++) name = stem + " " + n + ")";
    edit.rename(title, name);
  }

  private static void fill(ResultRun run) {
    for (var s : run.pages.keySet()) {
      var page = run.page(s);
      page.text(1, 0, s.topLine(), page.plain().slanted().inInk(SheetStyle.QUIET));
    }
    WRITERS.parallelStream().forEach(w -> w.accept(run));
  }

  /** The sheets a run writes, in their order; everything else in a workbook is the owner's. */
  public static List<String> resultSheets() {
    return java.util.Arrays.stream(ResultSheet.values()).map(ResultSheet::title).toList();
  }
}
