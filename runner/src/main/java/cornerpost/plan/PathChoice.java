package cornerpost.plan;

import cornerpost.measure.Spelling;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Question;
import cornerpost.scope.Scope;
import cornerpost.work.WorkPlan;
import java.util.Optional;

/**
 * The two events whose longest path is asked for, by id.
 *
 * @param from empty where the usual one is meant and the plan has no such task
 * @param missing says which entry names no task; empty if both can be looked for
 */
record PathChoice(Optional<String> from, Optional<String> to, String missing) {

  private record End(Optional<String> id, String missing) {}

  /**
   * The command line overrules sheet Options. A name that no task has is a fault there; on the
   * sheet its task may have gone with a change of scope, and the entry is kept.
   */
  static PathChoice of(Scope scope, RunOptions options, WorkPlan work, Problems problems) {
    var path = options.path();
    var from = end(scope, path.from(), "--path-from", OptionsQuestions.PATH_FROM, work, problems);
    var to = end(scope, path.to(), "--path-to", OptionsQuestions.PATH_TO, work, problems);
    var missing = from.missing.isEmpty() ? to.missing : from.missing;
    return new PathChoice(from.id, to.id, missing);
  }

  private static End end(
      Scope scope,
      Optional<String> asked,
      String option,
      Question question,
      WorkPlan work,
      Problems problems) {
    var usual = question.standard().in(scope.units()).orElse("");
    var entry = scope.options().findText(question).filter(t -> !t.isBlank());
    var name = asked.or(() -> entry).orElse(usual);
    var tasks = Delay.find(name, work);
    if (tasks.size() == 1) return new End(Optional.of(tasks.get(0).id()), "");
    if (asked.isEmpty() && tasks.isEmpty() && Spelling.plain(name).equals(usual)) {
      return new End(Optional.empty(), ""); // an own network need not have delivery or move-in
    }
    var found = Delay.found(name, tasks);
    var expected = Delay.expected(name, tasks, work);
    if (asked.isPresent()) {
      problems.fault(option + " " + name, found, expected);
    } else if (tasks.isEmpty()) {
      problems.remark(
          OwnerSheet.OPTIONS,
          scope.options().cell(question),
          found + " (" + question.label() + ")",
          "the entry is kept, and no path is shown; " + expected);
    } else {
      var at = scope.options().cell(question);
      problems.fault(OwnerSheet.OPTIONS, at, found + " (" + question.label() + ")", expected);
    }
    var told = Character.toUpperCase(found.charAt(0)) + found.substring(1);
    return new End(Optional.empty(), told + ": see " + question.label() + " on sheet Options.");
  }
}
