package cornerpost.takeoff;

import cornerpost.scope.Foundation;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * A plate of concrete under the whole house: a slab on grade with its edge thickened down to frost
 * depth, or a raft of one thickness. Stone bed, damp-proof membrane, mesh (two layers in a raft),
 * edge insulation, edge forms, a finished surface, and short piers where the floor stands higher
 * than the plate.
 */
final class SlabFoundation implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var raft = FoundationShape.is(job, Foundation.RAFT);
    if (!raft && !FoundationShape.is(job, Foundation.SLAB)) return List.of();
    var base = new FoundationShape(job);
    var outline = job.measured("shell/outline");
    var margin = job.fact("slab.margin");
    var above = job.fact("slab.above-ground");
    var thickness =
        raft ? job.scope().site().figure(SiteQuestions.PAD_DEPTH) : job.fact("slab.thickness");
    var lines = new ArrayList<Line>();
    var area =
        Line.of(
            "footing/slab/area",
            Stage.FOUNDATION,
            raft ? "Raft" : "Slab on grade",
            base.plan().plus(outline.times(margin)).plus(margin.times(margin).times(4)),
            job.area(),
            "plan of the boxes and a margin all round",
            Buy.of("damp-proof-membrane", job.fact("waste.membrane"), BuildTask.FORMWORK),
            Labour.of("lay-membrane", BuildTask.FORMWORK),
            Labour.of("finish-slab", BuildTask.POUR));
    lines.add(area);
    var edge = raft ? outline.times(0) : outline;
    var edgeDepth = base.depth().plus(above).minus(thickness).atLeastZero();
    var edges = edge.times(job.fact("slab.edge-width")).times(edgeDepth);
    var concrete =
        Concrete.line(
            job,
            "footing/slab/concrete",
            raft ? "Concrete in the raft" : "Concrete in the slab and its edge",
            area.named().times(thickness).plus(edges),
            raft
                ? "area x thickness"
                : "area x thickness, and the edge down to frost depth along the outline",
            "slab",
            "waste.concrete");
    lines.add(concrete);
    lines.add(
        base.mesh(
            area.named().times(raft ? 2 : 1), raft ? "two layers over the area" : "over the area"));
    lines.add(
        base.formwork(
            "footing/slab/formwork",
            "Edge forms",
            outline.times(raft ? thickness : above.plus(thickness)),
            "outline x depth of the edge that is formed",
            "make-formwork"));
    if (!raft) {
      lines.add(
          base.reinforcement(
              "footing/slab/reinforcement",
              "12 mm bars along the edge",
              outline
                  .times(job.fact("strip.bars"))
                  .times(Figure.count(1).plus(job.fact("strip.lap")))
                  .times(job.fact("rebar.12.mass")),
              "bars along the outline with laps x mass of a metre"));
    }
    lines.add(
        Line.of(
            "footing/slab/edge-insulation",
            Stage.FOUNDATION,
            "Insulation along the edge",
            outline.times(job.fact("slab.edge-insulation")),
            job.area(),
            "outline x its depth; IECC/IRC table N1102.1.3",
            Buy.of("edge-insulation", job.fact("waste.insulation-board"), BuildTask.FORMWORK),
            Labour.of("fix-edge-insulation", BuildTask.FORMWORK)));
    var bed = base.bed(area.named().times(job.fact("slab.bed")), "area x depth of the bed");
    lines.add(bed);
    var pit = thickness.plus(job.fact("slab.bed")).minus(above).atLeastZero();
    var dug =
        base.excavation(
            area.named().times(pit).plus(edges),
            raft
                ? "area down to the underside of the bed"
                : "area down to the underside of the bed, and the edge trench");
    lines.add(dug);
    lines.addAll(base.backfill(dug.named(), dug.named()));
    lines.addAll(new Piers(job, base.underBoxes().minus(above).atLeastZero()).lines());
    return lines;
  }
}
