package cornerpost.plan;

import cornerpost.price.Estimate;
import cornerpost.scope.BaselineRow;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.Scope;
import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;

/**
 * Plans that are kept to compare later ones with. A plan is kept under a name, once: a later run
 * with the same name adds nothing, one with another name adds its rows behind the others.
 */
final class BaselineBook {
  private final Scope scope;
  private final Estimate estimate;
  private final LineTasks tasks;
  private final LocalDate status;

  BaselineBook(Scope scope, Estimate estimate, LineTasks tasks, LocalDate status) {
    this.scope = scope;
    this.estimate = estimate;
    this.tasks = tasks;
    this.status = status;
  }

  /** The rows of the sheet after this run. */
  List<BaselineRow> kept(RunOptions options) {
    var rows = new ArrayList<>(scope.baselines());
    var name =
        options
            .baseline()
            .or(() -> scope.options().findText(OptionsQuestions.KEEP_BASELINE))
            .map(String::strip)
            .filter(n -> !n.isEmpty());
    if (name.isPresent()
        && rows.stream().noneMatch(r -> r.baseline().equalsIgnoreCase(name.get()))) {
      rows.addAll(rows(name.get()));
    }
    return rows;
  }

  /** The whole first, then the stages, then the tasks in their order. */
  private List<BaselineRow> rows(String name) {
    var amounts = new HashMap<String, BigDecimal>();
    for (var l : estimate.lines()) {
      tasks.due(l).ifPresent(t -> amounts.merge(t.id(), l.money(), BigDecimal::add));
    }
    var rows = new ArrayList<BaselineRow>();
    var programme = tasks.programme();
    rows.add(
        new BaselineRow(
            name,
            status,
            BaselineRow.TOTAL,
            "The whole, start to move-in",
            Optional.of(programme.start()),
            Optional.of(programme.moveIn()),
            estimate.total()));
    var stages = estimate.byStage();
    for (var s : Stage.values()) {
      var of = tasks.of(s);
      var amount = Optional.ofNullable(stages.get(s)).orElse(BigDecimal.ZERO);
      if (of.isEmpty() && amount.signum() == 0) continue;
      rows.add(
          new BaselineRow(
              name,
              status,
              BaselineRow.STAGE + s.label(),
              s.label(),
              of.stream().map(DatedTask::firstDay).min(LocalDate::compareTo),
              of.stream().map(DatedTask::lastDay).max(LocalDate::compareTo),
              amount));
    }
    for (var t : programme.tasks()) {
      rows.add(
          new BaselineRow(
              name,
              status,
              t.id(),
              t.task().name(),
              Optional.of(t.firstDay()),
              Optional.of(t.lastDay()),
              amounts.getOrDefault(t.id(), BigDecimal.ZERO)));
    }
    return rows;
  }

  /** This plan against the one that was kept last. */
  Optional<Replanning.Against> against(List<BaselineRow> kept) {
    if (kept.isEmpty()) return Optional.empty();
    var last = kept.get(kept.size() - 1);
    var then = new LinkedHashMap<String, BaselineRow>();
    for (var r : kept) {
      if (r.baseline().equals(last.baseline())) then.put(r.id(), r);
    }
    var rows = new ArrayList<Replanning.AgainstRow>();
    for (var now : rows("now")) {
      var before = Optional.ofNullable(then.remove(now.id()));
      rows.add(
          new Replanning.AgainstRow(
              now.id(),
              now.name(),
              before,
              Optional.of(now),
              before.map(b -> days(b, now)).orElse(0),
              now.amount().subtract(before.map(BaselineRow::amount).orElse(BigDecimal.ZERO))));
    }
    for (var gone : then.values()) {
      rows.add(
          new Replanning.AgainstRow(
              gone.id(),
              gone.name(),
              Optional.of(gone),
              Optional.empty(),
              0,
              gone.amount().negate()));
    }
    var names = kept.stream().map(BaselineRow::baseline).distinct().toList();
    int moveIn =
        rows.stream().filter(r -> r.id().equals(BaselineRow.TOTAL)).mapToInt(r -> r.days()).sum();
    return Optional.of(new Replanning.Against(last.baseline(), last.keptOn(), names, rows, moveIn));
  }

  private static int days(BaselineRow then, BaselineRow now) {
    if (then.finish().isEmpty() || now.finish().isEmpty()) return 0;
    return (int) ChronoUnit.DAYS.between(then.finish().get(), now.finish().get());
  }
}
