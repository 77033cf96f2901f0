package cornerpost.scope;

/** How much contingency the lender wants kept for the work left. */
public enum ContingencyRule implements Labelled {
  /** The budget's share of the work left; what is above it may go elsewhere. */
  IN_STEP("in step with the work left"),
  /** All of it that no approved change has used. */
  ALL_LEFT("all that is left");

  private final String label;

  ContingencyRule(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
