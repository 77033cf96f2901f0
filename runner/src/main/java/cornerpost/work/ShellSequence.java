package cornerpost.work;

import static cornerpost.takeoff.BuildTask.*;

import cornerpost.fact.Facts;
import cornerpost.scope.DurationUnit;
import cornerpost.scope.LinkRelation;
import java.util.List;

/**
 * Openings: the frame is fitted before the sheet is cut out, raw edges are primed the day they are
 * cut, windows follow when no more sparks fly, and a hose shows whether it is tight.
 */
final class ShellSequence implements SequenceRule {
  @Override
  public List<Tie> ties(Facts facts) {
    return new Ties()
        .then(
            ENGINEERING,
            List.of(MARK_OPENINGS, MAKE_FRAMES),
            "sizes come from the engineer's design")
        .then(SITE_SET_UP, MAKE_FRAMES, "steel is cut and welded on the site")
        .then(List.of(MARK_OPENINGS, MAKE_FRAMES), FIT_FRAMES, "frames go where they are marked")
        .then(FIT_FRAMES, CUT_OPENINGS, "the frame holds the wall before its sheet is cut out")
        .then(FIT_FRAMES, PRIME_EDGES, "there is no raw edge before")
        .then(CUT_OPENINGS, WELD_FRAMES, "the cut edge is welded to the frame")
        .tie(
            CUT_OPENINGS,
            PRIME_EDGES,
            LinkRelation.START_TO_START,
            "4",
            DurationUnit.HOURS,
            "the first edges are cut by noon and primed the same day")
        .tie(
            WELD_FRAMES,
            PRIME_EDGES,
            LinkRelation.FINISH_TO_FINISH,
            "0",
            DurationUnit.HOURS,
            "the last welds are primed the same day")
        .then(WELD_FRAMES, WELD_INSPECTION, "the welds are looked at")
        .then(WELD_FRAMES, CARGO_DOORS, "the doors are closed in when the openings are framed")
        .then(
            List.of(WELD_FRAMES, PRIME_EDGES, WELD_INSPECTION, FIX_DOWN, JOIN_BOXES),
            SET_WINDOWS,
            "glass comes when no more sparks fly")
        .then(
            List.of(WELD_FRAMES, PRIME_EDGES, WELD_INSPECTION, FIX_DOWN, JOIN_BOXES),
            SET_DOORS,
            "doors come when no more sparks fly")
        .then(List.of(SET_WINDOWS, SET_DOORS), SEAL_OPENINGS, "the gap round the unit is sealed")
        .then(List.of(SEAL_OPENINGS, CARGO_DOORS), HOSE_TEST, "it is tested when all is sealed")
        .then(
            List.of(HOSE_TEST, CARGO_DOORS, WELD_INSPECTION, PRIME_EDGES, FIX_DOWN),
            WATERTIGHT,
            "the shell is tight when it has passed")
        .all();
  }
}
