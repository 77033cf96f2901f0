package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is written keeps to the open standard: ISO/IEC 29500, transitional. */
class OpenStandardTest {
  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "blank-metric",
        "blank-us",
        "one-bedroom-40hc",
        "studio-20hc-metric",
        "two-bedroom-two-boxes"
      })
  void every_part_of_a_template_is_valid(String name) {
    assertThat(OpenStandard.faults(Examples.workbook(name + ".xlsx"))).isEmpty();
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"one-bedroom-40hc", "two-bedroom-two-boxes"})
  void every_part_of_a_result_is_valid(String name) {
    assertThat(OpenStandard.faults(result(Examples.workbook(name + ".xlsx")))).isEmpty();
  }

  @Test
  void every_part_of_a_result_planned_again_is_valid() {
    assertThat(OpenStandard.faults(result(result(Examples.workbook("studio-20hc-metric.xlsx")))))
        .isEmpty();
  }

  private static byte[] result(byte[] workbook) {
    return ResultWorkbook.write(workbook, Examples.plan(workbook));
  }

  /** A checker that finds nothing must be able to find something. */
  @Test
  void a_part_out_of_order_is_found() {
    var content = Examples.workbook("blank-us.xlsx");
    var parts = cornerpost.workbook.parts.Parts.read(content);
    var sheet = new String(parts.get("xl/worksheets/sheet1.xml"), StandardCharsets.UTF_8);
    parts.put(
        "xl/worksheets/sheet1.xml",
        sheet.replace("<sheetData", "<sheetDatum/><sheetData").getBytes(StandardCharsets.UTF_8));
    assertThat(OpenStandard.faults(parts.packed())).isNotEmpty();
  }
}
