package cornerpost.workbook;

import cornerpost.fact.Facts;
import cornerpost.measure.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Makes the workbooks of the folder {@code workbook-templates}; all that stands in them is
 * invented.
 *
 * <p>Run its {@code main} with the folder as argument after a question, a standard value or an
 * example has changed (see docs/workbook.md); a test compares the folder with what it makes.
 */
final class ExampleWorkbooks {
  private ExampleWorkbooks() {}

  /** The files by name, each with its bytes. */
  static Map<String, byte[]> all() {
    var files = new LinkedHashMap<String, byte[]>();
    files.put("blank-metric.xlsx", TemplateWriter.blank(UnitSystem.METRIC));
    files.put("blank-us.xlsx", TemplateWriter.blank(UnitSystem.US));
    files.put("one-bedroom-40hc.xlsx", written(OneBedroomExample.entries()));
    files.put("studio-20hc-metric.xlsx", written(StudioExample.entries()));
    files.put("two-bedroom-two-boxes.xlsx", written(TwoBoxExample.entries()));
    files.put("lender-review.xlsx", written(LenderReviewExample.entries()));
    files.put("mid-build-late-delivery.xlsx", written(MidBuildExample.entries()));
    return files;
  }

  private static byte[] written(WorkbookEntries entries) {
    return TemplateWriter.write(TemplateWriter.withUsualRows(entries), Facts.supplied());
  }

  /**
   * @param args the folder of the templates, and the page whose list of entries is to be renewed
   */
  public static void main(String[] args) throws IOException {
    for (var file : all().entrySet()) {
      Files.write(Path.of(args[0]).resolve(file.getKey()), file.getValue());
    }
    var page = Path.of(args[1]);
    var text = Files.readString(page);
    int mark = text.indexOf(WorkbookPage.MARK);
    if (mark < 0) throw new IllegalArgumentException("No mark in " + page);
    Files.writeString(
        page, text.substring(0, mark) + WorkbookPage.MARK + "\n" + WorkbookPage.entries());
  }
}
