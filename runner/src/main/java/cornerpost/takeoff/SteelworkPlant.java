package cornerpost.takeoff;

import cornerpost.measure.Unit;
import cornerpost.scope.ModifiedWhere;
import cornerpost.scope.Party;
import cornerpost.scope.Stage;
import cornerpost.scope.Trade;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Welder, cutter and tower for steelwork on site. Hired crews and yards bring their own; fire
 * blankets are used up whoever welds.
 */
final class SteelworkPlant implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var lines = new ArrayList<Line>();
    if (job.scope().openings().isEmpty()) return lines;
    var onSite =
        job.scope().boxes().stream().filter(b -> b.modified() == ModifiedWhere.ON_SITE).count();
    if (onSite == 0) return lines;
    lines.add(
        Line.of(
            "steelwork/heat-cover",
            Stage.SHELL,
            "Fire blankets and boards beside hot work",
            Figure.count(job.scope().openings().size()).times(job.fact("opening.heat-cover")),
            job.area(),
            "area for each opening",
            Buy.of("fire-blanket", BuildTask.CUT_OPENINGS)));
    if (job.scope().assignment(Trade.STEELWORK).party() != Party.HIRED) {
      lines.add(
          Line.of(
              "steelwork/plant",
              Stage.SHELL,
              "Welder, cutter and tower, weeks of hire",
              job.fact("time.steel-weeks-a-box").times(onSite),
              Unit.count("week"),
              "weeks for each box worked on site; hired crews bring their own",
              Buy.of("welding-plant-week", BuildTask.CUT_OPENINGS)));
    }
    return lines;
  }
}
