package cornerpost.takeoff;

import static java.util.Comparator.comparing;

import cornerpost.fact.Facts;
import cornerpost.scope.Scope;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/** Measures the whole house: every rule, in the order of the build. */
public final class Takeoff {
  /**
   * In the order of the build, in which their lines are listed. Rules may build on the lines of
   * those before them; {@link GroundRules#restsOnMass those that rest on what the boxes weigh} on
   * all others.
   */
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

  /** The lines stage by stage, within a stage in the order of the rules. */
  public static List<Line> measure(Scope scope, Facts facts) {
    return measure(scope, facts, RULES);
  }

  static List<Line> measure(Scope scope, Facts facts, List<TakeoffRule> rules) {
    var job = new Job(scope, facts);
    var measured = new ArrayList<List<Line>>(Collections.nCopies(rules.size(), List.of()));
    for (var last : List.of(false, true)) {
      for (int i = 0; i < rules.size(); i++) {
        var rule = rules.get(i);
        if (GroundRules.restsOnMass(rule) != last) continue;
        measured.set(i, rule.measure(job));
        measured.get(i).forEach(job::add);
      }
    }
    return measured.stream().flatMap(List::stream).sorted(comparing(Line::stage)).toList();
  }
}
