package cornerpost.scope;

/** What the amount of a quote covers. */
public enum QuoteFor implements Labelled {
  UNIT("each unit"),
  WHOLE("the whole line");

  private final String label;

  QuoteFor(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
