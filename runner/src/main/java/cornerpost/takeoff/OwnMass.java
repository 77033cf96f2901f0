package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.scope.Box;
import cornerpost.scope.Stage;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What the fit-out weighs: each measured quantity of a material x its mass of one unit, net, by
 * stage; less the steel cut out of the shell. Beside it stands the allowance that the supports are
 * sized for. Materials without a known mass (cables, pipes, fixings, paint, membranes) are left
 * out: together they are light.
 *
 * <p>For the crane: a box as it arrives, with frames in and steel out where the yard has cut it. An
 * estimate: whoever lifts weighs.
 */
final class OwnMass implements TakeoffRule {
  private static final List<Stage> FIT_OUT =
      List.of(Stage.SHELL, Stage.FRAMING, Stage.SERVICES, Stage.INSULATION, Stage.FINISHES);

  @Override
  public List<Line> measure(Job job) {
    if (job.scope().boxes().isEmpty()) return List.of();
    var shape = new Shape(job);
    var lines = new ArrayList<Line>();
    var parts = new ArrayList<Figure>();
    for (var stage : FIT_OUT) {
      var masses = masses(job, stage);
      if (masses.isEmpty()) continue;
      var line =
          line(
              job,
              "mass/" + stage.name().toLowerCase(Locale.ROOT),
              stage,
              "Mass of what is built in at this stage",
              Figure.sum(Dimension.MASS, masses),
              "quantities x mass of one unit");
      lines.add(line);
      parts.add(line.named());
    }
    var removed = named(job.linesOf("opening/"), "/steel-removed");
    lines.add(
        line(
            job,
            "mass/fit-out",
            Stage.FINISHES,
            "Mass of the fit-out, summed",
            Figure.sum(Dimension.MASS, parts)
                .minus(Figure.sum(Dimension.MASS, removed))
                .atLeastZero(),
            "all stages, less the steel cut out; cables, pipes, fixings and paint left out"));
    var areas = job.scope().boxes().stream().map(shape::planArea).toList();
    lines.add(
        line(
            job,
            "mass/fit-out-allowance",
            Stage.FOUNDATION,
            "Mass of the fit-out that the supports are sized for",
            job.fact("mass.fit-out").times(Figure.sum(areas.get(0).dimension(), areas)),
            "allowance x plan area of all boxes"));
    for (var box : job.scope().boxes()) lines.add(lift(job, box));
    return lines;
  }

  private static List<Figure> masses(Job job, Stage stage) {
    var masses = new ArrayList<Figure>();
    for (var line : job.lines()) {
      if (line.stage() != stage) continue;
      for (var r : line.resources()) {
        if (r instanceof Resource.Buy buy) {
          massOf(job, buy.item()).ifPresent(each -> masses.add(line.named().times(each)));
        }
      }
    }
    return masses;
  }

  private static Optional<Figure> massOf(Job job, String item) {
    var id = item.startsWith("bar-") ? "steel." + item.substring(4) + ".mass" : "mass.of." + item;
    return job.facts().find(id).map(f -> f.figure());
  }

  private static Line lift(Job job, Box box) {
    var mass = box.fact(job.facts(), "tare");
    boolean cut = new Steelwork(box).inYard();
    if (cut) {
      var in = new ArrayList<Figure>();
      var out = new ArrayList<Figure>();
      for (var o : job.scope().openingsOf(box)) {
        job.find("opening/" + o.id() + "/frame-steel").ifPresent(in::add);
        job.find("opening/" + o.id() + "/steel-removed").ifPresent(out::add);
      }
      mass = mass.plus(Figure.sum(Dimension.MASS, in)).minus(Figure.sum(Dimension.MASS, out));
    }
    return line(
        job,
        "mass/lift/" + box.id(),
        Stage.CONTAINERS,
        "Box " + box.id() + ": mass as it is lifted at delivery",
        mass,
        cut
            ? "tare, frames in, steel cut out; an estimate: weigh it"
            : "tare; an estimate: weigh it");
  }

  private static List<Figure> named(List<Line> lines, String end) {
    return lines.stream().filter(l -> l.id().endsWith(end)).map(Line::named).toList();
  }

  private static Line line(
      Job job, String id, Stage stage, String what, Figure mass, String because) {
    return Line.of(id, stage, what, mass, job.mass(), because);
  }
}
