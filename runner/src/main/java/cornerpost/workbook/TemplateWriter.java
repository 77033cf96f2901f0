package cornerpost.workbook;

import cornerpost.fact.Facts;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.CalendarQuestions;
import cornerpost.scope.CrewQuestions;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.DelayQuestions;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.HolidayQuestions;
import cornerpost.scope.LedgerQuestions;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.OwnItemQuestions;
import cornerpost.scope.OwnLinkQuestions;
import cornerpost.scope.OwnTaskQuestions;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Party;
import cornerpost.scope.ProgressQuestions;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.QuoteQuestions;
import cornerpost.scope.RoomQuestions;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Trade;
import cornerpost.scope.WorkQuestions;
import cornerpost.workbook.parts.Parts;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Date;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.PageMargin;
import org.apache.poi.ss.usermodel.PrintSetup;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFFormulaEvaluator;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;

/**
 * Writes workbooks ready to fill in: every sheet of the owner's, with standard values, drop-downs,
 * help and live checks. The same entries give the same bytes.
 *
 * <p>Only the live formulas beside some tables are protected, without a password, so that nobody
 * types over them; rows, notes, formulas and colours of the owner's own stay possible everywhere.
 */
public final class TemplateWriter {
  private static final Instant MADE = Instant.parse("2026-01-01T00:00:00Z");

  private static final float ROW_POINTS = 14f;
  private static final double MARGIN_INCHES = 0.4;

  /** Arial, eight points, in the language of headers and footers. */
  private static final String SMALL = "&\"Arial,Regular\"&8";

  private TemplateWriter() {}

  /** A workbook with no house in it yet. */
  public static byte[] blank(UnitSystem units) {
    return write(withUsualRows(new WorkbookEntries(units)), Facts.supplied());
  }

  /** The questions of a sheet, in order; empty for Start here. */
  static List<Question> questions(OwnerSheet sheet) {
    return switch (sheet) {
      case START_HERE -> List.of();
      case PROJECT -> ProjectQuestions.ALL;
      case CONTAINERS -> BoxQuestions.ALL;
      case ROOMS -> RoomQuestions.ALL;
      case OPENINGS -> OpeningQuestions.ALL;
      case SITE -> SiteQuestions.ALL;
      case DECK_AND_ROOF -> DeckAndRoofQuestions.ALL;
      case ENVELOPE -> EnvelopeQuestions.ALL;
      case SERVICES -> ServicesQuestions.ALL;
      case FINISHES -> FinishesQuestions.ALL;
      case WHO_DOES_WHAT -> WorkQuestions.ALL;
      case QUOTES -> QuoteQuestions.ALL;
      case OWN_ITEMS -> OwnItemQuestions.ALL;
      case OWN_TASKS -> OwnTaskQuestions.ALL;
      case OWN_LINKS -> OwnLinkQuestions.ALL;
      case CREWS -> CrewQuestions.ALL;
      case CALENDARS -> CalendarQuestions.ALL;
      case HOLIDAYS -> HolidayQuestions.ALL;
      case PROGRESS -> ProgressQuestions.ALL;
      case DELAYS -> DelayQuestions.ALL;
      case COST_LEDGER -> LedgerQuestions.ALL;
      case LOAN -> LoanQuestions.ALL;
      case OPTIONS -> OptionsQuestions.ALL;
    };
  }

  /** The rows that a workbook starts with where the owner has said nothing of his own. */
  static WorkbookEntries withUsualRows(WorkbookEntries entries) {
    if (entries.rows(OwnerSheet.CALENDARS).isEmpty()) {
      for (var calendar : SuppliedCalendars.ALL) {
        var cells = new ArrayList<String>();
        cells.add(calendar.name());
        calendar.hours().forEach(h -> cells.add(h.toPlainString()));
        cells.add(calendar.keepsHolidays() ? "yes" : "no");
        entries.row(OwnerSheet.CALENDARS, cells.toArray(String[]::new));
      }
    }
    if (entries.rows(OwnerSheet.WHO_DOES_WHAT).isEmpty()) {
      for (var trade : Trade.values()) {
        entries.row(OwnerSheet.WHO_DOES_WHAT, trade.label(), Party.HIRED.label());
      }
    }
    return entries;
  }

  static byte[] write(WorkbookEntries entries, Facts facts) {
    PoiLog.off();
    try (var workbook = new XSSFWorkbook()) {
      var styles = new TemplateStyles(workbook);
      for (var owner : OwnerSheet.values()) workbook.createSheet(owner.title());
      var lists = new TemplateLists(workbook, facts, entries.units());
      var cells = new TemplateCells(entries.units(), styles, lists);
      for (var owner : OwnerSheet.values()) {
        var sheet = workbook.getSheet(owner.title());
        sheet.setDisplayGridlines(false);
        sheet.setDefaultRowHeightInPoints(ROW_POINTS);
        var questions = questions(owner);
        TemplateTexts.top(sheet, owner, styles);
        switch (owner.shape()) {
          case TEXT -> TemplateTexts.start(sheet, styles);
          case FORM ->
              new TemplateForm(styles, cells, lists).write(sheet, owner, questions, entries);
          case TABLE -> new TemplateTable(styles, cells).write(sheet, owner, questions, entries);
        }
        print(workbook, owner, entries);
      }
      lists.tasks();
      new TemplateChecks(workbook, styles, cells, entries).write();
      workbook.setSheetHidden(workbook.getSheetIndex(lists.sheet()), true);
      workbook.setActiveSheet(0);
      XSSFFormulaEvaluator.evaluateAllFormulaCells(workbook);
      return Parts.read(bytes(workbook)).packed();
    } catch (IOException e) { // writing to memory
      throw new UncheckedIOException(e);
    }
  }

  private static void print(XSSFWorkbook workbook, OwnerSheet owner, WorkbookEntries entries) {
    var sheet = workbook.getSheet(owner.title());
    var print = sheet.getPrintSetup();
    print.setPaperSize(
        entries.units() == UnitSystem.METRIC
            ? PrintSetup.A4_PAPERSIZE
            : PrintSetup.LETTER_PAPERSIZE);
    print.setLandscape(true);
    sheet.setFitToPage(true);
    print.setFitWidth((short) 1);
    print.setFitHeight((short) 0);
    sheet.setMargin(PageMargin.TOP, MARGIN_INCHES);
    sheet.setMargin(PageMargin.BOTTOM, 1.5 * MARGIN_INCHES);
    sheet.setMargin(PageMargin.LEFT, MARGIN_INCHES);
    sheet.setMargin(PageMargin.RIGHT, MARGIN_INCHES);
    sheet.getFooter().setLeft(SMALL + "&A");
    sheet.getFooter().setRight(SMALL + "Page &P of &N");
    if (owner.shape() != OwnerSheet.Shape.TEXT) {
      sheet.setRepeatingRows(
          new CellRangeAddress(TemplateTable.HEADER_ROW, TemplateTable.HEADER_ROW, -1, -1));
    }
    if (owner == OwnerSheet.OPENINGS) { // its live checks are for the screen; paper is narrow
      int last =
          TemplateTable.FIRST_ROW
              + Math.max(TemplateTable.READY_ROWS, entries.rows(owner).size())
              - 1;
      workbook.setPrintArea(
          workbook.getSheetIndex(sheet), 0, OpeningQuestions.ALL.size() - 1, 0, last);
    }
  }

  private static byte[] bytes(XSSFWorkbook workbook) throws IOException {
    var properties = workbook.getProperties().getCoreProperties();
    properties.setCreator("Cornerpost");
    properties.setCreated(Optional.of(Date.from(MADE)));
    properties.setModified(Optional.of(Date.from(MADE)));
    var out = new ByteArrayOutputStream();
    workbook.write(out);
    return out.toByteArray();
  }
}
