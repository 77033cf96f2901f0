package cornerpost.scope;

/** Who does a package of work. */
public enum Party implements Labelled {
  OWNER("owner"),
  HIRED("hired"),
  MIXED("mixed");

  private final String label;

  Party(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
