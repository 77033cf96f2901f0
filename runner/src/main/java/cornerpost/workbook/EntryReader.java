package cornerpost.workbook;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.Answer;
import cornerpost.scope.Labelled;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Question;
import cornerpost.scope.Scope.EnteredCell;
import cornerpost.trace.Figure;
import cornerpost.trace.Leaf;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Turns what a cell holds into the answer to a question, or into a fault that names the cell. */
final class EntryReader {
  /** Remarks of the owner's that no plan depends on. */
  private static final Set<String> NOTES = Set.of("Note");

  private static final Unit MONEY = Unit.base(Dimension.MONEY);
  private static final String MISSING_LINE = "default, the sheet has no entry of this name";

  private final UnitSystem units;
  private final FaultLog faults;
  private final List<EnteredCell> entered = new ArrayList<>();
  private final StandIns standIns = new StandIns();

  EntryReader(UnitSystem units, FaultLog faults) {
    this.units = units;
    this.faults = faults;
  }

  /** Every cell read so far, for the mark that tells whether the choices still match the plan. */
  List<EnteredCell> entered() {
    return List.copyOf(entered);
  }

  /** What stands in for the entries that could not be read. */
  StandIns standIns() {
    return standIns;
  }

  /** Notes a cell that takes part though it answers no question: a number of a crew. */
  void enter(OwnerSheet sheet, CellPlace place, String label, Held held) {
    entered.add(new EnteredCell(sheet, place.label(), label, held.raw()));
  }

  /**
   * @param of what the entry belongs to, such as the opening of its row; empty on a form
   */
  Optional<Answer> read(Question question, CellPlace place, Held held, String of) {
    if (!NOTES.contains(question.label())) enter(question.sheet(), place, question.label(), held);
    if (held.isNothing()) {
      var standard = standard(question, place.label(), name(question, of), true);
      if (standard.isEmpty() && question.required()) {
        faults.fault(place, question.label() + " is empty", "expected " + wanted(question));
        standIns.note(question, place, standard, units);
      }
      return standard;
    }
    var value = value(question, place, held, of);
    if (value.isEmpty()) {
      var standard = standard(question, place.label(), name(question, of), true);
      standIns.note(question, place, standard, units);
    }
    return value.map(v -> new Answer(place.label(), v, false));
  }

  /** A number in the unit of its question. */
  static Figure figure(Question q, CellPlace place, BigDecimal amount, UnitSystem units) {
    return Figure.choice(place.label(), name(q, ""), amount, unit(q, units));
  }

  /** What is taken where a sheet has no place for the answer; empty where nothing can be. */
  Optional<Answer> absent(Question question, String sheet) {
    return standard(question, sheet, name(question, ""), false);
  }

  private static String name(Question question, String of) {
    var label = question.label();
    var start = label.substring(0, 1).toLowerCase(Locale.ROOT) + label.substring(1);
    return of.isEmpty() ? start : start + " of " + of;
  }

  private Optional<Answer> standard(Question q, String cell, String name, boolean inCell) {
    return q.standard()
        .in(units)
        .map(
            text ->
                switch (q.kind()) {
                  case NUMBER, WHOLE, MONEY, SHARE -> {
                    var amount = new BigDecimal(text);
                    var unit = unit(q);
                    yield inCell
                        ? Figure.assumed(cell, name, amount, unit)
                        : Figure.of(
                            new Leaf(
                                Leaf.Kind.FACT, defaultId(q), name, amount, unit, MISSING_LINE));
                  }
                  case YES_NO -> (Object) text.equals("yes");
                  case ONE_OF ->
                      option(q, text)
                          .orElseThrow(
                              () -> new IllegalStateException("No option '" + text + "': " + q));
                  case DATE -> LocalDate.parse(text);
                  case TEXT -> text;
                })
        .map(value -> new Answer(cell, value, true));
  }

  private static String defaultId(Question q) {
    return "default/"
        + (q.sheet().title() + "/" + q.label()).toLowerCase(Locale.ROOT).replace(' ', '-');
  }

  /** The unit a cell's number stands in; a share is a number of one. */
  private Unit unit(Question q) {
    return unit(q, units);
  }

  private static Unit unit(Question q, UnitSystem units) {
    return switch (q.kind()) {
      case NUMBER -> q.unit(units);
      case MONEY -> MONEY;
      default -> Unit.ONE;
    };
  }

  private Optional<Object> value(Question q, CellPlace place, Held held, String of) {
    if (held.kind() == Held.Kind.ERROR
        || held.kind() == Held.Kind.UNREADABLE
        || held.kind() == Held.Kind.NOT_CALCULATED) {
      var advice =
          held.kind() == Held.Kind.NOT_CALCULATED
              ? "; open the workbook in a spreadsheet program and save it, so that it is calculated"
              : "";
      return fault(q, place, held.shown(), wanted(q) + advice);
    }
    return switch (q.kind()) {
      case NUMBER, WHOLE, MONEY, SHARE -> number(q, place, held, of);
      case DATE -> date(q, place, held);
      case YES_NO -> yesNo(q, place, held);
      case ONE_OF -> oneOf(q, place, held);
      case TEXT -> Optional.of(text(held));
    };
  }

  private Optional<Object> fault(Question q, CellPlace place, String found, String wanted) {
    faults.fault(place, found + " (" + q.label() + ")", "expected " + wanted);
    return Optional.empty();
  }

  private Optional<Object> number(Question q, CellPlace place, Held held, String of) {
    if (held.kind() != Held.Kind.NUMBER) {
      return fault(q, place, held.shown() + " in a number cell", wanted(q));
    }
    if (held.dateFormat() && held.date().isPresent()) {
      return fault(q, place, held.shown() + " in a number cell", wanted(q));
    }
    var amount = held.number();
    var unit = unit(q);
    if (q.kind() == Question.Kind.SHARE
        && !held.percent()
        && amount.abs().compareTo(BigDecimal.ONE) > 0) {
      unit = Unit.PERCENT;
    }
    if (q.kind() == Question.Kind.WHOLE && amount.stripTrailingZeros().scale() > 0) {
      return fault(q, place, Plain.number(amount), wanted(q));
    }
    var value = unit.toBase().applyTo(amount);
    var least = q.least(units);
    var most = q.most(units);
    if (least.filter(l -> value.compareTo(base(q, l)) < 0).isPresent()
        || most.filter(m -> value.compareTo(base(q, m)) > 0).isPresent()) {
      return fault(q, place, held.shown(), wanted(q) + range(q, least, most));
    }
    return Optional.of(Figure.choice(place.label(), name(q, of), amount, unit));
  }

  private BigDecimal base(Question q, BigDecimal limit) {
    return q.kind() == Question.Kind.NUMBER ? unit(q).toBase().applyTo(limit) : limit;
  }

  private static String range(Question q, Optional<BigDecimal> least, Optional<BigDecimal> most) {
    var from = least.map(l -> " from " + limit(q, l)).orElse("");
    var to = most.map(m -> (from.isEmpty() ? " of at most " : " to ") + limit(q, m)).orElse("");
    return from + (to.isEmpty() ? " up" : to);
  }

  private static String limit(Question q, BigDecimal limit) {
    return q.kind() == Question.Kind.SHARE
        ? Plain.number(limit.movePointRight(2)) + " %"
        : Plain.number(limit);
  }

  private Optional<Object> date(Question q, CellPlace place, Held held) {
    if (held.kind() == Held.Kind.NUMBER && held.date().isPresent()) {
      return Optional.of(held.date().get());
    }
    var found = held.shown() + " in a date cell";
    return fault(q, place, found, wanted(q));
  }

  private Optional<Object> yesNo(Question q, CellPlace place, Held held) {
    if (held.kind() == Held.Kind.TRUTH) return Optional.of(held.truth());
    if (held.kind() == Held.Kind.TEXT) {
      switch (Plain.key(held.text())) {
        case "yes", "true" -> {
          return Optional.of(true);
        }
        case "no", "false" -> {
          return Optional.of(false);
        }
        default -> {}
      }
    }
    return fault(q, place, held.shown(), wanted(q));
  }

  private Optional<Object> oneOf(Question q, CellPlace place, Held held) {
    var text = text(held);
    var found = option(q, text);
    if (found.isPresent()) return Optional.of(found.get());
    faults.fault(place, held.shown() + " (" + q.label() + ")", Plain.oneOf(text, q.choices()));
    return Optional.empty();
  }

  private static Optional<Labelled> option(Question q, String text) {
    return q.options()
        .flatMap(
            type ->
                Arrays.stream(type.getEnumConstants())
                    .map(o -> (Labelled) o)
                    .filter(o -> Plain.same(o.label(), text))
                    .findFirst());
  }

  /** A name may have been typed as a number, such as room 1. */
  static String text(Held held) {
    return switch (held.kind()) {
      case NUMBER ->
          held.dateFormat() && held.date().isPresent()
              ? held.date().get().toString()
              : held.number().toPlainString();
      case TRUTH -> held.truth() ? "TRUE" : "FALSE";
      default -> Plain.tidy(held.text());
    };
  }

  private String wanted(Question q) {
    return switch (q.kind()) {
      case NUMBER -> {
        var unit = q.unit(units).symbol();
        yield "a number" + (unit.isEmpty() ? "" : " of " + Plain.manyOf(unit));
      }
      case WHOLE -> "a whole number";
      case MONEY -> "an amount of money as a plain number";
      case SHARE -> "a share, such as 15 % or 0.15";
      case DATE -> "a date typed as a date, not as text";
      case YES_NO -> "yes or no";
      case TEXT -> "a name";
      case ONE_OF -> "one of " + Plain.list(q.choices());
    };
  }
}
