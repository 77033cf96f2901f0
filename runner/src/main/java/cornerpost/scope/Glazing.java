package cornerpost.scope;

/** The glass of a unit. */
public enum Glazing implements Labelled {
  NONE("none"),
  SINGLE("single"),
  DOUBLE("double"),
  DOUBLE_LOW_E("double, low-e"),
  TRIPLE("triple");

  private final String label;

  Glazing(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
