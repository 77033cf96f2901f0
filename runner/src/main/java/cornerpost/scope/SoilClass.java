package cornerpost.scope;

/** Soil classes of the presumptive bearing values in IRC table R401.4.1. */
public enum SoilClass implements Labelled {
  BEDROCK("crystalline bedrock", "soil.bedrock"),
  ROCK("sedimentary or foliated rock", "soil.rock"),
  GRAVEL("sandy gravel or gravel", "soil.gravel"),
  SAND("sand, silty or clayey sand or gravel", "soil.sand"),
  CLAY("clay, sandy or silty clay, silt", "soil.clay");

  private final String label;
  private final String factId;

  SoilClass(String label, String factId) {
    this.label = label;
    this.factId = factId;
  }

  @Override
  public String label() {
    return label;
  }

  /** The stem of its rows in the table of facts. */
  public String factId() {
    return factId;
  }
}
