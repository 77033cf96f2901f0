package cornerpost.report;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.component.VEvent;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.ProjectQuestions;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.CalendarComponent;
import net.fortuna.ical4j.validate.ValidationResult;
import org.junit.jupiter.api.Test;

/** Held against two readers of RFC 5545 that are not ours. */
class PlanCalendarTest {
  private static final String LONG_NAME =
      "Hütte 北の家 am Wæld; mit, Komma \\ und\nUmbruch — sehr, sehr lang, so dass gefaltet wird";

  private static byte[] ics() {
    return PlanCalendar.write(SamplePlan.metric());
  }

  private static List<VEvent> events(byte[] ics) {
    return Biweekly.parse(new String(ics, StandardCharsets.UTF_8)).first().getEvents();
  }

  private static VEvent event(String summary) {
    return events(ics()).stream()
        .filter(e -> e.getSummary().getValue().equals(summary))
        .findFirst()
        .orElseThrow();
  }

  private static LocalDate day(java.util.Date date) {
    return date.toInstant().atZone(ZoneId.systemDefault()).toLocalDate();
  }

  @Test
  void calendar_passes_validation_by_rfc_5545() throws IOException, ParserException {
    var calendar = new CalendarBuilder().build(new ByteArrayInputStream(ics()));
    ValidationResult result = calendar.validate();
    assertThat(result.hasErrors()).as(result.toString()).isFalse();
    List<CalendarComponent> all = calendar.getComponents();
    assertThat(all).isNotEmpty();
    for (var c : all) assertThat(c.getProperty(Property.UID)).isPresent();
    var parsed = Biweekly.parse(new String(ics(), StandardCharsets.UTF_8)).first();
    assertThat(parsed.validate(ICalVersion.V2_0).isEmpty()).isTrue();
  }

  // RFC 7986, section 5.1: the name a calendar program shows for the whole calendar.
  @Test
  void calendar_is_named_after_the_project_and_what_it_holds() {
    var name = Biweekly.parse(new String(ics(), StandardCharsets.UTF_8)).first().getNames().get(0);
    var project = SamplePlan.house(UnitSystem.METRIC).scope().project().text(ProjectQuestions.NAME);
    assertThat(name.getValue()).isEqualTo(project + ": Key dates");
  }

  @Test
  void whole_days_end_on_the_day_after() {
    var delivery = event("Boxes delivered");
    var planned = SamplePlan.metric().programme().delivery().orElseThrow();
    assertThat(delivery.getDateStart().getValue().hasTime()).isFalse();
    assertThat(day(delivery.getDateStart().getValue())).isEqualTo(planned);
    assertThat(day(delivery.getDateEnd().getValue())).isEqualTo(planned.plusDays(1));
  }

  @Test
  void order_days_name_the_goods_and_hold_their_items() {
    var order = event("Order by today: plasterboard 12.5 mm and jointing compound; ready");
    assertThat(day(order.getDateStart().getValue())).isEqualTo(LocalDate.of(2027, 6, 2));
    assertThat(order.getDescription().getValue())
        .startsWith("Boards and plaster")
        .contains("24 sheet Plasterboard 12.5 mm")
        .contains("2 tub Jointing compound; ready, mixed");
  }

  @Test
  void delivery_crane_orders_inspections_milestones_and_draws_are_all_there() {
    var kinds =
        events(ics()).stream()
            .flatMap(e -> e.getCategories().stream())
            .flatMap(c -> c.getValues().stream())
            .distinct()
            .toList();
    assertThat(kinds)
        .containsExactlyInAnyOrder("Delivery", "Crane", "Order", "Inspection", "Milestone", "Draw");
  }

  @Test
  void lines_end_in_crlf_and_hold_at_most_75_octets_of_whole_characters() {
    var plan =
        SamplePlan.of(
            SamplePlan.house(UnitSystem.METRIC).say(ProjectQuestions.NAME, LONG_NAME).scope(),
            "EUR");
    var text = new IcsText();
    text.text("SUMMARY", LONG_NAME.repeat(3));
    for (var bytes : List.of(PlanCalendar.write(plan), text.done())) {
      var whole = new String(bytes, StandardCharsets.UTF_8);
      assertThat(whole).endsWith("\r\n").doesNotContain("\uFFFD");
      assertThat(whole.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
      for (var line : whole.split("\r\n")) {
        assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75);
        assertThat(Character.isLowSurrogate(line.charAt(0))).isFalse();
      }
    }
  }

  @Test
  void text_comes_back_as_it_was_written() {
    var out = new IcsText();
    out.line("BEGIN", "VCALENDAR");
    out.line("VERSION", "2.0");
    out.line("PRODID", "test");
    out.line("BEGIN", "VEVENT");
    out.text("SUMMARY", LONG_NAME.repeat(3));
    out.line("END", "VEVENT");
    out.line("END", "VCALENDAR");
    assertThat(events(out.done()).get(0).getSummary().getValue()).isEqualTo(LONG_NAME.repeat(3));
  }

  @Test
  void event_keeps_its_identity_while_its_date_moves_and_no_two_share_one() {
    var ids = events(ics()).stream().map(e -> e.getUid().getValue()).toList();
    assertThat(ids).doesNotHaveDuplicates();
    assertThat(event("Boxes delivered").getUid().getValue())
        .isEqualTo(PlanCalendar.uid("Quarrow Field house", "task/delivery"))
        .isNotEqualTo(PlanCalendar.uid("Another house", "task/delivery"));
  }

  // What an order is called changes with prices and amounts; what it is known by does not.
  @Test
  void order_is_known_by_its_first_item_whatever_it_is_called() {
    assertThat(
            event("Order by today: plasterboard 12.5 mm and jointing compound; ready")
                .getUid()
                .getValue())
        .isEqualTo(PlanCalendar.uid("Quarrow Field house", "order/board-12"));
  }

  @Test
  void stamp_comes_from_the_status_date_and_the_bytes_are_the_same_each_time() {
    assertThat(new String(ics(), StandardCharsets.UTF_8)).contains("DTSTAMP:20270315T000000Z\r\n");
    assertThat(ics()).isEqualTo(ics());
  }
}
