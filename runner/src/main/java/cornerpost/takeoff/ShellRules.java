package cornerpost.takeoff;

import java.util.List;

/** Openings and shell. */
final class ShellRules {
  static final List<TakeoffRule> ALL =
      List.of(
          new OpeningFrames(),
          new OpeningCuts(),
          new WideOpenings(),
          new Stairwells(),
          new DoorEndWall(),
          new OpeningUnits(),
          new OpeningSeals(),
          new SteelworkPlant());

  private ShellRules() {}
}
