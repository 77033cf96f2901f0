package cornerpost.scope;

/** What a draw of the loan is tied to. */
public enum DrawBasis implements Labelled {
  STAGE("stage finished"),
  MONTH("month"),
  INSPECTED("inspected share");

  private final String label;

  DrawBasis(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
