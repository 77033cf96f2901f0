package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.ACCESS_TRACK;
import static cornerpost.takeoff.BuildTask.CLEAR;
import static cornerpost.takeoff.BuildTask.SET_OUT;

import cornerpost.measure.Unit;
import cornerpost.scope.SiteAccess;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/** The ground cleared, a track laid for truck and crane, the supports set out. */
final class SitePreparation implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var site = job.scope().site();
    var lines = new ArrayList<Line>();
    lines.add(
        Line.of(
            "site/clearing",
            Stage.FOUNDATION,
            "Ground cleared of scrub and turf",
            site.figure(SiteQuestions.CLEARING),
            job.area(),
            "the area entered; trees and buildings are not in it",
            Labour.of("clear-ground", CLEAR)));
    lines.add(
        Line.of(
            "site/topsoil",
            Stage.FOUNDATION,
            "Topsoil stripped and heaped on site",
            site.figure(SiteQuestions.CLEARING).times(job.fact("earth.topsoil")),
            job.volume(),
            "area cleared x depth of topsoil",
            Labour.of("strip-topsoil", CLEAR)));
    var track = site.figure(SiteQuestions.ACCESS_TRACK).times(job.fact("track.width"));
    var crane = site.option(SiteQuestions.ACCESS, SiteAccess.class) == SiteAccess.CRANE;
    if (crane) track = track.plus(job.fact("crane.stand"));
    var area =
        Line.of(
            "site/track",
            Stage.FOUNDATION,
            crane ? "Access track and crane stand" : "Access track",
            track,
            job.area(),
            crane ? "length x width, and the crane's stand" : "length x width",
            Buy.of("geotextile", job.fact("waste.membrane"), ACCESS_TRACK),
            Labour.of("lay-track", ACCESS_TRACK));
    lines.add(area);
    lines.add(
        Line.of(
            "site/track-stone",
            Stage.FOUNDATION,
            "Stone of the track",
            area.named().times(job.fact("track.stone")),
            job.volume(),
            "area x thickness, compacted",
            Buy.of("crushed-stone", job.fact("waste.stone"), ACCESS_TRACK)));
    lines.add(
        Line.of(
            "site/setting-out",
            Stage.FOUNDATION,
            "Lines, profiles and levels",
            Figure.count(1),
            Unit.EACH,
            "one for the house",
            Buy.of("setting-out-kit", SET_OUT),
            Labour.of("set-out-lines", SET_OUT)));
    lines.add(
        Line.of(
            "site/setting-out-supports",
            Stage.FOUNDATION,
            "Supports set out",
            job.measured("supports/count"),
            Unit.EACH,
            "each support pegged and levelled",
            Labour.of("set-out-support", SET_OUT)));
    return lines;
  }
}
