package cornerpost.price;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.measure.Unit;
import cornerpost.scope.Problem;
import cornerpost.scope.Trade;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PriceBookReaderTest {
  private static final String GOOD =
      "b,Timber and sheet,B,material,sheet,2.88,m2,yes,9,10,12,yes,7,x";

  private static List<String> messages(TestBook book) {
    var result = PriceBookReader.read("testing", book.files());
    assertThat(result.book()).isEmpty();
    return result.problems().stream().map(Problem::message).toList();
  }

  private static TestBook items(String... rows) {
    return new TestBook()
        .file("items/all.csv", TestBook.ITEM_HEADER + "\n" + String.join("\n", rows) + "\n");
  }

  @Test
  void a_whole_book_is_read_with_its_units_and_sources() {
    var book =
        new TestBook()
            .item("board", "sheet", "2.88", "m2", "yes", "9.10,10.20,12.50")
            .hours("hang", "m2", "0.18,0.22,0.26")
            .book();
    var board = book.findItem("board").orElseThrow();
    assertThat(board.content()).isEqualByComparingTo("2.88");
    assertThat(board.contentUnit()).isEqualTo(Unit.M2);
    assertThat(board.wholeOnly()).isTrue();
    assertThat(board.likely()).isEqualByComparingTo("10.20");
    assertThat(book.findHours("hang").orElseThrow().per()).isEqualTo(Unit.M2);
    assertThat(book.rates()).hasSize(Trade.values().length);
    assertThat(book.region().notice()).isEqualTo("For tests, invented");
    assertThat(book.region().climate()).hasSize(12);
    assertThat(book.holidays()).hasSize(1);
  }

  @Test
  void a_byte_order_mark_quoted_commas_and_line_ends_of_any_kind_are_read() {
    var files = new HashMap<>(new TestBook().files());
    var text =
        "\uFEFF"
            + TestBook.ITEM_HEADER
            + "\r\n\r\n\"a\",Timber and sheet,\"Board, 12 \"\"thick\"\"\",material,sheet,1,m2,no,1,2,3,no,0,\"x, y\"\r\n";
    files.put("items/all.csv", text.getBytes(StandardCharsets.UTF_8));
    var book = PriceBookReader.read("testing", files).book().orElseThrow();
    assertThat(book.findItem("a").orElseThrow().description()).isEqualTo("Board, 12 \"thick\"");
    assertThat(book.findItem("a").orElseThrow().source()).isEqualTo("x, y");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "sheet,2.88,m2,yes,9,10,12,yes,7,x | sheet,2.88,smoots,yes,9,10,12,yes,7,x | content unit 'smoots'",
        "sheet,2.88,m2,yes,9,10,12,yes,7,x | shoot,2.88,m2,yes,9,10,12,yes,7,x | sold by 'shoot'",
        "sheet,2.88,m2,yes,9,10,12,yes,7,x | sheet,0,m2,yes,9,10,12,yes,7,x | content 0",
        "sheet,2.88,m2,yes,9,10,12,yes,7,x | sheet,2.88,m2,maybe,9,10,12,yes,7,x | whole 'maybe'",
        "sheet,2.88,m2,yes,9,10,12,yes,7,x | sheet,2.88,m2,yes,11,10,12,yes,7,x | 'low 11, likely 10'",
        "sheet,2.88,m2,yes,9,10,12,yes,7,x | sheet,2.88,m2,yes,9,13,12,yes,7,x | 'low 9, likely 13, high 12'",
        "sheet,2.88,m2,yes,9,10,12,yes,7,x | sheet,2.88,m2,yes,-1,10,12,yes,7,x | low -1",
        "sheet,2.88,m2,yes,9,10,12,yes,7,x | sheet,2.88,m2,yes,9,ten,12,yes,7,x | likely 'ten'",
        "sheet,2.88,m2,yes,9,10,12,yes,7,x | sheet,2.88,m2,yes,9,10,12,,7,x | taxed ''",
        "sheet,2.88,m2,yes,9,10,12,yes,7,x | sheet,2.88,m2,yes,9,10,12,yes,1.5,x | lead days '1.5'",
        "sheet,2.88,m2,yes,9,10,12,yes,7,x | sheet,2.88,m2,yes,9,10,12,yes,7, | no source"
      })
  void a_cell_that_does_not_fit_is_named_with_its_line(String good, String bad, String found) {
    var head = "b,Timber and sheet,B,material,";
    assertThat(messages(items(head.replace("b,", "a,") + good, head + bad)))
        .singleElement()
        .asString()
        .startsWith("testing/items/all.csv!line 3: " + found);
  }

  @Test
  void all_faults_of_a_book_are_found_in_one_go() {
    var book =
        items(
                GOOD,
                GOOD,
                "c,Grocers,C,material,sheet,1,m2,yes,1,2,3,no,0,x",
                "d,Timber and sheet,D,gift,sheet,1,m2,yes,1,2,3,no,0,x",
                "e,Timber and sheet,E,material,sheet,1,m2,yes,1,2,3")
            .file("hours/all.csv", TestBook.HOURS_HEADER + "\nh,H,fathom,1,2,3,x\n")
            .file(
                "labour.csv",
                "trade,low,likely,high,usual crew,taxed,source\nAlchemy,1,2,3,2,no,x\n"
                    + "Framing,1,2,3,0,no,x\n")
            .file("holidays.csv", "date,name\n2027-02-30,Never\n");
    assertThat(messages(book))
        .satisfiesExactlyInAnyOrder(
            m ->
                assertThat(m)
                    .startsWith(
                        "testing/items/all.csv!line 3: code 'b' again; each once; it is the code of testing/items/all.csv line 2"),
            m ->
                assertThat(m)
                    .startsWith(
                        "testing/items/all.csv!line 4: group 'Grocers'; one of Design, permits"),
            m ->
                assertThat(m)
                    .startsWith("testing/items/all.csv!line 5: kind 'gift'; one of material"),
            m -> assertThat(m).startsWith("testing/items/all.csv!line 6: 11 fields; 14 fields"),
            m -> assertThat(m).startsWith("testing/hours/all.csv!line 2: per 'fathom'"),
            m -> assertThat(m).startsWith("testing/labour.csv!line 2: trade 'Alchemy'"),
            m -> assertThat(m).startsWith("testing/labour.csv!line 3: usual crew 0"),
            m -> assertThat(m).startsWith("testing/holidays.csv!line 2: date '2027-02-30'"));
  }

  @Test
  void missing_files_and_keys_are_named() {
    var book =
        new TestBook()
            .file("labour.csv", null)
            .file("items/all.csv", null)
            .file(
                "region.csv",
                "key,value\nname,X\ncurrency,ZZZ\nunits,cubits\nprice date,07/2026\ntax rate,8,25\nmood,good\n");
    assertThat(messages(book))
        .anyMatch(m -> m.startsWith("testing/labour.csv: no such file"))
        .anyMatch(m -> m.startsWith("testing/items: no .csv file"))
        .anyMatch(m -> m.startsWith("testing/region.csv!line 3: currency 'ZZZ'"))
        .anyMatch(m -> m.startsWith("testing/region.csv!line 4: units 'cubits'"))
        .anyMatch(m -> m.startsWith("testing/region.csv!line 5: value '07/2026'"))
        .anyMatch(m -> m.startsWith("testing/region.csv!line 6: 3 fields"))
        .anyMatch(m -> m.startsWith("testing/region.csv!line 7: key 'mood'"))
        .anyMatch(m -> m.startsWith("testing/region.csv: no key 'tax name'"))
        .anyMatch(m -> m.startsWith("testing/region.csv: no key 'notice'"));
  }

  @Test
  void a_book_without_climate_or_holidays_is_read_with_a_remark() {
    var result =
        PriceBookReader.read(
            "testing", new TestBook().file("climate.csv", null).file("holidays.csv", null).files());
    assertThat(result.book()).isPresent();
    assertThat(result.problems())
        .extracting(Problem::severity)
        .containsExactly(Problem.Severity.REMARK, Problem.Severity.REMARK);
  }

  @Test
  void an_item_and_an_activity_share_no_code() {
    var book =
        new TestBook()
            .item("tile", "box", "1.44", "m2", "yes", "9,10,12")
            .hours("tile", "m2", "1,1,1");
    assertThat(messages(book))
        .containsExactly(
            "testing/items/all.csv!line 2: code 'tile' again; each once; it is the activity of"
                + " testing/hours/all.csv line 2");
  }

  @Test
  void empty_columns_of_a_spreadsheet_are_passed_over_and_semicolons_named() {
    var book =
        new TestBook()
            .file("holidays.csv", "date,name,,\n2027-01-01,New Year's Day,,\n,,,\n")
            .file("hours/all.csv", TestBook.HOURS_HEADER.replace(',', ';') + "\nh;H;m;1;2;3;x\n");
    assertThat(messages(book))
        .anyMatch(m -> m.startsWith("testing/hours/all.csv!line 1: columns parted by semicolons"))
        .noneMatch(m -> m.contains("holidays.csv"));
  }

  @Test
  void a_share_may_be_written_in_per_cent() {
    var book = new TestBook().region("EUR", "metric", "2026-07-01", "8.25%").book();
    assertThat(book.region().taxRate()).isEqualByComparingTo("0.0825");
  }

  @Test
  void bytes_that_are_no_text_and_an_empty_file_are_faults_not_crashes() {
    var files = new HashMap<>(new TestBook().files());
    files.put("items/bad.csv", new byte[] {(byte) 0xff, (byte) 0xfe, 0x41});
    files.put("hours/empty.csv", new byte[0]);
    files.put(
        "items/open.csv", (TestBook.ITEM_HEADER + "\na,\"open\n").getBytes(StandardCharsets.UTF_8));
    var result = PriceBookReader.read("testing", files);
    assertThat(result.problems().stream().map(Problem::message))
        .anyMatch(m -> m.startsWith("testing/items/bad.csv: bytes that are not UTF-8"))
        .anyMatch(m -> m.startsWith("testing/hours/empty.csv!line 1: an empty file"))
        .anyMatch(m -> m.startsWith("testing/items/open.csv!line 2: a quote that does not end"));
  }
}
