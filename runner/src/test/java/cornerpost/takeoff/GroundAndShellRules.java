package cornerpost.takeoff;

import java.util.List;
import java.util.stream.Stream;

/** The rules of ground, shell, outside and time, without those of the fit-out. */
final class GroundAndShellRules {
  static final List<TakeoffRule> ALL =
      Stream.of(GroundRules.ALL, ShellRules.ALL, OutsideRules.ALL, TimeRules.ALL)
          .flatMap(List::stream)
          .toList();

  private GroundAndShellRules() {}
}
