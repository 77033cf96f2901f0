package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.scope.Box;
import cornerpost.scope.Stage;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What each box weighs: its tare, and each measured quantity of a material in or on it x the mass
 * of one unit, net, less the steel cut out of it. The supports and the crane go by these lines, so
 * that no allowance stands beside the sum. The foundation is not in it: what it weighs rests on the
 * ground, not on itself. Nor are people, furniture and snow: those are loads, see {@link BoxLoads}.
 *
 * <p>Materials without a mass in the facts are left out: together they are light (the list and the
 * reason are in docs/method-mass.md).
 *
 * <p>A box modified in a yard is lifted with its frames and other steelwork in and the cut steel
 * out; one modified on site is lifted as it comes. An estimate: whoever lifts weighs.
 */
final class OwnMass implements TakeoffRule {
  private static final Set<Stage> ON_THE_BOXES =
      EnumSet.of(
          Stage.CONTAINERS,
          Stage.SHELL,
          Stage.FRAMING,
          Stage.SERVICES,
          Stage.INSULATION,
          Stage.FINISHES,
          Stage.OUTSIDE);

  /** Masses that go into one line: of one box or shared, at one stage. */
  private record Group(Optional<Box> box, Borne.Shared shared, Stage stage) {
    String id() {
      var what = stage.name().toLowerCase(Locale.ROOT);
      if (box.isPresent()) return "mass/box/" + box.get().id() + "/" + what;
      return "mass/" + shared.id() + (shared == Borne.Shared.HOUSE ? "/" + what : "");
    }

    String name() {
      return box.map(b -> "Box " + b.id() + ": mass of what is measured for it, ")
              .orElse(
                  switch (shared) {
                    case HOUSE -> "Mass of what is measured for the whole house, ";
                    case KITCHENS -> "Mass of what is measured for the kitchens, ";
                    case WET_ROOMS -> "Mass of what is measured for the wet rooms, ";
                    case ROOF -> "Mass of the roof build, ";
                  })
          + stage.label().substring(2).toLowerCase(Locale.ROOT);
    }
  }

  @Override
  public List<Line> measure(Job job) {
    if (job.scope().boxes().isEmpty()) return List.of();
    var borne = new Borne(job);
    var groups = new LinkedHashMap<Group, List<Figure>>();
    var removed = new LinkedHashMap<String, List<Figure>>();
    var steelIn = new LinkedHashMap<String, List<Figure>>();
    for (var line : job.lines()) {
      if (!ON_THE_BOXES.contains(line.stage())) continue;
      var box = borne.by(line);
      if (box.isPresent() && line.id().endsWith("/steel-removed")) {
        put(removed, box.get().id(), line.named());
        continue;
      }
      var masses = masses(job, line);
      if (masses.isEmpty()) continue;
      var shared = box.isPresent() ? Borne.Shared.HOUSE : Borne.sharing(line);
      groups
          .computeIfAbsent(new Group(box, shared, line.stage()), g -> new ArrayList<>())
          .addAll(masses);
      if (box.isPresent() && isYardSteel(box.get(), line)) {
        masses.forEach(m -> put(steelIn, box.get().id(), m));
      }
    }
    var lines = new ArrayList<Line>();
    var sums = new LinkedHashMap<Group, Figure>();
    groups.forEach(
        (group, masses) -> {
          var line =
              line(
                  job,
                  group.id(),
                  group.stage(),
                  group.name(),
                  Figure.sum(Dimension.MASS, masses),
                  "quantities x mass of one unit");
          lines.add(line);
          sums.put(group, line.named());
        });
    var fitOuts = new ArrayList<Figure>();
    var totals = new ArrayList<Figure>();
    for (var box : job.scope().boxes()) {
      var out = Figure.sum(Dimension.MASS, removed.getOrDefault(box.id(), List.of()));
      var in = Figure.sum(Dimension.MASS, steelIn.getOrDefault(box.id(), List.of()));
      var ofBox = ofBox(job, borne, box, sums, out, in);
      lines.addAll(ofBox);
      fitOuts.add(ofBox.get(1).named());
      totals.add(ofBox.get(2).named());
    }
    lines.add(
        line(
            job,
            "mass/fit-out",
            Stage.FINISHES,
            "Mass of all that is built in and on, less the steel cut out",
            Figure.sum(Dimension.MASS, fitOuts),
            "all boxes"));
    lines.add(
        line(
            job,
            "mass/total",
            Stage.FINISHES,
            "Mass of the house on its foundation, empty",
            Figure.sum(Dimension.MASS, totals),
            "all boxes: tare and what is built in and on"));
    return lines;
  }

  /** Steel out, what is built in and on, the whole box, then as it is lifted: in this order. */
  private static List<Line> ofBox(
      Job job, Borne borne, Box box, Map<Group, Figure> sums, Figure out, Figure steelIn) {
    var id = "mass/box/" + box.id();
    var name = "Box " + box.id() + ": ";
    var cut =
        line(
            job,
            id + "/steel-out",
            Stage.SHELL,
            name + "mass of the steel cut out",
            out,
            "all openings of the box");
    var parts = new ArrayList<Figure>();
    sums.forEach(
        (group, sum) -> {
          if (group.box().isEmpty()) borne.part(group.shared(), box, sum).ifPresent(parts::add);
          else if (group.box().get().equals(box)) parts.add(sum);
        });
    parts.add(cut.named().times(-1));
    var fitOut =
        line(
            job,
            id + "/fit-out",
            Stage.FINISHES,
            name + "mass of what is built in and on, less the steel cut out",
            Figure.sum(Dimension.MASS, parts).atLeastZero(),
            "what is measured for the box, its share of the rest, less the steel cut out");
    var tare = box.fact(job.facts(), "tare");
    var yard = new Steelwork(box).inYard();
    var lift =
        line(
            job,
            id + "/lift",
            Stage.CONTAINERS,
            name + "mass as it is delivered and lifted",
            yard ? tare.plus(steelIn).minus(cut.named()) : tare,
            yard
                ? "tare + steelwork of the yard - steel cut out; weigh it"
                : "tare: cut and fitted out after it is set; weigh it");
    return List.of(
        cut,
        fitOut,
        line(
            job,
            id + "/total",
            Stage.FINISHES,
            name + "mass on its supports, empty",
            tare.plus(fitOut.named()),
            "tare + what is built in and on"),
        lift,
        line(
            job,
            id + "/hook-load",
            Stage.CONTAINERS,
            name + "load on the crane's hook",
            lift.named()
                .plus(job.fact("limit.rigging"))
                .times(Figure.count(1).plus(job.fact("limit.lift-margin"))),
            "as it is delivered + slings, shackles and spreader, and a margin"));
  }

  private static List<Figure> masses(Job job, Line line) {
    // frames by the mass measured for each; the bars that they are cut from are the same steel
    if (line.id().endsWith("/frame-steel")) return List.of(line.named());
    var masses = new ArrayList<Figure>();
    for (var r : line.resources()) {
      if (r instanceof Resource.Buy buy) {
        job.facts()
            .find("mass.of." + buy.item())
            .ifPresent(each -> masses.add(line.named().times(each.figure())));
      }
    }
    return masses;
  }

  private static boolean isYardSteel(Box box, Line line) {
    if (!new Steelwork(box).inYard()) return false;
    return line.id().endsWith("/frame-steel")
        || line.resources().stream().anyMatch(r -> r.task() == BuildTask.YARD_STEELWORK);
  }

  private static void put(Map<String, List<Figure>> all, String box, Figure mass) {
    all.computeIfAbsent(box, b -> new ArrayList<>()).add(mass);
  }

  private static Line line(
      Job job, String id, Stage stage, String what, Figure mass, String because) {
    return Line.of(id, stage, what, mass, job.mass(), because);
  }
}
