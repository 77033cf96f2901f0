package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.BLINDS;
import static cornerpost.takeoff.BuildTask.ELECTRICAL_SECOND;
import static cornerpost.takeoff.BuildTask.INNER_DOORS;
import static cornerpost.takeoff.BuildTask.SKIRTING;
import static cornerpost.takeoff.BuildTask.WARDROBE;

import cornerpost.measure.Unit;
import cornerpost.scope.DoorToNext;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.InnerDoor;
import cornerpost.scope.Joint;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Inner doors, stairs, casings, wardrobe, blinds and light fittings. */
final class Trim implements TakeoffRule {
  private static final Set<OpeningKind> WITH_BLINDS =
      EnumSet.of(OpeningKind.WINDOW, OpeningKind.GLAZED_DOOR, OpeningKind.SLIDING_DOOR);

  @Override
  public List<Line> measure(Job job) {
    var in = new Inside(job);
    var out = new Tally(Stage.FINISHES);
    doors(job, in, out);
    var finishes = job.scope().finishes();
    var trims = new ArrayList<Figure>();
    var sides = new ArrayList<Piece>();
    for (var box : job.scope().boxes()) {
      for (var o : in.openings(box)) {
        if (!Inside.isFramed(o)) continue;
        boolean walked = Inside.isWalkedThrough(o); // its sill is the floor
        trims.add(walked ? Shape.perimeter(o).minus(o.width()) : Shape.perimeter(o));
        sides.add(Piece.of(o.height(), 2, "opening " + o.id() + ", casing of the sides"));
        sides.add(
            Piece.of(
                o.width(),
                walked ? 1 : 2,
                "opening " + o.id() + (walked ? ", casing above" : ", casing above and below")));
      }
    }
    if (!trims.isEmpty()) {
      out.addCut(
          "trim/openings/casing",
          "Casing round windows and outside doors",
          Inside.lengths(trims),
          job.length(),
          "round of each opening, not below what is walked through",
          sides,
          Buy.of("casing", job.fact("waste.studs"), SKIRTING),
          Labour.of("fit-casing", SKIRTING));
    }
    if (!in.sleeping().isEmpty()) {
      out.add(
          "trim/house/wardrobe",
          "Wardrobe",
          finishes.figure(FinishesQuestions.WARDROBE),
          job.length(),
          "run as chosen, for the house",
          Buy.of("wardrobe", WARDROBE),
          Labour.of("fit-wardrobe", WARDROBE));
    }
    if (finishes.yes(FinishesQuestions.BLINDS)) blinds(job, in, out);
    stairs(job, out);
    out.add(
        "trim/house/light-fittings",
        "Light fittings",
        job.measured("electrical/house/lights"),
        Unit.EACH,
        "one for each light inside; hours are with the electrical work",
        Buy.of("light-fitting", ELECTRICAL_SECOND));
    return out.lines();
  }

  private static void doors(Job job, Inside in, Tally out) {
    var kind =
        job.scope()
            .finishes()
            .option(FinishesQuestions.INNER_DOORS, InnerDoor.class)
            .name()
            .toLowerCase(Locale.ROOT);
    var all = in.partitions().stream().filter(Inside.Partition::hasDoor).toList();
    if (all.isEmpty()) return;
    for (var door : List.of(DoorToNext.HINGED, DoorToNext.SLIDING, DoorToNext.POCKET)) {
      long count = all.stream().filter(p -> p.door() == door).count();
      if (count == 0) continue;
      var what = door.name().toLowerCase(Locale.ROOT);
      out.add(
          "inner-doors/" + what + "/leaves",
          "Inner doors, " + what + ", " + kind,
          Figure.count(count),
          Unit.EACH,
          "as in the list of rooms",
          Buy.of("inner-door-" + kind, INNER_DOORS),
          Buy.of("door-set-" + what, INNER_DOORS),
          Labour.of("hang-door-" + what, INNER_DOORS));
    }
    var width = job.fact("inner-door.opening-width");
    var height = job.fact("inner-door.opening-height");
    out.addCut(
        "inner-doors/all/architrave",
        "Architrave",
        width.plus(height.times(2)).times(2L * all.size()),
        job.length(),
        "both sides and head, both faces",
        List.of(
            Piece.of(height, 4L * all.size(), "architraves, sides"),
            Piece.of(width, 2L * all.size(), "architraves, heads")),
        Buy.of("casing", job.fact("waste.studs"), INNER_DOORS));
  }

  /** A box on top of another is reached by a stair inside. */
  private static void stairs(Job job, Tally out) {
    long upper = job.scope().boxes().stream().filter(b -> b.joint() == Joint.STACKED).count();
    if (upper == 0) return;
    out.add(
        "trim/house/stairs",
        "Stairs inside, with guard and handrail",
        Figure.count(upper),
        Unit.EACH,
        "one to each box that stands on another",
        Buy.of("inner-stair", INNER_DOORS),
        Labour.of("fit-inner-stair", INNER_DOORS));
  }

  private static void blinds(Job job, Inside in, Tally out) {
    var areas = new ArrayList<Figure>();
    for (var box : job.scope().boxes()) {
      for (var o : job.scope().openingsOf(box)) {
        if (WITH_BLINDS.contains(o.kind()) && Inside.WALLS.contains(o.wall())) {
          areas.add(Shape.area(o));
        }
      }
    }
    if (areas.isEmpty()) return;
    out.add(
        "trim/windows/blinds",
        "Blinds",
        Inside.areas(areas),
        job.area(),
        "width x height of windows and glazed doors",
        Buy.of("blind", BLINDS));
    out.add(
        "trim/windows/blinds-hung",
        "Blinds to hang",
        Figure.count(areas.size()),
        Unit.EACH,
        "one for each window and glazed door",
        Labour.of("hang-blind", BLINDS));
  }
}
