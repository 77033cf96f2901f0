package cornerpost.scope;

/** The sheets the owner fills in, in reading order. */
public enum OwnerSheet {
  START_HERE("Start here", Shape.TEXT, Need.NEVER),
  PROJECT("Project", Shape.FORM, Need.ALWAYS),
  CONTAINERS("Containers", Shape.TABLE, Need.HOUSE),
  ROOMS("Rooms", Shape.TABLE, Need.HOUSE),
  OPENINGS("Openings", Shape.TABLE, Need.HOUSE),
  SITE("Site and foundation", Shape.FORM, Need.HOUSE),
  DECK_AND_ROOF("Deck and roof", Shape.FORM, Need.HOUSE),
  ENVELOPE("Envelope", Shape.FORM, Need.HOUSE),
  SERVICES("Services", Shape.FORM, Need.HOUSE),
  FINISHES("Finishes", Shape.FORM, Need.HOUSE),
  WHO_DOES_WHAT("Who does what", Shape.TABLE, Need.HOUSE),
  QUOTES("Quotes", Shape.TABLE, Need.NEVER),
  OWN_ITEMS("Own items", Shape.TABLE, Need.NEVER),
  OWN_TASKS("Own tasks", Shape.TABLE, Need.NEVER),
  OWN_LINKS("Own links", Shape.TABLE, Need.NEVER),
  CREWS("Crews", Shape.TABLE, Need.NEVER),
  CALENDARS("Calendars", Shape.TABLE, Need.NEVER),
  HOLIDAYS("Holidays", Shape.TABLE, Need.NEVER),
  PROGRESS("Progress", Shape.TABLE, Need.NEVER),
  DELAYS("Delays", Shape.TABLE, Need.NEVER),
  COST_LEDGER("Cost ledger", Shape.TABLE, Need.NEVER),
  LOAN("Loan", Shape.FORM, Need.NEVER),
  OPTIONS("Options", Shape.FORM, Need.NEVER);

  /** A form has a label with the entry to its right; a table has one header row. */
  public enum Shape {
    TEXT,
    FORM,
    TABLE
  }

  /** When the sheet must be there. */
  public enum Need {
    ALWAYS,
    /** Where the plan of a house is generated; not where only own tasks are planned. */
    HOUSE,
    NEVER
  }

  private final String title;
  private final Shape shape;
  private final Need need;

  OwnerSheet(String title, Shape shape, Need need) {
    this.title = title;
    this.shape = shape;
    this.need = need;
  }

  /** The tab's name. */
  public String title() {
    return title;
  }

  public Shape shape() {
    return shape;
  }

  public Need need() {
    return need;
  }
}
