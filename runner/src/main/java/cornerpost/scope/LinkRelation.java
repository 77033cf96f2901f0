package cornerpost.scope;

/** How the times of two tasks are tied. */
public enum LinkRelation implements Labelled {
  FINISH_TO_START("finish-to-start"),
  START_TO_START("start-to-start"),
  FINISH_TO_FINISH("finish-to-finish"),
  START_TO_FINISH("start-to-finish");

  private final String label;

  LinkRelation(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
