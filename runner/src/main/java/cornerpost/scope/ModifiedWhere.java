package cornerpost.scope;

/** Where the steelwork on a box is done. */
public enum ModifiedWhere implements Labelled {
  ON_SITE("on site, after setting"),
  IN_YARD("in a yard, before delivery");

  private final String label;

  ModifiedWhere(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
