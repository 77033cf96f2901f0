package cornerpost.work;

import static cornerpost.takeoff.BuildTask.*;

import cornerpost.fact.Facts;
import java.util.List;

/** Roof and outside walls: steel first, coat after welding, then what covers it. */
final class RoofAndWallSequence implements SequenceRule {
  @Override
  public List<Tie> ties(Facts facts) {
    return new Ties()
        .then(
            List.of(FIX_DOWN, SEAL_JOINTS, RUST_REPAIR),
            ROOF_PREPARE,
            "the roof is sound and its seams are sealed")
        .then(ROOF_PREPARE, List.of(ROOF_FRAME, ROOF_COAT), "it is clean")
        .then(ROOF_FRAME, ROOF_COAT, "what welding burns is coated after it")
        .then(List.of(ROOF_FRAME, ROOF_COAT), ROOF_INSULATION, "it lies on the finished frame")
        .inTurn("upwards, layer by layer", ROOF_INSULATION, ROOF_SHEETS, GUTTERS)
        .then(List.of(ROOF_SHEETS, ROOF_COAT), SOLAR, "panels stand on the finished roof")
        .then(
            List.of(RUST_REPAIR, PRIME_EDGES, SEAL_OPENINGS, SEAL_JOINTS, FIX_DOWN),
            WALL_PREPARE,
            "walls are painted or clad when all is cut, welded and sealed")
        .then(WALL_PREPARE, List.of(WALL_PAINT, OUTSIDE_INSULATION), "it is clean and dull")
        .inTurn("outwards, layer by layer", OUTSIDE_INSULATION, CLADDING_BATTENS, CLADDING)
        .then(
            List.of(WALL_PAINT, CLADDING, GUTTERS, ROOF_SHEETS, ROOF_COAT),
            SNAGS,
            "the outside is finished before the snag list")
        .all();
  }
}
