package cornerpost.price;

import cornerpost.measure.Unit;
import cornerpost.scope.Answers;
import cornerpost.scope.CrewEntry;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.OwnTask;
import cornerpost.scope.Party;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.Stage;
import cornerpost.scope.SuppliedCalendars;
import cornerpost.takeoff.BuildTask;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Optional;

/**
 * Lines that come from the owner's entries alone: own items, own tasks with crews that have a rate,
 * the furniture allowance, rent and interest. No price book, hence no price rise on them.
 */
final class OwnLines {
  private static final Unit MONTH = Unit.count("month");

  private final Costing costing;

  OwnLines(Costing costing) {
    this.costing = costing;
  }

  void add() {
    var cells = new HashMap<String, String>();
    for (var item : costing.scope.ownItems()) {
      var before = cells.putIfAbsent(item.id(), item.cell());
      if (before != null) {
        costing.problems.add(
            Costing.fault(
                item.cell(), "the id '" + item.id() + "' again", "each once; it is in " + before));
        continue;
      }
      var unit = Unit.count(item.unit());
      draft(
          "own/" + item.id(),
          item.stage(),
          CostLine.Kind.OWN_ITEM,
          item.description(),
          item.quantity(),
          unit,
          costing.asMoney(item.rate()),
          item.party(),
          Optional.empty(),
          item.taxed());
    }
    // A second task of an id is the work plan's fault to name.
    var tasks = new LinkedHashMap<String, OwnTask>();
    costing.scope.ownTasks().forEach(t -> tasks.putIfAbsent(t.id(), t));
    tasks.values().forEach(this::ownTask);
    if (costing.scope.generatesTasks()) furniture();
    rent();
    interest();
  }

  private void draft(
      String id,
      Stage stage,
      CostLine.Kind kind,
      String description,
      Figure quantity,
      Unit unit,
      Figure rate,
      Party party,
      Optional<String> task,
      boolean taxed) {
    var exact = quantity.times(rate).value();
    costing.add(
        new Costing.Draft(
            id,
            Optional.empty(),
            stage,
            kind,
            description,
            quantity,
            unit,
            rate,
            rate,
            CostLine.Basis.OWN,
            party,
            task,
            Optional.empty(),
            taxed,
            exact,
            exact));
  }

  /**
   * Hours of the task x number of the crew x its rate. The first crew with a rate gives the line
   * {@code own-task/<id>}, further ones add the crew's name to it.
   */
  private void ownTask(OwnTask task) {
    boolean first = true;
    for (var crew : costing.scope.crews()) {
      int number = task.demands().getOrDefault(crew.name(), 0);
      if (number == 0 || crew.rate().isEmpty()) continue;
      var hours = hours(task);
      var quantity = Figure.constant(hours.toPlainString(), Unit.HOUR).times(Figure.count(number));
      draft(
          "own-task/" + task.id() + (first ? "" : ":" + slug(crew)),
          OwnTaskStage.of(costing.scope, task),
          CostLine.Kind.LABOUR,
          task.name() + ": " + crew.name(),
          quantity,
          Unit.HOUR,
          costing.asMoneyPerHour(crew.rate().get()),
          Party.HIRED,
          Optional.of(task.id()),
          false);
      first = false;
    }
  }

  private static String slug(CrewEntry crew) {
    return crew.name().toLowerCase(Locale.ROOT).replace(' ', '-');
  }

  /** A day has the hours of the task's calendar; an elapsed day has 24. */
  private BigDecimal hours(OwnTask task) {
    return switch (task.unit()) {
      case HOURS -> task.duration();
      case ELAPSED_DAYS -> task.duration().multiply(BigDecimal.valueOf(24));
      case DAYS -> {
        var name =
            task.calendar()
                .orElseGet(() -> costing.scope.project().text(ProjectQuestions.CALENDAR));
        var day =
            SuppliedCalendars.find(costing.scope.calendars(), name)
                .map(SuppliedCalendars::hoursOfADay)
                .orElse(BigDecimal.valueOf(8)); // an unknown calendar is the work plan's fault
        yield task.duration().multiply(day);
      }
    };
  }

  private void furniture() {
    var allowance = costing.scope.finishes().findFigure(FinishesQuestions.FURNITURE);
    if (allowance.isEmpty()) return;
    draft(
        "furniture",
        BuildTask.FURNITURE.stage(),
        CostLine.Kind.OWN_ITEM,
        "Furniture allowance",
        Figure.count(1),
        Unit.count("lot"),
        costing.asMoney(allowance.get()),
        Party.OWNER,
        Optional.of(BuildTask.FURNITURE.id()),
        false);
  }

  private void rent() {
    var rent = entered(costing.scope.options(), OptionsQuestions.RENT);
    if (rent.isEmpty()) return;
    draft(
        "rent",
        Stage.CLOSE_OUT,
        CostLine.Kind.TIME,
        "Rent elsewhere until move-in",
        costing.scope.project().figure(ProjectQuestions.TIME_ALLOWED),
        MONTH,
        costing.asMoney(rent.get()),
        Party.OWNER,
        moveIn(),
        false);
  }

  /** Loan x average share drawn x yearly rate x months / 12: common practice, no source. */
  private void interest() {
    var loan = entered(costing.scope.loan(), LoanQuestions.AMOUNT);
    if (loan.isEmpty()) return;
    var answers = costing.scope.loan();
    var drawn = costing.asMoney(loan.get()).times(answers.figure(LoanQuestions.AVERAGE_DRAWN));
    var months = costing.scope.project().figure(ProjectQuestions.TIME_ALLOWED);
    draft(
        "interest",
        Stage.CLOSE_OUT,
        CostLine.Kind.INTEREST,
        "Interest on the average loan drawn",
        drawn,
        costing.money(),
        answers.figure(LoanQuestions.RATE).times(months).over(12),
        Party.OWNER,
        moveIn(),
        false);
  }

  private Optional<String> moveIn() {
    return costing.scope.generatesTasks() ? Optional.of(BuildTask.MOVE_IN.id()) : Optional.empty();
  }

  /** Where only own tasks are planned, what the owner left empty makes no line. */
  private Optional<Figure> entered(Answers answers, Question question) {
    return answers
        .find(question)
        .filter(a -> costing.scope.generatesTasks() || !a.assumed())
        .map(a -> (Figure) a.value());
  }
}
