package cornerpost.plan;

import cornerpost.measure.Spelling;
import cornerpost.work.WorkPlan;
import cornerpost.work.WorkTask;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The ids that a name which no task has may have meant. */
final class NearIds {
  private static final int MOST = 5;

  /** A part of a word this long says something. */
  private static final int LEAST_PART = 3;

  private record Near(String id, int distance) {}

  private NearIds() {}

  /**
   * Up to five, the nearest first: ids or names that differ by a third of their letters at most, or
   * of which one holds the other. Ties in the order of the build.
   */
  static List<String> of(String sought, WorkPlan work) {
    var found = new ArrayList<Near>();
    var plain = Spelling.plain(sought);
    for (var t : work.tasks()) {
      if (isNear(plain, t)) found.add(new Near(t.id(), distance(plain, t)));
    }
    found.sort(Comparator.comparingInt(Near::distance));
    return found.stream().limit(MOST).map(Near::id).toList();
  }

  private static int distance(String plain, WorkTask t) {
    return Math.min(
        Spelling.distance(plain, Spelling.plain(t.id())),
        Spelling.distance(plain, Spelling.plain(t.name())));
  }

  private static boolean isNear(String plain, WorkTask t) {
    return isNear(plain, Spelling.plain(t.id())) || isNear(plain, Spelling.plain(t.name()));
  }

  private static boolean isNear(String plain, String name) {
    if (plain.isEmpty() || name.isEmpty()) return false;
    if (Spelling.isSlip(plain, name)) return true;
    return plain.length() >= LEAST_PART && name.contains(plain)
        || name.length() >= LEAST_PART && plain.contains(name);
  }
}
