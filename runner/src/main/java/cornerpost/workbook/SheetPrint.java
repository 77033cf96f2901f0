package cornerpost.workbook;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.ProjectQuestions;
import java.util.EnumSet;
import java.util.Set;

/** How result sheets print: fit to the width of A4 and of Letter, column names on every page. */
final class SheetPrint {
  private static final int LONGEST_NAME = 60;

  /** Numbers of the paper sizes, ISO/IEC 29500 part 1, 18.3.1.63. */
  private static final int LETTER = 1;

  private static final int A4 = 9;

  /** Left, right, top, bottom, header and footer, in inches. */
  private static final double[] MARGINS = {0.5, 0.5, 0.5, 0.75, 0.3, 0.35};

  /** Per cent at which a third of the cost report is as wide as the paper. */
  private static final int THREE_WIDE_A4 = 66;

  private static final int THREE_WIDE_LETTER = 62;

  private static final Set<ResultSheet> UPRIGHT =
      EnumSet.of(ResultSheet.SUMMARY, ResultSheet.LENDER_REVIEW, ResultSheet.CREW_LOAD);

  private static final Set<ResultSheet> ON_ONE_PAGE =
      EnumSet.of(
          ResultSheet.SUMMARY,
          ResultSheet.LENDER_REVIEW,
          ResultSheet.COST_TO_COMPLETE,
          ResultSheet.CREW_LOAD,
          ResultSheet.LOOK_AHEAD);

  private SheetPrint() {}

  static void setUp(ResultRun run, ResultSheet which) {
    var page = run.page(which);
    boolean metric = run.plan.scope().units() == UnitSystem.METRIC;
    var footer =
        "&L"
            + escaped(name(run))
            + ", "
            + Days.shown(run.plan.statusDate())
            + "&C"
            + escaped(which.title())
            + ", page &P of &N&RInput "
            + escaped(run.plan.fingerprint());
    page.frame().print(metric ? A4 : LETTER, !UPRIGHT.contains(which), MARGINS, footer);
    if (ON_ONE_PAGE.contains(which)) page.frame().onOnePage();
    if (which != ResultSheet.SUMMARY
        && which != ResultSheet.LENDER_REVIEW
        && which != ResultSheet.COST_REPORT) {
      page.name(
          "_xlnm.Print_Titles", "$" + Addresses.HEADER_ROW + ":$" + Addresses.HEADER_ROW, false);
    }
    if (which == ResultSheet.COST_REPORT && run.plan.finance().status().isPresent()) {
      threeWide(page, metric);
    }
    printedColumns(page, which);
  }

  /** Helper columns are for the screen; paper shows what a reader needs. */
  private static void printedColumns(SheetPage page, ResultSheet which) {
    int last =
        switch (which) {
          case COST_PLAN -> CostPlanColumn.PARTY.ordinal();
          case QUANTITIES -> 6;
          case SCHEDULE -> 12;
          case DELAY_EFFECTS -> 8; // not the chart beside: its numbers are in the rows
          default -> -1;
        };
    if (last >= 0) printed(page, last, Math.max(page.lastRow(), 4));
  }

  /**
   * The cost report on three pages side by side, large enough to read, line and description on
   * each: the budget, what has moved and is in place, what it will come to.
   */
  private static void threeWide(SheetPage page, boolean metric) {
    page.frame()
        .sideBySide(
            metric ? THREE_WIDE_A4 : THREE_WIDE_LETTER,
            CostReportColumn.INVOICED.ordinal(),
            CostReportColumn.TO_DATE.ordinal());
    page.name(
        "_xlnm.Print_Titles",
        "$A:$"
            + CostReportColumn.DESCRIPTION.letter()
            + ","
            + Addresses.sheetName(ResultSheet.COST_REPORT.title())
            + "!$"
            + (Addresses.HEADER_ROW - 1)
            + ":$"
            + Addresses.HEADER_ROW,
        false);
  }

  /** Only the first columns and rows go to paper. */
  static void printed(SheetPage page, int lastColumn, int lastRow) {
    page.name("_xlnm.Print_Area", Addresses.fixed(1, 0, lastRow, lastColumn), false);
  }

  static String name(ResultRun run) {
    var name = run.plan.scope().project().findText(ProjectQuestions.NAME).orElse("Container home");
    return name.length() <= LONGEST_NAME ? name : name.substring(0, LONGEST_NAME - 3) + "...";
  }

  private static String escaped(String text) {
    return text.replace("&", "&&");
  }
}
