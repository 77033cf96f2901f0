package cornerpost.scope;

/** Where water comes from. */
public enum WaterSupply implements Labelled {
  MAINS("mains connection"),
  WELL("well"),
  TANK("tank, delivered or rainwater");

  private final String label;

  WaterSupply(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
