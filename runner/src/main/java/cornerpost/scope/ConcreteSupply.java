package cornerpost.scope;

/** How concrete comes to site. */
public enum ConcreteSupply implements Labelled {
  READY_MIX("ready-mixed"),
  BAGGED("bagged, mixed on site");

  private final String label;

  ConcreteSupply(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
