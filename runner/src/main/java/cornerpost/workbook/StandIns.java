package cornerpost.workbook;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.Answer;
import cornerpost.scope.Answers;
import cornerpost.scope.Box;
import cornerpost.scope.Opening;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Problem;
import cornerpost.scope.Question;
import cornerpost.scope.Room;
import cornerpost.scope.Scope;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What stands in for entries that cannot be read, so that what is wrong elsewhere can be looked for
 * in the same run. Never planned from.
 *
 * <p>Only numbers and dates of forms and of the house are stood in for: which lines a plan has does
 * not depend on them, so a quote for a line that is not there is told with certainty. An unreadable
 * choice, name, yes or no may bring lines along or leave them out; then nothing is said.
 */
final class StandIns {
  /** Before any day that is asked about: no quote has ended yet. */
  private static final LocalDate LONG_AGO = LocalDate.of(2000, 1, 1);

  /** Rows that are plainly left out: no line of the plan hangs on them. */
  private static final Set<OwnerSheet> ASIDE =
      Set.of(
          OwnerSheet.QUOTES,
          OwnerSheet.PROGRESS,
          OwnerSheet.DELAYS,
          OwnerSheet.COST_LEDGER,
          OwnerSheet.HOLIDAYS);

  private static final Set<OwnerSheet> FILLED =
      Set.of(
          OwnerSheet.PROJECT,
          OwnerSheet.CONTAINERS,
          OwnerSheet.ROOMS,
          OwnerSheet.OPENINGS,
          OwnerSheet.SITE,
          OwnerSheet.DECK_AND_ROOF,
          OwnerSheet.ENVELOPE,
          OwnerSheet.SERVICES,
          OwnerSheet.FINISHES,
          OwnerSheet.LOAN,
          OwnerSheet.OPTIONS);

  private record StandIn(Question question, CellPlace place, Answer answer) {
    /** Whether it belongs to these answers: those of a form, or of its row. */
    boolean isOf(Answers answers) {
      return answers.place().equals(place.sheet())
          || answers.place().equals(place.sheet() + " row " + (place.row() + 1));
    }
  }

  private final List<StandIn> all = new ArrayList<>();

  /** Notes the cell of an entry that could not be read. */
  void note(Question question, CellPlace place, Optional<Answer> standard, UnitSystem units) {
    if (!FILLED.contains(question.sheet())) return;
    var value =
        switch (question.kind()) {
          case NUMBER, WHOLE, MONEY, SHARE ->
              standard
                  .map(Answer::value)
                  .or(
                      () ->
                          Optional.of(
                              EntryReader.figure(
                                  question,
                                  place,
                                  question.least(units).orElse(BigDecimal.ONE),
                                  units)));
          case DATE -> standard.map(Answer::value).or(() -> Optional.of(LONG_AGO));
          case YES_NO, ONE_OF, TEXT -> Optional.empty();
        };
    value.ifPresent(v -> all.add(new StandIn(question, place, new Answer(place.label(), v, true))));
  }

  /** The choices with what stands in; empty where that does not cover every fault. */
  Optional<Scope> fill(Scope scope, List<Problem> problems) {
    boolean covered =
        problems.stream()
            .filter(p -> p.severity() == Problem.Severity.FAULT)
            .allMatch(p -> isAside(p) || isStoodInFor(p));
    return covered ? Optional.of(filled(scope)) : Optional.empty();
  }

  private static boolean isAside(Problem p) {
    return ASIDE.stream().anyMatch(s -> s.title().equals(p.sheet()));
  }

  private boolean isStoodInFor(Problem p) {
    return all.stream()
        .anyMatch(
            s -> s.place().sheet().equals(p.sheet()) && s.place().reference().equals(p.cell()));
  }

  private Scope filled(Scope s) {
    return new Scope(
        s.units(),
        filled(s.project()),
        s.boxes().stream().map(b -> new Box(filled(b.row()))).toList(),
        s.rooms().stream().map(r -> new Room(filled(r.row()))).toList(),
        s.openings().stream().map(o -> new Opening(filled(o.row()))).toList(),
        filled(s.site()),
        filled(s.deckAndRoof()),
        filled(s.envelope()),
        filled(s.services()),
        filled(s.finishes()),
        s.assignments(),
        s.quotes(),
        s.ownItems(),
        s.ownTasks(),
        s.ownLinks(),
        s.crews(),
        s.calendars(),
        s.holidays(),
        s.progress(),
        s.delays(),
        s.ledger(),
        filled(s.loan()),
        filled(s.options()),
        s.entered(),
        s.baselines());
  }

  private Answers filled(Answers answers) {
    var more = new LinkedHashMap<>(answers.all());
    for (var s : all) if (s.isOf(answers)) more.putIfAbsent(s.question(), s.answer());
    return new Answers(answers.place(), more);
  }
}
