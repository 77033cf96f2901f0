package cornerpost.schedule;

import java.time.LocalDateTime;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jgrapht.alg.connectivity.KosarajuStrongConnectivityInspector;
import org.jgrapht.alg.shortestpath.BFSShortestPath;
import org.jgrapht.graph.DefaultDirectedGraph;
import org.jgrapht.graph.DefaultEdge;

/** Finds all faults of a network in one go. */
final class NetworkCheck {
  private final List<NetworkFault> faults = new ArrayList<>();
  private final Map<String, Activity> byId = new LinkedHashMap<>();
  private final Map<String, Crew> crewByName = new HashMap<>();

  private NetworkCheck() {}

  static List<NetworkFault> faults(
      List<Activity> activities,
      List<Link> links,
      List<Crew> crews,
      WorkCalendar defaultCalendar,
      Optional<LocalDateTime> status) {
    var check = new NetworkCheck();
    check.crews(crews);
    for (Activity a : activities) {
      check.activity(a, defaultCalendar, status);
    }
    check.links(links);
    return List.copyOf(check.faults);
  }

  private void crews(List<Crew> crews) {
    for (Crew c : crews) {
      if (crewByName.putIfAbsent(c.name(), c) != null) {
        faults.add(new NetworkFault.DuplicateCrew(c.name()));
      }
      if (c.available() < 0) {
        faults.add(
            new NetworkFault.OutOfRange(
                "Crew '" + c.name() + "'", "number available", c.available(), "0 or more"));
      }
    }
  }

  private void activity(Activity a, WorkCalendar defaultCalendar, Optional<LocalDateTime> status) {
    if (byId.putIfAbsent(a.id(), a) != null) {
      faults.add(new NetworkFault.DuplicateActivity(a.id()));
      return;
    }
    String subject = "Task '" + a.id() + "'";
    if (a.minutes() < 0 || a.minutes() > Network.MOST_MINUTES) {
      faults.add(
          new NetworkFault.OutOfRange(
              subject, "duration in minutes", a.minutes(), "0 to " + Network.MOST_MINUTES));
    }
    boolean crewsKnown = true;
    for (var demand : a.demands().entrySet()) {
      Crew crew = crewByName.get(demand.getKey());
      if (crew == null) {
        faults.add(new NetworkFault.UnknownCrew(a.id(), demand.getKey()));
        crewsKnown = false;
      } else if (demand.getValue() < 1) {
        faults.add(
            new NetworkFault.OutOfRange(
                subject,
                "number needed of crew '" + crew.name() + "'",
                demand.getValue(),
                "1 or more"));
      } else if (demand.getValue() > crew.available()) {
        faults.add(
            new NetworkFault.DemandAboveAvailable(
                a.id(), crew.name(), demand.getValue(), crew.available()));
      }
    }
    if (crewsKnown) {
      try {
        Network.workedIn(a, crewByName, defaultCalendar);
      } catch (IllegalArgumentException noCommonTime) {
        faults.add(new NetworkFault.NoCommonTime(a.id(), noCommonTime.getMessage()));
      }
    }
    progress(a, status);
  }

  private void progress(Activity a, Optional<LocalDateTime> status) {
    Progress p = a.progress();
    if (p.finish().isPresent() && p.start().isEmpty()) {
      impossible(a, "has a real finish but no real start");
    }
    if (p.start().isPresent()
        && p.finish().isPresent()
        && p.finish().get().isBefore(p.start().get())) {
      impossible(
          a,
          "its real finish " + p.finish().get() + " is before its real start " + p.start().get());
    }
    if (p.start().isPresent() && status.isEmpty()) {
      impossible(a, "has a real start, but the network has no status date");
    }
    if (status.isPresent()) {
      if (p.start().isPresent() && p.start().get().isAfter(status.get())) {
        impossible(
            a, "its real start " + p.start().get() + " is after the status moment " + status.get());
      }
      if (p.finish().isPresent() && p.finish().get().isAfter(status.get())) {
        impossible(
            a,
            "its real finish " + p.finish().get() + " is after the status moment " + status.get());
      }
    }
    if (p.remainingMinutes().isPresent()) {
      long left = p.remainingMinutes().getAsLong();
      if (left < 0 || left > Network.MOST_MINUTES) {
        faults.add(
            new NetworkFault.OutOfRange(
                "Task '" + a.id() + "'",
                "remaining minutes",
                left,
                "0 to " + Network.MOST_MINUTES));
      }
      if (p.start().isEmpty()) {
        impossible(a, "has remaining work given but no real start");
      }
    }
  }

  private void impossible(Activity a, String problem) {
    faults.add(new NetworkFault.ImpossibleProgress(a.id(), problem));
  }

  private void links(List<Link> links) {
    var sound = new ArrayList<Link>();
    for (Link link : links) {
      boolean known = true;
      for (String id :
          link.before().equals(link.after())
              ? List.of(link.before())
              : List.of(link.before(), link.after())) {
        if (!byId.containsKey(id)) {
          faults.add(new NetworkFault.UnknownActivity(link, id));
          known = false;
        }
      }
      if (Math.abs(link.lagMinutes()) > Network.MOST_MINUTES) {
        faults.add(
            new NetworkFault.OutOfRange(
                "The link from '" + link.before() + "' to '" + link.after() + "'",
                "lag in minutes",
                link.lagMinutes(),
                "-" + Network.MOST_MINUTES + " to " + Network.MOST_MINUTES));
      }
      if (known && link.before().equals(link.after())) {
        faults.add(new NetworkFault.SelfLink(link));
      } else if (known) {
        sound.add(link);
      }
    }
    loops(sound);
  }

  /**
   * Takes away tasks that nothing holds, again and again (Kahn); what is left contains every loop.
   */
  private void loops(List<Link> links) {
    var waiting = new HashMap<String, Integer>();
    var after = new HashMap<String, List<String>>();
    for (Link link : links) {
      waiting.merge(link.after(), 1, Integer::sum);
      after.computeIfAbsent(link.before(), k -> new ArrayList<>()).add(link.after());
    }
    var free = new ArrayDeque<String>();
    byId.keySet().stream().filter(id -> !waiting.containsKey(id)).forEach(free::add);
    var gone = new HashSet<String>();
    while (!free.isEmpty()) {
      String id = free.remove();
      gone.add(id);
      for (String next : after.getOrDefault(id, List.of())) {
        if (waiting.merge(next, -1, Integer::sum) == 0) {
          free.add(next);
        }
      }
    }
    if (gone.size() < byId.size()) {
      nameLoops(links, gone);
    }
  }

  /**
   * One loop, the shortest through its first task, for each knot of tasks that wait for each other.
   */
  private void nameLoops(List<Link> links, HashSet<String> gone) {
    var graph = new DefaultDirectedGraph<String, DefaultEdge>(DefaultEdge.class);
    byId.keySet().stream().filter(id -> !gone.contains(id)).forEach(graph::addVertex);
    for (Link link : links) {
      if (graph.containsVertex(link.before()) && graph.containsVertex(link.after())) {
        graph.addEdge(link.before(), link.after());
      }
    }
    var order = new ArrayList<>(byId.keySet());
    var position = new HashMap<String, Integer>();
    order.forEach(id -> position.put(id, position.size()));
    new KosarajuStrongConnectivityInspector<>(graph)
        .stronglyConnectedSets().stream()
            .filter(knot -> knot.size() > 1)
            .map(
                knot ->
                    knot.stream().min((a, b) -> position.get(a) - position.get(b)).orElseThrow())
            .sorted((a, b) -> position.get(a) - position.get(b))
            .forEach(first -> faults.add(loopThrough(first, graph)));
  }

  private NetworkFault.Loop loopThrough(
      String first, DefaultDirectedGraph<String, DefaultEdge> graph) {
    var paths = new BFSShortestPath<>(graph).getPaths(first);
    List<String> best = null;
    for (DefaultEdge back : graph.incomingEdgesOf(first)) {
      var path = paths.getPath(graph.getEdgeSource(back));
      if (path != null && (best == null || path.getVertexList().size() < best.size())) {
        best = path.getVertexList();
      }
    }
    return new NetworkFault.Loop(best, best.stream().map(id -> byId.get(id).name()).toList());
  }
}
