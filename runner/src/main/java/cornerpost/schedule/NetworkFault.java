package cornerpost.schedule;

import java.util.List;
import java.util.stream.Collectors;

/**
 * Something in a network that makes planning it impossible; it carries its evidence and says it in
 * words.
 */
public sealed interface NetworkFault {
  /** What is wrong, naming what it concerns, and what would be right. */
  String message();

  record DuplicateActivity(String id) implements NetworkFault {
    @Override
    public String message() {
      return "Two tasks have the id '" + id + "'; give each its own";
    }
  }

  record DuplicateCrew(String crew) implements NetworkFault {
    @Override
    public String message() {
      return "Two crews are called '" + crew + "'; give each its own name";
    }
  }

  /** A link names a task that is not there. */
  record UnknownActivity(Link link, String id) implements NetworkFault {
    @Override
    public String message() {
      return "The link from '"
          + link.before()
          + "' to '"
          + link.after()
          + "' names task '"
          + id
          + "', which is not in the network";
    }
  }

  record UnknownCrew(String activityId, String crew) implements NetworkFault {
    @Override
    public String message() {
      return "Task '" + activityId + "' needs crew '" + crew + "', which is not among the crews";
    }
  }

  record SelfLink(Link link) implements NetworkFault {
    @Override
    public String message() {
      return "Task '" + link.before() + "' is linked to itself (" + link.relation() + ")";
    }
  }

  /**
   * Tasks that wait for each other in a ring: each for the one before it, the first for the last.
   */
  record Loop(List<String> ids, List<String> names) implements NetworkFault {
    public Loop {
      ids = List.copyOf(ids);
      names = List.copyOf(names);
    }

    @Override
    public String message() {
      return "These tasks wait for each other in a loop: "
          + names.stream().map(n -> "'" + n + "'").collect(Collectors.joining(" before "))
          + " before '"
          + names.get(0)
          + "'; remove one of these links";
    }
  }

  record DemandAboveAvailable(String activityId, String crew, int needed, int available)
      implements NetworkFault {
    @Override
    public String message() {
      return "Task '"
          + activityId
          + "' needs "
          + needed
          + " of crew '"
          + crew
          + "', but only "
          + available
          + " can be there at once";
    }
  }

  /** The task's calendar and those of its crews leave no time in which all work. */
  record NoCommonTime(String activityId, String calendars) implements NetworkFault {
    @Override
    public String message() {
      return "Task '"
          + activityId
          + "' and its crews never work at the same time ("
          + calendars
          + ")";
    }
  }

  /** A number outside what the engine takes; {@code what} says which. */
  record OutOfRange(String subject, String what, long found, String expected)
      implements NetworkFault {
    @Override
    public String message() {
      return subject + ": " + what + " is " + found + ", expected " + expected;
    }
  }

  /** Real dates that cannot be: a finish before its start, or after the status moment. */
  record ImpossibleProgress(String activityId, String problem) implements NetworkFault {
    @Override
    public String message() {
      return "Task '" + activityId + "': " + problem;
    }
  }
}
