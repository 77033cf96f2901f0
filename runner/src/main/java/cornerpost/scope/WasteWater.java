package cornerpost.scope;

/** Where waste water goes. */
public enum WasteWater implements Labelled {
  SEWER("sewer connection"),
  SEPTIC("septic tank and field"),
  HOLDING("holding tank");

  private final String label;

  WasteWater(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
