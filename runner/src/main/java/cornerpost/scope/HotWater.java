package cornerpost.scope;

/** How water is heated. */
public enum HotWater implements Labelled {
  TANK("electric tank"),
  HEAT_PUMP("heat-pump tank"),
  ELECTRIC_INSTANT("electric, instantaneous"),
  GAS_INSTANT("gas, instantaneous");

  private final String label;

  HotWater(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
