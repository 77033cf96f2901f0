package cornerpost.report;

import cornerpost.measure.UnitSystem;
import cornerpost.plan.Plan;
import cornerpost.scope.Opening;
import cornerpost.scope.Wall;
import cornerpost.scope.WallCuts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The drawings of the house and the table of its openings. */
final class HouseSection {
  /** A drawing with its caption. */
  public record Figure(String id, String caption, boolean wide, Object svg) {}

  /** An opening as chosen. */
  public record OpeningRow(
      String id, String box, String wall, String kind, String size, String sill, String offset) {}

  private static final List<Wall> WALLS =
      List.of(Wall.RIGHT, Wall.LEFT, Wall.DOOR_END, Wall.BLIND_END);

  private final Plan plan;

  HouseSection(Plan plan) {
    this.plan = plan;
  }

  void into(Map<String, Object> model) {
    var scope = plan.scope();
    var boxes = Placed.all(scope, plan.facts());
    var plans = new ArrayList<Figure>();
    int levels = boxes.stream().mapToInt(Placed::level).max().orElse(-1) + 1;
    for (int level = 0; level < levels; level++) {
      int at = level;
      if (boxes.stream().noneMatch(b -> b.level() == at)) continue;
      var drawing = new FloorPlan(scope, boxes, level, stripWidth()).draw();
      plans.add(
          new Figure(
              "plan-figure-" + level,
              (levels > 1 ? "Level " + (level + 1) + ". " : "")
                  + "Prints at "
                  + drawing.scale()
                  + ".",
              true,
              PageModel.markup(drawing.svg())));
    }
    model.put("plans", plans);
    model.put("elevations", elevations(boxes));
    model.put("openings", scope.openings().stream().map(this::row).toList());
    model.put("sizeUnit", Words.sizeUnit(scope.units()));
    model.put("sizeWord", scope.units() == UnitSystem.METRIC ? "millimetres" : "inches");
  }

  /** Area over length of the strips, as measured. */
  private Optional<Double> stripWidth() {
    return measured("footing/strips/area")
        .flatMap(a -> measured("footing/strips/length").map(l -> a / l * 1000));
  }

  private Optional<Double> measured(String id) {
    return plan.lines().stream()
        .filter(l -> l.id().equals(id) && !l.quantity().isZero())
        .map(l -> l.quantity().value().doubleValue())
        .findFirst();
  }

  private List<Figure> elevations(List<Placed> boxes) {
    var all = new ArrayList<Figure>();
    var cuts = new WallCuts(plan.scope(), plan.facts());
    for (int b = 0; b < boxes.size(); b++) {
      for (var wall : WALLS) {
        var id = "wall-" + b + "-" + wall.ordinal();
        var e = new Elevation(plan.scope(), cuts, boxes.get(b), wall, id);
        var drawing = e.draw();
        all.add(
            new Figure(
                id + "-figure",
                e.title() + ", " + drawing.scale(),
                wall == Wall.LEFT || wall == Wall.RIGHT,
                PageModel.markup(drawing.svg())));
      }
    }
    return all;
  }

  private OpeningRow row(Opening o) {
    var units = plan.scope().units();
    return new OpeningRow(
        o.id(),
        o.box(),
        o.wall().label(),
        o.kind().label(),
        Words.size(o.width().value(), units) + " × " + Words.size(o.height().value(), units),
        Words.size(o.sill().value(), units),
        Words.length(o.offset().value(), units));
  }
}
