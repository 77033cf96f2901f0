package cornerpost.scope;

/** Which of the three prices of the book is used. */
public enum PricePoint implements Labelled {
  LOW("low"),
  LIKELY("likely"),
  HIGH("high");

  private final String label;

  PricePoint(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
