package cornerpost.report;

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
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Party;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.Room;
import cornerpost.scope.RoomQuestions;
import cornerpost.scope.Scope;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Trade;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Choices made by hand: a question and what stands in its cell; the rest as supplied. */
final class SampleChoices {
  private final UnitSystem units;
  private final Map<String, Object> said = new LinkedHashMap<>();
  private final List<Map<Question, String>> boxes = new ArrayList<>();
  private final List<Map<Question, String>> rooms = new ArrayList<>();
  private final List<Map<Question, String>> openings = new ArrayList<>();

  SampleChoices(UnitSystem units) {
    this.units = units;
  }

  SampleChoices say(Question question, Object value) {
    said.put(key(question), value);
    return this;
  }

  SampleChoices box(Object... questionsAndTexts) {
    boxes.add(row(questionsAndTexts));
    return this;
  }

  SampleChoices room(String id, String box, String use, String length, String next) {
    rooms.add(
        row(
            RoomQuestions.ID,
            id,
            RoomQuestions.BOX,
            box,
            RoomQuestions.USE,
            use,
            RoomQuestions.LENGTH,
            length,
            RoomQuestions.DOOR,
            next));
    return this;
  }

  SampleChoices opening(
      String id,
      String box,
      String wall,
      String kind,
      String width,
      String height,
      String sill,
      String offset) {
    openings.add(
        row(
            OpeningQuestions.ID,
            id,
            OpeningQuestions.BOX,
            box,
            OpeningQuestions.WALL,
            wall,
            OpeningQuestions.KIND,
            kind,
            OpeningQuestions.WIDTH,
            width,
            OpeningQuestions.HEIGHT,
            height,
            OpeningQuestions.SILL,
            sill,
            OpeningQuestions.OFFSET,
            offset));
    return this;
  }

  Scope scope() {
    var assignments = new EnumMap<Trade, Assignment>(Trade.class);
    for (var t : Trade.values()) {
      var owner = t.ordinal() % 2 == 0;
      assignments.put(
          t,
          new Assignment(
              t,
              owner ? Party.OWNER : Party.HIRED,
              Figure.count(owner ? 1 : 0),
              Optional.empty(),
              "Who does what!B2"));
    }
    var entered = new ArrayList<Scope.EnteredCell>();
    entered.add(
        new Scope.EnteredCell(
            OwnerSheet.PROJECT,
            "B2",
            ProjectQuestions.NAME.label(),
            said.getOrDefault(key(ProjectQuestions.NAME), "Quarrow Field house")));
    return new Scope(
        units,
        form("Project", ProjectQuestions.ALL),
        rows("Containers", BoxQuestions.ALL, boxes).stream().map(Box::new).toList(),
        rows("Rooms", RoomQuestions.ALL, rooms).stream().map(Room::new).toList(),
        rows("Openings", OpeningQuestions.ALL, openings).stream().map(Opening::new).toList(),
        form("Site and foundation", SiteQuestions.ALL),
        form("Deck and roof", DeckAndRoofQuestions.ALL),
        form("Envelope", EnvelopeQuestions.ALL),
        form("Services", ServicesQuestions.ALL),
        form("Finishes", FinishesQuestions.ALL),
        assignments,
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        List.of(),
        form("Loan", LoanQuestions.ALL),
        form("Options", OptionsQuestions.ALL),
        entered);
  }

  private static String key(Question q) {
    return q.sheet().title() + "/" + q.label();
  }

  private static Map<Question, String> row(Object... questionsAndTexts) {
    var row = new LinkedHashMap<Question, String>();
    for (int i = 0; i < questionsAndTexts.length; i += 2) {
      row.put((Question) questionsAndTexts[i], (String) questionsAndTexts[i + 1]);
    }
    return row;
  }

  private List<Answers> rows(
      String sheet, List<Question> questions, List<Map<Question, String>> rows) {
    var all = new ArrayList<Answers>();
    for (var row : rows) {
      int line = all.size() + 2;
      var answers = new LinkedHashMap<Question, Answer>();
      char column = 'A';
      for (var q : questions) {
        var cell = sheet + "!" + column++ + line;
        var text = Optional.ofNullable(row.get(q)).or(() -> q.standard().in(units));
        text.ifPresent(t -> answers.put(q, answer(q, cell, t, !row.containsKey(q))));
      }
      all.add(new Answers(sheet + " row " + line, answers));
    }
    return all;
  }

  private Answers form(String sheet, List<Question> questions) {
    var answers = new LinkedHashMap<Question, Answer>();
    int line = 2;
    for (var q : questions) {
      var cell = sheet + "!B" + line++;
      var own = Optional.ofNullable(said.get(key(q)));
      if (own.isPresent() && !(own.get() instanceof String)) {
        answers.put(q, new Answer(cell, own.get(), false));
      } else {
        own.map(o -> (String) o)
            .or(() -> q.standard().in(units))
            .ifPresent(t -> answers.put(q, answer(q, cell, t, own.isEmpty())));
      }
    }
    return new Answers(sheet, answers);
  }

  private Answer answer(Question q, String cell, String text, boolean assumed) {
    Object value =
        switch (q.kind()) {
          case NUMBER, WHOLE -> Figure.choice(cell, q.label(), new BigDecimal(text), q.unit(units));
          case SHARE ->
              Figure.choice(cell, q.label(), new BigDecimal(text), cornerpost.measure.Unit.ONE);
          case MONEY ->
              Figure.choice(
                  cell, q.label(), new BigDecimal(text), cornerpost.measure.Unit.money("USD"));
          case DATE -> LocalDate.parse(text);
          case TEXT -> text;
          case YES_NO -> text.equals("yes");
          case ONE_OF -> option(q, text);
        };
    return new Answer(cell, value, assumed);
  }

  private static Object option(Question q, String text) {
    for (Labelled l : q.options().orElseThrow().getEnumConstants()) {
      if (l.label().equals(text)) return l;
    }
    throw new IllegalArgumentException("No '" + text + "' among " + q.choices());
  }
}
