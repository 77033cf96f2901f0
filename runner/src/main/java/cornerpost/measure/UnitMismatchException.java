package cornerpost.measure;

/** Two figures of different kinds were added or compared: metres plus kilograms, say. */
public final class UnitMismatchException extends RuntimeException {
  private final transient Dimension left;
  private final transient Dimension right;

  public UnitMismatchException(String operation, Dimension left, Dimension right) {
    super("Cannot " + operation + " " + left + " and " + right);
    this.left = left;
    this.right = right;
  }

  public Dimension left() {
    return left;
  }

  public Dimension right() {
    return right;
  }
}
