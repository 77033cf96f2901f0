package cornerpost.workbook.parts;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.poi.ss.usermodel.BuiltinFormats;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DateUtil;
import org.apache.poi.ss.util.CellReference;
import org.apache.poi.xssf.usermodel.XSSFCell;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is read and named here is what Apache POI 5.5.1, a library of its own, reads and names. */
class PartsAgainstPoiTest {
  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "General",
        "0.00",
        "0%",
        "0.0 \"%\"",
        "yyyy-mm-dd",
        "ddd d mmm yyyy",
        "[h]:mm",
        "[Red]0.00",
        "\"USD\" #,##0",
        "0 \"days\"",
        "#,##0.0 \"sq ft\"",
        "d/m/yy h:mm;@",
        "[$-409]mmmm d, yyyy;@",
        "mmm yyyy",
        "0.00E+00",
        "@",
        "mm:ss"
      })
  void a_format_is_one_of_dates_where_poi_says_so(String code) {
    assertThat(NumberFormats.isDate(code)).isEqualTo(DateUtil.isADateFormat(200, code));
  }

  @Test
  void built_in_formats_have_the_same_codes_and_kinds() {
    for (int number = 0; number < 50; number++) {
      var ours = NumberFormats.builtIn(number);
      if (ours.isEmpty()) continue;
      var poi = BuiltinFormats.getBuiltinFormat(number);
      assertThat(NumberFormats.isDate(ours.get()))
          .as(ours.get())
          .isEqualTo(DateUtil.isADateFormat(number, poi));
      assertThat(ours.get().contains("%")).isEqualTo(poi.contains("%"));
    }
    assertThat(NumberFormats.builtIn("#,##0.00")).contains(4);
  }

  @Test
  void columns_and_places_are_named_alike() {
    for (int column = 0; column < 16_384; column++) {
      var letters = Place.letters(column);
      assertThat(letters).isEqualTo(CellReference.convertNumToColString(column));
      assertThat(Place.find(letters + "17")).contains(new Place(16, column));
    }
    for (var wrong : new String[] {"", "A", "7", "A0", "XFE1", "A1048577", "a b1", "A1B"}) {
      assertThat(Place.find(wrong)).as(wrong).isEmpty();
    }
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"one-bedroom-40hc", "studio-20hc-metric", "two-bedroom-two-boxes"})
  void every_cell_of_an_example_is_read_alike(String example) throws IOException {
    var content = Files.readAllBytes(Path.of("../workbook-templates", example + ".xlsx"));
    var book = StoredBook.read(content);
    int cells = 0;
    try (var poi = new XSSFWorkbook(new ByteArrayInputStream(content))) {
      assertThat(book.sheets()).hasSize(poi.getNumberOfSheets());
      for (var sheet : book.sheets()) {
        var theirs = poi.getSheet(sheet.title());
        for (var row : theirs) {
          for (var c : row) {
            var cell = (XSSFCell) c;
            var ours = sheet.cell(cell.getRowIndex(), cell.getColumnIndex()).orElseThrow();
            var as = sheet.title() + "!" + cell.getReference();
            assertThat(ours.style()).as(as).isEqualTo(cell.getCellStyle().getIndex());
            if (cell.getCellType() == CellType.STRING) {
              assertThat(text(book, ours)).as(as).isEqualTo(cell.getStringCellValue());
            } else if (cell.getCellType() == CellType.NUMERIC) {
              assertThat(Double.parseDouble(ours.value()))
                  .as(as)
                  .isEqualTo(cell.getNumericCellValue());
            } else if (cell.getCellType() == CellType.FORMULA) {
              assertThat(ours.formula()).as(as).isEqualTo(cell.getCellFormula());
            }
            cells++;
          }
        }
      }
    }
    assertThat(cells).isGreaterThan(1_000);
  }

  private static String text(StoredBook book, StoredCell cell) {
    return cell.type().equals("s") ? book.sharedText(Integer.parseInt(cell.value())) : cell.text();
  }
}
