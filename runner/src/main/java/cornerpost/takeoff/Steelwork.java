package cornerpost.takeoff;

import cornerpost.scope.Box;
import cornerpost.scope.ModifiedWhere;
import cornerpost.scope.Trade;
import cornerpost.takeoff.Resource.Labour;

/**
 * Where the steelwork on a box is done: at the tasks on site, or all of it at one task in the yard,
 * with the yard's own hours: it has the machines, a level floor and a roof.
 */
record Steelwork(Box box) {
  boolean inYard() {
    return box.modified() == ModifiedWhere.IN_YARD;
  }

  BuildTask at(BuildTask onSite) {
    return inYard() ? BuildTask.YARD_STEELWORK : onSite;
  }

  /** Hours of an activity; its code ends in {@code -yard} for the yard. */
  Labour hours(String activity, BuildTask onSite) {
    return new Labour(inYard() ? activity + "-yard" : activity, Trade.STEELWORK, at(onSite));
  }
}
