package cornerpost.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * Works out the arithmetic of a hand take-off: numbers, {@code + - x /}, brackets, {@code #12} for
 * the result of row 12, and {@code up down sqrt max min}. Nothing of the program is used.
 */
final class HandArithmetic {
  /** Whole numbers reached by sums of decimals are a hair off in binary. */
  private static final double HAIR = 1e-9;

  private final String text;
  private final IntToDoubleFunction row;
  private int at;

  private HandArithmetic(String text, IntToDoubleFunction row) {
    this.text = text.replace(" ", "");
    this.row = row;
  }

  /**
   * @param row the result of a row by its number
   * @throws IllegalArgumentException naming the place from which the text is no arithmetic
   */
  static double worked(String text, IntToDoubleFunction row) {
    var reading = new HandArithmetic(text, row);
    double value = reading.sum();
    if (reading.at < reading.text.length()) throw reading.fault();
    return value;
  }

  private double sum() {
    double value = product();
    while (at < text.length()) {
      if (take('+')) value += product();
      else if (take('-')) value -= product();
      else break;
    }
    return value;
  }

  private double product() {
    double value = factor();
    while (at < text.length()) {
      if (take('x')) value *= factor();
      else if (take('/')) value /= factor();
      else break;
    }
    return value;
  }

  private double factor() {
    if (take('(')) {
      double value = sum();
      if (!take(')')) throw fault();
      return value;
    }
    if (take('#')) return row.applyAsDouble((int) number());
    if (Character.isLetter(next())) return function();
    return number();
  }

  private double function() {
    int from = at;
    while (Character.isLetter(next())) at++;
    var name = text.substring(from, at);
    if (!take('(')) throw fault();
    List<Double> of = new ArrayList<>(List.of(sum()));
    while (take(',')) of.add(sum());
    if (!take(')')) throw fault();
    return switch (name) {
      case "up" -> Math.ceil(of.get(0) - HAIR);
      case "down" -> Math.floor(of.get(0) + HAIR);
      case "sqrt" -> Math.sqrt(of.get(0));
      case "max" -> of.stream().mapToDouble(Double::doubleValue).max().orElseThrow();
      case "min" -> of.stream().mapToDouble(Double::doubleValue).min().orElseThrow();
      default -> throw fault();
    };
  }

  private double number() {
    int from = at;
    while (Character.isDigit(next()) || next() == '.') at++;
    if (from == at) throw fault();
    return Double.parseDouble(text.substring(from, at));
  }

  private char next() {
    return at < text.length() ? text.charAt(at) : ' ';
  }

  private boolean take(char c) {
    if (next() != c) return false;
    at++;
    return true;
  }

  private IllegalArgumentException fault() {
    return new IllegalArgumentException(
        "No arithmetic from character " + at + " on: " + text.substring(at) + " in " + text);
  }
}
