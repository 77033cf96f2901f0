package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.FrameSection;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Each hole marked and cut, its frame welded in, raw steel primed the same day. Upright cuts run
 * straight along the corrugation, level cuts follow it; the weld runs along the whole cut outside
 * and in stitches inside. No hot work without covering or clearing what burns.
 */
final class OpeningCuts implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var lines = new ArrayList<Line>();
    for (var opening : job.scope().openings()) {
      lines.addAll(DoorEndWall.takes(job, opening) ? inEndWall(job, opening) : lines(job, opening));
    }
    return lines;
  }

  private static List<Line> lines(Job job, Opening opening) {
    var shape = new Shape(job);
    var work = new Steelwork(shape.boxOf(opening));
    var id = "opening/" + opening.id();
    var name = "Opening " + opening.id() + ": ";
    var lines = new ArrayList<Line>();
    lines.add(
        Line.of(
            id + "/marking",
            Stage.SHELL,
            name + "marked out, braced",
            Figure.count(Shape.sheets(opening)),
            Unit.EACH,
            "each sheet that is cut",
            work.hours(small(opening) ? "mark-sleeve" : "mark-opening", BuildTask.MARK_OPENINGS)));
    var cut =
        Line.of(
            id + "/cut",
            Stage.SHELL,
            name + "cut through the sheet",
            cut(shape, opening),
            job.length(),
            "uprights straight, head and sill along the corrugation",
            work.hours("cut-sheet", BuildTask.CUT_OPENINGS));
    lines.add(cut);
    lines.add(
        Line.of(
            id + "/steel-removed",
            Stage.SHELL,
            name + "steel taken out",
            job.measured(id + "/area")
                .times(Shape.sheets(opening))
                .times(shape.developed(opening.wall()))
                .times(shape.sheet(opening.wall()))
                .times(job.fact("steel.density")),
            job.mass(),
            "area x developed length x thickness x density"));
    lines.add(
        Line.of(
            id + "/discs",
            Stage.SHELL,
            name + "cutting discs",
            cut.named().over(job.fact("cut.disc-life")),
            Unit.EACH,
            "length of the cut over what one disc cuts",
            Buy.of("cutting-disc", job.fact("waste.fixings"), work.at(BuildTask.CUT_OPENINGS))));
    if (opening.frame() != FrameSection.NO_FRAME) {
      lines.addAll(welds(job, opening, work, cut.named()));
    }
    lines.addAll(edges(job, opening, work, cut.named()));
    return lines;
  }

  /** In a wall of posts and sheet nothing is cut: the frame is welded to the posts. */
  private static List<Line> inEndWall(Job job, Opening opening) {
    if (opening.frame() == FrameSection.NO_FRAME) return List.of();
    var work = new Steelwork(new Shape(job).boxOf(opening));
    var lines = new ArrayList<>(welds(job, opening, work, Shape.perimeter(opening)));
    lines.addAll(edges(job, opening, work, Figure.zero(Dimension.LENGTH)));
    return lines;
  }

  private static boolean small(Opening opening) {
    return opening.kind() == OpeningKind.SLEEVE || opening.kind() == OpeningKind.VENT;
  }

  /** Two uprights straight, head and sill along the corrugation. */
  static Figure cut(Shape shape, Opening opening) {
    var level = opening.width().times(2).times(shape.developed(opening.wall()));
    return opening.height().times(2).plus(level).times(Shape.sheets(opening));
  }

  private static List<Line> welds(Job job, Opening opening, Steelwork work, Figure cut) {
    var id = "opening/" + opening.id();
    var name = "Opening " + opening.id() + ": ";
    var weld =
        Line.of(
            id + "/weld",
            Stage.SHELL,
            name + "weld round the frame",
            cut.times(Figure.count(1).plus(job.fact("weld.inside-share"))),
            job.length(),
            "along the whole cut outside, in stitches inside",
            work.hours("weld-frame-in", BuildTask.WELD_FRAMES));
    var wire =
        Line.of(
            id + "/welding-wire",
            Stage.SHELL,
            name + "welding wire",
            Welds.wire(job, weld.named()),
            job.mass(),
            "fillet section x density x length, convexity added, over the share deposited",
            Buy.of("welding-wire", job.fact("waste.weld-wire"), work.at(BuildTask.WELD_FRAMES)));
    return List.of(
        weld,
        wire,
        Line.of(
            id + "/welding-gas",
            Stage.SHELL,
            name + "shielding gas",
            Welds.gas(job, wire.named()),
            job.scope().units().choose(Unit.M3, Unit.CU_FT),
            "mass of wire x gas for a kilogram",
            Buy.of("welding-gas", work.at(BuildTask.WELD_FRAMES))));
  }

  private static List<Line> edges(Job job, Opening opening, Steelwork work, Figure cut) {
    var id = "opening/" + opening.id();
    var name = "Opening " + opening.id() + ": ";
    var bare = cut.times(job.fact("edge.primed-width"));
    if (opening.frame() != FrameSection.NO_FRAME) {
      bare =
          bare.plus(
              job.measured(id + "/frame-length")
                  .times(job.fact(opening.frame().factId() + ".girth")));
    }
    var area =
        Line.of(
            id + "/raw-steel",
            Stage.SHELL,
            name + "raw edges and frame",
            bare,
            job.area(),
            "a strip along the cut, and the girth of the frame",
            work.hours("prime-edges", BuildTask.PRIME_EDGES));
    return List.of(
        area,
        Line.of(
            id + "/primer",
            Stage.SHELL,
            name + "zinc primer",
            area.named()
                .times(job.fact("edge.primer-coats"))
                .over(job.fact("paint.steel-primer.coverage")),
            job.liquid(),
            "area x coats / coverage",
            Buy.of("zinc-primer", job.fact("waste.paint"), work.at(BuildTask.PRIME_EDGES))),
        Line.of(
            id + "/touch-up",
            Stage.SHELL,
            name + "paint over the primer",
            area.named().times(job.fact("edge.paint-coats")).over(job.fact("paint.shell.coverage")),
            job.liquid(),
            "area x coats / coverage",
            Buy.of("shell-paint", job.fact("waste.paint"), work.at(BuildTask.PRIME_EDGES))));
  }
}
