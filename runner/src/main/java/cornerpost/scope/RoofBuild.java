package cornerpost.scope;

/** What is done with the roof of the box. */
public enum RoofBuild implements Labelled {
  BARE("left as it is"),
  COATING("coated"),
  OVER_ROOF("metal over-roof on purlins"),
  MEMBRANE("insulation and membrane"),
  GREEN("planted roof");

  private final String label;

  RoofBuild(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
