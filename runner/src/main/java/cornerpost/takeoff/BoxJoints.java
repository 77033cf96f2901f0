package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.Joint;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Two boxes made one: plates welded over the seam, foam in the gap, flashing over roof and walls,
 * sealant on both edges. The seam runs over the roof, down both ends and under the floor; end to
 * end it runs once round the box; stacked, once round where the boxes touch. The hole in the two
 * walls is measured with the pass-through.
 */
final class BoxJoints implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var lines = new ArrayList<Line>();
    for (var pair : new Shape(job).pairs()) lines.addAll(lines(job, pair));
    return lines;
  }

  private static List<Line> lines(Job job, Shape.Pair pair) {
    var shape = new Shape(job);
    var height = shape.height(pair.box()).min(shape.height(pair.other()));
    var width = shape.width(pair.box()).min(shape.width(pair.other()));
    var touching = shape.touching(pair);
    var id = "joint/" + pair.box().id() + "-" + pair.other().id();
    var name = "Joint of boxes " + pair.box().id() + " and " + pair.other().id() + ": ";
    var open =
        switch (pair.joint()) {
          case SIDE_BY_SIDE -> touching.plus(height.times(2));
          case END_TO_END -> width.plus(height.times(2));
          case STACKED -> touching.plus(width).times(2);
          case NONE -> Figure.zero(Dimension.LENGTH);
        };
    var below =
        switch (pair.joint()) {
          case SIDE_BY_SIDE -> touching;
          case END_TO_END -> width;
          case STACKED, NONE -> Figure.zero(Dimension.LENGTH);
        };
    var seam =
        Line.of(
                id + "/seam",
                Stage.CONTAINERS,
                name + "seam plated and stitched",
                open.plus(below),
                job.length(),
                pair.joint() == Joint.STACKED
                    ? "once round where the boxes touch"
                    : "over the roof, down both sides and under the floor",
                Buy.of("joint-plate", job.fact("waste.steel-section"), BuildTask.JOIN_BOXES),
                Labour.of("join-boxes", BuildTask.JOIN_BOXES))
            .cutAs(plates(pair.joint(), name, touching, width, height));
    var outside =
        Line.of(
            id + "/flashing",
            Stage.CONTAINERS,
            name + "flashing free to move",
            open,
            job.length(),
            "the seam but for its part under the floor",
            Buy.of("joint-flashing", job.fact("waste.steel-sheet"), BuildTask.SEAL_JOINTS),
            Buy.of("joint-foam", job.fact("waste.sealant"), BuildTask.SEAL_JOINTS),
            Labour.of("seal-joint", BuildTask.SEAL_JOINTS));
    return List.of(
        seam,
        outside,
        wire(job, id, name, seam.named()),
        Line.of(
            id + "/sealant",
            Stage.CONTAINERS,
            name + "sealant on both edges of the flashing",
            outside
                .named()
                .times(2)
                .times(job.fact("sealant.width"))
                .times(job.fact("sealant.depth")),
            Unit.ML,
            "length x two beads x width x depth",
            Buy.of("sealant", job.fact("waste.sealant"), BuildTask.SEAL_JOINTS)),
        Line.of(
            id + "/primer",
            Stage.CONTAINERS,
            name + "primer on the plates",
            seam.named()
                .times(job.fact("edge.primed-width"))
                .times(job.fact("edge.primer-coats"))
                .over(job.fact("paint.steel-primer.coverage")),
            job.liquid(),
            "length x width x coats / coverage",
            Buy.of("steel-primer", job.fact("waste.paint"), BuildTask.JOIN_BOXES)));
  }

  /** A plate along each side of the seam; one longer than the bar is joined with a butt weld. */
  private static List<Piece> plates(
      Joint joint, String name, Figure touching, Figure width, Figure height) {
    return switch (joint) {
      case SIDE_BY_SIDE ->
          List.of(
              Piece.of(touching, 2, name + "plates over and under"),
              Piece.of(height, 2, name + "plates down both ends"));
      case END_TO_END ->
          List.of(
              Piece.of(width, 2, name + "plates over and under"),
              Piece.of(height, 2, name + "plates down both sides"));
      case STACKED ->
          List.of(
              Piece.of(touching, 2, name + "plates along the sides"),
              Piece.of(width, 2, name + "plates across the ends"));
      case NONE -> List.of();
    };
  }

  /** Both edges of the plate, stitched. */
  private static Line wire(Job job, String id, String name, Figure seam) {
    return Line.of(
        id + "/welding-wire",
        Stage.CONTAINERS,
        name + "welding wire",
        Welds.wire(job, seam.times(2).times(job.fact("weld.inside-share"))),
        job.mass(),
        "two edges stitched; fillet section x density, convexity, deposited share",
        Buy.of("welding-wire", job.fact("waste.weld-wire"), BuildTask.JOIN_BOXES));
  }
}
