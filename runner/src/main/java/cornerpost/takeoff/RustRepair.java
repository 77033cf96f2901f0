package cornerpost.takeoff;

import cornerpost.scope.Box;
import cornerpost.scope.Stage;
import cornerpost.scope.Wall;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Rust ground out, patched and primed; the whole outside blasted and primed where the condition
 * asks for it; the underside sealed anew. By shares of the developed area for each condition, which
 * the inspection of the box replaces. A factory-new box needs none of it.
 */
final class RustRepair implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var lines = new ArrayList<Line>();
    for (var box : job.scope().boxes()) lines.addAll(lines(job, new Shape(job), box));
    return lines;
  }

  private static List<Line> lines(Job job, Shape shape, Box box) {
    var stem = "rust." + BoxPurchase.condition(box.condition()) + ".";
    var outside = shape.wallArea(box, Wall.ROOF).times(shape.developed(Wall.ROOF));
    for (var wall : Shape.WALLS) {
      outside = outside.plus(shape.wallArea(box, wall).times(shape.developed(wall)));
    }
    var id = "box/" + box.id();
    var name = "Box " + box.id() + ": ";
    var steel =
        Line.of(
            id + "/steel-area",
            Stage.CONTAINERS,
            name + "outside of walls and roof, along the corrugation",
            outside,
            job.area(),
            "each wall x its developed length, and the roof");
    var spot =
        Line.of(
            id + "/rust",
            Stage.CONTAINERS,
            name + "rust ground out, patched and primed",
            steel.named().times(job.fact(stem + "spot")),
            job.area(),
            "share of the outside steel by condition",
            Buy.of("rust-patch", BuildTask.RUST_REPAIR),
            Labour.of("repair-rust", BuildTask.RUST_REPAIR));
    var blast =
        Line.of(
            id + "/blasting",
            Stage.CONTAINERS,
            name + "blasted",
            steel.named().times(job.fact(stem + "blast")),
            job.area(),
            "share of the outside steel by condition",
            Buy.of("blasting", BuildTask.RUST_REPAIR));
    return List.of(
        steel,
        spot,
        blast,
        primer(job, id, name, spot.named().plus(blast.named())),
        underside(job, shape, box, stem));
  }

  private static Line primer(Job job, String id, String name, Figure area) {
    return Line.of(
        id + "/rust-primer",
        Stage.CONTAINERS,
        name + "primer on repaired and blasted steel",
        area.over(job.fact("paint.steel-primer.coverage")).times(job.fact("edge.primer-coats")),
        job.liquid(),
        "area / coverage x coats",
        Buy.of("steel-primer", job.fact("waste.paint"), BuildTask.RUST_REPAIR),
        Labour.of("brush-primer", BuildTask.RUST_REPAIR));
  }

  private static Line underside(Job job, Shape shape, Box box, String stem) {
    return Line.of(
        "box/" + box.id() + "/underseal",
        Stage.CONTAINERS,
        "Box " + box.id() + ": underside sealed anew",
        shape
            .planArea(box)
            .times(job.fact(stem + "underside"))
            .over(job.fact("paint.underseal.coverage")),
        job.liquid(),
        "plan area x share by condition / coverage",
        Buy.of("underseal", job.fact("waste.paint"), BuildTask.RUST_REPAIR),
        Labour.of("brush-underseal", BuildTask.RUST_REPAIR));
  }
}
