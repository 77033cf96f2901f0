package cornerpost.workbook;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.ProjectQuestions;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PaperSize;
import org.apache.poi.ss.util.CellRangeAddress;

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
    var footer = sheet.getFooter();
    footer.setLeft(escaped(name(run)) + ", " + run.plan.statusDate().format(DAY));
    footer.setCenter(escaped(which.title()) + ", page &P of &N");
    footer.setRight("Input " + escaped(run.plan.fingerprint()));
  }

  static String name(ResultRun run) {
    var name = run.plan.scope().project().findText(ProjectQuestions.NAME).orElse("Container home");
    return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME - 3) + "...";
  }

  private static String escaped(String text) {
    return text.replace("&", "&&");
  }
}
