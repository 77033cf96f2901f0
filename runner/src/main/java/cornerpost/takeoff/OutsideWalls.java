package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.Cladding;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.InsulationMaterial;
import cornerpost.scope.InsulationSide;
import cornerpost.scope.Opening;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * The outside face of the walls: paint on the steel by the area along the corrugation, cladding on
 * battens by the projected area, both net of windows and doors; insulation boards outside where
 * they are chosen. What is clad is not painted.
 */
final class OutsideWalls implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var chosen = job.scope().deckAndRoof().option(DeckAndRoofQuestions.CLADDING, Cladding.class);
    var lines = new ArrayList<Line>();
    lines.addAll(insulation(job));
    if (chosen != Cladding.PAINT) lines.addAll(cladding(job, chosen));
    lines.addAll(paint(job, chosen));
    return lines;
  }

  private static List<Line> paint(Job job, Cladding chosen) {
    var steel = job.measured("shell/outside-wall-developed");
    var bare = Figure.count(1).minus(share(job));
    var area =
        Line.of(
            "walls/painted",
            Stage.OUTSIDE,
            "Outside walls to paint, along the corrugation",
            chosen == Cladding.PAINT ? steel : steel.times(bare),
            job.area(),
            "net area along the corrugation" + (chosen == Cladding.PAINT ? "" : ", share not clad"),
            Labour.of("prepare-outside-wall", BuildTask.WALL_PREPARE));
    var coats =
        Line.of(
            "walls/paint-coats",
            Stage.OUTSIDE,
            "Outside walls, coats of paint",
            area.named().times(job.scope().envelope().figure(EnvelopeQuestions.SHELL_COATS)),
            job.area(),
            "area x coats",
            Labour.of("paint-outside-wall", BuildTask.WALL_PAINT));
    return List.of(
        area,
        coats,
        Line.of(
            "walls/detergent",
            Stage.OUTSIDE,
            "Detergent and abrasive for the outside walls",
            area.named().over(job.fact("wall.wash")),
            job.liquid(),
            "area / coverage",
            Buy.of("steel-cleaner", BuildTask.WALL_PREPARE)),
        Line.of(
            "walls/paint",
            Stage.OUTSIDE,
            "Outside paint",
            coats.named().over(job.fact("paint.shell.coverage")),
            job.liquid(),
            "area x coats / coverage",
            Buy.of("shell-paint", job.fact("waste.paint"), BuildTask.WALL_PAINT)));
  }

  private static Figure share(Job job) {
    return job.scope().deckAndRoof().figure(DeckAndRoofQuestions.CLAD_SHARE);
  }

  private static List<Line> cladding(Job job, Cladding chosen) {
    var kind =
        switch (chosen) {
          case TIMBER -> "timber";
          case METAL -> "metal";
          case FIBRE_CEMENT -> "fibre-cement";
          case PAINT -> throw new IllegalArgumentException("Paint is no cladding");
        };
    var area =
        Line.of(
            "walls/cladding",
            Stage.OUTSIDE,
            "Cladding: " + chosen.label(),
            job.measured("shell/outside-wall-area").times(share(job)),
            job.area(),
            "net projected area x share clad",
            Buy.of("cladding-" + kind, job.fact("waste.cladding"), BuildTask.CLADDING),
            Labour.of("fix-cladding-" + kind, BuildTask.CLADDING));
    var openings =
        job.scope().openings().stream().filter(Shape::takesUnit).map(OutsideWalls::around).toList();
    var trim =
        Figure.sum(Dimension.LENGTH, openings)
            .plus(job.measured("shell/outline"))
            .times(share(job));
    var lines = new ArrayList<Line>();
    lines.add(area);
    lines.addAll(new CladdingBattens(job, share(job)).lines());
    lines.addAll(
        List.of(
            Line.of(
                "walls/wind-barrier",
                Stage.OUTSIDE,
                "Wind barrier behind the cladding",
                area.named(),
                job.area(),
                "area clad",
                Buy.of("wind-barrier", job.fact("waste.membrane"), BuildTask.CLADDING_BATTENS)),
            Line.of(
                "walls/cladding-screws",
                Stage.OUTSIDE,
                "Screws of the cladding",
                area.named().times(job.fact("cladding.fixings")).roundedUp(),
                Unit.EACH,
                "area x screws to the area",
                Buy.of("cladding-screw", job.fact("waste.fixings"), BuildTask.CLADDING)),
            Line.of(
                "walls/cladding-trim",
                Stage.OUTSIDE,
                "Trims of the cladding",
                trim,
                job.length(),
                "round windows and doors and along the foot x share clad",
                Buy.of("cladding-trim", job.fact("waste.timber"), BuildTask.CLADDING),
                Labour.of("fix-cladding-trim", BuildTask.CLADDING))));
    return lines;
  }

  private static Figure around(Opening opening) {
    return Shape.perimeter(opening);
  }

  /** Boards are bought by volume, so that their thickness stays a number of the sheet. */
  private static List<Line> insulation(Job job) {
    var envelope = job.scope().envelope();
    var side = envelope.option(EnvelopeQuestions.SIDE, InsulationSide.class);
    var material = envelope.option(EnvelopeQuestions.OUTSIDE, InsulationMaterial.class);
    if (side == InsulationSide.INSIDE || material == InsulationMaterial.NONE) return List.of();
    var thickness = envelope.figure(EnvelopeQuestions.OUTSIDE_THICKNESS);
    var foam =
        material == InsulationMaterial.CLOSED_CELL || material == InsulationMaterial.OPEN_CELL;
    var area =
        Line.of(
            "walls/insulated-outside",
            Stage.OUTSIDE,
            "Outside walls insulated outside: " + material.label(),
            thickness.ifAtLeast(
                Figure.constant("1", Unit.MM),
                job.measured("shell/outside-wall-area"),
                Figure.zero(Dimension.AREA)),
            job.area(),
            "net projected area where a thickness is entered",
            Labour.of(foam ? "spray-outside" : "fix-outside-board", BuildTask.OUTSIDE_INSULATION));
    var lines = new ArrayList<Line>();
    lines.add(area);
    lines.add(
        Line.of(
            "walls/outside-insulation",
            Stage.OUTSIDE,
            "Insulation outside: " + material.label(),
            area.named().times(thickness),
            job.volume(),
            "area x thickness",
            Buy.of(
                material.factId().replace("insulation.", "outside-insulation-"),
                job.fact(foam ? "waste.foam" : "waste.insulation-board"),
                BuildTask.OUTSIDE_INSULATION)));
    if (!foam) {
      lines.add(
          Line.of(
              "walls/outside-insulation-fixings",
              Stage.OUTSIDE,
              "Fixings of the boards outside",
              area.named().times(job.fact("roof.insulation-fixings")).roundedUp(),
              Unit.EACH,
              "area x fixings to the area",
              Buy.of("board-fixing", job.fact("waste.fixings"), BuildTask.OUTSIDE_INSULATION)));
    }
    return lines;
  }
}
