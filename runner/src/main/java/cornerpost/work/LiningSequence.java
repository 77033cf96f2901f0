package cornerpost.work;

import static cornerpost.takeoff.BuildTask.*;

import cornerpost.fact.Facts;
import java.util.List;

/**
 * Insulation when everything behind it is passed and no more hot work is to come; looked at before
 * board (International Residential Code R109.1.5).
 */
final class LiningSequence implements SequenceRule {
  @Override
  public List<Tie> ties(Facts facts) {
    return new Ties()
        .then(
            List.of(FRAMING_INSPECTION, PHOTOGRAPH, WALL_STUDS),
            WALL_INSULATION,
            "nothing is covered before it is passed and photographed")
        .then(
            List.of(FRAMING_INSPECTION, PHOTOGRAPH, CEILING_BATTENS),
            CEILING_INSULATION,
            "nothing is covered before it is passed and photographed")
        .then(
            List.of(ROUGH_IN_INSPECTION, WATERTIGHT, STRIP_FLOOR),
            UNDERFLOOR_INSULATION,
            "wastes under the floor are passed, and nobody welds above")
        .then(
            ROOF_FRAME,
            List.of(WALL_INSULATION, CEILING_INSULATION),
            "no hot work once there is foam")
        .then(
            List.of(WALL_INSULATION, CEILING_INSULATION, UNDERFLOOR_INSULATION),
            FOAM_WAIT,
            "nobody is inside until the foam has cured")
        .then(
            List.of(WALL_INSULATION, CEILING_INSULATION, FOAM_WAIT),
            VAPOUR_MEMBRANE,
            "the warm-side membrane covers the insulation")
        .then(
            List.of(VAPOUR_MEMBRANE, FOAM_WAIT, UNDERFLOOR_INSULATION),
            INSULATION_INSPECTION,
            "it is seen before board")
        .then(
            List.of(INSULATION_INSPECTION, FRAMING_INSPECTION),
            CEILING_BOARD,
            "no board before the inspection is passed")
        .then(
            List.of(INSULATION_INSPECTION, FRAMING_INSPECTION),
            WALL_BOARD,
            "no board before the inspection is passed")
        .then(CEILING_BOARD, WALL_BOARD, "wall boards hold the edge of the ceiling")
        .then(List.of(CEILING_BOARD, WALL_BOARD), JOINTS, "joints are filled when all boards hang")
        .then(JOINTS, JOINTS_DRY, "each coat dries")
        .all();
  }
}
