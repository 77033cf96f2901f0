package cornerpost.takeoff;

import cornerpost.fact.Facts;
import cornerpost.scope.Scope;
import java.util.List;
import java.util.stream.Stream;

/** Measures the whole house: every rule, in the order of the build. */
public final class Takeoff {
  /** Rules may build on the lines of those before them. */
  static final List<TakeoffRule> RULES =
      Stream.of(
              GroundRules.ALL,
              ShellRules.ALL,
              OutsideRules.ALL,
              FramingRules.ALL,
              ServicesRules.ALL,
              InsulationRules.ALL,
              FinishesRules.ALL,
              TimeRules.ALL,
              List.<TakeoffRule>of(new OwnMass()))
          .flatMap(List::stream)
          .toList();

  private Takeoff() {}

  public static List<Line> measure(Scope scope, Facts facts) {
    return measure(scope, facts, RULES);
  }

  static List<Line> measure(Scope scope, Facts facts, List<TakeoffRule> rules) {
    var job = new Job(scope, facts);
    for (var rule : rules) {
      for (var line : rule.measure(job)) job.add(line);
    }
    return List.copyOf(job.lines());
  }
}
