package cornerpost.takeoff;

import java.util.List;

/** Roof, outside face of the walls, deck, steps, paths and planting. */
final class OutsideRules {
  static final List<TakeoffRule> ALL =
      List.of(
          new Scaffold(),
          new RoofCover(),
          new Gutters(),
          new OutsideWalls(),
          new Deck(),
          new Steps(),
          new OutsideWorks());

  private OutsideRules() {}
}
