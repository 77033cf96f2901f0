package cornerpost.scope;

/** Whether the tasks of building the house are generated. */
public enum GeneratedTasks implements Labelled {
  ALL("all"),
  NONE("none");

  private final String label;

  GeneratedTasks(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
