package cornerpost.scope;

/** The steel section that frames an opening; ids are those of the steel tables. */
public enum FrameSection implements Labelled {
  SHS_50_3("50x50x3 square tube", "steel.shs-50x50x3"),
  SHS_50_4("50x50x4 square tube", "steel.shs-50x50x4"),
  RHS_100_50_3("100x50x3 rectangular tube", "steel.rhs-100x50x3"),
  RHS_100_50_4("100x50x4 rectangular tube", "steel.rhs-100x50x4"),
  HSS_2_2_8("2x2x1/8 square tube", "steel.hss-2x2x1/8"),
  HSS_2_2_4("2x2x1/4 square tube", "steel.hss-2x2x1/4"),
  HSS_3_2_16("3x2x3/16 rectangular tube", "steel.hss-3x2x3/16"),
  HSS_4_2_16("4x2x3/16 rectangular tube", "steel.hss-4x2x3/16"),
  ANGLE_60_6("60x60x6 angle", "steel.angle-60x60x6"),
  ANGLE_2_4("2x2x1/4 angle", "steel.angle-2x2x1/4"),
  NO_FRAME("no steel frame", "");

  private final String label;
  private final String factId;

  FrameSection(String label, String factId) {
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
