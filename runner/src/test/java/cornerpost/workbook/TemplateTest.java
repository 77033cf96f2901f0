package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.BoxSize;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Party;
import cornerpost.scope.Problem;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Scope;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Trade;
import cornerpost.scope.Wall;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.zip.CRC32;
import java.util.zip.ZipInputStream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.SheetVisibility;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TemplateTest {
  private static final Path ROOT = Path.of("..");
  private static final Map<String, byte[]> MADE = ExampleWorkbooks.all();

  @ParameterizedTest
  @ValueSource(
      strings = {
        "blank-metric.xlsx",
        "blank-us.xlsx",
        "one-bedroom-40hc.xlsx",
        "studio-20hc-metric.xlsx",
        "two-bedroom-two-boxes.xlsx"
      })
  void the_committed_file_is_what_is_made(String name) throws IOException {
    var committed = Files.readAllBytes(ROOT.resolve("workbook-templates").resolve(name));

    assertThat(sums(committed)).isEqualTo(sums(MADE.get(name)));
  }

  /** Check sums of the parts: what the packing makes of them differs between Java builds. */
  private static Map<String, String> sums(byte[] workbook) throws IOException {
    var sums = new TreeMap<String, String>();
    try (var in = new ZipInputStream(new ByteArrayInputStream(workbook))) {
      for (var e = in.getNextEntry(); e != null; e = in.getNextEntry()) {
        var crc = new CRC32();
        crc.update(in.readAllBytes());
        sums.put(e.getName(), HexFormat.of().toHexDigits(crc.getValue()));
      }
    }
    return sums;
  }

  @Test
  void the_same_entries_give_the_same_bytes() {
    assertThat(TemplateWriter.blank(UnitSystem.US)).isEqualTo(MADE.get("blank-us.xlsx"));
  }

  @Test
  void the_page_about_the_workbook_lists_the_entries_as_they_are() throws IOException {
    var page = Files.readString(ROOT.resolve("docs").resolve("workbook.md"));

    assertThat(page.substring(page.indexOf(WorkbookPage.MARK)))
        .isEqualTo(WorkbookPage.MARK + "\n" + WorkbookPage.entries());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"one-bedroom-40hc.xlsx", "studio-20hc-metric.xlsx", "two-bedroom-two-boxes.xlsx"})
  void an_example_reads_without_any_problem(String name) {
    var reading = WorkbookReader.read(MADE.get(name), name);

    assertThat(reading.problems()).isEmpty();
    assertThat(reading.scope()).isPresent();
  }

  @ParameterizedTest
  @ValueSource(strings = {"blank-metric.xlsx", "blank-us.xlsx"})
  void a_blank_workbook_asks_for_a_date_a_box_and_a_room(String name) {
    var reading = WorkbookReader.read(MADE.get(name), name);

    assertThat(reading.problems())
        .extracting(Problem::message)
        .containsExactly(
            "Project!B6: Start date is empty; expected a date typed as a date, not as text",
            "Containers: no box; expected at least one row with a box",
            "Rooms: no room; expected at least one row with a room");
  }

  @Test
  void the_one_bedroom_example_reads_into_the_choices_it_was_made_of() {
    var scope = scope("one-bedroom-40hc.xlsx");

    assertThat(scope.units()).isEqualTo(UnitSystem.US);
    assertThat(scope.project().date(ProjectQuestions.START)).isEqualTo(LocalDate.of(2027, 3, 1));
    assertThat(scope.boxes()).extracting(b -> b.size()).containsExactly(BoxSize.FORTY_HIGH);
    // 19.5 ft x 0.3048 m = 5.9436 m
    assertThat(scope.rooms().get(0).length().value()).isEqualByComparingTo("5.9436");
    // 72 in x 0.0254 m = 1.8288 m
    assertThat(scope.openings().get(1).width().value()).isEqualByComparingTo("1.8288");
    assertThat(scope.openings().get(1).wall()).isEqualTo(Wall.RIGHT);
    // 30 in x 0.0254 m = 0.762 m
    assertThat(scope.site().figure(SiteQuestions.FROST_DEPTH).value())
        .isEqualByComparingTo("0.762");
    // 20 psf = 20 x 0.45359237 kg / 0.09290304 m2 = 97.6485... kg/m2
    assertThat(scope.site().figure(SiteQuestions.SNOW).value().doubleValue())
        .isBetween(97.648, 97.649);
    assertThat(scope.assignment(Trade.FRAMING).party()).isEqualTo(Party.OWNER);
    assertThat(scope.assignment(Trade.FRAMING).people().orElseThrow().in(Unit.ONE))
        .isEqualByComparingTo("2");
    assertThat(scope.assignment(Trade.INSULATION).ownerShare().value()).isEqualByComparingTo("0.4");
    assertThat(scope.assignment(Trade.ELECTRICAL).ownerShare().value()).isEqualByComparingTo("0");
    assertThat(scope.loan().figure(LoanQuestions.RATE).value()).isEqualByComparingTo("0.0825");
    assertThat(scope.quotes()).hasSize(2);
    assertThat(scope.quotes().get(0).amount()).isEqualByComparingTo("4450");
    assertThat(scope.quotes().get(0).cell()).isEqualTo("Quotes!D5");
    assertThat(scope.quotes().get(1).used()).isFalse();
    assertThat(scope.ownItems()).hasSize(3);
    assertThat(scope.ownTasks().get(0).demands()).isEqualTo(Map.of("Friends", 2));
    assertThat(scope.calendars()).extracting(c -> c.name()).contains("Evenings and Saturdays");
  }

  @Test
  void the_two_box_example_joins_its_boxes_over_their_whole_length() {
    var scope = scope("two-bedroom-two-boxes.xlsx");

    assertThat(scope.boxes().get(1).joinedTo()).contains("A");
    assertThat(scope.boxes().get(1).jointLength().value()).isEqualByComparingTo("12.192");
    assertThat(scope.openingsIn(scope.boxes().get(0), Wall.RIGHT)).hasSize(2);
    assertThat(scope.roomsOf(scope.boxes().get(1))).hasSize(4);
  }

  @Test
  void every_answer_is_entered_for_the_mark_of_a_stale_plan() {
    var scope = scope("one-bedroom-40hc.xlsx");

    assertThat(scope.entered())
        .extracting(e -> e.cell() + " " + e.value())
        .contains(
            "Project!B6 2027-03-01",
            "Openings!E6 72",
            "Who does what!B14 owner",
            "Quotes!D5 4450",
            "Quotes!G5 yes",
            "Own items!F5 260",
            "Own tasks!J5 2",
            "Project!B7 ");
    assertThat(scope.entered()).noneMatch(e -> e.label().equals("Note"));
  }

  private static Scope scope(String name) {
    return WorkbookReader.read(MADE.get(name), name).scope().orElseThrow();
  }

  @ParameterizedTest
  @ValueSource(strings = {"blank-metric.xlsx", "one-bedroom-40hc.xlsx"})
  void a_template_has_every_sheet_in_order_and_no_error_in_any_cell(String name)
      throws IOException {
    try (var workbook = new XSSFWorkbook(new ByteArrayInputStream(MADE.get(name)))) {
      var titles = Arrays.stream(OwnerSheet.values()).map(OwnerSheet::title).toList();
      for (int i = 0; i < titles.size(); i++) {
        assertThat(workbook.getSheetName(i)).isEqualTo(titles.get(i));
      }
      assertThat(workbook.isSheetHidden(titles.size())).isTrue();
      for (var sheet : workbook) {
        for (var row : sheet) {
          for (var cell : row) {
            var type =
                cell.getCellType() == CellType.FORMULA
                    ? cell.getCachedFormulaResultType()
                    : cell.getCellType();
            assertThat(type)
                .as(sheet.getSheetName() + cell.getAddress())
                .isNotEqualTo(CellType.ERROR);
          }
        }
      }
    }
  }

  @Test
  void every_choice_has_a_drop_down_and_every_name_points_somewhere() throws IOException {
    try (var workbook = new XSSFWorkbook(new ByteArrayInputStream(MADE.get("blank-metric.xlsx")))) {
      for (var owner : OwnerSheet.values()) {
        var lists =
            workbook.getSheet(owner.title()).getDataValidations().stream()
                .map(v -> v.getValidationConstraint().getFormula1())
                .filter(f -> f != null && f.startsWith("list_"))
                .toList();
        var choices =
            TemplateWriter.questions(owner).stream()
                .filter(q -> !q.choices().isEmpty() || q.list().isPresent())
                .count();
        long units = owner == OwnerSheet.PROJECT ? 1 : 0; // Units offers the two systems
        assertThat(lists).as(owner.title()).hasSize((int) (choices + units));
        assertThat(lists).allMatch(f -> workbook.getName(f) != null);
      }
      for (var name : workbook.getAllNames()) {
        assertThat(name.getRefersToFormula()).as(name.getNameName()).doesNotContain("#REF!");
      }
    }
  }

  @Test
  void entry_cells_are_faintly_filled_and_headers_stay_in_view() throws IOException {
    try (var workbook = new XSSFWorkbook(new ByteArrayInputStream(MADE.get("blank-us.xlsx")))) {
      var openings = workbook.getSheet("Openings");
      assertThat(
              openings
                  .getRow(4)
                  .getCell(4)
                  .getCellStyle()
                  .getFillForegroundXSSFColor()
                  .getARGBHex())
          .endsWith("EEF4F1");
      assertThat(openings.getPaneInformation().getHorizontalSplitPosition()).isEqualTo((short) 4);
      assertThat(openings.getRepeatingRows().formatAsString()).isEqualTo("4:4");
      assertThat(openings.getRow(2).getCell(4).getStringCellValue()).isEqualTo("in");
      assertThat(openings.getRow(3).getCell(4).getCellComment()).isNotNull();
    }
  }

  /**
   * Live checks: 19.5 + 7.5 + 12.475 ft of rooms; SD1, W3 and D1 are 72 + 36 + 36 in = 12 ft wide.
   */
  /** Formulas cannot be typed over by accident; all else can be done without a password. */
  @Test
  void only_live_formulas_are_locked() throws IOException {
    try (var book =
        new XSSFWorkbook(new ByteArrayInputStream(Examples.workbook("blank-us.xlsx")))) {
      int guarded = 0;
      for (var sheet : book) {
        boolean formulas = false;
        for (var row : sheet) {
          for (var cell : row) {
            boolean live = cell.getCellType() == CellType.FORMULA;
            formulas |= live;
            var at = sheet.getSheetName() + "!" + cell.getAddress();
            if (sheet.getProtect()) {
              assertThat(cell.getCellStyle().getLocked()).as(at).isEqualTo(live);
            }
          }
        }
        if (book.getSheetVisibility(book.getSheetIndex(sheet)) != SheetVisibility.VISIBLE) continue;
        assertThat(sheet.getProtect()).as(sheet.getSheetName()).isEqualTo(formulas);
        if (formulas) {
          guarded++;
          var rules = ((XSSFSheet) sheet).getCTWorksheet().getSheetProtection();
          assertThat(rules.isSetPassword() || rules.isSetHashValue()).isFalse();
          assertThat(rules.getInsertRows() || rules.getFormatCells() || rules.getObjects())
              .isFalse();
          assertThat(sheet.getColumnStyle(200).getLocked()).isFalse();
        }
      }
      assertThat(guarded).isEqualTo(4);
    }
  }

  @Test
  void live_checks_show_what_the_entries_come_to() throws IOException {
    try (var workbook =
        new XSSFWorkbook(new ByteArrayInputStream(MADE.get("one-bedroom-40hc.xlsx")))) {
      var rooms = workbook.getSheet("Rooms").getRow(4);
      assertThat(rooms.getCell(7).getNumericCellValue()).isEqualTo(39.475);
      double inside = Facts.supplied().figure("box.40hc.inside-length").asDouble(Unit.FT);
      assertThat(rooms.getCell(8).getNumericCellValue()).isEqualTo(inside);
      var right = workbook.getSheet("Openings").getRow(5);
      assertThat(right.getCell(14).getStringCellValue()).isEqualTo("right side");
      assertThat(right.getCell(15).getNumericCellValue()).isEqualTo(12);
      assertThat(workbook.getSheet("Calendars").getRow(4).getCell(10).getNumericCellValue())
          .isEqualTo(40);
    }
  }
}
