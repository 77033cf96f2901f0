package cornerpost.takeoff;

import cornerpost.measure.Unit;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.trace.Figure;
import java.util.List;

/**
 * What the site costs by the month: insurance for the whole time allowed from start to move-in,
 * hire for the share of it in which the site is open.
 */
final class SiteHire implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var allowed = job.scope().project().figure(ProjectQuestions.TIME_ALLOWED);
    var open =
        line(
            "time/site-open",
            "Months in which the site is open",
            allowed.times(job.fact("time.on-site-share")),
            "time allowed x share on site");
    var months = open.named();
    return List.of(
        open,
        line(
            "time/insurance",
            "Builder's insurance, months",
            months,
            "months in which the site is open",
            Buy.of("builders-insurance-month", BuildTask.INSURANCE)),
        line(
            "time/toilet",
            "Site toilet, months",
            months,
            "months in which the site is open",
            Buy.of("site-toilet-month", BuildTask.SITE_SET_UP)),
        Line.of(
            "time/fence",
            Stage.PREPARATION,
            "Site fence hired, length for a month",
            job.scope().site().figure(SiteQuestions.FENCE).times(months),
            job.length(),
            "length x months in which the site is open",
            Buy.of("site-fence-month", BuildTask.SITE_SET_UP)),
        line(
            "time/power",
            "Temporary power and water, months",
            months,
            "months in which the site is open",
            Buy.of("temporary-power-month", BuildTask.TEMPORARY_POWER)),
        line(
            "time/store",
            "Site store, months",
            months,
            "months in which the site is open",
            Buy.of("site-store-month", BuildTask.SITE_SET_UP)));
  }

  private static Line line(
      String id, String what, Figure months, String because, Resource... resources) {
    return Line.of(id, Stage.PREPARATION, what, months, Unit.count("month"), because, resources);
  }
}
