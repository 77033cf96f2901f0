package cornerpost.schedule;

import java.time.LocalDateTime;
import java.util.List;

/**
 * The chain of tasks that decides how soon one event can follow another.
 *
 * @param ids from the first event to the second, both included
 * @param links each from one of them to the next: one fewer than there are ids
 * @param end when the second event would be over if nothing but this chain held it; a real finish
 *     where it is done
 * @param slackMinutes how much later than this chain asks the second event happens, because
 *     something else holds it; in working minutes of its calendar (elapsed minutes for an elapsed
 *     task), 0 or more
 */
public record PathBetween(
    List<String> ids, List<Link> links, LocalDateTime end, long slackMinutes) {
  public PathBetween {
    ids = List.copyOf(ids);
    links = List.copyOf(links);
  }
}
