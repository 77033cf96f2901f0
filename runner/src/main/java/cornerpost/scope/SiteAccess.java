package cornerpost.scope;

/** How the box is brought onto its supports. */
public enum SiteAccess implements Labelled {
  TILT_BED("tilt-bed truck"),
  CRANE("crane");

  private final String label;

  SiteAccess(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
