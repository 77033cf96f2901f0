package cornerpost.takeoff;

import cornerpost.measure.Unit;
import cornerpost.scope.Glazing;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.Stage;
import cornerpost.scope.Wall;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * What goes into the holes. A unit is priced for its area by glazing and for the piece by kind, so
 * that a wider window costs more without another price. Fixings at their spacing all round; sill
 * flashing or threshold below; vents and sleeves by the piece. A pass-through takes no unit.
 */
final class OpeningUnits implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var lines = new ArrayList<Line>();
    for (var opening : job.scope().openings()) {
      switch (opening.kind()) {
        case WINDOW, DOOR, GLAZED_DOOR, SLIDING_DOOR -> lines.addAll(unit(job, opening));
        case VENT -> lines.add(piece(opening, "vent with grille", "vent", "set-vent"));
        case SLEEVE ->
            lines.add(piece(opening, "service sleeve, sealed", "service-sleeve", "set-sleeve"));
        case PASS_THROUGH -> {}
      }
    }
    return lines;
  }

  private static List<Line> unit(Job job, Opening opening) {
    var id = "opening/" + opening.id();
    var name = "Opening " + opening.id() + ": ";
    var task = task(opening);
    var spacing = job.fact("frame.fixing-spacing");
    var window = opening.kind() == OpeningKind.WINDOW;
    return List.of(
        piece(
            opening,
            opening.kind().label() + pieceWords(opening),
            pieceItem(opening),
            set(opening)),
        Line.of(
            id + "/unit-area",
            Stage.SHELL,
            name + opening.kind().label() + ", glazing: " + opening.glazing().label(),
            job.measured(id + "/area"),
            job.area(),
            "area of the hole",
            Buy.of(areaItem(opening), task),
            Labour.of("carry-and-set-unit", task)),
        Line.of(
            id + "/unit-fixings",
            Stage.SHELL,
            name + "frame fixings",
            Shape.perimeter(opening).over(spacing).roundedUp().max(job.fact("frame.least-fixings")),
            Unit.EACH,
            "perimeter / spacing, not fewer than two a side",
            Buy.of("frame-fixing", job.fact("waste.fixings"), task)),
        Line.of(
            id + "/unit-sill",
            Stage.SHELL,
            name + (window ? "sill flashing" : "threshold"),
            opening.width(),
            job.length(),
            "width of the opening",
            Buy.of(window ? "sill-flashing" : "door-threshold", task)));
  }

  private static Line piece(Opening opening, String what, String item, String activity) {
    return Line.of(
        "opening/" + opening.id() + "/unit",
        Stage.SHELL,
        "Opening " + opening.id() + ": " + what,
        Figure.count(1),
        Unit.EACH,
        "the piece",
        Buy.of(item, task(opening)),
        Labour.of(activity, task(opening)));
  }

  static BuildTask task(Opening opening) {
    return switch (opening.kind()) {
      case DOOR, GLAZED_DOOR, SLIDING_DOOR -> BuildTask.SET_DOORS;
      case WINDOW, PASS_THROUGH, VENT, SLEEVE -> BuildTask.SET_WINDOWS;
    };
  }

  private static String pieceWords(Opening opening) {
    if (opening.kind() != OpeningKind.WINDOW) return ", frame, lock and gear";
    if (opening.wall() == Wall.ROOF) return " in the roof, with its kerb";
    return opening.opens() ? " that opens, frame and gear" : ", fixed, frame";
  }

  private static String pieceItem(Opening opening) {
    return switch (opening.kind()) {
      case WINDOW -> {
        if (opening.wall() == Wall.ROOF) yield "roof-window-piece";
        yield opening.opens() ? "window-opening-piece" : "window-fixed-piece";
      }
      case DOOR -> "door-piece";
      case GLAZED_DOOR -> "glazed-door-piece";
      case SLIDING_DOOR -> "sliding-door-piece";
      case PASS_THROUGH, VENT, SLEEVE ->
          throw new IllegalArgumentException(opening.kind() + " is no unit");
    };
  }

  /** A solid door has no glazing, whatever the column says. */
  private static String areaItem(Opening opening) {
    if (opening.kind() == OpeningKind.DOOR) return "door-area";
    var kind = opening.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
    return kind + "-area-" + glazing(opening.glazing());
  }

  private static String glazing(Glazing glazing) {
    return glazing.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static String set(Opening opening) {
    return switch (opening.kind()) {
      case WINDOW -> {
        if (opening.wall() == Wall.ROOF) yield "set-roof-window";
        yield opening.opens() ? "set-opening-window" : "set-fixed-window";
      }
      case DOOR -> "set-door";
      case GLAZED_DOOR -> "set-glazed-door";
      case SLIDING_DOOR -> "set-sliding-door";
      case PASS_THROUGH, VENT, SLEEVE ->
          throw new IllegalArgumentException(opening.kind() + " is no unit");
    };
  }
}
