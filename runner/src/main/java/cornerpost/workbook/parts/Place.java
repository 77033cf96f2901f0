package cornerpost.workbook.parts;

import java.util.Optional;

/**
 * A place on a sheet.
 *
 * @param row counted from nothing
 * @param column counted from nothing
 */
public record Place(int row, int column) {
  private static final int MOST_ROWS = 1_048_576;
  private static final int MOST_COLUMNS = 16_384;
  private static final int LETTERS = 26;
  private static final int LONGEST = 10;

  /** {@code A} for the first column, {@code AA} for the twenty-seventh. */
  public static String letters(int column) {
    if (column < LETTERS) return String.valueOf((char) ('A' + column));
    return letters(column / LETTERS - 1) + (char) ('A' + column % LETTERS);
  }

  /** {@code D5} for the fifth row, fourth column. */
  public static String reference(int row, int column) {
    return letters(column) + (row + 1);
  }

  /** {@code A3:M40}. */
  public static String range(int row, int column, int lastRow, int lastColumn) {
    return reference(row, column) + ":" + reference(lastRow, lastColumn);
  }

  /** The place of {@code D5}; empty for a text that is not one, or lies off every sheet. */
  public static Optional<Place> find(String reference) {
    int column = 0;
    int row = 0;
    int i = 0;
    if (reference.length() > LONGEST) return Optional.empty();
    for (; i < reference.length() && isLetter(reference.charAt(i)); i++) {
      column = column * LETTERS + Character.toUpperCase(reference.charAt(i)) - 'A' + 1;
      if (column > MOST_COLUMNS) return Optional.empty();
    }
    int letters = i;
    for (; i < reference.length() && isDigit(reference.charAt(i)); i++) {
      row = row * 10 + reference.charAt(i) - '0';
      if (row > MOST_ROWS) return Optional.empty();
    }
    boolean whole = letters > 0 && i == reference.length() && row > 0;
    return whole ? Optional.of(new Place(row - 1, column - 1)) : Optional.empty();
  }

  private static boolean isLetter(char c) {
    return c >= 'A' && c <= 'Z' || c >= 'a' && c <= 'z';
  }

  private static boolean isDigit(char c) {
    return c >= '0' && c <= '9';
  }

  static boolean exists(int row, int column) {
    return row >= 0 && row < MOST_ROWS && column >= 0 && column < MOST_COLUMNS;
  }
}
