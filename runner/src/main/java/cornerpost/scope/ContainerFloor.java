package cornerpost.scope;

/** What happens to the plywood floor of the box. */
public enum ContainerFloor implements Labelled {
  SEAL("keep and seal"),
  OVERLAY("seal and overlay"),
  REPLACE("remove and replace");

  private final String label;

  ContainerFloor(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
