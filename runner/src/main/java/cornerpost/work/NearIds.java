package cornerpost.work;

import cornerpost.measure.Spelling;
import cornerpost.takeoff.BuildTask;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** The ids that a name which no task has may have meant. */
public final class NearIds {
  private static final int MOST = 5;

  /** A part of a word this long says something. */
  private static final int LEAST_PART = 3;

  private record Near(String id, int distance) {}

  private NearIds() {}

  /**
   * Up to five, the nearest first: ids or names that differ by a third of their letters at most, or
   * of which one holds the other. Ties in the order of the build.
   */
  public static List<String> of(String sought, WorkPlan work) {
    return of(sought, work.tasks());
  }

  /**
   * What to add to a message: nothing where none is near, or the name is a task's of other plans.
   */
  public static String hint(String sought, WorkPlan work) {
    boolean known = Arrays.stream(BuildTask.values()).anyMatch(b -> b.id().equals(sought.strip()));
    var near = known ? List.<String>of() : of(sought, work.tasks());
    return near.isEmpty() ? "" : "; near to it: " + String.join(", ", near);
  }

  static List<String> of(String sought, List<WorkTask> tasks) {
    var found = new ArrayList<Near>();
    var plain = Spelling.plain(sought);
    for (var t : tasks) {
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
