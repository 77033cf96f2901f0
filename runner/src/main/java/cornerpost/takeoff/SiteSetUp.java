package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.SITE_SET_UP;
import static cornerpost.takeoff.BuildTask.TEMPORARY_POWER;

import cornerpost.measure.Unit;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.List;

/**
 * The site made ready: fence put up, toilet and skip brought, temporary power and water, safety
 * gear, small tools. What is hired by the month stands with the costs of time.
 */
final class SiteSetUp implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    return List.of(
        Line.of(
            "site/fence",
            Stage.PREPARATION,
            "Site fence put up and taken down",
            job.scope().site().figure(SiteQuestions.FENCE),
            job.length(),
            "the length entered",
            Labour.of("fence-site", SITE_SET_UP)),
        one(
            "site/set-up",
            "Site board, toilet, skip and store brought; place for materials",
            Buy.of("site-deliveries", SITE_SET_UP),
            Labour.of("set-up-site", SITE_SET_UP)),
        one(
            "site/safety",
            "Safety gear: extinguishers, fire blankets, first aid, masks, guards",
            Buy.of("safety-kit", SITE_SET_UP)),
        one(
            "site/small-tools",
            "Small tools, blades and bits used up",
            Buy.of("small-tools", SITE_SET_UP)),
        one(
            "site/temporary-power",
            "Temporary power and water: board, protected outlets, standpipe",
            Buy.of("temporary-power", TEMPORARY_POWER),
            Labour.of("set-up-temporary-power", TEMPORARY_POWER)));
  }

  private static Line one(String id, String what, Resource... resources) {
    return Line.of(
        id,
        Stage.PREPARATION,
        what,
        Figure.count(1),
        Unit.EACH,
        "one for the site; common practice, no source",
        resources);
  }
}
