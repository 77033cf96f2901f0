package cornerpost.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ListPrintsTest {
  @ParameterizedTest(name = "{0} tasks")
  @ValueSource(ints = {1, 2, 31, 32, 33, 62, 64, 122, 129})
  void every_place_is_seen_whose_tasks_have_numbers_with_other_last_bits(int tasks) {
    var random = new Random(tasks);
    int[][] lists = new int[6][];
    var prints = new ListPrints(lists.length, tasks);
    for (int member = 0; member < lists.length; member++) {
      prints.note(member, random.ints(tasks, 0, 1_000).toArray()); // what was there before
      lists[member] = random.ints(tasks, 0, tasks).toArray();
      prints.note(member, lists[member]);
    }
    for (int a = 0; a < lists.length; a++) {
      for (int b = 0; b < lists.length; b++) {
        int[] one = lists[a];
        int[] other = lists[b];
        long seen = IntStream.range(0, tasks).filter(k -> one[k] % 4 != other[k] % 4).count();
        assertThat(prints.different(a, b)).as("lists %d and %d", a, b).isEqualTo((int) seen);
      }
    }
  }
}
