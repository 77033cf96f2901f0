package cornerpost.work;

import static cornerpost.takeoff.BuildTask.*;

import cornerpost.fact.Facts;
import java.util.List;

/** Deck, steps, awning, paths and planting: footings may go ahead of the box. */
final class OutsideSequence implements SequenceRule {
  @Override
  public List<Tie> ties(Facts facts) {
    return new Ties()
        .then(SET_OUT, DECK_FOOTINGS, "the pegs say where")
        .then(DECK_FOOTINGS, DECK_INSPECTION, "holes are seen before concrete")
        .then(DECK_INSPECTION, DECK_CONCRETE, "no concrete before the inspection is passed")
        .then(DECK_CONCRETE, DECK_CURE, "it cures from the pour on")
        .then(DECK_CURE, DECK_FRAME, "posts stand on cured footings")
        .then(
            FIX_DOWN, List.of(DECK_FRAME, STEPS, AWNING), "its height is taken from the fixed box")
        .then(
            List.of(DECK_FRAME, WALL_PAINT, CLADDING),
            DECK_BOARDS,
            "boards stay clean of paint and ladders")
        .then(DECK_BOARDS, List.of(GUARD, STEPS), "they stand on the boards")
        .then(List.of(DECK_FRAME, ROOF_SHEETS, WALL_PREPARE), AWNING, "it hangs from roof and deck")
        .then(List.of(DELIVERY, CLOSE_TRENCHES, STEPS), PATHS, "no truck or trench breaks them")
        .then(
            List.of(PATHS, DRAINAGE, DECK_FRAME, FIX_DOWN),
            PLANTING,
            "soil is graded when all is built")
        .then(
            List.of(GUARD, STEPS, DECK_BOARDS, AWNING),
            SNAGS,
            "the outside is in the snag list too")
        .then(List.of(PATHS, PLANTING), FINAL_CLEAN, "the site is cleared when all is laid")
        .all();
  }
}
