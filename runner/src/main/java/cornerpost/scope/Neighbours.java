package cornerpost.scope;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import java.util.List;

/**
 * Which boxes stand against which walls of one another: as they are joined, and where several are
 * joined in a row, by their places on the plot.
 */
public final class Neighbours {
  private final List<Box> boxes;

  /**
   * @param boxes those that say how they are joined
   */
  public Neighbours(List<Box> boxes) {
    this.boxes = List.copyOf(boxes);
  }

  /** Those joined to this one, in whatever way. */
  public List<Box> of(Box box) {
    return boxes.stream()
        .filter(b -> !b.id().equals(box.id()))
        .filter(
            b ->
                b.joint() != Joint.NONE && names(b, box)
                    || box.joint() != Joint.NONE && names(box, b))
        .toList();
  }

  /**
   * Where a passage in a wall leads: the one box joined on that pair of sides, or of several the
   * one whose place says that it stands there; through a roof, every box stacked on it.
   */
  public List<Box> behind(Box box, Wall wall) {
    var joined = joined(box, wall);
    return joined.size() <= 1 || wall == Wall.ROOF ? joined : against(box, wall);
  }

  /** Those whose place on the plot says that they stand against one of the four walls. */
  public List<Box> against(Box box, Wall wall) {
    boolean onward = wall == Wall.RIGHT || wall == Wall.BLIND_END;
    return joined(box, wall).stream()
        .filter(b -> onward ? away(box, b, wall) > 0 : away(box, b, wall) < 0)
        .toList();
  }

  /**
   * Whether one of them stands before some of an opening in a side or an end: a shorter box beside
   * a longer one leaves the rest of its wall open to the sky.
   */
  public boolean before(Box box, Opening opening, Facts facts) {
    var wall = opening.wall();
    return against(box, wall).stream()
        .anyMatch(
            b -> {
              if (!isSide(wall) || b.rotation().value().compareTo(box.rotation().value()) != 0) {
                return true;
              }
              double begin = forward(box, b);
              double end = begin + b.fact(facts, "length").asDouble(Unit.M);
              double near = opening.offset().asDouble(Unit.M);
              double far = near + opening.width().asDouble(Unit.M);
              return far > begin && near < end;
            });
  }

  private List<Box> joined(Box box, Wall wall) {
    if (wall == Wall.ROOF) {
      return of(box).stream().filter(b -> names(b, box) && b.joint() == Joint.STACKED).toList();
    }
    var joint = isSide(wall) ? Joint.SIDE_BY_SIDE : Joint.END_TO_END;
    return of(box).stream()
        .filter(b -> names(b, box) && b.joint() == joint || names(box, b) && box.joint() == joint)
        .toList();
  }

  /** How far the other lies across the box or along it, as the box is turned, in metres. */
  private static double away(Box box, Box other, Wall wall) {
    if (!isSide(wall)) return forward(box, other);
    double turn = Math.toRadians(-box.rotation().asDouble(Unit.ONE));
    double x = other.along().minus(box.along()).asDouble(Unit.M);
    double y = other.across().minus(box.across()).asDouble(Unit.M);
    return y * Math.cos(turn) - x * Math.sin(turn);
  }

  /** How far the other's door end lies beyond the box's own, as the box is turned, in metres. */
  private static double forward(Box box, Box other) {
    double turn = Math.toRadians(-box.rotation().asDouble(Unit.ONE));
    double x = other.along().minus(box.along()).asDouble(Unit.M);
    double y = other.across().minus(box.across()).asDouble(Unit.M);
    return x * Math.cos(turn) + y * Math.sin(turn);
  }

  private static boolean isSide(Wall wall) {
    return wall == Wall.LEFT || wall == Wall.RIGHT;
  }

  private static boolean names(Box box, Box to) {
    return box.joinedTo().filter(to.id()::equals).isPresent();
  }
}
