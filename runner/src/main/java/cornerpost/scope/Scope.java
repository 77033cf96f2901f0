package cornerpost.scope;

import cornerpost.measure.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything the owner chose and entered, checked cell by cell.
 *
 * @param units of the workbook; all figures are already in base units
 * @param project answers of sheet Project; the other form sheets likewise
 * @param assignments one for each trade
 * @param entered every answered cell of the owner's sheets that takes part in the plan, by label,
 *     with what it holds as text: what the stale mark compares
 * @param baselines rows of earlier plans that were kept, the first one first
 */
public record Scope(
    UnitSystem units,
    Answers project,
    List<Box> boxes,
    List<Room> rooms,
    List<Opening> openings,
    Answers site,
    Answers deckAndRoof,
    Answers envelope,
    Answers services,
    Answers finishes,
    Map<Trade, Assignment> assignments,
    List<Quote> quotes,
    List<OwnItem> ownItems,
    List<OwnTask> ownTasks,
    List<OwnLink> ownLinks,
    List<CrewEntry> crews,
    List<CalendarEntry> calendars,
    List<HolidayEntry> holidays,
    List<ProgressEntry> progress,
    List<DelayEntry> delays,
    List<LedgerEntry> ledger,
    Answers loan,
    Answers options,
    List<EnteredCell> entered,
    List<BaselineRow> baselines) {

  /** An entry as it stood when the workbook was read. */
  public record EnteredCell(OwnerSheet sheet, String cell, String label, Object value) {}

  public Scope {
    boxes = List.copyOf(boxes);
    rooms = List.copyOf(rooms);
    openings = List.copyOf(openings);
    assignments = Map.copyOf(assignments);
    quotes = List.copyOf(quotes);
    ownItems = List.copyOf(ownItems);
    ownTasks = List.copyOf(ownTasks);
    ownLinks = List.copyOf(ownLinks);
    crews = List.copyOf(crews);
    calendars = List.copyOf(calendars);
    holidays = List.copyOf(holidays);
    progress = List.copyOf(progress);
    delays = List.copyOf(delays);
    ledger = List.copyOf(ledger);
    entered = List.copyOf(entered);
    baselines = List.copyOf(baselines);
  }

  /** One without a cost ledger and without kept plans. */
  public Scope(
      UnitSystem units,
      Answers project,
      List<Box> boxes,
      List<Room> rooms,
      List<Opening> openings,
      Answers site,
      Answers deckAndRoof,
      Answers envelope,
      Answers services,
      Answers finishes,
      Map<Trade, Assignment> assignments,
      List<Quote> quotes,
      List<OwnItem> ownItems,
      List<OwnTask> ownTasks,
      List<OwnLink> ownLinks,
      List<CrewEntry> crews,
      List<CalendarEntry> calendars,
      List<HolidayEntry> holidays,
      List<ProgressEntry> progress,
      List<DelayEntry> delays,
      Answers loan,
      Answers options,
      List<EnteredCell> entered) {
    this(
        units,
        project,
        boxes,
        rooms,
        openings,
        site,
        deckAndRoof,
        envelope,
        services,
        finishes,
        assignments,
        quotes,
        ownItems,
        ownTasks,
        ownLinks,
        crews,
        calendars,
        holidays,
        progress,
        delays,
        List.of(),
        loan,
        options,
        entered,
        List.of());
  }

  /** The same choices before anything has happened. */
  public Scope unbegun() {
    return new Scope(
        units,
        project,
        boxes,
        rooms,
        openings,
        site,
        deckAndRoof,
        envelope,
        services,
        finishes,
        assignments,
        quotes,
        ownItems,
        ownTasks,
        ownLinks,
        crews,
        calendars,
        holidays,
        List.of(),
        List.of(),
        List.of(),
        loan,
        options,
        entered,
        List.of());
  }

  public boolean generatesTasks() {
    return project.option(ProjectQuestions.GENERATED_TASKS, GeneratedTasks.class)
        == GeneratedTasks.ALL;
  }

  public Optional<Box> box(String id) {
    return boxes.stream().filter(b -> b.id().equals(id)).findFirst();
  }

  /** The rooms of a box in line from its cargo-door end. */
  public List<Room> roomsOf(Box box) {
    return rooms.stream().filter(r -> r.box().equals(box.id())).toList();
  }

  public List<Opening> openingsOf(Box box) {
    return openings.stream().filter(o -> o.box().equals(box.id())).toList();
  }

  public List<Opening> openingsIn(Box box, Wall wall) {
    return openingsOf(box).stream().filter(o -> o.wall() == wall).toList();
  }

  public Assignment assignment(Trade trade) {
    return assignments.get(trade);
  }
}
