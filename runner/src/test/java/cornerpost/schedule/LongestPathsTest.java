package cornerpost.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.jgrapht.alg.interfaces.ShortestPathAlgorithm.SingleSourcePaths;
import org.jgrapht.alg.shortestpath.BellmanFordShortestPath;
import org.jgrapht.graph.DefaultDirectedWeightedGraph;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Early dates, late dates and float against longest paths found by a general graph library
 * (JGraphT, Bellman and Ford's method on weights turned negative), for networks with all relations
 * and lags.
 *
 * <p>Every task is worked on round the clock, so that a date is a number and each link a difference
 * of two starts; networks with other calendars have {@link PassesLawsTest}.
 */
class LongestPathsTest {
  private static final int EACH = 1_000;
  private static final LocalDateTime START = Networks.MONDAY.atStartOfDay();
  private static final String BEGIN = "begin";
  private static final String END = "end";

  @ParameterizedTest(name = "seeds from {0}")
  @ValueSource(
      longs = {
        700_000, 701_000, 702_000, 703_000, 704_000, 705_000, 706_000, 707_000, 708_000, 709_000
      })
  void dates_and_float_are_those_of_longest_paths(long first) {
    for (long seed = first; seed < first + EACH; seed++) {
      check(network(seed), seed);
    }
  }

  private static void check(Network network, long seed) {
    var graph = graph(network);
    graph.addVertex(BEGIN);
    graph.addVertex(END);
    for (Activity a : network.activities()) {
      arc(graph, BEGIN, a.id(), a.notBefore().map(LongestPathsTest::minute).orElse(0L));
      arc(graph, a.id(), END, a.minutes());
    }
    var timetable = Passes.of(network);
    SingleSourcePaths<String, DefaultWeightedEdge> from =
        new BellmanFordShortestPath<>(graph).getPaths(BEGIN);
    long end = -Math.round(from.getWeight(END));
    assertThat(minute(timetable.finish())).as("finish, seed %d", seed).isEqualTo(end);
    for (Timing t : timetable.timings()) {
      long early = -Math.round(from.getWeight(t.id()));
      long tail = -Math.round(new BellmanFordShortestPath<>(graph).getPaths(t.id()).getWeight(END));
      assertThat(minute(t.early().start())).as("%s, seed %d", t.id(), seed).isEqualTo(early);
      assertThat(minute(t.late().start())).as("%s, seed %d", t.id(), seed).isEqualTo(end - tail);
      assertThat(t.totalFloatMinutes())
          .as("%s, seed %d", t.id(), seed)
          .isEqualTo(end - tail - early);
    }
  }

  @ParameterizedTest(name = "seeds from {0}")
  @ValueSource(longs = {710_000, 711_000})
  void the_path_between_any_two_tasks_is_the_longest_of_the_library(long first) {
    int found = 0;
    int apart = 0;
    int held = 0;
    for (long seed = first; seed < first + EACH; seed++) {
      var network = network(seed);
      var graph = graph(network);
      var times = Passes.of(network);
      var random = new Random(seed);
      for (int k = 0; k < 5; k++) {
        var from = network.activities().get(random.nextInt(network.activities().size()));
        var paths = new BellmanFordShortestPath<>(graph).getPaths(from.id());
        for (Activity to : network.activities()) {
          var path = times.longestPath(from.id(), to.id());
          var expected = paths.getPath(to.id());
          var as = "from " + from.id() + " to " + to.id() + ", seed " + seed;
          assertThat(path.isPresent()).as(as).isEqualTo(expected != null);
          if (path.isEmpty()) {
            apart++;
            continue;
          }
          found++;
          long length = -Math.round(expected.getWeight());
          var start = times.timing(from.id()).early().start();
          var end = start.plusMinutes(length + to.minutes());
          assertThat(path.get().end()).as(as).isEqualTo(end);
          var slack = java.time.Duration.between(end, times.timing(to.id()).early().finish());
          assertThat(path.get().slackMinutes()).as(as).isEqualTo(slack.toMinutes());
          if (slack.toMinutes() > 0) held++;
          isOneChain(path.get(), from, to, length, network, as);
        }
      }
    }
    assertThat(found).isGreaterThan(10_000);
    assertThat(apart).isGreaterThan(1_000);
    assertThat(held).isGreaterThan(1_000);
  }

  /** Its links lead from one task to the next, and add up to the length. */
  private static void isOneChain(
      PathBetween path, Activity from, Activity to, long length, Network network, String as) {
    var ids = path.ids();
    assertThat(ids.get(0)).as(as).isEqualTo(from.id());
    assertThat(ids.get(ids.size() - 1)).as(as).isEqualTo(to.id());
    assertThat(path.links()).as(as).hasSize(ids.size() - 1);
    long sum = 0;
    for (int i = 1; i < ids.size(); i++) {
      var link = path.links().get(i - 1);
      assertThat(List.of(link.before(), link.after())).as(as).isEqualTo(ids.subList(i - 1, i + 1));
      assertThat(network.links()).as(as).contains(link);
      sum += least(network, link);
    }
    assertThat(sum).as(as).isEqualTo(length);
  }

  /** By how many minutes a link makes the task after start later than the task before. */
  private static long least(Network network, Link l) {
    long before = network.get(l.before()).minutes();
    long after = network.get(l.after()).minutes();
    return switch (l.relation()) {
      case FINISH_TO_START -> before + l.lagMinutes();
      case START_TO_START -> l.lagMinutes();
      case FINISH_TO_FINISH -> before + l.lagMinutes() - after;
      case START_TO_FINISH -> l.lagMinutes() - after;
    };
  }

  /** The tasks, and an arc from start to start for each link; weights turned negative. */
  private static DefaultDirectedWeightedGraph<String, DefaultWeightedEdge> graph(Network network) {
    var graph =
        new DefaultDirectedWeightedGraph<String, DefaultWeightedEdge>(DefaultWeightedEdge.class);
    for (Activity a : network.activities()) graph.addVertex(a.id());
    for (Link l : network.links()) arc(graph, l.before(), l.after(), least(network, l));
    return graph;
  }

  /** The larger of two demands on the same pair; the library keeps one edge for each pair. */
  private static void arc(
      DefaultDirectedWeightedGraph<String, DefaultWeightedEdge> graph,
      String before,
      String after,
      long least) {
    var edge = graph.getEdge(before, after);
    if (edge == null) {
      graph.setEdgeWeight(graph.addEdge(before, after), -least);
    } else {
      graph.setEdgeWeight(edge, Math.min(graph.getEdgeWeight(edge), -least));
    }
  }

  private static long minute(LocalDateTime moment) {
    return java.time.Duration.between(START, moment).toMinutes();
  }

  private static Network network(long seed) {
    var random = new Random(seed);
    int n = 2 + random.nextInt(12);
    var always = WorkCalendar.roundTheClock();
    List<Activity> activities = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      long minutes = random.nextInt(6) == 0 ? 0 : random.nextInt(5_000);
      var a =
          random.nextInt(4) == 0
              ? Activity.elapsed("" + i, "task " + i, minutes)
              : Activity.working("" + i, "task " + i, minutes);
      if (random.nextInt(5) == 0) {
        a = a.notBefore(START.plusMinutes(random.nextInt(8_000)));
      }
      activities.add(a);
    }
    List<Link> links = new ArrayList<>();
    for (int k = random.nextInt(3 * n); k > 0; k--) {
      int j = 1 + random.nextInt(n - 1);
      links.add(
          new Link(
              "" + random.nextInt(j),
              "" + j,
              Relation.values()[random.nextInt(4)],
              random.nextInt(3) == 0 ? 0 : random.nextInt(6_000) - 2_500,
              LagUnit.values()[random.nextInt(2)]));
    }
    return Network.of(activities, links, List.of(), START, always);
  }
}
