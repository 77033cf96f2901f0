package cornerpost.takeoff;

import java.util.List;

/** Floors, kitchen, bathroom, doors, trim, close-out. */
final class FinishesRules {
  static final List<TakeoffRule> ALL = List.of();

  private FinishesRules() {}
}
