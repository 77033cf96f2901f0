package cornerpost.schedule;

import static java.util.Objects.requireNonNull;

/**
 * One task waits for another.
 *
 * @param before id of the task waited for
 * @param after id of the task that waits
 * @param lagMinutes added to the moment waited for; negative lets the task after overlap
 * @param lagUnit working minutes of the calendar of the task after, or elapsed minutes
 */
public record Link(
    String before, String after, Relation relation, long lagMinutes, LagUnit lagUnit) {
  public Link {
    requireNonNull(before, "before");
    requireNonNull(after, "after");
    requireNonNull(relation, "relation");
    requireNonNull(lagUnit, "lagUnit");
  }

  // Spelled out, as a run of a second or two pays for linking what a record is given.
  @Override
  public boolean equals(Object other) {
    return this == other
        || other instanceof Link l
            && before.equals(l.before)
            && after.equals(l.after)
            && relation == l.relation
            && lagMinutes == l.lagMinutes
            && lagUnit == l.lagUnit;
  }

  @Override
  public int hashCode() {
    int ends = before.hashCode() * 31 + after.hashCode();
    return (ends * 31 + relation.ordinal()) * 31 + Long.hashCode(lagMinutes);
  }

  /** Finish-to-start without lag. */
  public static Link of(String before, String after) {
    return new Link(before, after, Relation.FINISH_TO_START, 0, LagUnit.WORKING_MINUTES);
  }

  public static Link of(String before, String after, Relation relation, long lagWorkingMinutes) {
    return new Link(before, after, relation, lagWorkingMinutes, LagUnit.WORKING_MINUTES);
  }
}
