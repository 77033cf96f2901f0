package cornerpost.scope;

/** What a room is for. */
public enum RoomUse implements Labelled {
  LIVING("living"),
  LIVING_KITCHEN("living and kitchen"),
  KITCHEN("kitchen"),
  BEDROOM("bedroom"),
  LIVING_SLEEPING("living, kitchen and sleeping"),
  BATHROOM("bathroom"),
  HALL("hall"),
  UTILITY("utility"),
  STORE("store");

  private final String label;

  RoomUse(String label) {
    this.label = label;
  }

  @Override
  public String label() {
    return label;
  }
}
