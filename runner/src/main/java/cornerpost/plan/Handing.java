package cornerpost.plan;

import cornerpost.plan.Sequence.Handover;
import cornerpost.schedule.Activity;
import cornerpost.schedule.Dates;
import cornerpost.schedule.Link;
import cornerpost.schedule.Network;
import java.time.LocalDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * From which task to which the hands of each crew go. Tasks in order of planned start take the
 * hands that came free last, first.
 */
final class Handing {
  private Handing() {}

  /** Finish-to-start for every two tasks between which hands go, where no link says so already. */
  static Set<Link> pairs(Network network, List<Handover> handovers) {
    var pairs = new LinkedHashSet<Link>();
    for (var h : handovers) pairs.add(Link.of(h.before(), h.after()));
    network.links().forEach(pairs::remove);
    return pairs;
  }

  /**
   * The network's links and those of the handovers. One against which a chain of links runs back (a
   * relation that holds a finish, or an overlap, allows that) is left out: it would close a loop.
   */
  static List<Link> links(Network network, List<Handover> handovers) {
    var links = new ArrayList<>(network.links());
    var after = new HashMap<String, List<String>>();
    links.forEach(l -> after.computeIfAbsent(l.before(), k -> new ArrayList<>()).add(l.after()));
    for (var link : pairs(network, handovers)) {
      if (!reaches(link.after(), link.before(), after)) {
        links.add(link);
        after.computeIfAbsent(link.before(), k -> new ArrayList<>()).add(link.after());
      }
    }
    return links;
  }

  private static boolean reaches(String from, String to, Map<String, List<String>> after) {
    var seen = new HashSet<String>();
    var next = new ArrayDeque<String>();
    next.add(from);
    while (!next.isEmpty()) {
      var id = next.remove();
      if (id.equals(to)) return true;
      if (seen.add(id)) next.addAll(after.getOrDefault(id, List.of()));
    }
    return false;
  }

  /**
   * @param planned dates of each task, in which no crew is asked for too much
   */
  static List<Handover> of(Network network, Function<String, Dates> planned) {
    var handovers = new ArrayList<Handover>();
    for (var crew : network.crews()) {
      var users =
          network.activities().stream()
              .filter(a -> a.demands().containsKey(crew.name()))
              .filter(a -> network.minutesLeft(a.id()) > 0)
              .sorted(Comparator.comparing(a -> heldFrom(a, network, planned)))
              .toList();
      handovers.addAll(handovers(crew.name(), crew.available(), users, network, planned));
    }
    return handovers;
  }

  /** When the crew is needed: from the start, or from when a started task goes on. */
  private static LocalDateTime heldFrom(
      Activity a, Network network, Function<String, Dates> planned) {
    var dates = planned.apply(a.id());
    if (a.progress().start().isEmpty()) return dates.start();
    long left = network.minutesLeft(a.id());
    return a.isElapsed()
        ? dates.finish().minusMinutes(left)
        : network.calendarOf(a.id()).plus(dates.finish(), -left);
  }

  private static final class Hands {
    final Activity from;
    final LocalDateTime free;
    int number;

    Hands(Activity from, LocalDateTime free, int number) {
      this.from = from;
      this.free = free;
      this.number = number;
    }
  }

  private static List<Handover> handovers(
      String crew,
      int available,
      List<Activity> users,
      Network network,
      Function<String, Dates> planned) {
    var handovers = new ArrayList<Handover>();
    var pool = new ArrayList<Hands>();
    int idle = available;
    for (var task : users) {
      int needed = task.demands().get(crew);
      var from = heldFrom(task, network, planned);
      pool.sort(Comparator.comparing((Hands h) -> h.free).reversed());
      Set<String> taken = new HashSet<>();
      for (var h : pool) {
        if (needed > 0 && h.number > 0 && !h.free.isAfter(from)) {
          int n = Math.min(needed, h.number);
          h.number -= n;
          needed -= n;
          if (taken.add(h.from.id())) handovers.add(new Handover(h.from.id(), task.id(), crew));
        }
      }
      idle -= needed;
      pool.removeIf(h -> h.number == 0);
      pool.add(new Hands(task, planned.apply(task.id()).finish(), task.demands().get(crew)));
    }
    if (idle < 0) throw new IllegalStateException("Crew '" + crew + "' is asked for too much");
    return handovers;
  }
}
