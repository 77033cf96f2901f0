package cornerpost.schedule;

import java.util.List;

/**
 * The chain of tasks that decides how soon one event can follow another.
 *
 * @param ids from the first event to the second, both included
 * @param slackMinutes how much later than this chain asks the second event happens, because
 *     something else holds it; in working minutes of its calendar (elapsed minutes for an elapsed
 *     task), 0 or more
 */
public record PathBetween(List<String> ids, long slackMinutes) {
  public PathBetween {
    ids = List.copyOf(ids);
  }
}
