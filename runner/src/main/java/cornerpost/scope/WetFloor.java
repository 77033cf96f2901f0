package cornerpost.scope;

/** What is walked on in wet rooms. */
public enum WetFloor implements Labelled {
  TILE("tiles"),
  VINYL("sheet vinyl");

  private final String label;

  WetFloor(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
