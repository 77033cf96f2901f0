package cornerpost.takeoff;

import java.util.List;

/** Clear dimensions; studs, partitions, battens, backing. */
final class FramingRules {
  static final List<TakeoffRule> ALL =
      List.of(
          InsideMeasures::buildUps,
          InsideMeasures::boxes,
          InsideMeasures::rooms,
          InsideMeasures::houseAreas,
          new WallFrames(),
          new CeilingFrames(),
          new Partitions(),
          new Backing());

  private FramingRules() {}
}
