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
 * Boxes of different length share those supports only that stand at the same place in both rows:
 * the one at the end where they begin together, and those of the longer box that fall on one of the
 * shorter. A stacked box comes down on the corner castings of the box below; one that is shorter,
 * on two of them and on supports between, where any may have to carry it.
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
        if (uneven(shape, pair)) {
          (box.equals(shorter(shape, pair)) ? corners : between)
              .add(sharedEnds(job, shape, pair).times(-1));
        }
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
            betweenLoad(job, shape, box)));
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
            betweenLoad(job, shape, box).plus(betweenLoad(job, shape, other))));
    if (!uneven(shape, pair)) return lines;
    var shorter = shorter(shape, pair);
    var longer = shorter.equals(box) ? other : box;
    lines.addAll(
        group(
            job,
            box.id() + "/shared-end",
            "Corner of box " + shorter.id() + " on a support between corners of " + longer.id(),
            sharedEnds(job, shape, pair),
            cornerLoad(job, shape, shorter).plus(betweenLoad(job, shape, longer))));
    return lines;
  }

  /** Supports of a row over the length where two boxes touch. */
  private static Figure shared(Job job, Shape shape, Shape.Pair pair) {
    var n = job.scope().site().figure(SiteQuestions.SUPPORTS_A_SIDE);
    if (uneven(shape, pair)) return met(job, shape, pair, TOLERANCE).plus(Figure.count(1));
    return n.times(shape.touching(pair)).over(shape.length(pair.box())).roundedDown();
  }

  private static Figure sharedCorners(Job job, Shape shape, Shape.Pair pair) {
    if (pair.joint() == Joint.END_TO_END) return Figure.count(2);
    if (uneven(shape, pair)) return Figure.count(1);
    return shared(job, shape, pair).min(Figure.count(2));
  }

  private static Figure sharedBetween(Job job, Shape shape, Shape.Pair pair) {
    var rest = shared(job, shape, pair).minus(sharedCorners(job, shape, pair));
    return uneven(shape, pair) ? rest.minus(sharedEnds(job, shape, pair)) : rest;
  }

  // ---- boxes of different length --------------------------------------------------------------

  /** How far apart two supports may stand to be one, as a share of a bay of the longer box. */
  private static final Figure TOLERANCE = Figure.constant("0.1", Unit.ONE);

  private static boolean uneven(Shape shape, Shape.Pair pair) {
    return pair.joint() == Joint.SIDE_BY_SIDE
        && shape.length(pair.box()).value().compareTo(shape.length(pair.other()).value()) != 0;
  }

  private static Box shorter(Shape shape, Shape.Pair pair) {
    boolean first =
        shape.length(pair.box()).value().compareTo(shape.length(pair.other()).value()) < 0;
    return first ? pair.box() : pair.other();
  }

  /**
   * How many bays of the longer box end within the shorter one, that much further allowed; none
   * where the bays of the two do not meet, as the one is no whole number of times as long.
   */
  private static Figure met(Job job, Shape shape, Shape.Pair pair, Figure further) {
    var less = shape.length(shorter(shape, pair));
    var more = shape.length(pair.box()).max(shape.length(pair.other()));
    double times = more.value().doubleValue() / less.value().doubleValue();
    if (Math.abs(times - Math.rint(times)) > 0.1) return Figure.count(0);
    var bays = job.scope().site().figure(SiteQuestions.SUPPORTS_A_SIDE).minus(Figure.count(1));
    return bays.times(less).over(more).plus(further).roundedDown();
  }

  /** Whether the shorter box ends at a support of the longer one: 1, else 0. */
  private static Figure sharedEnds(Job job, Shape shape, Shape.Pair pair) {
    return met(job, shape, pair, TOLERANCE).minus(met(job, shape, pair, TOLERANCE.times(-1)));
  }

  // ---- what they carry ------------------------------------------------------------------------

  /** A quarter of the box where there are supports at the corners only. */
  private static Figure cornerLoad(Job job, Shape shape, Box box) {
    var load = bay(job, box).over(2);
    for (var upper : shape.above(box)) load = load.plus(quarter(job, upper));
    return load;
  }

  private static Figure betweenLoad(Job job, Shape shape, Box box) {
    var load = bay(job, box);
    for (var upper : shape.above(box)) {
      boolean within = shape.length(upper).value().compareTo(shape.length(box).value()) < 0;
      if (within) load = load.plus(quarter(job, upper));
    }
    return load;
  }

  private static Figure quarter(Job job, Box upper) {
    return job.measured("load/" + upper.id()).over(4);
  }

  /** What rests on the length from one support of a side to the next. */
  private static Figure bay(Job job, Box box) {
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
