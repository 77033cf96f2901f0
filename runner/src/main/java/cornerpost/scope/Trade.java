package cornerpost.scope;

/** A package of work that one party does. */
public enum Trade implements Labelled {
  DESIGN("Design and permits"),
  GROUNDWORKS("Groundworks"),
  CONCRETE("Foundations"),
  UTILITIES("Utility connections"),
  HAULAGE("Delivery and setting"),
  STEELWORK("Steelwork and openings"),
  WINDOWS("Windows and doors"),
  ROOFING("Roofing and cladding"),
  DECKING("Deck and outside works"),
  FRAMING("Framing"),
  ELECTRICAL("Electrical"),
  PLUMBING("Plumbing"),
  CLIMATE("Heating and cooling"),
  INSULATION("Insulation"),
  BOARDING("Boarding and plastering"),
  PAINTING("Painting"),
  FLOORING("Flooring"),
  TILING("Tiling"),
  JOINERY("Kitchen and joinery"),
  CLEANING("Cleaning and close-out");

  private final String label;

  Trade(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
