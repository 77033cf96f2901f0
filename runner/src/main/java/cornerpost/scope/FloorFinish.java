package cornerpost.scope;

/** What is walked on. */
public enum FloorFinish implements Labelled {
  SEALED("sealed plywood, no covering"),
  VINYL("vinyl plank"),
  LAMINATE("laminate"),
  WOOD("engineered wood"),
  TILE("tiles");

  private final String label;

  FloorFinish(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
