package cornerpost.takeoff;

import cornerpost.scope.Scope;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The rules of ground, shell, outside and time, without those of the fit-out, which an allowance
 * stands for.
 */
final class GroundAndShellRules {
  static final List<TakeoffRule> ALL =
      Stream.of(
              GroundRules.ALL,
              ShellRules.ALL,
              OutsideRules.ALL,
              TimeRules.ALL,
              List.<TakeoffRule>of(new AllowedFitOut()))
          .flatMap(List::stream)
          .toList();

  private GroundAndShellRules() {}

  /**
   * A line's id with {@code <box>}, {@code <opening>} and {@code <section>} for the names in it.
   */
  static String pattern(Line line, Scope scope) {
    var parts = new ArrayList<String>();
    for (var part : line.id().split("/(?![0-9])")) parts.add(part);
    boolean frame = parts.get(0).equals("frame");
    for (int i = 1; i < parts.size(); i++) {
      var part = parts.get(i);
      if (frame && i == 1) parts.set(i, "<section>");
      else if (scope.box(part).isPresent()) parts.set(i, "<box>");
      else if (scope.openings().stream().anyMatch(o -> o.id().equals(part))) {
        parts.set(i, "<opening>");
      } else if (parts.get(0).equals("joint") && i == 1) {
        parts.set(i, "<box>-<box>");
      }
    }
    return String.join("/", parts);
  }
}
