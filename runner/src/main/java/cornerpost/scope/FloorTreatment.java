package cornerpost.scope;

/** What the data plate says of the floor timber. */
public enum FloorTreatment implements Labelled {
  UNTREATED("known untreated"),
  TREATED("known treated"),
  UNKNOWN("not known");

  private final String label;

  FloorTreatment(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
