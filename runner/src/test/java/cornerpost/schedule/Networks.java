package cornerpost.schedule;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Networks for the tests: in whole days of an every-day calendar unless said otherwise, from a
 * Monday.
 */
final class Networks {
  static final int DAY = 480;
  static final LocalDate MONDAY = LocalDate.of(2026, 11, 2);
  static final WorkCalendar EVERY_DAY = WorkCalendar.everyDay(List.of());

  private Networks() {}

  /** One row of a worked network: what goes in, and what must come out, in days from the start. */
  record Row(
      String id,
      String name,
      int days,
      List<Link> links,
      int earlyStart,
      int earlyFinish,
      int lateStart,
      int lateFinish,
      int totalFloat,
      int freeFloat,
      boolean critical) {
    Activity activity() {
      return days == 0
          ? Activity.milestone(id, name)
          : Activity.working(id, name, (long) days * DAY);
    }
  }

  static List<Row> worked(String name) {
    var rows = new ArrayList<Row>();
    for (String line : lines("networks/" + name + ".csv")) {
      String[] c = line.split(";", -1);
      if (!line.startsWith("#") && !c[0].equals("id")) {
        rows.add(
            new Row(
                c[0],
                c[1],
                Integer.parseInt(c[2]),
                Arrays.stream(c[3].split(" "))
                    .filter(p -> !p.isEmpty())
                    .map(p -> link(p, c[0]))
                    .toList(),
                Integer.parseInt(c[4]),
                Integer.parseInt(c[5]),
                Integer.parseInt(c[6]),
                Integer.parseInt(c[7]),
                Integer.parseInt(c[8]),
                Integer.parseInt(c[9]),
                c[10].equals("yes")));
      }
    }
    return rows;
  }

  static int duration(String name) {
    return lines("networks/" + name + ".csv").stream()
        .filter(l -> l.startsWith("# duration "))
        .map(l -> Integer.valueOf(l.substring("# duration ".length())))
        .findFirst()
        .orElseThrow();
  }

  private static Link link(String words, String after) {
    String[] part = words.split(":");
    var relation =
        switch (part.length == 1 ? "FS" : part[1]) {
          case "SS" -> Relation.START_TO_START;
          case "FF" -> Relation.FINISH_TO_FINISH;
          case "SF" -> Relation.START_TO_FINISH;
          default -> Relation.FINISH_TO_START;
        };
    return Link.of(part[0], after, relation, part.length == 1 ? 0 : Long.parseLong(part[2]) * DAY);
  }

  static Network of(String name, WorkCalendar calendar) {
    return of(name, calendar, Map.of());
  }

  /** A worked network with other durations for some of its tasks. */
  static Network of(String name, WorkCalendar calendar, Map<String, Integer> otherDays) {
    var rows = worked(name);
    return Network.of(
        rows.stream()
            .map(
                r ->
                    otherDays.containsKey(r.id())
                        ? r.activity().lasting((long) otherDays.get(r.id()) * DAY)
                        : r.activity())
            .toList(),
        rows.stream().flatMap(r -> r.links().stream()).toList(),
        List.of(),
        MONDAY.atStartOfDay(),
        calendar);
  }

  /** Day number of a start in a calendar without days off. */
  static long day(LocalDateTime moment) {
    long minutes = EVERY_DAY.between(MONDAY.atStartOfDay(), moment);
    if (minutes % DAY != 0) {
      throw new AssertionError(moment + " is not the edge of a working day");
    }
    return minutes / DAY;
  }

  static List<String> lines(String resource) {
    try (var in = Networks.class.getResourceAsStream("/schedule/" + resource)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A problem of single-mode project scheduling under limited resources, times in whole units. */
  record Problem(
      String name,
      int[] duration,
      int[][] demand,
      int[] capacity,
      int[][] successors,
      int criticalPath) {
    /** As a network, a unit of time being a day of the calendar. */
    Network network(WorkCalendar calendar) {
      var activities = new ArrayList<Activity>();
      var links = new ArrayList<Link>();
      for (int i = 0; i < duration.length; i++) {
        var a =
            duration[i] == 0
                ? Activity.milestone("" + (i + 1), "task " + (i + 1))
                : Activity.working(
                    "" + (i + 1), "task " + (i + 1), (long) duration[i] * calendar.dayMinutes());
        for (int r = 0; r < capacity.length; r++) {
          if (demand[i][r] > 0) {
            a = a.needing(demand[i][r], "R" + (r + 1));
          }
        }
        activities.add(a);
        for (int s : successors[i]) {
          links.add(Link.of("" + (i + 1), "" + (s + 1)));
        }
      }
      var crews = new ArrayList<Crew>();
      for (int r = 0; r < capacity.length; r++) {
        crews.add(Crew.of("R" + (r + 1), capacity[r]));
      }
      return Network.of(activities, links, crews, MONDAY.atStartOfDay(), calendar);
    }
  }

  /** Reads a PSPLIB .sm file. */
  static Problem psplib(String set, String file) {
    var lines = lines("psplib/" + set + "/" + file);
    int jobs = 0;
    int mpm = 0;
    int[] duration = {};
    int[][] demand = {};
    int[][] successors = {};
    int[] capacity = {};
    for (int k = 0; k < lines.size(); k++) {
      String line = lines.get(k);
      if (line.startsWith("jobs")) {
        jobs = Integer.parseInt(line.substring(line.indexOf(':') + 1).trim());
        duration = new int[jobs];
        demand = new int[jobs][];
        successors = new int[jobs][];
      } else if (line.startsWith("pronr.")) {
        mpm = numbers(lines.get(k + 1))[5];
      } else if (line.startsWith("jobnr.") && line.contains("successors")) {
        for (int i = 0; i < jobs; i++) {
          int[] n = numbers(lines.get(k + 1 + i));
          successors[i] = Arrays.stream(n, 3, 3 + n[2]).map(s -> s - 1).toArray();
        }
      } else if (line.startsWith("jobnr. mode")) {
        for (int i = 0; i < jobs; i++) {
          int[] n = numbers(lines.get(k + 2 + i));
          duration[i] = n[2];
          demand[i] = Arrays.copyOfRange(n, 3, n.length);
        }
      } else if (line.startsWith("RESOURCEAVAILABILITIES")) {
        capacity = numbers(lines.get(k + 2));
      }
    }
    return new Problem(file, duration, demand, capacity, successors, mpm);
  }

  static Problem patterson(String file) {
    int[] n = numbers(String.join(" ", lines("patterson/" + file)));
    int at = 2;
    int tasks = n[0];
    int resources = n[1];
    int[] capacity = Arrays.copyOfRange(n, at, at += resources);
    int[] duration = new int[tasks];
    int[][] demand = new int[tasks][];
    int[][] successors = new int[tasks][];
    for (int i = 0; i < tasks; i++) {
      duration[i] = n[at++];
      demand[i] = Arrays.copyOfRange(n, at, at += resources);
      int count = n[at++];
      successors[i] = Arrays.stream(n, at, at += count).map(s -> s - 1).toArray();
    }
    return new Problem(file, duration, demand, capacity, successors, -1);
  }

  private static int[] numbers(String line) {
    return Arrays.stream(line.trim().split("\\s+")).mapToInt(Integer::parseInt).toArray();
  }

  /** What is known of a set: for each instance the text of the columns after its name. */
  static Map<String, String[]> known(String set) {
    var known = new TreeMap<String, String[]>();
    for (String line : lines(set + "/known.csv").stream().skip(1).toList()) {
      String[] c = line.split(",", -1);
      known.put(c[0], Arrays.copyOfRange(c, 1, c.length));
    }
    return known;
  }
}
