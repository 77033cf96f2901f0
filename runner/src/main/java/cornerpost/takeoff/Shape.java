package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.scope.Box;
import cornerpost.scope.Opening;
import cornerpost.scope.Wall;
import cornerpost.trace.Figure;
import java.util.List;

/** The geometry that many rules share. Outside faces unless it says inside. */
final class Shape {
  private final Job job;

  Shape(Job job) {
    this.job = job;
  }

  Figure length(Box box) {
    return box.fact(job.facts(), "length");
  }

  Figure width(Box box) {
    return box.fact(job.facts(), "width");
  }

  Figure height(Box box) {
    return box.fact(job.facts(), "height");
  }

  Figure insideLength(Box box) {
    return box.fact(job.facts(), "inside-length");
  }

  Figure insideWidth(Box box) {
    return box.fact(job.facts(), "inside-width");
  }

  Figure insideHeight(Box box) {
    return box.fact(job.facts(), "inside-height");
  }

  /** The length of a wall, or of the roof. */
  Figure run(Box box, Wall wall) {
    return switch (wall) {
      case LEFT, RIGHT, ROOF -> length(box);
      case DOOR_END, BLIND_END -> width(box);
    };
  }

  /** Width times height of the hole itself. */
  static Figure area(Opening opening) {
    return opening.width().times(opening.height());
  }

  static Figure perimeter(Opening opening) {
    return opening.width().plus(opening.height()).times(2);
  }

  static Figure area(List<Opening> openings) {
    return Figure.sum(Dimension.AREA, openings.stream().map(Shape::area).toList());
  }
}
