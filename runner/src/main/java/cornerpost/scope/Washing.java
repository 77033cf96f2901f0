package cornerpost.scope;

/** What the bathroom has to wash in. */
public enum Washing implements Labelled {
  SHOWER("shower"),
  BATH("bath with shower over");

  private final String label;

  Washing(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
