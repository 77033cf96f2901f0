package cornerpost.scope;

/** The board on walls and ceilings. */
public enum LiningBoard implements Labelled {
  PLASTERBOARD("plasterboard 12.5 mm", "board.plasterboard"),
  PLYWOOD("plywood 9 mm", "board.plywood"),
  OSB("OSB 11 mm", "board.osb"),
  FIBRE_BOARD("gypsum fibre board 12.5 mm", "board.fibre"),
  PANELLING("timber panelling 12 mm", "board.panelling");

  private final String label;
  private final String factId;

  LiningBoard(String label, String factId) {
    this.label = label;
    this.factId = factId;
  }

  @Override
  public String label() {
    return label;
  }

  /** The stem of its rows in the table of facts. */
  public String factId() {
    return factId;
  }
}
