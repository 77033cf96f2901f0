package cornerpost.scope;

/** How rooms get fresh air. */
public enum VentilationKind implements Labelled {
  EXTRACT("extract fans and background vents"),
  RECOVERY("heat-recovery unit");

  private final String label;

  VentilationKind(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
