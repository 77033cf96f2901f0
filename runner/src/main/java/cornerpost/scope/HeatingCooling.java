package cornerpost.scope;

/** How rooms are heated and cooled. */
public enum HeatingCooling implements Labelled {
  SPLIT("split unit, heats and cools"),
  PANEL("electric panel heaters"),
  STOVE("wood stove"),
  SPLIT_AND_PANEL("split unit, panel heaters in closed rooms");

  private final String label;

  HeatingCooling(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
