package cornerpost.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SearchTest {
  private static final Map<WorkCalendar, PlainPlan.Table> TABLES = PlainPlan.tables();

  /**
   * Fifty tasks of a day for one crew of one: every order ends after fifty days, so populations
   * soon rest. Broken off after each number of schedules, some are empty at that moment.
   */
  @Test
  void takes_in_a_schedule_at_any_moment() {
    var tasks = new ArrayList<Activity>();
    for (int k = 1; k <= 50; k++) {
      long day = Networks.EVERY_DAY.dayMinutes();
      tasks.add(Activity.working("" + k, "task " + k, day).needing(1, "crew"));
    }
    var crews = List.of(Crew.of("crew", 1));
    var start = Networks.MONDAY.atStartOfDay();
    var network = Network.of(tasks, List.of(), crews, start, Networks.EVERY_DAY);
    var early = new Sweep(network.graph());
    early.forward(network.graph().minutes);
    var project = ScaledProject.of(network, early).orElseThrow();
    int[] list = new int[project.size];
    for (int k = 0; k < list.length; k++) {
      list[k] = k;
    }
    for (int until = 1; until < 650; until++) {
      var decoder = new ScaledDecoder(project);
      var search = new Search(decoder, Budget.schedules(659), 3);
      search.run(until, 0);
      search.takeIn(decoder.forward(list));
      search.run(10, 0);
      assertThat(search.bestEnd()).as("after %d schedules", until).isEqualTo(50);
    }
  }

  /**
   * A list put in from the back knows nothing of not-before dates, and one with leads has to be put
   * in order again: what comes of pushing it to the front may then be longer than it was.
   */
  @ParameterizedTest
  @CsvSource({"j60, j6013_1.sm", "j60, j6029_1.sm", "j60, j6045_1.sm", "j120, j12031_1.sm"})
  void comes_to_an_end_whatever_dates_and_leads_there_are(String set, String file) {
    var plain = Networks.psplib(set, file).network(Networks.EVERY_DAY);
    long day = Networks.EVERY_DAY.dayMinutes();
    for (int seed = 0; seed < 12; seed++) {
      var draw = new Random(seed);
      boolean dates = seed % 3 != 0;
      boolean leads = seed % 3 != 1;
      int one = draw.nextInt(2, 12); // of so many
      int latest = draw.nextInt(10, 90);
      var tasks = new ArrayList<Activity>();
      for (var a : plain.activities()) {
        boolean held = dates && a.minutes() > 0 && draw.nextInt(one) == 0;
        tasks.add(held ? a.notBefore(plain.start().plusDays(draw.nextInt(latest))) : a);
      }
      var links = new ArrayList<Link>();
      for (var l : plain.links()) {
        boolean lead = leads && draw.nextInt(one) == 0;
        var relation = Relation.values()[draw.nextInt(4)];
        long lag = day * draw.nextInt(-12, 6);
        links.add(lead ? Link.of(l.before(), l.after(), relation, lag) : l);
      }
      var network = Network.of(tasks, links, plain.crews(), plain.start(), Networks.EVERY_DAY);
      var schedule =
          assertTimeoutPreemptively(
              Duration.ofMinutes(1),
              () -> Sequencer.sequence(network, Budget.schedules(4_000), 1),
              "it hangs");
      assertThat(Feasible.faults(schedule, TABLES)).as("seed %d", seed).isEmpty();
    }
  }
}
