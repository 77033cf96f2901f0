package cornerpost.check;

import static cornerpost.check.Check.Severity.NOTE;
import static cornerpost.check.Check.Severity.PROFESSIONAL;

import cornerpost.check.Check.Topic;
import cornerpost.scope.Foundation;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.SoilClass;
import cornerpost.takeoff.Line;
import cornerpost.trace.Figure;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * The largest pressure on the ground against the bearing that the code presumes for the soil class
 * chosen, or the largest load of a pile against its working load; and what the house weighs.
 */
final class GroundBearing implements CheckRule {
  private static final String ENGINEER =
      ". An engineer and the local code settle loads, footings and what the soil bears; soft, filled"
          + " or swelling ground needs a soil report";

  @Override
  public List<Check> look(CheckInput in) {
    var mass = in.measured("mass/total");
    if (mass.isEmpty()) return List.of();
    var kind = in.scope().site().option(SiteQuestions.FOUNDATION, Foundation.class);
    return switch (kind) {
      case SCREW_PILES -> piles(in, "screw", mass.get());
      case DRIVEN_PILES -> piles(in, "driven", mass.get());
      case PIERS, STRIPS, SLAB, RAFT, PRECAST_PADS, SKIDS -> ground(in, kind, mass.get());
    };
  }

  private static List<Check> ground(CheckInput in, Foundation kind, Figure mass) {
    var soil = in.scope().site().option(SiteQuestions.SOIL, SoilClass.class);
    var bearing = in.facts().get(soil.factId() + ".bearing");
    var say = new Say(in);
    return largest(in, "/pressure").stream()
        .map(
            line -> {
              boolean over = Say.less(bearing.figure(), line.quantity());
              return check(
                  in,
                  over,
                  weighs(in, mass)
                      + "; the largest pressure on the ground, with floor load and snow, is "
                      + say.pressure(line.quantity())
                      + " ("
                      + kind.label()
                      + "), and the code presumes that "
                      + soil.label()
                      + " bears "
                      + say.pressure(bearing.figure())
                      + (over
                          ? ". It is passed: take wider supports, more of them or another"
                              + " foundation"
                          : ""),
                  bearing.source());
            })
        .toList();
  }

  private static List<Check> piles(CheckInput in, String kind, Figure mass) {
    var capacity = in.facts().get("pile." + kind + ".capacity");
    var say = new Say(in);
    return largest(in, "/load").stream()
        .map(
            line -> {
              boolean over = Say.less(capacity.figure(), line.quantity());
              return check(
                  in,
                  over,
                  weighs(in, mass)
                      + "; the largest load of a pile, with floor load and snow, is "
                      + say.mass(line.quantity())
                      + " of a working load of "
                      + say.mass(capacity.figure())
                      + (over ? ". It is passed: take more supports" : "")
                      + "; the installer's record decides",
                  capacity.source());
            })
        .toList();
  }

  private static String weighs(CheckInput in, Figure mass) {
    return "The house weighs " + new Say(in).mass(mass) + " empty";
  }

  private static Check check(CheckInput in, boolean over, String text, String source) {
    return new Check(
        "ground-bearing",
        Topic.GROUND,
        over ? PROFESSIONAL : NOTE,
        text + ENGINEER,
        source,
        List.of(in.scope().site().cell(SiteQuestions.FOUNDATION)),
        List.of());
  }

  private static Optional<Line> largest(CheckInput in, String end) {
    return in.lines().stream()
        .filter(l -> l.id().startsWith("footing/") && l.id().endsWith(end))
        .max(Comparator.comparing(l -> l.quantity().value()));
  }
}
