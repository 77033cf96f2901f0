package cornerpost.scope;

/** The board on walls and ceilings. */
public enum LiningBoard implements Labelled {
  PLASTERBOARD("plasterboard 12.5 mm (1/2 in)", "board.plasterboard"),
  PLYWOOD("plywood 9 mm (3/8 in)", "board.plywood"),
  OSB("OSB 11 mm (7/16 in)", "board.osb"),
  FIBRE_BOARD("gypsum fibre board 12.5 mm (1/2 in)", "board.fibre"),
  PANELLING("timber panelling 12 mm (1/2 in)", "board.panelling");

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
