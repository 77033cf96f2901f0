package cornerpost.scope;

/** The condition a box is bought in. */
public enum BoxCondition implements Labelled {
  FACTORY_NEW("factory new"),
  ONE_TRIP("one trip"),
  CARGO_WORTHY("used, cargo worthy"),
  WIND_TIGHT("used, wind and watertight"),
  AS_IS("used, as is");

  private final String label;

  BoxCondition(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
