package cornerpost.report;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.summingInt;

import cornerpost.plan.DatedTask;
import cornerpost.plan.OrderRow;
import cornerpost.plan.Plan;
import cornerpost.price.Goods;
import cornerpost.price.SupplierGroup;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.SiteAccess;
import cornerpost.scope.SiteQuestions;
import cornerpost.takeoff.BuildTask;
import cornerpost.work.WorkTask;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;

/**
 * The dates that have to be kept, as a calendar of whole days by RFC 5545, named by RFC 7986:
 * delivery, crane, days to order by, inspections, milestones and draws.
 *
 * <p>An event keeps its identity from run to run, so that a calendar program moves it instead of
 * showing it twice: that is made from the project's name and the id of what happens. Its sequence
 * number grows with the status date. No clock is read.
 */
public final class PlanCalendar {
  private static final DateTimeFormatter DAY = DateTimeFormatter.BASIC_ISO_DATE;
  private static final LocalDate SEQUENCE_BEGINS = LocalDate.of(2000, 1, 1);

  private record Event(
      String id, LocalDate day, LocalDate last, String category, String title, String details) {
    Event(String id, LocalDate day, String category, String title, String details) {
      this(id, day, day, category, title, details);
    }
  }

  private PlanCalendar() {}

  /** The calendar file, UTF-8 with CRLF. */
  public static byte[] write(Plan plan) {
    return written(plan, "Key dates", events(plan));
  }

  /**
   * A calendar for each crew that has work to come, by the crew's name: each of its tasks from the
   * first day to the last.
   */
  public static SortedMap<String, byte[]> ofCrews(Plan plan) {
    var events = new TreeMap<String, List<Event>>();
    for (var t : plan.programme().tasks()) {
      if (t.done() || t.task().kind() == WorkTask.Kind.MILESTONE) continue;
      for (var crew : t.task().demands().keySet()) {
        events
            .computeIfAbsent(crew, k -> new ArrayList<>())
            .add(
                new Event(
                    "crew/" + crew + "/" + t.id(),
                    t.firstDay(),
                    t.lastDay(),
                    crew,
                    t.task().name(),
                    Words.ended(Words.sentence(t.waitsFor()))));
      }
    }
    var files = new TreeMap<String, byte[]>();
    events.forEach((crew, all) -> files.put(crew, written(plan, crew, all)));
    return files;
  }

  private static byte[] written(Plan plan, String what, List<Event> events) {
    var name = plan.scope().project().text(ProjectQuestions.NAME);
    var out = new IcsText();
    out.line("BEGIN", "VCALENDAR");
    out.line("VERSION", "2.0");
    out.text("PRODID", "-//Cornerpost//" + what + "//EN");
    out.line("CALSCALE", "GREGORIAN");
    out.text("NAME", name + ": " + what);
    for (var e : events) event(e, name, plan, out);
    out.line("END", "VCALENDAR");
    return out.done();
  }

  private static void event(Event e, String project, Plan plan, IcsText out) {
    var status = plan.statusDate();
    var numbers = plan.numbers();
    out.line("BEGIN", "VEVENT");
    out.line("UID", uid(project, e.id()));
    out.line("DTSTAMP", DAY.format(status) + "T000000Z");
    out.line("DTSTART;VALUE=DATE", DAY.format(e.day()));
    out.line("DTEND;VALUE=DATE", DAY.format(e.last().plusDays(1)));
    out.line(
        "SEQUENCE", Long.toString(Math.max(0, ChronoUnit.DAYS.between(SEQUENCE_BEGINS, status))));
    out.text("SUMMARY", numbers.turned(e.title()));
    if (!e.details().isEmpty()) out.text("DESCRIPTION", numbers.turned(e.details()));
    out.text("CATEGORIES", e.category());
    out.line("TRANSP", "TRANSPARENT");
    out.line("END", "VEVENT");
  }

  static String uid(String project, String id) {
    return UUID.nameUUIDFromBytes((project + "\n" + id).getBytes(StandardCharsets.UTF_8))
        .toString();
  }

  private static List<Event> events(Plan plan) {
    var all = new ArrayList<Event>();
    plan.programme().tasks().forEach(t -> task(t, plan, all));
    orders(plan, all);
    var currency = plan.estimate().currency();
    for (var d : plan.finance().draws()) {
      all.add(
          new Event(
              "draw/" + d.id(),
              d.date(),
              "Draw",
              "Draw: " + Words.money(d.paid(), currency) + ", " + d.event(),
              "Inspections: "
                  + String.join("; ", d.inspections())
                  + "\nPapers: "
                  + String.join("; ", d.papers())));
    }
    all.sort(Comparator.comparing(Event::day).thenComparing(Event::title).thenComparing(Event::id));
    return all;
  }

  private static void task(DatedTask t, Plan plan, List<Event> all) {
    var name = t.task().name();
    var details =
        t.done()
            ? "Done."
            : "Float: "
                + Words.days(plan.programme().floatOf(t))
                + ". "
                + Words.ended(Words.sentence(t.waitsFor()));
    if (t.task().kind() == WorkTask.Kind.INSPECTION) {
      all.add(
          new Event(
              "task/" + t.id(),
              t.lastDay(),
              "Inspection",
              "Inspection: " + name,
              (t.done() ? "" : "Ask for it on " + Words.day(t.firstDay()) + ". ") + details));
    } else if (t.task().kind() == WorkTask.Kind.MILESTONE) {
      var delivery = t.id().equals(BuildTask.DELIVERY.id());
      all.add(
          new Event(
              "task/" + t.id(), t.firstDay(), delivery ? "Delivery" : "Milestone", name, details));
    } else if (t.id().equals(BuildTask.SET_BOXES.id()) && byCrane(plan)) {
      all.add(new Event("task/" + t.id(), t.firstDay(), "Crane", "Crane: " + name, details));
    }
  }

  private static boolean byCrane(Plan plan) {
    return plan.scope()
        .site()
        .find(SiteQuestions.ACCESS)
        .filter(a -> a.value() == SiteAccess.CRANE)
        .isPresent();
  }

  private static String todo(OrderRow o) {
    return switch (o.standing()) {
      case ORDERED -> "Ordered";
      case RESERVE -> "Reserve by today, before the permit";
      case LATE, TO_COME -> "Order by today";
    };
  }

  /**
   * One event for each kind of supplier, day and thing to do, named by the goods; known by the
   * first of its items by code, whatever it is named.
   */
  private static void orders(Plan plan, List<Event> all) {
    record Trip(SupplierGroup group, LocalDate day, String todo) {}
    var trips =
        new TreeMap<Trip, List<OrderRow>>(
            Comparator.comparing(Trip::day).thenComparing(Trip::group).thenComparing(Trip::todo));
    for (var o : plan.orders()) {
      trips
          .computeIfAbsent(new Trip(o.group(), o.orderBy(), todo(o)), k -> new ArrayList<>())
          .add(o);
    }
    var bought = plan.orders().stream().collect(groupingBy(OrderRow::group, summingInt(o -> 1)));
    trips.forEach(
        (trip, rows) -> {
          rows.sort(Comparator.comparing(OrderRow::item));
          var details = new StringBuilder(trip.group().label()).append(":\n");
          for (var o : rows) {
            details
                .append(Words.number(o.buy()))
                .append(' ')
                .append(o.unit())
                .append(' ')
                .append(o.description())
                .append(", needed on ")
                .append(Words.day(o.neededOn()))
                .append(o.late() ? " (" + o.said(plan.statusDate()) + ")" : "")
                .append('\n');
          }
          all.add(
              new Event(
                  "order/" + rows.get(0).item(),
                  trip.day(),
                  "Order",
                  trip.todo()
                      + ": "
                      + Goods.of(
                          trip.group(),
                          OrderRow.dearestFirst(rows),
                          bought.get(trip.group()) == rows.size()),
                  details.toString().strip()));
        });
  }
}
