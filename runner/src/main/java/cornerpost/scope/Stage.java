package cornerpost.scope;

/** A part of the build, in the order of the work; stages group quantities, money and tasks. */
public enum Stage implements Labelled {
  PREPARATION("0 Before the box"),
  FOUNDATION("1 Site and foundation"),
  CONTAINERS("2 Containers"),
  SHELL("3 Openings and shell"),
  FRAMING("4 Framing and partitions"),
  SERVICES("5 Services"),
  INSULATION("6 Insulation and lining"),
  FINISHES("7 Finishes and fixtures"),
  OUTSIDE("8 Outside"),
  CLOSE_OUT("9 Close-out");

  private final String label;

  Stage(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
