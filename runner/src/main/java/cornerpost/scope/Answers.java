package cornerpost.scope;

import cornerpost.measure.Unit;
import cornerpost.trace.Figure;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** The answers of one form sheet, or of one row of a table sheet. Immutable. */
public final class Answers {
  private final String place;
  private final Map<Question, Answer> answers;

  /**
   * @param place what they answer for, for messages: the sheet, or sheet and row
   */
  public Answers(String place, Map<Question, Answer> answers) {
    this.place = place;
    this.answers = new LinkedHashMap<>(answers);
  }

  public static Answers none(String place) {
    return new Answers(place, Map.of());
  }

  public String place() {
    return place;
  }

  public Map<Question, Answer> all() {
    return Map.copyOf(answers);
  }

  public boolean has(Question question) {
    return answers.containsKey(question);
  }

  public Optional<Answer> find(Question question) {
    return Optional.ofNullable(answers.get(question));
  }

  private Object get(Question question) {
    return find(question)
        .orElseThrow(
            () -> new IllegalStateException(place + " has no answer to '" + question.label() + "'"))
        .value();
  }

  /** A number as a traceable figure. */
  public Figure figure(Question question) {
    return (Figure) get(question);
  }

  public Optional<Figure> findFigure(Question question) {
    return find(question).map(a -> (Figure) a.value());
  }

  public int whole(Question question) {
    return figure(question).in(Unit.ONE).intValueExact();
  }

  public boolean yes(Question question) {
    return (Boolean) get(question);
  }

  public String text(Question question) {
    return (String) get(question);
  }

  public Optional<String> findText(Question question) {
    return find(question).map(a -> (String) a.value());
  }

  public LocalDate date(Question question) {
    return (LocalDate) get(question);
  }

  public Optional<LocalDate> findDate(Question question) {
    return find(question).map(a -> (LocalDate) a.value());
  }

  public <E extends Labelled> E option(Question question, Class<E> type) {
    return type.cast(get(question));
  }

  /** The cell that holds the answer. */
  public String cell(Question question) {
    return find(question).map(Answer::cell).orElse(place);
  }
}
