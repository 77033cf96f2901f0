package cornerpost.work;

import static cornerpost.takeoff.BuildTask.*;

import cornerpost.fact.Facts;
import java.util.List;

/** Dust before paint, paint before fittings, wet before dry, top before bottom. */
final class FinishesSequence implements SequenceRule {
  @Override
  public List<Tie> ties(Facts facts) {
    return new Ties()
        .then(List.of(JOINTS_DRY, WALL_BOARD), FLOOR_PREPARE, "sanding dust is swept up first")
        .then(FLOOR_PREPARE, FLOOR_DRY, "nobody walks on wet sealer")
        .then(List.of(JOINTS_DRY, FLOOR_DRY), PRIME_WALLS, "paint goes on dry, clean board")
        .then(PRIME_WALLS, PAINT_WALLS, "primer first")
        .then(PAINT_WALLS, PAINT_DRY, "it dries")
        .then(
            List.of(JOINTS_DRY, FLOOR_DRY, WALL_BOARD),
            WATERPROOF,
            "it covers board and sealed floor")
        .then(WATERPROOF, WATERPROOF_DRY, "it dries")
        .then(List.of(WATERPROOF_DRY, WALL_BOARD), WALL_TILES, "tiles stick on the dry membrane")
        .then(
            List.of(WALL_TILES, WATERPROOF_DRY, FLOOR_DRY), FLOOR_TILES, "walls first, floor last")
        .then(List.of(WALL_TILES, FLOOR_TILES), TILES_DRY, "nobody walks on fresh tiles")
        .then(PAINT_DRY, List.of(KITCHEN_UNITS, WARDROBE), "units stand against painted walls")
        .then(KITCHEN_UNITS, WORKTOP, "the top lies on the units")
        .then(
            List.of(PAINT_DRY, FLOOR_DRY, KITCHEN_UNITS),
            FLOORING,
            "a floating floor is not pinned under units nor dripped on")
        .then(
            List.of(FLOORING, FLOOR_TILES, PAINT_DRY),
            INNER_DOORS,
            "doors clear the finished floor")
        .then(List.of(FLOORING, INNER_DOORS, WARDROBE), SKIRTING, "it covers the edge of the floor")
        .then(
            List.of(WORKTOP, FLOORING, ELECTRICAL_SECOND), APPLIANCES, "they slide in and plug in")
        .then(
            List.of(
                SKIRTING,
                WARDROBE,
                WORKTOP,
                INNER_DOORS,
                ELECTRICAL_SECOND,
                PLUMBING_SECOND,
                SPLIT_UNITS,
                WATER_HEATER,
                APPLIANCES),
            TOUCH_UP,
            "paint is touched up when the last fitter has left")
        .then(TOUCH_UP, BLINDS, "they hang on finished reveals")
        .then(FINAL_CLEAN, FURNITURE, "it comes into a clean house")
        .all();
  }
}
