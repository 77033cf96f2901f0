package cornerpost.measure;

/**
 * The kind of a quantity, as powers of length, mass, working time and money. Counts and shares have
 * no dimension.
 */
public record Dimension(int length, int mass, int time, int money) {
  public static final Dimension NONE = new Dimension(0, 0, 0, 0);
  public static final Dimension LENGTH = new Dimension(1, 0, 0, 0);
  public static final Dimension AREA = new Dimension(2, 0, 0, 0);
  public static final Dimension VOLUME = new Dimension(3, 0, 0, 0);
  public static final Dimension MASS = new Dimension(0, 1, 0, 0);
  public static final Dimension TIME = new Dimension(0, 0, 1, 0);
  public static final Dimension MONEY = new Dimension(0, 0, 0, 1);

  // Spelled out, as a run of a second or two pays for linking what a record is given.
  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof Dimension d
            && length == d.length
            && mass == d.mass
            && time == d.time
            && money == d.money;
  }

  @Override
  public int hashCode() {
    return ((length * 31 + mass) * 31 + time) * 31 + money;
  }

  public Dimension times(Dimension other) {
    return new Dimension(
        length + other.length, mass + other.mass, time + other.time, money + other.money);
  }

  public Dimension per(Dimension other) {
    return new Dimension(
        length - other.length, mass - other.mass, time - other.time, money - other.money);
  }

  /** In words for messages: {@code length}, {@code area}, {@code money per area}. */
  @Override
  public String toString() {
    if (equals(NONE)) return "count";
    if (money != 0) {
      var rest = new Dimension(-length, -mass, -time, 0);
      return rest.equals(NONE) ? "money" : "money per " + rest;
    }
    if (equals(LENGTH)) return "length";
    if (equals(AREA)) return "area";
    if (equals(VOLUME)) return "volume";
    if (equals(MASS)) return "mass";
    if (equals(TIME)) return "working time";
    return "length^" + length + " mass^" + mass + " time^" + time;
  }
}
