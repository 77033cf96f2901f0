package cornerpost.scope;

/** The outside face of the walls. */
public enum Cladding implements Labelled {
  PAINT("paint on the steel"),
  TIMBER("timber boards on battens"),
  METAL("metal sheet on battens"),
  FIBRE_CEMENT("fibre-cement boards on battens");

  private final String label;

  Cladding(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
