package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.Box;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.Joint;
import cornerpost.scope.RoofBuild;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * What is done on the roof: nothing, a coating, a metal over-roof on purlins, insulation with a
 * membrane, or a planted roof. Insulation above the roof goes by its thickness and is nothing where
 * that is nothing.
 */
final class RoofCover implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var kind = job.scope().deckAndRoof().option(DeckAndRoofQuestions.ROOF, RoofBuild.class);
    if (kind == RoofBuild.BARE) return List.of();
    var roof = job.measured("shell/roof-area");
    var lines = new ArrayList<Line>();
    lines.add(
        Line.of(
            "roof/prepared",
            Stage.OUTSIDE,
            "Roof washed, dents filled",
            roof,
            job.area(),
            "roof open to the sky",
            Labour.of("wash-roof", BuildTask.ROOF_PREPARE)));
    lines.addAll(
        switch (kind) {
          case BARE -> List.<Line>of();
          case COATING -> coating(job, roof);
          case OVER_ROOF -> overRoof(job, roof);
          case MEMBRANE -> membrane(job, roof);
          case GREEN -> planted(job, roof);
        });
    if (kind != RoofBuild.COATING) lines.addAll(insulation(job, roof));
    return lines;
  }

  private static List<Line> coating(Job job, Figure roof) {
    return List.of(
        Line.of(
            "roof/coating",
            Stage.OUTSIDE,
            "Roof coating",
            roof.times(job.fact("roof.coats")).over(job.fact("roof.coating.coverage")),
            job.liquid(),
            "area x coats / coverage",
            Buy.of("roof-coating", job.fact("waste.paint"), BuildTask.ROOF_COAT),
            Labour.of("roll-roof-coating", BuildTask.ROOF_COAT)));
  }

  private static List<Line> overRoof(Job job, Figure roof) {
    var edge = edge(job);
    var overhang = job.scope().deckAndRoof().figure(DeckAndRoofQuestions.OVERHANG);
    var plan = roof.plus(edge.times(overhang)).plus(overhang.times(overhang).times(4));
    var sheets =
        Line.of(
            "roof/sheets",
            Stage.OUTSIDE,
            "Roof sheets",
            plan.times(job.fact("roof.pitch-factor")),
            job.area(),
            "roof with its overhang all round, up the slope",
            Buy.of("roof-sheet", job.fact("waste.roof-sheet"), BuildTask.ROOF_SHEETS),
            Labour.of("lay-roof-sheet", BuildTask.ROOF_SHEETS));
    var lines = new ArrayList<Line>();
    lines.add(sheets);
    lines.addAll(new RoofFrame(job).lines());
    lines.add(
        Line.of(
            "roof/screws",
            Stage.OUTSIDE,
            "Screws with washers for roof sheets",
            sheets.named().times(job.fact("roof.screws")).roundedUp(),
            Unit.EACH,
            "area x screws to the area",
            Buy.of("roof-screw", job.fact("waste.fixings"), BuildTask.ROOF_SHEETS)));
    lines.add(
        Line.of(
            "roof/flashing",
            Stage.OUTSIDE,
            "Verge, eaves and ridge flashing",
            edge.plus(overhang.times(8)),
            job.length(),
            "round the edge of the roof with its overhang",
            Buy.of("roof-flashing", job.fact("waste.steel-sheet"), BuildTask.ROOF_SHEETS),
            Labour.of("fix-flashing", BuildTask.ROOF_SHEETS)));
    return lines;
  }

  private static List<Line> membrane(Job job, Figure roof) {
    return List.of(
        Line.of(
            "roof/membrane",
            Stage.OUTSIDE,
            "Roof membrane",
            roof,
            job.area(),
            "roof open to the sky; laps in the waste",
            Buy.of("roof-membrane", job.fact("waste.membrane"), BuildTask.ROOF_SHEETS),
            Labour.of("lay-roof-membrane", BuildTask.ROOF_SHEETS)),
        Line.of(
            "roof/adhesive",
            Stage.OUTSIDE,
            "Membrane adhesive",
            roof.over(job.fact("roof.adhesive.coverage")),
            job.liquid(),
            "area / coverage",
            Buy.of("membrane-adhesive", job.fact("waste.paint"), BuildTask.ROOF_SHEETS)),
        Line.of(
            "roof/flashing",
            Stage.OUTSIDE,
            "Edge trim of the roof",
            edge(job),
            job.length(),
            "round the edge of the roof",
            Buy.of("roof-edge-trim", job.fact("waste.steel-sheet"), BuildTask.ROOF_SHEETS),
            Labour.of("fix-flashing", BuildTask.ROOF_SHEETS)));
  }

  private static List<Line> planted(Job job, Figure roof) {
    var lines = new ArrayList<>(membrane(job, roof));
    lines.add(
        Line.of(
            "roof/root-barrier",
            Stage.OUTSIDE,
            "Root barrier, drainage layer and plants",
            roof,
            job.area(),
            "roof open to the sky",
            Buy.of("green-roof-layers", job.fact("waste.membrane"), BuildTask.ROOF_SHEETS),
            Labour.of("lay-green-roof", BuildTask.ROOF_SHEETS)));
    lines.add(
        Line.of(
            "roof/substrate",
            Stage.OUTSIDE,
            "Substrate of the planted roof",
            roof.times(job.fact("roof.substrate")),
            job.volume(),
            "area x thickness",
            Buy.of("roof-substrate", job.fact("waste.stone"), BuildTask.ROOF_SHEETS),
            Labour.of("spread-substrate", BuildTask.ROOF_SHEETS)));
    return lines;
  }

  private static List<Line> insulation(Job job, Figure roof) {
    var thickness = job.scope().deckAndRoof().figure(DeckAndRoofQuestions.ROOF_INSULATION);
    var area =
        Line.of(
            "roof/insulated",
            Stage.OUTSIDE,
            "Roof insulated above the steel",
            thickness.ifAtLeast(Figure.constant("1", Unit.MM), roof, Figure.zero(Dimension.AREA)),
            job.area(),
            "the roof where a thickness is entered",
            Labour.of("lay-roof-board", BuildTask.ROOF_INSULATION));
    return List.of(
        area,
        Line.of(
            "roof/insulation",
            Stage.OUTSIDE,
            "Insulation boards above the roof",
            area.named().times(thickness),
            job.volume(),
            "area x thickness",
            Buy.of(
                "roof-insulation", job.fact("waste.insulation-board"), BuildTask.ROOF_INSULATION)),
        Line.of(
            "roof/insulation-fixings",
            Stage.OUTSIDE,
            "Fixings of the boards above the roof",
            area.named().times(job.fact("roof.insulation-fixings")).roundedUp(),
            Unit.EACH,
            "area x fixings to the area",
            Buy.of("board-fixing", job.fact("waste.fixings"), BuildTask.ROOF_INSULATION)));
  }

  /** The edge of the roofs open to the sky: round each, less twice where they touch. */
  static Figure edge(Job job) {
    var shape = new Shape(job);
    var around = new ArrayList<Figure>();
    for (Box box : job.scope().boxes()) {
      if (shape.above(box).isEmpty()) {
        around.add(shape.length(box).plus(shape.width(box)).times(2));
      }
    }
    for (var pair : shape.pairs()) {
      if (!shape.above(pair.box()).isEmpty() || !shape.above(pair.other()).isEmpty()) continue;
      if (pair.joint() == Joint.SIDE_BY_SIDE) around.add(shape.touching(pair).times(-2));
      if (pair.joint() == Joint.END_TO_END) {
        around.add(shape.width(pair.box()).min(shape.width(pair.other())).times(-2));
      }
    }
    return Figure.sum(Dimension.LENGTH, around);
  }
}
