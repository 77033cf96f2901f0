package cornerpost.scope;

import java.util.List;

/** Choices with a few of their parts exchanged, for tests. */
public final class ScopeEdit {
  private final Scope was;
  private List<Opening> openings;
  private Answers site;
  private List<Quote> quotes;
  private List<OwnItem> ownItems;
  private List<OwnTask> ownTasks;
  private List<OwnLink> ownLinks;
  private List<CrewEntry> crews;
  private List<CalendarEntry> calendars;
  private List<HolidayEntry> holidays;
  private List<ProgressEntry> progress;
  private List<DelayEntry> delays;
  private List<LedgerEntry> ledger;
  private Answers loan;

  private ScopeEdit(Scope s) {
    was = s;
    openings = s.openings();
    site = s.site();
    quotes = s.quotes();
    ownItems = s.ownItems();
    ownTasks = s.ownTasks();
    ownLinks = s.ownLinks();
    crews = s.crews();
    calendars = s.calendars();
    holidays = s.holidays();
    progress = s.progress();
    delays = s.delays();
    ledger = s.ledger();
    loan = s.loan();
  }

  public static ScopeEdit of(Scope s) {
    return new ScopeEdit(s);
  }

  public ScopeEdit openings(List<Opening> now) {
    openings = now;
    return this;
  }

  public ScopeEdit site(Answers now) {
    site = now;
    return this;
  }

  public ScopeEdit quotes(List<Quote> now) {
    quotes = now;
    return this;
  }

  public ScopeEdit ownItems(List<OwnItem> now) {
    ownItems = now;
    return this;
  }

  public ScopeEdit ownTasks(List<OwnTask> now) {
    ownTasks = now;
    return this;
  }

  public ScopeEdit ownLinks(List<OwnLink> now) {
    ownLinks = now;
    return this;
  }

  public ScopeEdit crews(List<CrewEntry> now) {
    crews = now;
    return this;
  }

  public ScopeEdit calendars(List<CalendarEntry> now) {
    calendars = now;
    return this;
  }

  public ScopeEdit holidays(List<HolidayEntry> now) {
    holidays = now;
    return this;
  }

  public ScopeEdit progress(List<ProgressEntry> now) {
    progress = now;
    return this;
  }

  public ScopeEdit delays(List<DelayEntry> now) {
    delays = now;
    return this;
  }

  public ScopeEdit ledger(List<LedgerEntry> now) {
    ledger = now;
    return this;
  }

  public ScopeEdit loan(Answers now) {
    loan = now;
    return this;
  }

  public Scope scope() {
    return new Scope(
        was.units(),
        was.project(),
        was.boxes(),
        was.rooms(),
        openings,
        site,
        was.deckAndRoof(),
        was.envelope(),
        was.services(),
        was.finishes(),
        was.assignments(),
        quotes,
        ownItems,
        ownTasks,
        ownLinks,
        crews,
        calendars,
        holidays,
        progress,
        delays,
        ledger,
        loan,
        was.options(),
        was.entered(),
        was.baselines());
  }
}
