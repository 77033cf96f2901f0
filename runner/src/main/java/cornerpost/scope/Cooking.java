package cornerpost.scope;

/** How food is cooked. */
public enum Cooking implements Labelled {
  ELECTRIC("electric"),
  GAS("gas");

  private final String label;

  Cooking(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
