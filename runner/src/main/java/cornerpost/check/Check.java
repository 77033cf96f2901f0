package cornerpost.check;

import cornerpost.scope.Labelled;
import java.util.List;

/**
 * A piece of advice: never a claim of compliance.
 *
 * @param id stable: {@code room-width/Bedroom 1}
 * @param message what was looked at, what was found, what it is measured by
 * @param source the clause or practice it rests on
 * @param cells the choices it is about
 * @param tasks ids of the tasks it belongs to
 */
public record Check(
    String id,
    Topic topic,
    Severity severity,
    String message,
    String source,
    List<String> cells,
    List<String> tasks) {

  /** How much it matters. */
  public enum Severity implements Labelled {
    /** Looked at and found in order, or worth knowing. */
    NOTE("note"),
    PROFESSIONAL("ask a professional"),
    STOP("stop");

    private final String label;

    Severity(String label) {
      this.label = label;
    }

    @Override
    public String label() {
      return label;
    }
  }

  /** What it is about. */
  public enum Topic implements Labelled {
    FIT("Does it fit"),
    ROOMS("Rooms, light and air"),
    STEEL("What is cut away"),
    GROUND("Ground and supports"),
    MOISTURE("Warmth and moisture"),
    ELECTRICITY("Electricity"),
    WATER("Water and waste"),
    SAFETY("Working safely"),
    MONEY("Money"),
    TIME("Time");

    private final String label;

    Topic(String label) {
      this.label = label;
    }

    @Override
    public String label() {
      return label;
    }
  }

  public Check {
    cells = List.copyOf(cells);
    tasks = List.copyOf(tasks);
  }
}
