package cornerpost.workbook;

import cornerpost.plan.Plan;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.ZoneOffset;
import java.util.Date;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;
import org.apache.poi.openxml4j.exceptions.OpenXML4JException;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.xssf.usermodel.XSSFRelation;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Writes a plan into the owner's workbook. Their sheets stay as they are; the result sheets are
 * added behind them, or filled again where they stand already. Quantities and money are live
 * formulas with their values beside them.
 */
public final class ResultWorkbook {
  private final OPCPackage pack;
  private final XSSFWorkbook workbook;

  private ResultWorkbook(OPCPackage pack, XSSFWorkbook workbook) {
    this.pack = pack;
    this.workbook = workbook;
  }

  /**
   * The workbook with its results. The same workbook and plan give the same bytes.
   *
   * @param ownersWorkbook an .xlsx, of the owner's or of an earlier run; it is not changed
   * @throws UncheckedIOException if the bytes are not an .xlsx; reading them before shows that as a
   *     problem
   */
  public static byte[] write(byte[] ownersWorkbook, Plan plan) {
    return open(ownersWorkbook).write(plan);
  }

  /** Opens the owner's workbook, which can be done while the plan is still being made. */
  public static ResultWorkbook open(byte[] ownersWorkbook) {
    try {
      var pack = OPCPackage.open(new ByteArrayInputStream(ownersWorkbook));
      dropCalculationChain(pack);
      return new ResultWorkbook(pack, new XSSFWorkbook(pack));
    } catch (OpenXML4JException e) {
      throw new UncheckedIOException(new IOException("Not an .xlsx workbook", e));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Writes the plan into it; once only. */
  public byte[] write(Plan plan) {
    try (pack;
        workbook) {
      var run = new ResultRun(plan, workbook);
      boolean fresh = workbook.getSheet(ResultSheet.SUMMARY.title()) == null;
      prepareSheets(run);
      fill(run);
      for (var page : run.pages.values()) page.fitHeights();
      for (var s : ResultSheet.values()) SheetPrint.setUp(run, s);
      if (fresh) showFirst(workbook, ResultSheet.SUMMARY);
      date(workbook, plan);
      var rows = new HashMap<String, String>();
      for (var page : run.pages.values()) rows.put(page.partName(), page.rowsAsXml());
      var bytes = new ByteArrayOutputStream();
      workbook.write(bytes);
      return ResultZip.packed(bytes.toByteArray(), run.chartParts, rows);
    } catch (OpenXML4JException e) {
      throw new UncheckedIOException(new IOException("Not an .xlsx workbook", e));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The order in which a spreadsheet last calculated; each makes its own when it opens a file. */
  private static void dropCalculationChain(OPCPackage pack) throws OpenXML4JException {
    var type = XSSFRelation.CALC_CHAIN.getRelation();
    for (var part : pack.getPartsByContentType(XSSFRelation.WORKBOOK.getContentType())) {
      for (var link : part.getRelationshipsByType(type)) {
        pack.deletePart(part.getRelatedPart(link).getPartName());
        part.removeRelationship(link.getId());
      }
    }
  }

  private static void prepareSheets(ResultRun run) {
    var workbook = run.workbook;
    int behind = -1;
    for (var s : ResultSheet.values()) {
      var there = Optional.ofNullable(workbook.getSheet(s.title()));
      if (there.isPresent() && !isOurs(there.get())) {
        setAside(workbook, there.get());
        there = Optional.empty();
      }
      there.ifPresent(SheetClearing::clear);
      XSSFSheet sheet;
      if (there.isPresent()) {
        sheet = there.get();
      } else {
        sheet = workbook.createSheet(s.title());
        if (behind >= 0) workbook.setSheetOrder(s.title(), behind + 1);
      }
      behind = workbook.getSheetIndex(sheet);
      run.pages.put(s, new SheetPage(sheet, run.styles));
    }
  }

  /** A sheet with a result's name is ours if it says so on top, or has nothing on it. */
  private static boolean isOurs(XSSFSheet sheet) {
    if (sheet.getPhysicalNumberOfRows() == 0) return true;
    var row = sheet.getRow(0);
    var cell = row == null ? null : row.getCell(0);
    return cell != null
        && cell.getCellType() == CellType.STRING
        && cell.getStringCellValue().contains(ResultSheet.MARK);
  }

  /** The owner's own sheet of that name is kept, under a name that says whose it is. */
  private static void setAside(XSSFWorkbook workbook, XSSFSheet sheet) {
    var stem = sheet.getSheetName() + " (own";
    var name = stem + ")";
    for (int n = 2; workbook.getSheet(name) != null; n++) name = stem + " " + n + ")";
    workbook.setSheetName(workbook.getSheetIndex(sheet), name);
  }

  private static void fill(ResultRun run) {
    for (var s : ResultSheet.values()) {
      var page = run.page(s);
      page.text(1, 0, s.topLine(), page.plain().slanted().inInk(SheetStyle.QUIET));
    }
    SheetQuantities.write(run);
    SheetCostPlan.write(run);
    SheetPricesUsed.write(run);
    SheetFactsUsed.write(run);
    SheetBuyingList.write(run);
    SheetSchedule.write(run);
    SheetBarChart.write(run);
    SheetInspections.write(run);
    SheetCrewLoad.write(run);
    SheetCashFlow.write(run);
    SheetDraws.write(run);
    SheetCostToComplete.write(run);
    SheetDelayEffects.write(run);
    SheetRisk.write(run);
    SheetChecks.write(run);
    SheetSummary.write(run);
  }

  private static void showFirst(XSSFWorkbook workbook, ResultSheet shown) {
    int index = workbook.getSheetIndex(shown.title());
    for (int i = 0; i < workbook.getNumberOfSheets(); i++) {
      workbook.getSheetAt(i).setSelected(i == index);
    }
    workbook.setActiveSheet(index);
    workbook.setFirstVisibleTab(index);
  }

  /** A file without a date of its own gets the plan's; nothing here reads the clock. */
  private static void date(XSSFWorkbook workbook, Plan plan) throws OpenXML4JException {
    var properties = workbook.getPackage().getPackageProperties();
    var day = Optional.of(Date.from(plan.statusDate().atStartOfDay().toInstant(ZoneOffset.UTC)));
    if (properties.getCreatedProperty().isEmpty()) properties.setCreatedProperty(day);
    if (properties.getModifiedProperty().isEmpty()) properties.setModifiedProperty(day);
  }

  /** The sheets a run writes, in their order; everything else in a workbook is the owner's. */
  public static List<String> resultSheets() {
    return java.util.Arrays.stream(ResultSheet.values()).map(ResultSheet::title).toList();
  }
}
