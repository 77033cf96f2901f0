package cornerpost.scope;

/** What the boxes stand on. */
public enum Foundation implements Labelled {
  PIERS("concrete piers on pad footings"),
  SCREW_PILES("screw piles"),
  DRIVEN_PILES("driven piles"),
  STRIPS("strip footings"),
  SLAB("slab on grade"),
  RAFT("raft"),
  PRECAST_PADS("precast pads"),
  SKIDS("timber skids");

  private final String label;

  Foundation(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
