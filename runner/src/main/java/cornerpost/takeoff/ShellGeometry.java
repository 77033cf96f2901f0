package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.Stage;
import cornerpost.scope.Wall;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Areas of the shell that other rules build on. Walls where two boxes touch are no outside walls.
 * Steel and paint go by the area along the corrugation, boards by the projected area.
 */
final class ShellGeometry implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var shape = new Shape(job);
    var boxes = job.scope().boxes();
    var floors = new ArrayList<Figure>();
    var plans = new ArrayList<Figure>();
    var gross = new ArrayList<Figure>();
    var along = new ArrayList<Figure>();
    var openings = new ArrayList<Figure>();
    var openingsAlong = new ArrayList<Figure>();
    var outline = new ArrayList<Figure>();
    var roofs = new ArrayList<Figure>();
    for (var box : boxes) {
      floors.add(shape.floorArea(box));
      plans.add(shape.planArea(box));
      roofs.add(shape.planArea(box));
      for (var wall : Shape.WALLS) {
        gross.add(shape.wallArea(box, wall));
        along.add(shape.wallArea(box, wall).times(shape.developed(wall)));
        var units = shape.unitsIn(box, wall);
        if (units.isEmpty()) continue;
        openings.add(shape.measuredArea(units));
        openingsAlong.add(shape.measuredArea(units).times(shape.developed(wall)));
      }
      var inRoof = shape.unitsIn(box, Wall.ROOF);
      if (!inRoof.isEmpty()) roofs.add(shape.measuredArea(inRoof).times(-1));
    }
    for (var box : shape.onGround()) {
      outline.add(shape.length(box).plus(shape.width(box)).times(2));
    }
    for (var pair : shape.pairs()) {
      var height = shape.height(pair.box()).min(shape.height(pair.other()));
      var width = shape.width(pair.box()).min(shape.width(pair.other()));
      var touching = shape.touching(pair);
      switch (pair.joint()) {
        case SIDE_BY_SIDE -> {
          gross.add(touching.times(height).times(-2));
          along.add(touching.times(height).times(-2).times(shape.developed(Wall.LEFT)));
          outline.add(touching.times(-2));
        }
        case END_TO_END -> {
          gross.add(width.times(height).times(-2));
          // in line they face the same way: one blind end meets one door end
          along.add(width.times(height).times(-1).times(shape.developed(Wall.BLIND_END)));
          along.add(width.times(height).times(-1).times(shape.developed(Wall.DOOR_END)));
          outline.add(width.times(-2));
        }
        case STACKED -> roofs.add(touching.times(width).times(-1));
        case NONE -> {}
      }
    }
    var area = job.area();
    var wall = Figure.sum(Dimension.AREA, gross);
    var holes = Figure.sum(Dimension.AREA, openings);
    return List.of(
        of(
            "shell/floor-area",
            "Inside floor of all boxes",
            Figure.sum(Dimension.AREA, floors),
            area,
            "inside length x inside width of each box"),
        of(
            "shell/plan-area",
            "Plan of all boxes, outside",
            Figure.sum(Dimension.AREA, plans),
            area,
            "length x width of each box"),
        of(
            "shell/outline",
            "Outline of the boxes on the ground",
            Figure.sum(Dimension.LENGTH, outline),
            job.length(),
            "perimeters of the boxes less twice the length where they touch"),
        of(
            "shell/outside-wall-gross",
            "Outside walls, openings not taken off",
            wall,
            area,
            "length x height of the four walls of each box, less walls where boxes touch"),
        of(
            "shell/opening-area",
            "Windows and doors in the outside walls",
            holes,
            area,
            "width x height; vents and sleeves are not taken off"),
        of(
            "shell/outside-wall-area",
            "Outside walls net of windows and doors, projected",
            wall.minus(holes),
            area,
            "gross area less windows and doors"),
        of(
            "shell/outside-wall-developed",
            "Outside walls net of windows and doors, along the corrugation",
            Figure.sum(Dimension.AREA, along).minus(Figure.sum(Dimension.AREA, openingsAlong)),
            area,
            "each wall net x its developed length; the door end is taken flat"),
        of(
            "shell/roof-area",
            "Roof open to the sky, net of roof windows",
            Figure.sum(Dimension.AREA, roofs),
            area,
            "length x width of each box less roof windows and what a stacked box covers"));
  }

  private static Line of(String id, String what, Figure quantity, Unit unit, String because) {
    return Line.of(id, Stage.SHELL, what, quantity, unit, because);
  }
}
