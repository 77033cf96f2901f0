package cornerpost.scope;

/** How the work is permitted. */
public enum PermitClass implements Labelled {
  FULL("full building permit"),
  MINOR("minor works permit"),
  NONE("no permit needed");

  private final String label;

  PermitClass(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
