package cornerpost.scope;

import static java.util.Objects.requireNonNull;

import cornerpost.measure.Temperature;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * One thing the owner is asked: a row of a form sheet or a column of a table sheet. Template, drop-
 * down, reading and checking all come from it.
 *
 * @param label the row label or column name, without unit
 * @param metric the unit of the entry in a metric workbook; {@code us} in a customary one
 * @param standard the value a new workbook starts with, by unit system; empty where there is none
 * @param least the least value allowed, in {@code metric} units; empty where there is no limit;
 *     {@link #least(UnitSystem)} says it in the workbook's own unit
 * @param options the enumeration a drop-down offers; empty where any value will do
 * @param list the name of a list made in the workbook itself (boxes, crews), for a drop-down
 * @param required whether an empty cell is a fault (else the standard value is assumed)
 */
public record Question(
    OwnerSheet sheet,
    String label,
    Kind kind,
    Unit metric,
    Unit us,
    Standard standard,
    Optional<BigDecimal> least,
    Optional<BigDecimal> most,
    Optional<Class<? extends Labelled>> options,
    Optional<OwnList> list,
    boolean required,
    String help) {

  /** What an entry must be. */
  public enum Kind {
    /** A number with the unit of the question. */
    NUMBER,
    /** A whole number without unit. */
    WHOLE,
    /** An amount in the currency of the price book. */
    MONEY,
    /** A share of one: a cell shown in per cent. A bare number above one is per cents. */
    SHARE,
    DATE,
    TEXT,
    YES_NO,
    ONE_OF
  }

  /** A list that the workbook itself holds. */
  public enum OwnList {
    BOXES,
    CALENDARS,
    CREWS,
    ROOMS,
    /** Of the plan, once there is one; before that, of any build or of the owner's. */
    TASKS
  }

  /** The starting values of a metric and of a customary workbook, as text. */
  public record Standard(String metric, String us) {
    static final Standard NONE = new Standard("", "");

    public Optional<String> in(UnitSystem system) {
      var text = system == UnitSystem.METRIC ? metric : us;
      return text.isEmpty() ? Optional.empty() : Optional.of(text);
    }
  }

  public Question {
    requireNonNull(sheet, "sheet");
    requireNonNull(label, "label");
  }

  /** Sheet and label tell questions apart; answers are found by them many times in a run. */
  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof Question q && sheet == q.sheet && label.equals(q.label);
  }

  @Override
  public int hashCode() {
    return 31 * sheet.ordinal() + label.hashCode();
  }

  private static Question of(OwnerSheet sheet, String label, Kind kind, Unit metric, Unit us) {
    return new Question(
        sheet,
        label,
        kind,
        metric,
        us,
        Standard.NONE,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        true,
        "");
  }

  static Question number(OwnerSheet sheet, String label, Unit metric, Unit us) {
    return of(sheet, label, Kind.NUMBER, metric, us).from("0");
  }

  static Question number(OwnerSheet sheet, String label, Unit unit) {
    return number(sheet, label, unit, unit);
  }

  static Question whole(OwnerSheet sheet, String label) {
    return of(sheet, label, Kind.WHOLE, Unit.ONE, Unit.ONE).from("0");
  }

  static Question money(OwnerSheet sheet, String label) {
    return of(sheet, label, Kind.MONEY, Unit.ONE, Unit.ONE).from("0");
  }

  static Question share(OwnerSheet sheet, String label) {
    return of(sheet, label, Kind.SHARE, Unit.PERCENT, Unit.PERCENT).from("0");
  }

  static Question date(OwnerSheet sheet, String label) {
    return of(sheet, label, Kind.DATE, Unit.ONE, Unit.ONE);
  }

  static Question text(OwnerSheet sheet, String label) {
    return of(sheet, label, Kind.TEXT, Unit.ONE, Unit.ONE);
  }

  static Question yesNo(OwnerSheet sheet, String label) {
    return of(sheet, label, Kind.YES_NO, Unit.ONE, Unit.ONE);
  }

  static Question oneOf(OwnerSheet sheet, String label, Class<? extends Labelled> options) {
    var q = of(sheet, label, Kind.ONE_OF, Unit.ONE, Unit.ONE);
    return new Question(
        q.sheet,
        q.label,
        q.kind,
        q.metric,
        q.us,
        q.standard,
        q.least,
        q.most,
        Optional.of(options),
        q.list,
        q.required,
        q.help);
  }

  static Question from(OwnerSheet sheet, String label, OwnList list) {
    var q = of(sheet, label, Kind.TEXT, Unit.ONE, Unit.ONE);
    return new Question(
        q.sheet,
        q.label,
        q.kind,
        q.metric,
        q.us,
        q.standard,
        q.least,
        q.most,
        q.options,
        Optional.of(list),
        q.required,
        q.help);
  }

  /** The least value, in metric units. */
  Question from(String atLeast) {
    return new Question(
        sheet,
        label,
        kind,
        metric,
        us,
        standard,
        Optional.of(new BigDecimal(atLeast)),
        most,
        options,
        list,
        required,
        help);
  }

  /** The largest value, in metric units. */
  Question upTo(String atMost) {
    return new Question(
        sheet,
        label,
        kind,
        metric,
        us,
        standard,
        least,
        Optional.of(new BigDecimal(atMost)),
        options,
        list,
        required,
        help);
  }

  Question standard(String both) {
    return standard(both, both);
  }

  Question standard(String inMetric, String inUs) {
    return new Question(
        sheet,
        label,
        kind,
        metric,
        us,
        new Standard(inMetric, inUs),
        least,
        most,
        options,
        list,
        required,
        help);
  }

  Question standard(Labelled option) {
    return standard(option.label());
  }

  /** May stay empty, with nothing assumed. */
  Question optional() {
    return new Question(
        sheet, label, kind, metric, us, standard, least, most, options, list, false, help);
  }

  Question help(String text) {
    return new Question(
        sheet, label, kind, metric, us, standard, least, most, options, list, required, text);
  }

  public Unit unit(UnitSystem system) {
    return system.choose(metric, us);
  }

  /** The least value allowed, in {@link #unit} of a workbook of this system. */
  public Optional<BigDecimal> least(UnitSystem system) {
    return least.map(l -> limit(l, system));
  }

  /** The largest value allowed, in {@link #unit} of a workbook of this system. */
  public Optional<BigDecimal> most(UnitSystem system) {
    return most.map(m -> limit(m, system));
  }

  /**
   * A limit says what is plausible, so in customary units it is the nominal equivalent and a round
   * number, as sizes of sheets and timbers are: 50 mm is 2 in, not 1.9685 in.
   */
  private BigDecimal limit(BigDecimal inMetric, UnitSystem system) {
    if (system == UnitSystem.METRIC || metric.equals(us)) return inMetric;
    if (us.equals(Unit.FAHRENHEIT)) {
      return Temperature.shown(inMetric, system).setScale(0, RoundingMode.HALF_UP);
    }
    var nominal =
        switch (us.symbol()) {
          case "in" -> "25"; // mm
          case "ft" -> "0.3"; // m
          case "mile" -> "1.6"; // km
          case "sq ft" -> "0.1"; // m2
          case "psf" -> "0.05"; // kPa
          default -> throw new IllegalStateException("No nominal equivalent of " + us);
        };
    var exact = inMetric.divide(new BigDecimal(nominal), MathContext.DECIMAL64);
    var rounded =
        exact.abs().compareTo(new BigDecimal(100)) > 0
            ? exact.setScale(-1, RoundingMode.HALF_UP)
            : exact.setScale(0, RoundingMode.HALF_UP);
    return new BigDecimal(rounded.toPlainString());
  }

  /** The labels a drop-down offers, in order; empty where any value will do. */
  public List<String> choices() {
    if (kind == Kind.YES_NO) return List.of("yes", "no");
    return options
        .map(o -> Arrays.stream(o.getEnumConstants()).map(Labelled::label).toList())
        .orElse(List.of());
  }
}
