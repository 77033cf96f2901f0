package cornerpost.workbook;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.ProjectQuestions;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** How result sheets print: fit to the width of A4 and of Letter, column names on every page. */
final class SheetPrint {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEE d MMM yyyy", Locale.ENGLISH);
  private static final int LONGEST_NAME = 60;

  private SheetPrint() {}

  static void setUp(ResultRun run, ResultSheet which) {
    var sheet = run.page(which).sheet();
    var print = sheet.getPrintSetup();
    boolean metric = run.plan.scope().units() == UnitSystem.METRIC;
    print.setPaperSize(metric ? PaperSize.A4_PAPER : PaperSize.LETTER_PAPER);
    print.setLandscape(which != ResultSheet.SUMMARY);
    print.setFitWidth((short) 1);
    print.setFitHeight((short) 0);
    sheet.setFitToPage(true);
    sheet.setMargin(PageMargin.LEFT, 0.5);
    sheet.setMargin(PageMargin.RIGHT, 0.5);
    sheet.setMargin(PageMargin.TOP, 0.5);
    sheet.setMargin(PageMargin.BOTTOM, 0.75);
    sheet.setMargin(PageMargin.FOOTER, 0.35);
    if (which != ResultSheet.SUMMARY) {
      int header = Addresses.HEADER_ROW - 1;
      sheet.setRepeatingRows(new CellRangeAddress(header, header, -1, -1));
    }
    printedColumns(run, which, sheet);
    var footer = sheet.getFooter();
    footer.setLeft(escaped(name(run)) + ", " + run.plan.statusDate().format(DAY));
    footer.setCenter(escaped(which.title()) + ", page &P of &N");
    footer.setRight("Input " + escaped(run.plan.fingerprint()));
  }

  /** Helper columns are for the screen; paper shows what a reader needs. */
  private static void printedColumns(ResultRun run, ResultSheet which, XSSFSheet sheet) {
    int last =
        switch (which) {
          case COST_PLAN -> CostPlanColumn.PARTY.ordinal();
          case QUANTITIES -> 6;
          case SCHEDULE -> 12;
          default -> -1;
        };
    if (last < 0) return;
    int index = run.workbook.getSheetIndex(sheet);
    run.workbook.setPrintArea(index, 0, last, 0, Math.max(run.page(which).lastRow() - 1, 3));
  }

  static String name(ResultRun run) {
    var name = run.plan.scope().project().findText(ProjectQuestions.NAME).orElse("Container home");
    return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME - 3) + "...";
  }

  private static String escaped(String text) {
    return text.replace("&", "&&");
  }
}
