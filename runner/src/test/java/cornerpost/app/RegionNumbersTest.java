package cornerpost.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A region that writes 1.234,56 has a page that does so from the first figure to the last note. */
class RegionNumbersTest {
  private static final Pattern TAGS = Pattern.compile("(?s)<style>.*?</style>|<[^>]*>");

  /** A sign between digits that still is a point, with what stands before it. */
  private static final Pattern POINTED =
      Pattern.compile("[\\w§]*(?:[A-Za-z(][A-Za-z. )]*[ \u00a0(])?[\\w/§-]*\\d\\.\\d[\\w.]*");

  /** Thousands in threes. */
  private static final Pattern THOUSANDS =
      Pattern.compile("(?:.*[^\\d.])?\\d{1,3}(?:\\.\\d{3})+\\.?");

  /** Where the numbers of clauses and tables are printed with points, and the sizes of cable. */
  private static final Pattern REFERENCE =
      Pattern.compile(
          ".*(?:CFR|NEC|ACI|IPC|UPC|IRC|NFPA|Handbook|table(?: [A-Z])?|[RPM]\\d+|\\dx)[) ]*[\\d.]+.*");

  @Test
  void no_figure_of_the_page_keeps_the_other_sign(@TempDir Path folder) throws Exception {
    var run = Runs.run("plan", Runs.example("studio-20hc-metric"), "--out", folder);
    assertThat(run.status()).isZero();
    assertThat(run.out()).containsPattern("EUR \\d{2}\\.\\d{3},\\d{2}, move-in");
    var page = Files.readString(folder.resolve("studio-20hc-metric-plan.html"));
    var left = new ArrayList<String>();
    for (var text : TAGS.split(page)) {
      var found = POINTED.matcher(text);
      while (found.find()) {
        var piece = found.group();
        if (!THOUSANDS.matcher(piece).matches() && !REFERENCE.matcher(piece).matches()) {
          left.add(piece);
        }
      }
    }
    assertThat(left).isEmpty();
    assertThat(page).containsPattern("EUR\u00a0\\d{2}\\.\\d{3}\\b").contains("0,3 m");
  }
}
