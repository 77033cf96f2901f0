package cornerpost.scope;

/** What happens to the cargo doors. */
public enum CargoDoors implements Labelled {
  KEEP("kept, working"),
  WELD_SHUT("welded shut"),
  REMOVE("removed");

  private final String label;

  CargoDoors(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
