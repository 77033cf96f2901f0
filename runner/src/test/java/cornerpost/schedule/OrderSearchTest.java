package cornerpost.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The proof by orders of work and what it learns from dead ends, against trying every way to settle
 * every conflict of crews, which learns nothing.
 *
 * <p>The tests run with assertions on: each reason that is traced back is then checked to have been
 * known before, and to be no more than was found.
 */
class OrderSearchTest {
  private static final Map<WorkCalendar, PlainPlan.Table> TABLES = PlainPlan.tables();

  /**
   * Tasks that nearly all want the same crews, so that nearly every order is a dead end: calendars,
   * elapsed time, all relations, lags and leads, crews of one or two of which a task needs one or
   * more.
   */
  private static Network crowded(long seed, int most) {
    var random = new Random(seed);
    int n = 4 + random.nextInt(most - 3);
    var crews = new ArrayList<Crew>();
    for (int c = 0; c <= random.nextInt(2); c++) {
      crews.add(Crew.of("crew " + c, 1 + random.nextInt(2)));
    }
    var activities = new ArrayList<Activity>();
    for (int i = 0; i < n; i++) {
      long minutes = (1 + random.nextInt(6)) * 120L + (random.nextInt(4) == 0 ? 7 : 0);
      var a =
          random.nextInt(8) == 0
              ? Activity.elapsed("" + i, "task " + i, minutes)
              : Activity.working("" + i, "task " + i, minutes);
      a = a.in(RandomNetworks.CALENDARS.get(random.nextInt(RandomNetworks.CALENDARS.size())));
      if (random.nextInt(5) == 0) {
        a = a.notBefore(Networks.MONDAY.atStartOfDay().plusMinutes(random.nextInt(5 * 1440)));
      }
      for (Crew c : crews) {
        if (random.nextInt(6) > 0) {
          a = a.needing(1 + random.nextInt(c.available()), c.name());
        }
      }
      activities.add(a);
    }
    var links = new ArrayList<Link>();
    int count = random.nextInt(n);
    for (int k = 0; k < count; k++) {
      int x = random.nextInt(n);
      int y = random.nextInt(n);
      if (x == y) continue;
      links.add(
          new Link(
              "" + Math.min(x, y),
              "" + Math.max(x, y),
              Relation.values()[random.nextInt(4)],
              random.nextInt(2) == 0 ? 0 : random.nextInt(1400) - 500,
              LagUnit.values()[random.nextInt(2)]));
    }
    return Network.of(
        activities,
        links,
        crews,
        Networks.MONDAY.atStartOfDay(),
        RandomNetworks.CALENDARS.get(random.nextInt(3)));
  }

  private static OrderSearch searchOf(Network network) {
    var early = new Sweep(network.graph());
    early.forward(network.graph().minutes);
    return new OrderSearch(network, new CrewUse(network), early, () -> false);
  }

  /** All tasks one after the other, each begun at the first hour its calendar allows. */
  private static long late(Network network) {
    Graph g = network.graph();
    var early = new Sweep(g);
    early.forward(g.minutes);
    long at = early.end;
    for (int i = 0; i < g.size; i++) {
      at = g.finishAt(i, g.placeStartingFrom(i, at), g.minutes[i]);
    }
    return at + 60 * Minutes.A_DAY;
  }

  /** The schedule found keeps every rule, and no way to settle the conflicts ends sooner. */
  private static void soundAndSoonest(Network network, OrderSearch search, long[] places) {
    var plan = new Sweep(network.graph());
    plan.end = Long.MIN_VALUE;
    for (int i = 0; i < places.length; i++) {
      plan.put(i, places[i], network.graph().minutes[i]);
      plan.end = Math.max(plan.end, plan.finish[i]);
    }
    assertThat(plan.end).isEqualTo(search.end());
    var schedule = new CrewSchedule(Passes.of(network), plan, plan.end, true, 1);
    assertThat(Feasible.faults(schedule, TABLES)).isEmpty();
    assertThat(EverySettlement.bestFinish(network, schedule.finish())).isEqualTo(schedule.finish());
  }

  @ParameterizedTest(name = "seeds from {0}")
  @ValueSource(longs = {0, 100_000, 200_000, 300_000})
  void finds_and_proves_the_end_of_trying_everything(long first) {
    int later = 0;
    for (long seed = first; seed < first + 250; seed++) {
      Network network = crowded(seed, 5);
      var search = searchOf(network);
      assertThat(search.run(late(network), 100_000)).as("seed %d", seed).isTrue();
      soundAndSoonest(network, search, search.best());
      later += Minutes.moment(search.end()).isAfter(Passes.of(network).finish()) ? 1 : 0;
    }
    assertThat(later).isGreaterThan(75);
  }

  /** What was learned stays from run to run; a run that is broken off proves nothing. */
  @ParameterizedTest(name = "seeds from {0}")
  @ValueSource(longs = {400_000})
  void is_taken_up_where_it_was_broken_off(long first) {
    int brokenOff = 0;
    for (long seed = first; seed < first + 250; seed++) {
      Network network = crowded(seed, 5);
      var search = searchOf(network);
      long known = late(network);
      long[] places = null;
      boolean through = false;
      while (!through) {
        through = search.run(known, 3);
        assertThat(search.end()).isLessThanOrEqualTo(known);
        known = search.end();
        places = search.best() == null ? places : search.best();
        brokenOff += through ? 0 : 1;
      }
      soundAndSoonest(network, search, places);
    }
    assertThat(brokenOff).isGreaterThan(200);
  }

  /** Larger networks, where what is proved is held against other schedules. */
  @ParameterizedTest(name = "seeds from {0}")
  @ValueSource(longs = {500_000})
  void no_schedule_ends_before_what_is_proved(long first) {
    int proved = 0;
    for (long seed = first; seed < first + 100; seed++) {
      Network network = crowded(seed, 14);
      var search = searchOf(network);
      if (!search.run(late(network), 20_000)) continue;
      proved++;
      var schedules = new Search(new CalendarDecoder(network), Budget.schedules(600), seed);
      schedules.run(600, search.end() - 1);
      assertThat(search.end()).as("seed %d", seed).isLessThanOrEqualTo(schedules.bestEnd());
    }
    assertThat(proved).isGreaterThan(50);
  }
}
