package cornerpost.takeoff;

import cornerpost.measure.Unit;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/** Square concrete piers of one height, one at each support: concrete, forms and bars. */
record Piers(Job job, Figure height) {
  Figure crossSection() {
    return width().times(width());
  }

  List<Line> lines() {
    var base = new FoundationShape(job);
    var count = job.measured("supports/count");
    var lines = new ArrayList<Line>();
    var tall =
        Line.of(
            "footing/piers/height",
            Stage.FOUNDATION,
            "Height of the piers, on average",
            height,
            job.shortLength(),
            "from the footing to the underside of the boxes; half the fall of the ground added");
    lines.add(tall);
    lines.add(
        Concrete.line(
            job,
            "footing/piers/concrete",
            "Concrete in piers",
            count.times(crossSection()).times(tall.named()),
            "number x width x width x height",
            "piers",
            "waste.formed-concrete"));
    lines.add(
        base.formwork(
            "footing/piers/formwork",
            "Formwork of piers",
            count.times(4).times(width()).times(tall.named()),
            "four faces of each pier",
            "make-formwork"));
    lines.add(
        base.reinforcement(
            "footing/piers/reinforcement",
            "Bars and links in piers",
            count.times(bars(tall.named())),
            "upright 12 mm bars with their foot, 8 mm links at their spacing"));
    return lines;
  }

  private Figure bars(Figure tall) {
    var upright =
        job.fact("pier.bars")
            .times(tall.plus(job.fact("pier.bar-foot")))
            .times(job.fact("rebar.12.mass"));
    var links =
        tall.over(job.fact("pier.link-spacing"))
            .roundedUp()
            .plus(Figure.count(1))
            .times(width().minus(job.fact("pier.cover").times(2)).times(4))
            .times(job.fact("rebar.8.mass"));
    return tall.ifAtLeast(Figure.constant("1", Unit.MM), upright.plus(links), upright.times(0));
  }

  private Figure width() {
    return job.scope().site().figure(SiteQuestions.PIER_WIDTH);
  }
}
