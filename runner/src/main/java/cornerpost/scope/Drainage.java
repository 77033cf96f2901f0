package cornerpost.scope;

/** How surface and ground water is led away. */
public enum Drainage implements Labelled {
  NONE("none"),
  SWALE("graded fall and swale"),
  FRENCH_DRAIN("french drain");

  private final String label;

  Drainage(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
