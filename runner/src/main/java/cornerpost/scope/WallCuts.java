package cornerpost.scope;

import cornerpost.fact.Facts;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * What is cut out of each wall of a box: what is entered there, and the passages that are entered
 * in the box standing against it, for a passage goes through the steel of both.
 */
public final class WallCuts {
  private final Scope scope;
  private final Facts facts;
  private final Neighbours neighbours;

  /**
   * A hole in one wall.
   *
   * @param offset from the corner that offsets of this wall are measured from to the near edge
   */
  public record Cut(Opening opening, Figure offset) {
    /** From the same corner to the far edge. */
    public Figure end() {
      return offset.plus(opening.width());
    }
  }

  public WallCuts(Scope scope, Facts facts) {
    this.scope = scope;
    this.facts = facts;
    this.neighbours = new Neighbours(scope.boxes());
  }

  /** Those entered in the wall first, then the passages that come out in it. */
  public List<Cut> in(Box box, Wall wall) {
    var cuts = new ArrayList<Cut>();
    for (var o : scope.openingsIn(box, wall)) cuts.add(new Cut(o, o.offset()));
    if (wall == Wall.ROOF) return cuts;
    for (var other : neighbours.behind(box, wall)) {
      // by its place it stands at the opposite wall, so that a passage there leads elsewhere
      if (neighbours.against(box, wall.facing()).contains(other)) continue;
      for (var o : scope.openingsIn(other, wall.facing())) {
        if (o.kind() != OpeningKind.PASS_THROUGH) continue;
        if (!neighbours.behind(other, o.wall()).contains(box)) continue;
        cuts.add(new Cut(o, comesOut(o, other, box)));
      }
    }
    return cuts;
  }

  /** Where an opening begins in the wall of this box, in which it is entered or comes out. */
  public Figure offsetIn(Opening opening, Box box) {
    if (opening.box().equals(box.id())) return opening.offset();
    return scope.box(opening.box()).map(b -> comesOut(opening, b, box)).orElse(opening.offset());
  }

  /**
   * Where a passage comes out: along the side as the two stand on the plot, at ends from the other
   * corner. Boxes that are turned are taken to begin together.
   */
  private Figure comesOut(Opening o, Box from, Box to) {
    if (o.wall() == Wall.DOOR_END || o.wall() == Wall.BLIND_END) {
      return to.fact(facts, "width").minus(o.offset()).minus(o.width()).atLeastZero();
    }
    boolean straight = from.rotation().value().signum() == 0 && to.rotation().value().signum() == 0;
    if (!straight || from.along().value().compareTo(to.along().value()) == 0) return o.offset();
    return o.offset().plus(from.along()).minus(to.along()).atLeastZero();
  }
}
