package cornerpost.scope;

/** An insulation material; ids are those of the table of conductivities. */
public enum InsulationMaterial implements Labelled {
  NONE("none", ""),
  CLOSED_CELL("closed-cell spray foam", "insulation.closed-cell"),
  OPEN_CELL("open-cell spray foam", "insulation.open-cell"),
  MINERAL_WOOL("mineral wool batts", "insulation.mineral-wool"),
  WOOD_FIBRE("wood-fibre batts", "insulation.wood-fibre"),
  SHEEP_WOOL("sheep's wool batts", "insulation.sheep-wool"),
  EPS("expanded polystyrene board", "insulation.eps"),
  XPS("extruded polystyrene board", "insulation.xps"),
  PIR("polyisocyanurate board", "insulation.pir");

  private final String label;
  private final String factId;

  InsulationMaterial(String label, String factId) {
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
