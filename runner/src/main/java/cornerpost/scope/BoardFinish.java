package cornerpost.scope;

/** What is done to the joints and face of the board. */
public enum BoardFinish implements Labelled {
  TAPE("tape and fill"),
  SKIM("full skim coat"),
  NONE("none");

  private final String label;

  BoardFinish(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
