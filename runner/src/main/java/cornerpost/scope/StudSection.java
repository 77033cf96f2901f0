package cornerpost.scope;

/** The studs of linings and partitions. */
public enum StudSection implements Labelled {
  TIMBER_38_38("38x38 timber (2x2)", "stud.timber-38x38"),
  TIMBER_38_64("38x64 timber (2x3)", "stud.timber-38x64"),
  TIMBER_38_89("38x89 timber (2x4)", "stud.timber-38x89"),
  TIMBER_38_140("38x140 timber (2x6)", "stud.timber-38x140"),
  STEEL_64("64 mm light steel (2 1/2 in)", "stud.steel-64"),
  STEEL_92("92 mm light steel (3 5/8 in)", "stud.steel-92");

  private final String label;
  private final String factId;

  StudSection(String label, String factId) {
    this.label = label;
    this.factId = factId;
  }

  @Override
  public String label() {
    return label;
  }

  /** The stem of its rows in the table of facts. */
  public String factId() {
    return factId;
  }
}
