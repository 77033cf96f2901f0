package cornerpost.scope;

/** What keeps room moisture from the steel. */
public enum VapourControl implements Labelled {
  NONE("none"),
  MEMBRANE("membrane, taped"),
  PAINT("vapour-retarder paint"),
  KRAFT("kraft-faced batts");

  private final String label;

  VapourControl(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
