package cornerpost.scope;

/** What becomes of a month's interest. */
public enum InterestPayment implements Labelled {
  PAID("paid each month"),
  ADDED("added to the loan");

  private final String label;

  InterestPayment(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
