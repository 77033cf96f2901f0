package cornerpost.takeoff;

import cornerpost.scope.Trade;
import cornerpost.trace.Figure;
import java.util.Optional;

/** What a measured quantity asks for: something to buy or hire, or somebody's hours. */
public sealed interface Resource {
  /** The task at which it is needed or done. */
  BuildTask task();

  /**
   * Something bought or hired.
   *
   * @param item code in the price book
   * @param waste share added to the net quantity for cutting and loss; a fact with its source
   */
  record Buy(String item, Optional<Figure> waste, BuildTask task) implements Resource {
    public static Buy of(String item, BuildTask task) {
      return new Buy(item, Optional.empty(), task);
    }

    public static Buy of(String item, Figure waste, BuildTask task) {
      return new Buy(item, Optional.of(waste), task);
    }
  }

  /**
   * Hours of work.
   *
   * @param activity code of a row of hours per unit in the price book
   * @param trade whose work it is; the owner's sheet says who does that
   */
  record Labour(String activity, Trade trade, BuildTask task) implements Resource {
    /** By the trade the task belongs to. */
    public static Labour of(String activity, BuildTask task) {
      return new Labour(
          activity,
          task.trade()
              .orElseThrow(() -> new IllegalArgumentException("Nobody works at " + task.title())),
          task);
    }
  }
}
