package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.STEEL_MEMBRANE;
import static cornerpost.takeoff.BuildTask.VAPOUR_MEMBRANE;

import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.Stage;
import cornerpost.scope.VapourControl;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Membranes with laps: one on the steel before the studs where it is asked for, and vapour control
 * on the warm side. Retarder paint is measured with the paint, see {@link InsidePaint}.
 */
final class Membranes implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var out = new ArrayList<Line>();
    out.addAll(onSteel(job));
    out.addAll(warmSide(job));
    return out;
  }

  private static List<Line> onSteel(Job job) {
    var out = new Tally(Stage.FRAMING);
    if (!job.scope().envelope().yes(EnvelopeQuestions.MEMBRANE_ON_STEEL)) return out.lines();
    var measured =
        out.add(
            "membrane/steel/area",
            "Membrane on the steel before the studs",
            new Inside(job).coldSteelFace(),
            job.area(),
            "inside face of the steel, net of openings and of walls where boxes touch; laps come as waste",
            Buy.of("membrane-steel", job.fact("waste.membrane"), STEEL_MEMBRANE),
            Labour.of("fit-membrane", STEEL_MEMBRANE));
    out.add(
        "membrane/steel/tape",
        "Tape for the membrane on the steel",
        measured.times(job.fact("membrane.tape-per-area")),
        job.length(),
        "area x tape for each area",
        Buy.of("membrane-tape", job.fact("waste.membrane"), STEEL_MEMBRANE));
    return out.lines();
  }

  private static List<Line> warmSide(Job job) {
    var out = new Tally(Stage.INSULATION);
    var area = job.measured("inside/wall-area").plus(job.measured("inside/ceiling-area"));
    var control = job.scope().envelope().option(EnvelopeQuestions.VAPOUR, VapourControl.class);
    switch (control) {
      case NONE, PAINT -> {}
      case MEMBRANE -> {
        var measured =
            out.add(
                "membrane/vapour/area",
                "Vapour membrane on walls and ceilings",
                area,
                job.area(),
                "inside face of outside walls + ceilings; laps come as waste",
                Buy.of("membrane-vapour", job.fact("waste.membrane"), VAPOUR_MEMBRANE),
                Labour.of("fit-membrane", VAPOUR_MEMBRANE));
        out.add(
            "membrane/vapour/tape",
            "Tape for the vapour membrane",
            measured.times(job.fact("membrane.tape-per-area")),
            job.length(),
            "area x tape for each area",
            Buy.of("membrane-tape", job.fact("waste.membrane"), VAPOUR_MEMBRANE));
        var boxes = new ArrayList<Figure>();
        for (var box : job.scope().boxes()) {
          boxes.add(
              new Shape(job).insideLength(box).plus(new Shape(job).insideWidth(box)).times(4));
        }
        out.add(
            "membrane/vapour/sealant",
            "Sealant at the edges of the vapour membrane",
            Inside.lengths(boxes),
            job.length(),
            "along floor and ceiling of the outside walls",
            Buy.of("membrane-sealant", job.fact("waste.fixings"), VAPOUR_MEMBRANE));
      }
      case KRAFT ->
          out.add(
              "membrane/vapour/kraft",
              "Kraft facing on the batts",
              area,
              job.area(),
              "inside face of outside walls + ceilings; stapled to the studs",
              Buy.of("kraft-facing", job.fact("waste.membrane"), VAPOUR_MEMBRANE),
              Labour.of("staple-kraft", VAPOUR_MEMBRANE));
    }
    return out.lines();
  }
}
