package cornerpost.scope;

/** Boards of the deck. */
public enum DeckBoard implements Labelled {
  SOFTWOOD("treated softwood"),
  HARDWOOD("hardwood"),
  COMPOSITE("composite");

  private final String label;

  DeckBoard(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
