package cornerpost.takeoff;

import java.util.List;

/** Costs of time and the close-out. */
final class TimeRules {
  static final List<TakeoffRule> ALL = List.of(new SiteHire(), new CloseOut());

  private TimeRules() {}
}
