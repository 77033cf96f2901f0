package cornerpost.report;

import cornerpost.plan.Plan;
import cornerpost.plan.Programme.CrewDay;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Who works when: for each crew a column a week, as high as the share of its days that is used. */
final class CrewChart {
  private static final int BAND = 18;
  private static final double ROW = 38;
  private static final double NAMES = 200;
  private static final double WIDTH = 980;

  /** A crew's busiest week. */
  public record Busiest(String crew, String week, String days, String available, boolean full) {}

  private final Plan plan;
  private final Map<String, List<CrewDay>> byCrew = new TreeMap<>();

  CrewChart(Plan plan) {
    this.plan = plan;
    for (var d : plan.programme().crewLoad()) {
      byCrew.computeIfAbsent(d.crew(), c -> new ArrayList<>()).add(d);
    }
    byCrew.values().removeIf(days -> days.stream().allMatch(d -> d.personDays().signum() == 0));
  }

  List<Busiest> busiest() {
    var rows = new ArrayList<Busiest>();
    byCrew.forEach(
        (crew, days) -> {
          var most = days.stream().max(Comparator.comparing(CrewDay::personDays)).orElseThrow();
          rows.add(
              new Busiest(
                  crew,
                  Words.day(most.week()),
                  Words.tenths(most.personDays()),
                  Words.tenths(most.available()),
                  most.personDays().compareTo(most.available()) >= 0));
        });
    return rows;
  }

  List<String> bands() {
    var bands = new ArrayList<String>();
    var crews = new ArrayList<>(byCrew.keySet());
    for (int at = 0; at < crews.size(); at += BAND) {
      bands.add(band(crews.subList(at, Math.min(crews.size(), at + BAND)), bands.size()));
    }
    return bands;
  }

  private String band(List<String> crews, int number) {
    var p = plan.programme();
    var weeks = new LinkedHashMap<String, List<CrewDay>>();
    crews.forEach(c -> weeks.put(c, byCrew.get(c)));
    LocalDate first = p.start();
    LocalDate last = p.finish();
    var axis = TimeAxis.of(first, last, NAMES, WIDTH - NAMES - 6);
    double height = 22 + crews.size() * ROW + 4;
    var svg =
        Svg.picture(
            "crews-" + number,
            "0 0 " + Svg.number(WIDTH) + " " + Svg.number(height),
            "chart",
            "--chart-width:" + Svg.number(WIDTH) + "px",
            "Who works when, week by week",
            "Columns as high as the row are full weeks. The busiest week of each crew stands in"
                + " the table below.");
    axis.draw(svg, 0, height);
    double y = 22;
    for (var e : weeks.entrySet()) {
      svg.label("task", 0, y + ROW / 2 + 4, "start", shortened(e.getKey()));
      for (var d : e.getValue()) {
        if (d.personDays().signum() <= 0) continue;
        double available = Math.max(d.available().doubleValue(), 1e-9);
        double share = Math.min(1, d.personDays().doubleValue() / available);
        double x = axis.x(d.week());
        double w = Math.max(1.5, axis.x(d.week().plusDays(7)) - x - 1.2);
        double h = share * (ROW - 8);
        svg.rect(share > 0.999 ? "load full" : "load", x, y + ROW - 4 - h, w, h);
      }
      svg.line("grid", 0, y + ROW - 4, WIDTH - 6, y + ROW - 4);
      y += ROW;
    }
    axis.status(svg, plan.statusDate(), 0, height);
    return svg.done();
  }

  private static String shortened(String name) {
    return name.length() <= 30 ? name : name.substring(0, 29).strip() + "…";
  }
}
