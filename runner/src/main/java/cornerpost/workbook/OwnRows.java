package cornerpost.workbook;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.Answers;
import cornerpost.scope.Assignment;
import cornerpost.scope.CalendarEntry;
import cornerpost.scope.CalendarQuestions;
import cornerpost.scope.CrewEntry;
import cornerpost.scope.CrewQuestions;
import cornerpost.scope.DelayEntry;
import cornerpost.scope.DelayQuestions;
import cornerpost.scope.DurationUnit;
import cornerpost.scope.HolidayEntry;
import cornerpost.scope.HolidayQuestions;
import cornerpost.scope.LedgerEntry;
import cornerpost.scope.LedgerQuestions;
import cornerpost.scope.LinkRelation;
import cornerpost.scope.OwnItem;
import cornerpost.scope.OwnItemQuestions;
import cornerpost.scope.OwnLink;
import cornerpost.scope.OwnLinkQuestions;
import cornerpost.scope.OwnTask;
import cornerpost.scope.OwnTaskQuestions;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Party;
import cornerpost.scope.ProgressEntry;
import cornerpost.scope.ProgressQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.Quote;
import cornerpost.scope.QuoteFor;
import cornerpost.scope.QuoteQuestions;
import cornerpost.scope.Stage;
import cornerpost.scope.Trade;
import cornerpost.scope.WorkQuestions;
import cornerpost.trace.Figure;
import cornerpost.workbook.TableReader.Table;
import cornerpost.workbook.TableReader.TableRow;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes records of the rows of the owner's tables. A row that lacks what it cannot do without has
 * been reported already and is left out.
 */
final class OwnRows {
  private static final Unit MONEY_AN_HOUR = Unit.base(Dimension.MONEY.per(Dimension.TIME));

  private final EntryReader entries;
  private final FaultLog faults;

  OwnRows(EntryReader entries, FaultLog faults) {
    this.entries = entries;
    this.faults = faults;
  }

  private static List<Answers> whole(List<Answers> rows, Question... needed) {
    return rows.stream().filter(r -> List.of(needed).stream().allMatch(r::has)).toList();
  }

  private static Optional<BigDecimal> number(Answers row, Question question) {
    return row.findFigure(question).map(Figure::value);
  }

  Map<Trade, Assignment> assignments(List<Answers> rows) {
    var byTrade = new EnumMap<Trade, Assignment>(Trade.class);
    for (var row :
        whole(rows, WorkQuestions.TRADE, WorkQuestions.PARTY, WorkQuestions.OWNER_SHARE)) {
      var trade = row.option(WorkQuestions.TRADE, Trade.class);
      var party = row.option(WorkQuestions.PARTY, Party.class);
      var cell = row.cell(WorkQuestions.PARTY);
      var assignment =
          new Assignment(
              trade, party, ownerShare(row, party), row.findFigure(WorkQuestions.PEOPLE), cell);
      if (byTrade.putIfAbsent(trade, assignment) != null) {
        faults.faultAt(
            row.cell(WorkQuestions.TRADE),
            "a second row for '" + trade.label() + "'",
            "expected one row for each package of work");
      }
    }
    for (var trade : Trade.values()) {
      byTrade.putIfAbsent(
          trade,
          new Assignment(
              trade,
              Party.HIRED,
              Figure.constant("0", Unit.ONE),
              Optional.empty(),
              OwnerSheet.WHO_DOES_WHAT.title()));
    }
    return byTrade;
  }

  private static Figure ownerShare(Answers row, Party party) {
    return switch (party) {
      case OWNER -> Figure.constant("1", Unit.ONE);
      case HIRED -> Figure.constant("0", Unit.ONE);
      case MIXED -> row.figure(WorkQuestions.OWNER_SHARE);
    };
  }

  List<Quote> quotes(List<Answers> rows) {
    // One whose amount cannot be read is a fault, and still a quote for its line.
    return whole(rows, QuoteQuestions.LINE).stream()
        .filter(r -> r.has(QuoteQuestions.PRICE_FOR) && r.has(QuoteQuestions.USE))
        .map(
            r ->
                new Quote(
                    r.text(QuoteQuestions.LINE),
                    r.findText(QuoteQuestions.SUPPLIER).orElse(""),
                    r.option(QuoteQuestions.PRICE_FOR, QuoteFor.class),
                    number(r, QuoteQuestions.AMOUNT).orElse(BigDecimal.ZERO),
                    r.findDate(QuoteQuestions.DATE),
                    r.findDate(QuoteQuestions.VALID_UNTIL),
                    r.yes(QuoteQuestions.USE),
                    r.cell(
                        r.has(QuoteQuestions.AMOUNT)
                            ? QuoteQuestions.AMOUNT
                            : QuoteQuestions.LINE)))
        .toList();
  }

  List<OwnItem> items(List<Answers> rows) {
    return whole(
            rows,
            OwnItemQuestions.ID,
            OwnItemQuestions.STAGE,
            OwnItemQuestions.DESCRIPTION,
            OwnItemQuestions.QUANTITY,
            OwnItemQuestions.UNIT,
            OwnItemQuestions.RATE,
            OwnItemQuestions.PARTY,
            OwnItemQuestions.TAXED)
        .stream()
        .map(
            r ->
                new OwnItem(
                    r.text(OwnItemQuestions.ID),
                    r.option(OwnItemQuestions.STAGE, Stage.class),
                    r.text(OwnItemQuestions.DESCRIPTION),
                    r.figure(OwnItemQuestions.QUANTITY),
                    r.text(OwnItemQuestions.UNIT),
                    r.figure(OwnItemQuestions.RATE),
                    r.option(OwnItemQuestions.PARTY, Party.class),
                    r.yes(OwnItemQuestions.TAXED),
                    r.cell(OwnItemQuestions.ID)))
        .toList();
  }

  List<CrewEntry> crews(List<Answers> rows) {
    return whole(rows, CrewQuestions.NAME, CrewQuestions.AVAILABLE).stream()
        .map(
            r ->
                new CrewEntry(
                    r.text(CrewQuestions.NAME),
                    r.whole(CrewQuestions.AVAILABLE),
                    r.findText(CrewQuestions.CALENDAR),
                    r.findFigure(CrewQuestions.RATE).map(rate -> anHour(r, rate)),
                    r.cell(CrewQuestions.NAME)))
        .toList();
  }

  private static Figure anHour(Answers row, Figure rate) {
    return Figure.choice(
        row.cell(CrewQuestions.RATE),
        "rate of " + row.text(CrewQuestions.NAME),
        rate.value(),
        MONEY_AN_HOUR);
  }

  List<OwnTask> tasks(Table table, List<CrewEntry> crews) {
    var crewOf = crewColumns(table, crews);
    var tasks = new ArrayList<OwnTask>();
    for (var row : table.rows()) {
      var a = row.answers();
      var demands = demands(table, row, crewOf);
      if (!a.has(OwnTaskQuestions.ID)
          || !a.has(OwnTaskQuestions.DURATION)
          || !a.has(OwnTaskQuestions.DURATION_UNIT)) {
        continue;
      }
      tasks.add(
          new OwnTask(
              a.text(OwnTaskQuestions.ID),
              a.findText(OwnTaskQuestions.NAME).orElse(a.text(OwnTaskQuestions.ID)),
              a.figure(OwnTaskQuestions.DURATION).value(),
              a.option(OwnTaskQuestions.DURATION_UNIT, DurationUnit.class),
              number(a, OwnTaskQuestions.OPTIMISTIC),
              number(a, OwnTaskQuestions.PESSIMISTIC),
              a.findText(OwnTaskQuestions.CALENDAR),
              a.findDate(OwnTaskQuestions.NOT_BEFORE),
              a.findDate(OwnTaskQuestions.DEADLINE),
              demands,
              a.cell(OwnTaskQuestions.ID)));
    }
    return tasks;
  }

  /**
   * The columns headed with a crew's name. A column of another name that holds a number would be a
   * demand for a crew nobody has: it is reported once; one that holds text is the owner's own.
   */
  private Map<String, Integer> crewColumns(Table table, List<CrewEntry> crews) {
    var found = new LinkedHashMap<String, Integer>();
    table
        .others()
        .forEach(
            (name, column) -> {
              var crew = crews.stream().filter(c -> Plain.same(c.name(), name)).findFirst();
              if (crew.isPresent()) {
                found.put(crew.get().name(), column);
                return;
              }
              table.rows().stream()
                  .filter(r -> table.held(r.row(), column).kind() == Held.Kind.NUMBER)
                  .findFirst()
                  .ifPresent(
                      r ->
                          faults.fault(
                              table.place(r.row(), column),
                              "a number in column '" + name + "', which is no crew",
                              "expected a row for crew '" + name + "' on sheet 'Crews'"));
            });
    return found;
  }

  private Map<String, Integer> demands(Table table, TableRow row, Map<String, Integer> columns) {
    var demands = new LinkedHashMap<String, Integer>();
    columns.forEach(
        (crew, column) -> {
          var held = table.held(row.row(), column);
          var place = table.place(row.row(), column);
          entries.enter(OwnerSheet.OWN_TASKS, place, crew, held);
          if (held.isNothing()) return;
          boolean whole =
              held.kind() == Held.Kind.NUMBER
                  && held.number().signum() >= 0
                  && held.number().scale() <= 0
                  && held.number().compareTo(BigDecimal.valueOf(10_000)) <= 0;
          if (!whole) {
            faults.fault(
                place,
                held.shown() + " (" + crew + ")",
                "expected a whole number from 0 to 10000, how many of the crew the task needs");
          } else if (held.number().signum() > 0) {
            demands.put(crew, held.number().intValueExact());
          }
        });
    return demands;
  }

  List<OwnLink> links(List<Answers> rows) {
    return whole(
            rows,
            OwnLinkQuestions.BEFORE,
            OwnLinkQuestions.AFTER,
            OwnLinkQuestions.RELATION,
            OwnLinkQuestions.LAG,
            OwnLinkQuestions.LAG_UNIT)
        .stream()
        .map(
            r ->
                new OwnLink(
                    r.text(OwnLinkQuestions.BEFORE),
                    r.text(OwnLinkQuestions.AFTER),
                    r.option(OwnLinkQuestions.RELATION, LinkRelation.class),
                    r.figure(OwnLinkQuestions.LAG).value(),
                    r.option(OwnLinkQuestions.LAG_UNIT, DurationUnit.class),
                    r.cell(OwnLinkQuestions.BEFORE),
                    r.cell(OwnLinkQuestions.AFTER)))
        .toList();
  }

  List<CalendarEntry> calendars(List<Answers> rows) {
    var week = CalendarQuestions.WEEK.toArray(Question[]::new);
    return whole(whole(rows, CalendarQuestions.NAME, CalendarQuestions.HOLIDAYS_KEPT), week)
        .stream()
        .map(
            r ->
                new CalendarEntry(
                    r.text(CalendarQuestions.NAME),
                    CalendarQuestions.WEEK.stream().map(d -> r.figure(d).value()).toList(),
                    r.yes(CalendarQuestions.HOLIDAYS_KEPT),
                    r.cell(CalendarQuestions.NAME)))
        .toList();
  }

  List<HolidayEntry> holidays(List<Answers> rows) {
    return whole(rows, HolidayQuestions.DATE).stream()
        .map(
            r ->
                new HolidayEntry(
                    r.date(HolidayQuestions.DATE),
                    r.findText(HolidayQuestions.NAME).orElse(""),
                    r.cell(HolidayQuestions.DATE)))
        .toList();
  }

  List<ProgressEntry> progress(List<Answers> rows) {
    return whole(rows, ProgressQuestions.TASK).stream()
        .map(
            r ->
                new ProgressEntry(
                    r.text(ProgressQuestions.TASK),
                    r.findDate(ProgressQuestions.ACTUAL_START),
                    r.findDate(ProgressQuestions.ACTUAL_FINISH),
                    number(r, ProgressQuestions.REMAINING),
                    number(r, ProgressQuestions.COMPLETE),
                    r.findDate(ProgressQuestions.BOOKED),
                    r.cell(ProgressQuestions.TASK)))
        .toList();
  }

  List<DelayEntry> delays(List<Answers> rows) {
    return whole(rows, DelayQuestions.EVENT, DelayQuestions.DAYS).stream()
        .map(
            r ->
                new DelayEntry(
                    r.text(DelayQuestions.EVENT),
                    r.whole(DelayQuestions.DAYS),
                    r.findText(DelayQuestions.CAUSE).orElse(""),
                    r.findText(DelayQuestions.BORNE_BY).orElse(""),
                    r.cell(DelayQuestions.EVENT)))
        .toList();
  }

  List<LedgerEntry> ledger(List<Answers> rows) {
    return whole(rows, LedgerQuestions.LINE).stream()
        .map(
            r ->
                new LedgerEntry(
                    r.text(LedgerQuestions.LINE),
                    number(r, LedgerQuestions.ORIGINAL_BUDGET),
                    number(r, LedgerQuestions.ORIGINAL_QUANTITY),
                    orNothing(r, LedgerQuestions.CHANGES),
                    orNothing(r, LedgerQuestions.COMMITTED),
                    orNothing(r, LedgerQuestions.INVOICED),
                    orNothing(r, LedgerQuestions.PAID),
                    orNothing(r, LedgerQuestions.RETAINED),
                    number(r, LedgerQuestions.IN_PLACE),
                    orNothing(r, LedgerQuestions.STORED),
                    orNothing(r, LedgerQuestions.DRAWN),
                    r.cell(LedgerQuestions.LINE)))
        .toList();
  }

  private static BigDecimal orNothing(Answers row, Question question) {
    return number(row, question).orElse(BigDecimal.ZERO);
  }
}
