package cornerpost.takeoff;

import cornerpost.fact.Facts;
import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.Answer;
import cornerpost.scope.Answers;
import cornerpost.scope.Assignment;
import cornerpost.scope.Box;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.Labelled;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Party;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.Room;
import cornerpost.scope.RoomQuestions;
import cornerpost.scope.RoomUse;
import cornerpost.scope.Scope;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Trade;
import cornerpost.scope.Wall;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Scopes for tests: every question has its standard value until it is given another. A number may
 * be text ({@code "1200"}), read in the unit that a workbook of this unit system asks for, or a
 * {@link Metric} amount, converted to that unit; anything else is the value itself.
 *
 * <p>Without a box of its own the scope has one, {@code A}, of the standard size and condition.
 */
final class TestScopes {
  static final Facts FACTS = Facts.supplied();

  /** An amount in the metric unit of the question, whatever the workbook's units are. */
  record Metric(String amount) {}

  private final UnitSystem units;
  private final Map<Question, Object> given = new HashMap<>();
  private final List<Box> boxes = new ArrayList<>();
  private final List<Room> rooms = new ArrayList<>();
  private final List<Opening> openings = new ArrayList<>();
  private final Map<Trade, Party> parties = new EnumMap<>(Trade.class);

  private TestScopes(UnitSystem units) {
    this.units = units;
  }

  static TestScopes metric() {
    return new TestScopes(UnitSystem.METRIC);
  }

  static TestScopes us() {
    return new TestScopes(UnitSystem.US);
  }

  static TestScopes in(UnitSystem units) {
    return new TestScopes(units);
  }

  static Metric si(String amountInTheMetricUnitOfTheQuestion) {
    return new Metric(amountInTheMetricUnitOfTheQuestion);
  }

  /** An answer on a form sheet. */
  TestScopes with(Question question, Object value) {
    given.put(question, value);
    return this;
  }

  /**
   * A box; {@code more} are questions, each followed by its value. A joined box names the other.
   */
  TestScopes box(String id, Object... more) {
    var values = pairs(more);
    values.put(BoxQuestions.ID, id);
    boxes.add(new Box(row(OwnerSheet.CONTAINERS, BoxQuestions.ALL, values, boxes.size())));
    return this;
  }

  TestScopes room(String id, String box, RoomUse use, Object length, Object... more) {
    var values = pairs(more);
    values.put(RoomQuestions.ID, id);
    values.put(RoomQuestions.BOX, box);
    values.put(RoomQuestions.USE, use);
    values.put(RoomQuestions.LENGTH, length);
    rooms.add(new Room(row(OwnerSheet.ROOMS, RoomQuestions.ALL, values, rooms.size())));
    return this;
  }

  /** An opening 1 m (or 1 ft) from the corner of the wall, unless {@code more} says otherwise. */
  TestScopes opening(
      String id,
      String box,
      Wall wall,
      OpeningKind kind,
      Object width,
      Object height,
      Object... more) {
    var values = pairs(more);
    values.put(OpeningQuestions.ID, id);
    values.put(OpeningQuestions.BOX, box);
    values.put(OpeningQuestions.WALL, wall);
    values.put(OpeningQuestions.KIND, kind);
    values.put(OpeningQuestions.WIDTH, width);
    values.put(OpeningQuestions.HEIGHT, height);
    values.putIfAbsent(OpeningQuestions.OFFSET, "1");
    openings.add(
        new Opening(row(OwnerSheet.OPENINGS, OpeningQuestions.ALL, values, openings.size())));
    return this;
  }

  /** Trades are hired unless said otherwise. */
  TestScopes doneBy(Trade trade, Party party) {
    parties.put(trade, party);
    return this;
  }

  Scope scope() {
    if (boxes.isEmpty()) box("A");
    return new Scope(
        units,
        form(OwnerSheet.PROJECT, ProjectQuestions.ALL),
        boxes,
        rooms,
        openings,
        form(OwnerSheet.SITE, SiteQuestions.ALL),
        form(OwnerSheet.DECK_AND_ROOF, DeckAndRoofQuestions.ALL),
        form(OwnerSheet.ENVELOPE, EnvelopeQuestions.ALL),
        form(OwnerSheet.SERVICES, ServicesQuestions.ALL),
        form(OwnerSheet.FINISHES, FinishesQuestions.ALL),
        assignments(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        form(OwnerSheet.LOAN, LoanQuestions.ALL),
        form(OwnerSheet.OPTIONS, OptionsQuestions.ALL),
        List.of());
  }

  /** Everything every rule measures for this scope. */
  List<Line> measured() {
    return Takeoff.measure(scope(), FACTS);
  }

  /** What the given rules measure, in that order. */
  List<Line> measured(List<TakeoffRule> rules) {
    return Takeoff.measure(scope(), FACTS, rules);
  }

  /** The line of that id. */
  static Line line(List<Line> lines, String id) {
    return lines.stream()
        .filter(l -> l.id().equals(id))
        .findFirst()
        .orElseThrow(
            () ->
                new AssertionError(
                    "No line '" + id + "' in " + lines.stream().map(Line::id).toList()));
  }

  static double amount(List<Line> lines, String id, Unit unit) {
    return line(lines, id).quantity().asDouble(unit);
  }

  static boolean has(List<Line> lines, String idStem) {
    return lines.stream().anyMatch(l -> l.id().startsWith(idStem));
  }

  private static Map<Question, Object> pairs(Object... more) {
    var values = new HashMap<Question, Object>();
    for (int i = 0; i < more.length; i += 2) values.put((Question) more[i], more[i + 1]);
    return values;
  }

  private Answers form(OwnerSheet sheet, List<Question> questions) {
    var answers = new LinkedHashMap<Question, Answer>();
    for (int i = 0; i < questions.size(); i++) {
      var q = questions.get(i);
      answer(q, sheet.title() + "!B" + (i + 3), given).ifPresent(a -> answers.put(q, a));
    }
    return new Answers(sheet.title(), answers);
  }

  private Answers row(
      OwnerSheet sheet, List<Question> questions, Map<Question, Object> values, int index) {
    var answers = new LinkedHashMap<Question, Answer>();
    for (int i = 0; i < questions.size(); i++) {
      var q = questions.get(i);
      var cell = sheet.title() + "!" + (char) ('A' + i) + (index + 2);
      answer(q, cell, values).ifPresent(a -> answers.put(q, a));
    }
    return new Answers(sheet.title() + " row " + (index + 2), answers);
  }

  private Optional<Answer> answer(Question q, String cell, Map<Question, Object> values) {
    if (values.containsKey(q)) return Optional.of(new Answer(cell, value(q, cell, values), false));
    return q.standard().in(units).map(text -> new Answer(cell, read(q, cell, text), true));
  }

  private Object value(Question q, String cell, Map<Question, Object> values) {
    var value = values.get(q);
    if (value instanceof String text) return read(q, cell, text);
    if (value instanceof Metric m) {
      var si = Figure.constant(m.amount(), q.metric());
      return Figure.choice(
          cell, q.label(), si.in(q.unit(units)).round(MathContext.DECIMAL128), q.unit(units));
    }
    return value;
  }

  private Object read(Question q, String cell, String text) {
    return switch (q.kind()) {
      case NUMBER, WHOLE -> Figure.choice(cell, q.label(), new BigDecimal(text), q.unit(units));
      case SHARE -> Figure.choice(cell, q.label(), new BigDecimal(text), Unit.ONE);
      case MONEY ->
          Figure.choice(cell, q.label(), new BigDecimal(text), Unit.base(Dimension.MONEY));
      case DATE -> LocalDate.parse(text);
      case YES_NO -> text.equals("yes");
      case TEXT -> text;
      case ONE_OF -> option(q, text);
    };
  }

  private static Labelled option(Question q, String text) {
    for (var o : q.options().orElseThrow().getEnumConstants()) {
      if (o.label().equals(text)) return o;
    }
    throw new IllegalArgumentException("'" + q.label() + "' does not offer '" + text + "'");
  }

  private Map<Trade, Assignment> assignments() {
    var all = new EnumMap<Trade, Assignment>(Trade.class);
    for (var trade : Trade.values()) {
      var party = parties.getOrDefault(trade, Party.HIRED);
      var share =
          switch (party) {
            case OWNER -> "1";
            case HIRED -> "0";
            case MIXED -> "0.5";
          };
      var cell = OwnerSheet.WHO_DOES_WHAT.title() + "!C" + (trade.ordinal() + 2);
      all.put(
          trade,
          new Assignment(
              trade,
              party,
              Figure.choice(cell, "Owner's share", new BigDecimal(share), Unit.ONE),
              Optional.empty(),
              cell));
    }
    return all;
  }
}
