package cornerpost.takeoff;

import java.util.List;

/** Openings and shell. */
final class ShellRules {
  static final List<TakeoffRule> ALL = List.of();

  private ShellRules() {}
}
