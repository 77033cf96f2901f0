package cornerpost.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class SearchTest {
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
}
