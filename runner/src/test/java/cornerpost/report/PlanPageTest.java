package cornerpost.report;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.measure.UnitSystem;
import cornerpost.plan.AtAGlance;
import cornerpost.price.PaidFor;
import cornerpost.scope.ProjectQuestions;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Element;

class PlanPageTest {
  private static final byte[] HTML = PlanPage.write(SamplePlan.metric());
  private static final Page PAGE = new Page(HTML);

  private static Element parent(Element e) {
    return (Element) e.getParentNode();
  }

  @Test
  void every_id_is_there_once_and_every_link_lands_on_one() {
    var ids = new HashSet<String>();
    for (var e : PAGE.all("*", x -> x.hasAttribute("id"))) {
      assertThat(ids.add(e.getAttribute("id"))).as(e.getAttribute("id")).isTrue();
      assertThat(e.getAttribute("id")).doesNotContainPattern("\\s").isNotEmpty();
    }
    for (var a : PAGE.all("a")) {
      assertThat(a.getAttribute("href")).startsWith("#");
      assertThat(ids).contains(a.getAttribute("href").substring(1));
    }
    for (var svg : PAGE.all("svg", e -> e.hasAttribute("aria-labelledby"))) {
      assertThat(ids).contains(svg.getAttribute("aria-labelledby").split(" "));
    }
  }

  @Test
  void page_needs_nothing_from_elsewhere_and_no_script() {
    for (var tag :
        List.of("script", "link", "img", "iframe", "object", "embed", "audio", "video", "base")) {
      assertThat(PAGE.all(tag)).as(tag).isEmpty();
    }
    for (var e : PAGE.all("*")) {
      var attributes = e.getAttributes();
      for (int i = 0; i < attributes.getLength(); i++) {
        var name = attributes.item(i).getNodeName();
        assertThat(name).doesNotStartWith("on").isNotIn("src", "srcset", "data", "action");
      }
    }
    var css = PAGE.all("style").get(0).getTextContent();
    assertThat(css).doesNotContain("@import").doesNotContain("http");
    var urls = Pattern.compile("url\\(([^)]*)\\)").matcher(css);
    while (urls.find()) assertThat(urls.group(1)).startsWith("#");
    for (var href : PAGE.all("*", e -> e.hasAttribute("href"))) {
      assertThat(href.getAttribute("href")).startsWith("#");
    }
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {
        "<script>alert(1)</script>",
        "\"><img src=x onerror=alert(1)>",
        "'-->]]></style></svg></title><b>",
        "${7*7} <#assign x=1> &lt;i&gt; \u0001\u202e",
      })
  void owners_text_is_shown_and_never_run(String text) {
    var choices =
        SamplePlan.house(UnitSystem.METRIC)
            .say(ProjectQuestions.NAME, text)
            .room(text, "A", "store", "0.5", "open, no partition")
            .opening(text, "A", "left side", "window", "300", "300", "1000", "11");
    var page = new Page(PlanPage.write(SamplePlan.of(choices.scope(), "EUR")));
    assertThat(page.all("script")).isEmpty();
    assertThat(page.all("img")).isEmpty();
    assertThat(page.all("b", e -> !e.getTextContent().equals("name in bold"))).isEmpty();
    var shown = text.replace("\u0001", "");
    assertThat(page.all("h1").get(0).getTextContent()).isEqualTo(shown);
    assertThat(page.all("g", e -> e.getAttribute("data-room").equals(shown))).hasSize(1);
  }

  @Test
  void top_says_what_when_how_much_and_how_sure() {
    var plan = SamplePlan.metric();
    var top = PAGE.text("answer");
    assertThat(top)
        .contains("one living room with kitchen, one bedroom and one bathroom")
        .contains("40 ft high cube")
        .contains("Mon 2 Aug 2027")
        .contains("EUR\u00a0" + Words.number(plan.estimate().total(), 0))
        .contains("31\u00a0%");
    var next = Page.in(PAGE.id("answer"), "ol", e -> true).get(0);
    assertThat(Page.in(next, "li", e -> true)).hasSize(3);
    assertThat(next.getTextContent()).contains("already late: 40 ft high cube, one trip");
    assertThat(top).contains("stop Cutting beside a treated timber floor");
  }

  @Test
  void what_to_do_next_stands_in_order_of_days() {
    var days = AtAGlance.next(SamplePlan.metric()).stream().map(p -> p.by().orElseThrow()).toList();
    assertThat(days).hasSize(3).isSorted();
  }

  @Test
  void a_step_that_drives_the_date_is_not_said_to_have_float() {
    var steps = Page.in(PAGE.id("way"), "ol", e -> true).get(0);
    assertThat(steps.getTextContent()).doesNotContain("float 1").doesNotContain("float 4");
  }

  @Test
  void money_for_no_work_is_nobodys() {
    var plan = SamplePlan.metric();
    var works = plan.estimate().byWork();
    assertThat(works.values().stream().reduce(BigDecimal.ZERO, BigDecimal::add))
        .isEqualByComparingTo(plan.estimate().total());
    assertThat(works.get(PaidFor.TAX)).isEqualByComparingTo(plan.estimate().tax());
    assertThat(works.get(PaidFor.CONTINGENCY)).isEqualByComparingTo(plan.estimate().contingency());
    assertThat(works.getOrDefault(PaidFor.OWN_HOURS, BigDecimal.ZERO)).isZero();
    assertThat(PAGE.text("money")).contains("Contingency").doesNotContain("who does it");
  }

  @Test
  void every_task_is_in_the_table_and_in_the_bars_and_the_drivers_are_marked_twice() {
    for (var t : SamplePlan.metric().programme().tasks()) {
      var row = PAGE.id(Anchors.task(t.id()));
      assertThat(row.getTextContent()).contains(t.task().name()).contains(Words.day(t.firstDay()));
      var bar = PAGE.all("g", e -> e.getAttribute("data-task").equals(t.id()));
      assertThat(bar).hasSize(1);
      var classes =
          Page.in(bar.get(0), "*", e -> e.hasAttribute("class")).stream()
              .map(e -> e.getAttribute("class"))
              .toList();
      assertThat(row.getTextContent().contains("drives")).isEqualTo(t.drivesMoveIn());
      assertThat(classes.get(0).contains("drives")).isEqualTo(t.drivesMoveIn());
    }
  }

  @Test
  void bars_begin_and_end_on_the_days_of_their_tasks() {
    // From Monday 1 March to two days past the last day of the plan, over 684 units from 290.
    var plan = SamplePlan.metric();
    var svg = PAGE.id("bars-1"); // stage 1, site and foundation
    var pour = Page.with(svg, "data-task", "pour");
    var cure = Page.with(svg, "data-task", "cure");
    double day =
        (Page.rect(cure)[0] - Page.rect(pour)[0])
            / java.time.Duration.between(
                    plan.programme().task("pour").orElseThrow().start(),
                    plan.programme().task("cure").orElseThrow().start())
                .toHours()
            * 24;
    var t = plan.programme().task("cure").orElseThrow();
    double days = java.time.Duration.between(t.start(), t.finish()).toHours() / 24.0;
    assertThat(Page.rect(cure)[2])
        .isCloseTo(days * day, org.assertj.core.api.Assertions.within(0.01));
  }

  @Test
  void bands_are_low_enough_to_print_whole() {
    for (var svg : PAGE.all("svg", e -> e.getAttribute("id").startsWith("bars-"))) {
      var box = svg.getAttribute("viewBox").split(" ");
      double high = Double.parseDouble(box[3]) / Double.parseDouble(box[2]);
      assertThat(high * 180).isLessThan(230); // mm on Letter, at the full width of the text
    }
  }

  @Test
  void tables_have_captions_and_headers_and_pictures_have_words() {
    for (var table : PAGE.all("table")) {
      assertThat(Page.in(table, "caption", e -> true)).hasSize(1);
      for (var th : Page.in(table, "th", e -> true)) {
        assertThat(th.getAttribute("scope")).isIn("col", "row", "rowgroup");
      }
      for (var tr : Page.in(table, "tr", e -> parent(e).getTagName().equals("tbody"))) {
        assertThat(Page.in(tr, "th", e -> true)).hasSize(1);
      }
      int columns = Page.in(table, "th", e -> e.getAttribute("scope").equals("col")).size();
      for (var tr : Page.in(table, "tr", e -> true)) {
        int cells = 0;
        for (var c : Page.in(tr, "*", e -> e.getParentNode() == tr)) {
          var span = c.getAttribute("colspan");
          cells += span.isEmpty() ? 1 : Integer.parseInt(span);
        }
        assertThat(cells).isEqualTo(columns);
      }
    }
    for (var svg : PAGE.all("svg")) {
      if (svg.getAttribute("aria-hidden").equals("true")) continue;
      assertThat(svg.getAttribute("role")).isEqualTo("img");
      assertThat(Page.in(svg, "title", e -> true).get(0).getTextContent()).isNotBlank();
      assertThat(Page.in(svg, "desc", e -> true).get(0).getTextContent()).isNotBlank();
    }
  }

  @Test
  void headings_step_down_one_at_a_time_below_one_first_heading() {
    int before = 0;
    for (var h : PAGE.all("*", e -> e.getTagName().matches("h[1-6]"))) {
      int level = h.getTagName().charAt(1) - '0';
      assertThat(level).isLessThanOrEqualTo(before + 1);
      before = level;
    }
    assertThat(PAGE.all("h1")).hasSize(1);
    for (var landmark : List.of("header", "nav", "main", "footer")) {
      assertThat(PAGE.all(landmark)).hasSize(1);
    }
    assertThat(PAGE.all("html").get(0).getAttribute("lang")).isEqualTo("en");
  }

  @Test
  void quantity_tells_how_it_came_about_and_links_to_what_it_rests_on() {
    var row = PAGE.id(Anchors.quantity("floor/A/area"));
    assertThat(row.getTextContent())
        .contains("28.3\u00a0m\u00b2")
        .contains("12032 mm inside length [box.40hc.inside-length]");
    var links = Page.in(row, "a", e -> true);
    assertThat(links.get(0).getAttribute("href")).isEqualTo("#fact:box.40hc.inside-length");
    assertThat(PAGE.text("fact:box.40hc.inside-length")).contains("makers' data");
  }

  @ParameterizedTest(name = "{0} own tasks and no house")
  @ValueSource(ints = {0, 1, 700})
  void plan_of_own_tasks_alone_is_a_page_without_house_and_money(int tasks) {
    var plan = SamplePlan.tasksOnly(tasks);
    var page = new Page(PlanPage.write(plan));
    assertThat(page.all("section", e -> e.getAttribute("id").equals("house"))).isEmpty();
    assertThat(page.all("section", e -> e.getAttribute("id").equals("money"))).isEmpty();
    assertThat(page.all("tr", e -> e.getAttribute("id").startsWith("task:"))).hasSize(tasks);
    assertThat(page.text("answer")).doesNotContain("USD").contains("plan of " + tasks + " task");
    var ids = new HashSet<String>();
    page.all("*").forEach(e -> ids.add(e.getAttribute("id")));
    for (var a : page.all("a")) assertThat(ids).contains(a.getAttribute("href").substring(1));
    assertThat(PlanJson.write(plan)).isNotEmpty();
    assertThat(new String(PlanCalendar.write(plan), StandardCharsets.UTF_8)).contains("VCALENDAR");
  }

  @Test
  void same_plan_gives_the_same_bytes() {
    assertThat(PlanPage.write(SamplePlan.metric())).isEqualTo(HTML);
    assertThat(new String(HTML, StandardCharsets.UTF_8)).startsWith("<!DOCTYPE html>");
  }
}
