package cornerpost.work;

import static cornerpost.takeoff.BuildTask.*;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import java.util.List;

/**
 * Ground work, and all of it before the box comes. The inspection of footings stands before the
 * concrete, that of what lies underground before backfill (International Residential Code R109.1.1
 * and R109.1.2).
 */
final class FoundationSequence implements SequenceRule {
  @Override
  public List<Tie> ties(Facts facts) {
    var stripping = facts.figure("time.lag.strip-forms").in(Unit.ONE).toPlainString();
    return new Ties()
        .then(SITE_SET_UP, CLEAR, "the site is fenced first")
        .then(CLEAR, List.of(ACCESS_TRACK, SET_OUT), "it is set out on clear ground")
        .then(ACCESS_TRACK, List.of(EXCAVATE, PILES), "the machine comes in by the track")
        .then(ACCESS_TRACK, DELIVERY, "truck and crane stand on it")
        .then(SET_OUT, List.of(EXCAVATE, PILES), "the pegs say where")
        .then(EXCAVATE, List.of(FORMWORK, PILES), "forms and pads stand in the dug hole")
        .then(FORMWORK, REINFORCE, "bars are set in the forms")
        .then(REINFORCE, FOOTING_INSPECTION, "forms and bars are seen before concrete")
        .then(FOOTING_INSPECTION, POUR, "no concrete before the inspection is passed")
        .then(POUR, CURE, "it cures from the pour on")
        .after(stripping, POUR, STRIP_FORMS, "side forms stay until the concrete stands by itself")
        .then(STRIP_FORMS, BACKFILL, "earth goes back against bare concrete")
        .then(List.of(CURE, STRIP_FORMS, PILES), BEARING_PLATES, "plates sit on finished supports")
        .then(CURE, DELIVERY, "supports carry no box before they have cured")
        .then(BEARING_PLATES, DELIVERY, "the supports are level and ready")
        .then(PILES, DELIVERY, "the supports are in")
        .then(BACKFILL, List.of(DRAINAGE, DELIVERY), "the ground is made up")
        .then(DRAINAGE, DELIVERY, "the digger is done before the box stands in its way")
        .then(SET_OUT, List.of(TRENCHES, SEPTIC, WELL), "the pegs say where")
        .then(TRENCHES, List.of(LAY_WASTE, LAY_WATER, LAY_CABLE), "pipes lie in open trenches")
        .then(
            List.of(LAY_WASTE, LAY_WATER, LAY_CABLE, SEPTIC),
            UNDERGROUND_INSPECTION,
            "it is seen while it is open")
        .then(UNDERGROUND_INSPECTION, CLOSE_TRENCHES, "no backfill before the inspection is passed")
        .then(
            List.of(CLOSE_TRENCHES, SEPTIC, WELL),
            DELIVERY,
            "all services underground are in before the box comes")
        .all();
  }
}
