package cornerpost.takeoff;

import java.util.List;

/** Floors, wet rooms, kitchen, doors, casings, light fittings. */
final class FinishesRules {
  static final List<TakeoffRule> ALL =
      List.of(new Floors(), new WetRooms(), new Kitchen(), new Trim());

  private FinishesRules() {}
}
