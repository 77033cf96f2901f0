package cornerpost.takeoff;

import java.util.List;

/** Electricity, water, waste, heating, ventilation, trenches and connections. */
final class ServicesRules {
  static final List<TakeoffRule> ALL =
      List.of(
          new Trenches(),
          new ElectricalPoints(),
          new ElectricalSupply(),
          Wiring::homeRuns,
          new Wiring(),
          new Plumbing(),
          new Climate());

  private ServicesRules() {}
}
