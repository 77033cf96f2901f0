package cornerpost.work;

import static cornerpost.takeoff.BuildTask.*;

import cornerpost.fact.Facts;
import java.util.List;

/** Framing waits for the tight shell, and with it for the end of all hot work inside. */
final class FramingSequence implements SequenceRule {
  @Override
  public List<Tie> ties(Facts facts) {
    return new Ties()
        .then(
            WATERTIGHT,
            List.of(STEEL_MEMBRANE, WALL_STUDS, CEILING_BATTENS, PARTITIONS),
            "inside work waits until the shell is tight and nobody welds")
        .then(STEEL_MEMBRANE, WALL_STUDS, "the membrane runs unbroken behind the studs")
        .then(WALL_STUDS, List.of(CEILING_BATTENS, PARTITIONS), "they meet the wall studs")
        .then(List.of(WALL_STUDS, PARTITIONS), BACKING, "backing goes between studs")
        .then(
            List.of(CEILING_BATTENS, PARTITIONS, BACKING, ROOF_SHEETS),
            FRAMING_INSPECTION,
            "frame and roof are in place when the frame is looked at")
        .all();
  }
}
