package cornerpost.plan;

import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.Answer;
import cornerpost.scope.Answers;
import cornerpost.scope.CalendarEntry;
import cornerpost.scope.CrewEntry;
import cornerpost.scope.DelayEntry;
import cornerpost.scope.DurationUnit;
import cornerpost.scope.GeneratedTasks;
import cornerpost.scope.HolidayEntry;
import cornerpost.scope.LinkRelation;
import cornerpost.scope.OwnItem;
import cornerpost.scope.OwnLink;
import cornerpost.scope.OwnTask;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Party;
import cornerpost.scope.ProgressEntry;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.Scope;
import cornerpost.scope.Stage;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Scopes of own tasks alone, put together by hand; rows of the sheets begin in row 2. */
final class OwnScope {
  static final LocalDate MONDAY = LocalDate.of(2026, 11, 2);

  private final Map<Question, Object> project = new LinkedHashMap<>();
  private final Map<Question, Object> loan = new LinkedHashMap<>();
  private final Map<Question, Object> options = new LinkedHashMap<>();
  private final Map<String, OwnTask> tasks = new LinkedHashMap<>();
  private final List<OwnLink> links = new ArrayList<>();
  private final List<CrewEntry> crews = new ArrayList<>();
  private final List<CalendarEntry> calendars = new ArrayList<>();
  private final List<HolidayEntry> holidays = new ArrayList<>();
  private final List<ProgressEntry> progress = new ArrayList<>();
  private final List<DelayEntry> delays = new ArrayList<>();
  private final List<OwnItem> items = new ArrayList<>();

  OwnScope() {
    project.put(ProjectQuestions.GENERATED_TASKS, GeneratedTasks.NONE);
    project.put(ProjectQuestions.START, MONDAY);
    project.put(ProjectQuestions.CALENDAR, "Every day");
  }

  OwnScope project(Question question, Object value) {
    project.put(question, value);
    return this;
  }

  OwnScope loan(Question question, Object value) {
    loan.put(question, value);
    return this;
  }

  OwnScope options(Question question, Object value) {
    options.put(question, value);
    return this;
  }

  OwnScope task(String id, String name, String duration, DurationUnit unit) {
    var cell = "Own tasks!A" + (tasks.size() + 2);
    tasks.put(
        id,
        new OwnTask(
            id,
            name,
            new BigDecimal(duration),
            unit,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Map.of(),
            cell));
    return this;
  }

  OwnScope task(String id, int days) {
    return task(id, "task " + id, "" + days, DurationUnit.DAYS);
  }

  OwnScope calendar(String taskId, String calendar) {
    var t = tasks.get(taskId);
    return put(t, Optional.of(calendar), t.notBefore(), t.deadline(), t.demands());
  }

  OwnScope notBefore(String taskId, LocalDate day) {
    var t = tasks.get(taskId);
    return put(t, t.calendar(), Optional.of(day), t.deadline(), t.demands());
  }

  OwnScope deadline(String taskId, LocalDate day) {
    var t = tasks.get(taskId);
    return put(t, t.calendar(), t.notBefore(), Optional.of(day), t.demands());
  }

  OwnScope needs(String taskId, String crew, int number) {
    var t = tasks.get(taskId);
    var demands = new TreeMap<>(t.demands());
    demands.put(crew, number);
    return put(t, t.calendar(), t.notBefore(), t.deadline(), demands);
  }

  private OwnScope put(
      OwnTask t,
      Optional<String> calendar,
      Optional<LocalDate> notBefore,
      Optional<LocalDate> deadline,
      Map<String, Integer> demands) {
    tasks.put(
        t.id(),
        new OwnTask(
            t.id(),
            t.name(),
            t.duration(),
            t.unit(),
            t.optimistic(),
            t.pessimistic(),
            calendar,
            notBefore,
            deadline,
            demands,
            t.cell()));
    return this;
  }

  OwnScope link(String before, String after) {
    return link(before, after, LinkRelation.FINISH_TO_START, "0", DurationUnit.DAYS);
  }

  OwnScope link(String before, String after, LinkRelation relation, String lag, DurationUnit unit) {
    links.add(
        new OwnLink(
            before,
            after,
            relation,
            new BigDecimal(lag),
            unit,
            "Own links!A" + (links.size() + 2),
            "Own links!B" + (links.size() + 2)));
    return this;
  }

  OwnScope crew(String name, int available) {
    return crew(name, available, "", "");
  }

  /** Rate for an hour; blank for none. */
  OwnScope crew(String name, int available, String calendar, String rate) {
    var cell = "Crews!A" + (crews.size() + 2);
    crews.add(
        new CrewEntry(
            name,
            available,
            calendar.isBlank() ? Optional.empty() : Optional.of(calendar),
            rate.isBlank()
                ? Optional.empty()
                : Optional.of(Figure.choice(cell, "rate", new BigDecimal(rate), Unit.ONE)),
            cell));
    return this;
  }

  OwnScope week(String name, boolean keepsHolidays, int... hours) {
    var list = new ArrayList<BigDecimal>();
    for (int h : hours) list.add(BigDecimal.valueOf(h));
    calendars.add(
        new CalendarEntry(name, list, keepsHolidays, "Calendars!A" + (calendars.size() + 2)));
    return this;
  }

  OwnScope holiday(LocalDate day) {
    holidays.add(new HolidayEntry(day, "holiday", "Holidays!A" + (holidays.size() + 2)));
    return this;
  }

  OwnScope done(String taskId, LocalDate start, LocalDate finish) {
    return progress(
        taskId, Optional.of(start), Optional.of(finish), Optional.empty(), Optional.empty());
  }

  OwnScope started(String taskId, LocalDate start, String remaining) {
    return progress(
        taskId,
        Optional.of(start),
        Optional.empty(),
        Optional.of(new BigDecimal(remaining)),
        Optional.empty());
  }

  OwnScope booked(String taskId, LocalDate day) {
    var cell = "Progress!A" + (progress.size() + 2);
    progress.add(
        new ProgressEntry(
            taskId,
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(day),
            cell));
    return this;
  }

  OwnScope progress(
      String taskId,
      Optional<LocalDate> start,
      Optional<LocalDate> finish,
      Optional<BigDecimal> remaining,
      Optional<BigDecimal> complete) {
    progress.add(
        new ProgressEntry(
            taskId, start, finish, remaining, complete, "Progress!A" + (progress.size() + 2)));
    return this;
  }

  OwnScope delay(String event, int days, String cause) {
    delays.add(new DelayEntry(event, days, cause, "", "Delays!A" + (delays.size() + 2)));
    return this;
  }

  OwnScope item(String id, Stage stage, String amount) {
    var cell = "Own items!A" + (items.size() + 2);
    items.add(
        new OwnItem(
            id,
            stage,
            id,
            Figure.count(1),
            "lot",
            Figure.choice(cell, id, new BigDecimal(amount), Unit.money("USD")),
            Party.HIRED,
            false,
            cell));
    return this;
  }

  Scope scope() {
    var none = Answers.none("not asked");
    return new Scope(
        UnitSystem.METRIC,
        answers(OwnerSheet.PROJECT, project),
        List.of(),
        List.of(),
        List.of(),
        none,
        none,
        none,
        none,
        none,
        Map.of(),
        List.of(),
        items,
        new ArrayList<>(tasks.values()),
        links,
        crews,
        calendars,
        holidays,
        progress,
        delays,
        answers(OwnerSheet.LOAN, loan),
        answers(OwnerSheet.OPTIONS, options),
        List.of());
  }

  private static Answers answers(OwnerSheet sheet, Map<Question, Object> given) {
    var answers = new HashMap<Question, Answer>();
    int row = 1;
    for (var entry : given.entrySet()) {
      var cell = sheet.title() + "!B" + row++;
      answers.put(entry.getKey(), new Answer(cell, value(entry, cell), false));
    }
    return new Answers(sheet.title(), answers);
  }

  private static Object value(Map.Entry<Question, Object> entry, String cell) {
    if (!(entry.getValue() instanceof BigDecimal number)) return entry.getValue();
    var q = entry.getKey();
    var unit = q.kind() == Question.Kind.MONEY ? Unit.money("USD") : Unit.ONE;
    return Figure.choice(cell, q.label(), number, unit);
  }
}
