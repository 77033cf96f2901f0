package cornerpost.takeoff;

import cornerpost.measure.Unit;
import cornerpost.scope.Box;
import cornerpost.scope.ContainerFloor;
import cornerpost.scope.FloorTreatment;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import java.util.ArrayList;
import java.util.List;

/**
 * The plywood floor of the box: kept and sealed, or taken out, carried away and laid anew. Timber
 * treated with insecticide, or not known to be free of it, is washed and gets two coats of a
 * barrier sealer (common practice); so does any floor that stays bare.
 */
final class PlywoodFloor implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var lines = new ArrayList<Line>();
    for (var box : job.scope().boxes()) {
      lines.addAll(box.floor() == ContainerFloor.REPLACE ? replaced(job, box) : kept(job, box));
    }
    return lines;
  }

  private static List<Line> kept(Job job, Box box) {
    var area = new Shape(job).floorArea(box);
    var twice = box.treatment() != FloorTreatment.UNTREATED || box.floor() == ContainerFloor.SEAL;
    var id = "box/" + box.id();
    return List.of(
        Line.of(
            id + "/floor-washed",
            Stage.FINISHES,
            "Box " + box.id() + ": container floor degreased and made good",
            area,
            job.area(),
            "inside floor",
            Buy.of("floor-cleaner", BuildTask.FLOOR_PREPARE),
            Labour.of("wash-floor", BuildTask.FLOOR_PREPARE)),
        Line.of(
            id + "/floor-sealer",
            Stage.FINISHES,
            "Box " + box.id() + ": sealer on the container floor",
            area.times(twice ? 2 : 1).over(job.fact("paint.floor-sealer.coverage")),
            job.liquid(),
            twice ? "inside floor x two coats / coverage" : "inside floor x one coat / coverage",
            Buy.of("floor-sealer", job.fact("waste.paint"), BuildTask.FLOOR_PREPARE),
            Labour.of("roll-floor-sealer", BuildTask.FLOOR_PREPARE)));
  }

  private static List<Line> replaced(Job job, Box box) {
    var area = new Shape(job).floorArea(box);
    var id = "box/" + box.id();
    return List.of(
        Line.of(
            id + "/floor-out",
            Stage.CONTAINERS,
            "Box " + box.id() + ": container floor taken out",
            area,
            job.area(),
            "inside floor",
            Labour.of("strip-floor", BuildTask.STRIP_FLOOR)),
        Line.of(
            id + "/floor-away",
            Stage.CONTAINERS,
            "Box " + box.id() + ": old floor carried away as treated wood",
            area.times(job.fact("mass.plywood-floor")),
            job.mass(),
            "inside floor x mass of the floor",
            Buy.of("treated-wood-away", BuildTask.STRIP_FLOOR)),
        Line.of(
            id + "/floor-new",
            Stage.CONTAINERS,
            "Box " + box.id() + ": new plywood floor",
            area,
            job.area(),
            "inside floor",
            Buy.of("floor-plywood", job.fact("waste.sheet"), BuildTask.STRIP_FLOOR),
            Labour.of("lay-plywood", BuildTask.STRIP_FLOOR)),
        Line.of(
            id + "/floor-screws",
            Stage.CONTAINERS,
            "Box " + box.id() + ": self-drilling screws of the floor",
            area.times(job.fact("shell.floor-screws")).roundedUp(),
            Unit.EACH,
            "inside floor x screws to the area",
            Buy.of("floor-screw", job.fact("waste.fixings"), BuildTask.STRIP_FLOOR)),
        Line.of(
            id + "/floor-sealer",
            Stage.CONTAINERS,
            "Box " + box.id() + ": sealer below and round the new floor",
            area.over(job.fact("paint.floor-sealer.coverage")),
            job.liquid(),
            "inside floor x one coat / coverage",
            Buy.of("floor-sealer", job.fact("waste.paint"), BuildTask.STRIP_FLOOR),
            Labour.of("roll-floor-sealer", BuildTask.STRIP_FLOOR)));
  }
}
