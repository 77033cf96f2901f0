package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.scope.Box;
import cornerpost.scope.Foundation;
import cornerpost.scope.Joint;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.SoilClass;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Levels and shared lines of all foundations. */
final class FoundationShape {
  private final Job job;
  private final Shape shape;

  FoundationShape(Job job) {
    this.job = job;
    this.shape = new Shape(job);
  }

  static boolean is(Job job, Foundation kind) {
    return job.scope().site().option(SiteQuestions.FOUNDATION, Foundation.class) == kind;
  }

  Figure bearing() {
    var soil = job.scope().site().option(SiteQuestions.SOIL, SoilClass.class);
    return job.fact(soil.factId() + ".bearing");
  }

  /** Underside of a footing below the ground: below frost, and not less than the code's least. */
  Figure depth() {
    return job.scope()
        .site()
        .figure(SiteQuestions.FROST_DEPTH)
        .max(job.fact("footing.least-depth"));
  }

  /**
   * From the ground to the underside of the corner castings, on average: the ground is taken to
   * fall along the boxes, and the floor height to be entered at its high end.
   */
  Figure underBoxes() {
    var site = job.scope().site();
    var longest = shape.onGround().stream().map(shape::length).reduce(Figure::max).orElseThrow();
    return site.figure(SiteQuestions.FLOOR_HEIGHT)
        .minus(shape.floorDepth())
        .atLeastZero()
        .plus(site.figure(SiteQuestions.SLOPE).times(longest).over(2));
  }

  /** Something of every group of supports, added up. */
  Figure overSupports(Dimension dimension, Function<Supports.Group, Figure> each) {
    return Figure.sum(
        dimension, Supports.groups(job).stream().map(g -> g.count().times(each.apply(g))).toList());
  }

  /** Outside length of the rows along the boxes' long sides; a shared row once. */
  Figure rows() {
    var lengths =
        new ArrayList<>(shape.onGround().stream().map(b -> shape.length(b).times(2)).toList());
    for (var pair : shape.pairs()) {
      if (pair.joint() == Joint.SIDE_BY_SIDE) {
        lengths.add(shape.touching(pair).times(-1));
      }
    }
    return Figure.sum(Dimension.LENGTH, lengths);
  }

  /** A long side on the ground, or several that carry the same: its length, the load of a metre. */
  record Row(String id, String name, Figure length, Figure load) {}

  /** The long sides of each box, and those that two boxes share. */
  List<Row> loadedRows() {
    var rows = new ArrayList<Row>();
    for (var box : shape.onGround()) {
      var own = shape.length(box).times(2);
      for (var pair : shape.pairs()) {
        if (pair.joint() == Joint.SIDE_BY_SIDE
            && (pair.box().equals(box) || pair.other().equals(box))) {
          own = own.minus(shape.touching(pair));
        }
      }
      rows.add(
          new Row(
              box.id() + "/side",
              "long sides of box " + box.id(),
              own.atLeastZero(),
              metreLoad(box)));
    }
    for (var pair : shape.pairs()) {
      if (pair.joint() != Joint.SIDE_BY_SIDE) continue;
      rows.add(
          new Row(
              pair.box().id() + "/shared-side",
              "side shared by boxes " + pair.box().id() + " and " + pair.other().id(),
              shape.touching(pair),
              metreLoad(pair.box()).plus(metreLoad(pair.other()))));
    }
    return rows;
  }

  /** Mass on a metre of one long side, with what is stacked on the box. */
  private Figure metreLoad(Box box) {
    var load = job.measured("load/" + box.id());
    for (var upper : shape.above(box)) load = load.plus(job.measured("load/" + upper.id()));
    return load.over(shape.length(box).times(2));
  }

  /** Plan area of the boxes on the ground. */
  Figure plan() {
    return Figure.sum(Dimension.AREA, shape.onGround().stream().map(shape::planArea).toList());
  }

  Line excavation(Figure volume, String because) {
    return Line.of(
        "foundation/excavation",
        Stage.FOUNDATION,
        "Foundation dug",
        volume,
        job.volume(),
        because,
        Earthworks.digging(job, BuildTask.EXCAVATE));
  }

  Line bed(Figure volume, String because) {
    return Line.of(
        "foundation/stone-bed",
        Stage.FOUNDATION,
        "Compacted stone below the foundation",
        volume,
        job.volume(),
        because,
        Buy.of("crushed-stone", job.fact("waste.stone"), BuildTask.EXCAVATE),
        Labour.of("lay-stone-bed", BuildTask.EXCAVATE));
  }

  /** {@code activity} is the hours of making and setting: piers and edges, or walls. */
  Line formwork(String id, String what, Figure area, String because, String activity) {
    return Line.of(
        id,
        Stage.FOUNDATION,
        what,
        area,
        job.area(),
        because,
        Buy.of("formwork", job.fact("waste.timber"), BuildTask.FORMWORK),
        Labour.of(activity, BuildTask.FORMWORK),
        Labour.of("strip-formwork", BuildTask.STRIP_FORMS));
  }

  Line reinforcement(String id, String what, Figure mass, String because) {
    return Line.of(
        id,
        Stage.FOUNDATION,
        what,
        mass,
        job.mass(),
        because,
        Buy.of("rebar", job.fact("waste.reinforcement"), BuildTask.REINFORCE),
        Labour.of("fix-rebar", BuildTask.REINFORCE));
  }

  Line mesh(Figure area, String because) {
    return Line.of(
        "footing/mesh",
        Stage.FOUNDATION,
        "Mesh reinforcement",
        area,
        job.area(),
        because,
        Buy.of("mesh", job.fact("mesh.lap"), BuildTask.REINFORCE),
        Labour.of("fix-mesh", BuildTask.REINFORCE));
  }

  /** What goes back round the foundation, and what is left over. */
  List<Line> backfill(Figure dug, Figure filled) {
    var back =
        Line.of(
            "foundation/backfill",
            Stage.FOUNDATION,
            "Backfilled and compacted",
            dug.minus(filled).atLeastZero(),
            job.volume(),
            "dug less what the foundation takes up",
            Earthworks.filling(job, BuildTask.BACKFILL));
    return List.of(
        back,
        Line.of(
            "foundation/spoil",
            Stage.FOUNDATION,
            "Spoil carried away, loosened",
            dug.minus(back.named()).times(Figure.count(1).plus(job.fact("earth.bulking"))),
            job.volume(),
            "dug less backfilled, with bulking",
            Buy.of("spoil-away", BuildTask.BACKFILL)));
  }
}
