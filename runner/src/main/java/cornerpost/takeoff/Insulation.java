package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.CEILING_INSULATION;
import static cornerpost.takeoff.BuildTask.UNDERFLOOR_INSULATION;
import static cornerpost.takeoff.BuildTask.WALL_INSULATION;

import cornerpost.measure.Unit;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.InsulationMaterial;
import cornerpost.scope.Question;
import cornerpost.scope.Stage;
import cornerpost.scope.Wall;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Insulation inside the walls, at the ceiling and under the floor: net area x thickness, by volume,
 * so that a thickness may change without another item. Areas are projected ones: the corrugation is
 * filled by the foam's own yield. Batts are named by the stud spacing they fill and cover the whole
 * bay, so that studs are not taken off (F. R. Dagostino and S. J. Peterson, Estimating in Building
 * Construction, ch. 14: a 15 in batt at 16 in spacing covers 1.33 sq ft a foot).
 */
final class Insulation implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var in = new Inside(job);
    var out = new Tally(Stage.INSULATION);
    var shape = new Shape(job);
    var ceilings = new ArrayList<Figure>();
    var floors = new ArrayList<Figure>();
    for (var box : job.scope().boxes()) {
      var plan = shape.insideLength(box).times(shape.insideWidth(box));
      floors.add(plan);
      var roof = job.scope().openingsIn(box, Wall.ROOF);
      ceilings.add(roof.isEmpty() ? plan : plan.minus(Shape.area(roof)).atLeastZero());
    }
    boolean foam = false;
    if (in.insulatedInside()) {
      var material = material(job, EnvelopeQuestions.INSIDE);
      foam |= isFoam(material);
      layer(
          job,
          out,
          "walls",
          "Wall insulation inside",
          in.coldSteelFace(),
          "inside face of the steel, net of openings and of walls where boxes touch",
          material,
          EnvelopeQuestions.INSIDE_THICKNESS,
          WALL_INSULATION);
    }
    var ceiling = in.ceilingInsulation();
    if (ceiling != InsulationMaterial.NONE) {
      foam |= isFoam(ceiling);
      layer(
          job,
          out,
          "ceiling",
          "Ceiling insulation",
          Inside.areas(ceilings),
          "inside length x width, net of roof openings",
          ceiling,
          EnvelopeQuestions.CEILING_THICKNESS,
          CEILING_INSULATION);
    }
    var floor = material(job, EnvelopeQuestions.UNDERFLOOR);
    if (floor != InsulationMaterial.NONE) {
      foam |= isFoam(floor);
      var area =
          layer(
              job,
              out,
              "underfloor",
              "Underfloor insulation",
              Inside.areas(floors),
              "inside length x width, between the cross members from below",
              floor,
              EnvelopeQuestions.UNDERFLOOR_THICKNESS,
              UNDERFLOOR_INSULATION);
      if (!isFoam(floor)) {
        out.add(
            "insulation/underfloor/netting",
            "Netting that holds the insulation under the floor",
            area,
            job.area(),
            "area of the underfloor insulation",
            Buy.of("underfloor-netting", job.fact("waste.membrane"), UNDERFLOOR_INSULATION));
      }
    }
    if (foam) {
      out.add(
          "insulation/house/foam-protection",
          "Protection for those who spray foam",
          Figure.count(1),
          Unit.EACH,
          "isocyanates sensitise: supplied air, full cover, nobody else inside (29 CFR 1910.1000)",
          Buy.of("foam-protection", WALL_INSULATION));
    }
    return out.lines();
  }

  private static InsulationMaterial material(Job job, Question question) {
    return job.scope().envelope().option(question, InsulationMaterial.class);
  }

  static boolean isFoam(InsulationMaterial material) {
    return material == InsulationMaterial.CLOSED_CELL || material == InsulationMaterial.OPEN_CELL;
  }

  static boolean isBatt(InsulationMaterial material) {
    return switch (material) {
      case MINERAL_WOOL, WOOD_FIBRE, SHEEP_WOOL -> true;
      case NONE, CLOSED_CELL, OPEN_CELL, EPS, XPS, PIR -> false;
    };
  }

  private static Figure layer(
      Job job,
      Tally out,
      String where,
      String name,
      Figure area,
      String because,
      InsulationMaterial material,
      Question thickness,
      BuildTask task) {
    var id = "insulation/" + where + "/";
    var fitted =
        isFoam(material)
            ? Optional.<Resource>empty()
            : Optional.<Resource>of(
                Labour.of(isBatt(material) ? "fit-batts" : "fit-rigid-board", task));
    var measured =
        out.add(
            id + "area",
            name + ", area",
            area,
            job.area(),
            because,
            fitted.stream().toArray(Resource[]::new));
    var buy = Buy.of(Materials.insulation(material), waste(job, material), task);
    var resources =
        isFoam(material)
            ? new Resource[] {buy, Labour.of("spray-foam", task)}
            : new Resource[] {buy};
    out.add(
        id + "volume",
        name + ", " + material.label(),
        measured.times(job.scope().envelope().figure(thickness)),
        job.scope().units().choose(Unit.M3, Unit.BOARD_FOOT),
        "area x thickness",
        resources);
    return measured;
  }

  /** Foam gives less than its nominal yield; the rest is cutting waste. */
  private static Figure waste(Job job, InsulationMaterial material) {
    if (isFoam(material)) {
      return Figure.count(1).over(job.fact("foam.real-yield")).minus(Figure.count(1));
    }
    return job.fact(isBatt(material) ? "waste.batts" : "waste.insulation-board");
  }
}
