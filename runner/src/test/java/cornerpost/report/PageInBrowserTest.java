package cornerpost.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import cornerpost.workbook.Examples;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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
      function keyboard() {
        const found = {stops: 0, refused: [], unseen: [], outOfOrder: [], scrollsWithoutFocus: []};
        const name = e => e.outerHTML.slice(0, 120);
        const shown = e => e.getClientRects().length > 0;
        for (const e of document.querySelectorAll('a[href], summary, [tabindex], button, input')) {
          if (!shown(e)) continue;
          found.stops++;
          if (e.tabIndex !== 0) found.outOfOrder.push(name(e));
          e.focus();
          if (document.activeElement !== e) found.refused.push(name(e));
          if (getComputedStyle(e).outlineStyle === 'none' && e.className !== 'skip') found.unseen.push(name(e));
        }
        for (const e of document.querySelectorAll('*')) {
          const over = getComputedStyle(e).overflowX;
          if ((over === 'auto' || over === 'scroll') && e.scrollWidth > e.clientWidth + 1 && e.tabIndex !== 0) {
            found.scrollsWithoutFocus.push(name(e));
          }
        }
        return found;
      }
      axe.run(document, {runOnly: %s}).then(r => {
        const root = document.documentElement;
        const found = {
          violations: r.violations.map(v => v.id + ': ' + v.nodes.slice(0, 3)
            .map(n => n.html.slice(0, 160)).join(' | ')),
          passes: r.passes.map(p => p.id),
          keyboard: keyboard(),
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

  private static String example(String name) {
    return new String(
        PlanPage.write(Examples.plan(Examples.workbook(name))), StandardCharsets.UTF_8);
  }

  @Test
  void page_of_an_example_has_no_violation_at_desktop_width() throws IOException {
    var found = look(withChecker(example("one-bedroom-40hc.xlsx")), 1280, false);
    assertThat(found.get("violations")).isEmpty();
    assertThat(found.get("scrollWidth").asInt()).isLessThanOrEqualTo(1280);
  }

  @Test
  void page_of_two_boxes_fits_a_phone() throws IOException {
    var found = look(withChecker(example("two-bedroom-two-boxes.xlsx")), 360, false);
    assertThat(found.get("violations")).isEmpty();
    assertThat(found.get("scrollWidth").asInt()).isLessThanOrEqualTo(360);
  }

  /** Everything that can be followed or scrolled takes the focus, in order, and shows it. */
  @Test
  void keyboard_reaches_everything_and_shows_where_it_is() throws IOException {
    var found = look(withChecker(example("one-bedroom-40hc.xlsx")), 900, false).get("keyboard");
    assertThat(found.get("stops").asInt()).isGreaterThan(100);
    assertThat(found.get("refused")).isEmpty();
    assertThat(found.get("unseen")).isEmpty();
    assertThat(found.get("outOfOrder")).isEmpty();
    assertThat(found.get("scrollsWithoutFocus")).isEmpty();
  }

  /** A word outside the sheet, or under its margin, would be cut. */
  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"A4", "letter"})
  void nothing_is_cut_on_paper(String paper) {
    var html = example("one-bedroom-40hc.xlsx").replace("@page{", "@page{size:" + paper + ";");
    var pages = Browser.printed(html).split("<page ");
    var headings =
        Pattern.compile("<h[234][^>]*>(.*?)</h[234]>", Pattern.DOTALL)
            .matcher(html)
            .results()
            .map(m -> m.group(1).replaceAll("<[^>]*>", "").strip())
            .toList();
    assertThat(headings).hasSizeGreaterThan(10);
    assertThat(pages.length).isBetween(10, 120);
    var size = Pattern.compile("width=\"([0-9.]+)\" height=\"([0-9.]+)\"");
    var word =
        Pattern.compile(
            "<word xMin=\"([-0-9.]+)\" yMin=\"([-0-9.]+)\" xMax=\"([-0-9.]+)\" yMax=\"([-0-9.]+)\">([^<]*)<");
    for (int p = 1; p < pages.length; p++) {
      var sheet = size.matcher(pages[p]);
      assertThat(sheet.find()).isTrue();
      double width = Double.parseDouble(sheet.group(1));
      double height = Double.parseDouble(sheet.group(2));
      var words = word.matcher(pages[p]);
      int count = 0;
      var text = new StringBuilder();
      while (words.find()) {
        text.append(' ').append(words.group(5));
        var as = paper + " page " + p + ": " + words.group(5);
        assertThat(Double.parseDouble(words.group(1))).as(as).isGreaterThan(20);
        assertThat(Double.parseDouble(words.group(3))).as(as).isLessThan(width - 20);
        assertThat(Double.parseDouble(words.group(2))).as(as).isGreaterThan(20);
        assertThat(Double.parseDouble(words.group(4))).as(as).isLessThan(height - 10);
        count++;
      }
      assertThat(count).as(paper + " page " + p + " holds something").isGreaterThan(5);
      var read = text.toString().replaceAll(" Page \\d+ of \\d+", "");
      for (var h : headings) {
        assertThat(read).as(paper + " page " + p + " ends in a heading").doesNotEndWith(" " + h);
      }
    }
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
