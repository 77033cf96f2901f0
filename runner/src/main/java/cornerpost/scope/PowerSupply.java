package cornerpost.scope;

/** Where electricity comes from. */
public enum PowerSupply implements Labelled {
  GRID("grid connection"),
  SOLAR("solar panels and battery"),
  BOTH("grid with solar panels");

  private final String label;

  PowerSupply(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
