package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.Box;
import cornerpost.scope.Joint;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Supports and what each carries. A box stands on a row of supports along each long side, one at
 * each corner; a side's load is shared by length, so that an end support carries half of what one
 * between carries. Where two boxes touch they share the row, and each of its supports carries both.
 * A stacked box comes down on the corner castings of the box below.
 *
 * <p>Load by tributary length is common practice for a budget; an engineer settles the supports.
 */
final class Supports implements TakeoffRule {
  /** Supports that carry the same. */
  record Group(String id, String name, Figure count, Figure load) {}

  @Override
  public List<Line> measure(Job job) {
    var shape = new Shape(job);
    var groups = new ArrayList<Line>();
    for (var box : shape.onGround()) groups.addAll(ownRows(job, shape, box));
    for (var pair : shape.pairs()) groups.addAll(sharedRow(job, shape, pair));
    groups.add(
        of(
            "supports/count",
            "Supports in all",
            Figure.sum(
                Dimension.NONE,
                groups.stream().filter(l -> l.id().endsWith("/count")).map(Line::named).toList()),
            Unit.EACH,
            "all rows, shared ones once"));
    return groups;
  }

  /** The groups that the rule measured, as rows to point at. */
  static List<Group> groups(Job job) {
    return job.linesOf("supports/").stream()
        .filter(l -> l.id().endsWith("/count") && !l.id().equals("supports/count"))
        .map(
            l -> {
              var stem = l.id().substring(0, l.id().length() - "/count".length());
              var id = stem.substring("supports/".length());
              return new Group(id, l.description(), l.named(), job.measured(stem + "/load"));
            })
        .toList();
  }

  private static List<Line> ownRows(Job job, Shape shape, Box box) {
    var n = job.scope().site().figure(SiteQuestions.SUPPORTS_A_SIDE);
    var corners = new ArrayList<Figure>(List.of(Figure.count(4)));
    var between = new ArrayList<Figure>(List.of(n.minus(Figure.count(2)).times(2)));
    for (var pair : shape.pairs()) {
      if (!pair.box().equals(box) && !pair.other().equals(box)) continue;
      if (pair.joint() == Joint.STACKED) continue;
      corners.add(sharedCorners(job, shape, pair).times(-1));
      if (pair.joint() == Joint.SIDE_BY_SIDE) {
        between.add(sharedBetween(job, shape, pair).times(-1));
      }
    }
    var lines =
        new ArrayList<>(
            group(
                job,
                box.id() + "/corner",
                "Supports at corners of box " + box.id(),
                Figure.sum(Dimension.NONE, corners).atLeastZero(),
                cornerLoad(job, shape, box)));
    lines.addAll(
        group(
            job,
            box.id() + "/between",
            "Supports between corners of box " + box.id(),
            Figure.sum(Dimension.NONE, between).atLeastZero(),
            betweenLoad(job, box)));
    return lines;
  }

  private static List<Line> sharedRow(Job job, Shape shape, Shape.Pair pair) {
    if (pair.joint() == Joint.STACKED) return List.of();
    var box = pair.box();
    var other = pair.other();
    var both = box.id() + " and " + other.id();
    var corner =
        group(
            job,
            box.id() + "/shared-corner",
            "Corner supports shared by boxes " + both,
            sharedCorners(job, shape, pair),
            cornerLoad(job, shape, box).plus(cornerLoad(job, shape, other)));
    if (pair.joint() == Joint.END_TO_END) return corner;
    var lines = new ArrayList<>(corner);
    lines.addAll(
        group(
            job,
            box.id() + "/shared-between",
            "Supports between corners shared by boxes " + both,
            sharedBetween(job, shape, pair),
            betweenLoad(job, box).plus(betweenLoad(job, other))));
    return lines;
  }

  /** Supports of a row over the length where two boxes touch. */
  private static Figure shared(Job job, Shape shape, Shape.Pair pair) {
    var n = job.scope().site().figure(SiteQuestions.SUPPORTS_A_SIDE);
    var shorter = shape.length(pair.box()).min(shape.length(pair.other()));
    return n.times(shape.touching(pair)).over(shorter).roundedDown();
  }

  private static Figure sharedCorners(Job job, Shape shape, Shape.Pair pair) {
    if (pair.joint() == Joint.END_TO_END) return Figure.count(2);
    return shared(job, shape, pair).min(Figure.count(2));
  }

  private static Figure sharedBetween(Job job, Shape shape, Shape.Pair pair) {
    return shared(job, shape, pair).minus(sharedCorners(job, shape, pair));
  }

  /** A quarter of the box where there are supports at the corners only. */
  private static Figure cornerLoad(Job job, Shape shape, Box box) {
    var load = betweenLoad(job, box).over(2);
    for (var upper : shape.above(box)) {
      load = load.plus(job.measured("load/" + upper.id()).over(4));
    }
    return load;
  }

  private static Figure betweenLoad(Job job, Box box) {
    var bays = job.scope().site().figure(SiteQuestions.SUPPORTS_A_SIDE).minus(Figure.count(1));
    return job.measured("load/" + box.id()).over(2).over(bays);
  }

  private static List<Line> group(Job job, String id, String name, Figure count, Figure load) {
    return List.of(
        of(
            "supports/" + id + "/count",
            name,
            count,
            Unit.EACH,
            "a row along each long side; shared where boxes touch"),
        of(
            "supports/" + id + "/load",
            name + ": load on each",
            load,
            job.mass(),
            "the side's load by length: an end support carries half a bay"));
  }

  private static Line of(String id, String what, Figure quantity, Unit unit, String because) {
    return Line.of(id, Stage.FOUNDATION, what, quantity, unit, because);
  }
}
