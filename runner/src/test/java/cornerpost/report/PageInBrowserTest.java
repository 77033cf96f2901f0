package cornerpost.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The page in a real browser: what an accessibility checker that is not ours (axe-core, rules of
 * WCAG 2.2 A and AA and its best practice) finds, and whether it fits a phone of 360 pixels.
 */
class PageInBrowserTest {
  private static final String RULES =
      "['wcag2a','wcag2aa','wcag21a','wcag21aa','wcag22aa','best-practice']";

  /** Left in the document, in base 64, so that nothing of it is read as markup. */
  private static final String SCRIPT =
      """
      axe.run(document, {runOnly: %s}).then(r => {
        const root = document.documentElement;
        const found = {
          violations: r.violations.map(v => v.id + ': ' + v.nodes.slice(0, 3)
            .map(n => n.html.slice(0, 160)).join(' | ')),
          passes: r.passes.map(p => p.id),
          innerWidth: window.innerWidth,
          scrollWidth: root.scrollWidth,
          paper: getComputedStyle(document.body).backgroundColor,
          resources: performance.getEntriesByType('resource').map(e => e.name)
        };
        window.top.document.documentElement.setAttribute('data-found',
          btoa(unescape(encodeURIComponent(JSON.stringify(found)))));
      });
      """
          .formatted(RULES);

  @BeforeAll
  static void needs_a_browser() {
    Browser.needed();
  }

  /** In a frame of that width: the window itself cannot be made as narrow as a phone. */
  private static JsonNode look(String html, int width, boolean dark) throws IOException {
    var framed =
        "<!DOCTYPE html><html><body><iframe width=\"%d\" height=\"900\" style=\"border:0\" srcdoc=\"%s\"></iframe></body></html>"
            .formatted(width, Svg.escaped(html));
    var document = Browser.document(framed, dark);
    var found = Pattern.compile("data-found=\"([^\"]+)\"").matcher(document);
    assertThat(found.find()).as("the checker has reported").isTrue();
    return new ObjectMapper().readTree(Base64.getDecoder().decode(found.group(1)));
  }

  /** The page with the checker in it; its policy against scripts has to give way for that. */
  private static String withChecker(String html) throws IOException {
    try (var in = PageInBrowserTest.class.getResourceAsStream("/axe.min.js")) {
      var axe = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      assertThat(html).contains("<meta http-equiv=\"Content-Security-Policy\"");
      return html.replaceFirst("<meta http-equiv=\"Content-Security-Policy\"[^>]*>", "")
          .replace("</body>", "<script>" + axe + "</script><script>" + SCRIPT + "</script></body>");
    }
  }

  private static String page() {
    return new String(PlanPage.write(SamplePlan.metric()), StandardCharsets.UTF_8);
  }

  @Test
  void phone_page_has_no_violation_and_does_not_scroll_sideways() throws IOException {
    var found = look(withChecker(page()), 360, false);
    assertThat(found.get("violations")).isEmpty();
    assertThat(found.get("passes").size()).isGreaterThan(20);
    assertThat(found.get("innerWidth").asInt()).isEqualTo(360);
    assertThat(found.get("scrollWidth").asInt()).isLessThanOrEqualTo(360);
    assertThat(found.get("resources")).isEmpty();
  }

  @Test
  void dark_page_has_no_violation() throws IOException {
    var found = look(withChecker(page()), 1280, true);
    assertThat(found.get("paper").asText()).isEqualTo("rgb(20, 24, 27)"); // #14181B
    assertThat(found.get("violations")).isEmpty();
  }

  @Test
  void checker_finds_faults_that_are_put_in() throws IOException {
    var faulty =
        withChecker(page())
            .replace("<html lang=\"en\">", "<html>")
            .replace(
                "</main>",
                "<p style=\"color:#bbb;background:#fff\">Pale</p>"
                    + "<div style=\"width:900px\">wide</div></main>");
    var found = look(faulty, 360, false);
    assertThat(found.get("violations").toString())
        .contains("html-has-lang")
        .contains("color-contrast");
    assertThat(found.get("scrollWidth").asInt()).isGreaterThan(360);
  }
}
