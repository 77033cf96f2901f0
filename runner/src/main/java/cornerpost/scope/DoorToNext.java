package cornerpost.scope;

/** What stands between a room and the next one along the box. */
public enum DoorToNext implements Labelled {
  OPEN("open, no partition"),
  WALL("partition, no door"),
  HINGED("partition, hinged door"),
  SLIDING("partition, sliding door"),
  POCKET("partition, pocket door");

  private final String label;

  DoorToNext(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
