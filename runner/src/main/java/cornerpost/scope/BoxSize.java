package cornerpost.scope;

/** A size of container: ISO 668 series 1 boxes, and the North American domestic 53 ft box. */
public enum BoxSize implements Labelled {
  TEN("10 ft", "box.10"),
  TEN_HIGH("10 ft high cube", "box.10hc"),
  TWENTY("20 ft", "box.20"),
  TWENTY_HIGH("20 ft high cube", "box.20hc"),
  FORTY("40 ft", "box.40"),
  FORTY_HIGH("40 ft high cube", "box.40hc"),
  FORTY_FIVE("45 ft", "box.45"),
  FORTY_FIVE_HIGH("45 ft high cube", "box.45hc"),
  FIFTY_THREE_HIGH("53 ft high cube (domestic)", "box.53hc");

  private final String label;
  private final String factId;

  BoxSize(String label, String factId) {
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
