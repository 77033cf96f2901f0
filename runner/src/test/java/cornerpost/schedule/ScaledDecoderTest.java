package cornerpost.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Schedules built from where two lists part are those built from the beginning. */
class ScaledDecoderTest {
  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"j30", "j60", "j120", "patterson"})
  void a_list_that_begins_like_that_of_a_schedule_need_not_be_put_in_from_the_beginning(
      String set) {
    int parted = 0;
    for (var each : decoders(set).entrySet()) {
      String file = each.getKey();
      var decoder = each.getValue();
      var maker = new ListMaker(decoder, new RandomDraw(7), 0.02, 0.3);
      int n = decoder.size;
      int[] one = new int[n];
      int[] other = new int[n];
      int[] child = new int[n];
      int[] places = new int[n];
      int[] anew = new int[n];
      for (int k = 1; k <= 20; k++) {
        maker.fill(other, k);
        maker.fill(one, k);
        long end = decoder.forward(one);
        decoder.note(places);
        decoder.listByStart(one);

        assertThat(decoder.forward(one)).as(file).isEqualTo(end);
        decoder.note(anew);
        assertThat(anew)
            .as("%s: the schedule its own order of starts gives", file)
            .isEqualTo(places);

        maker.cross(other, one, child);
        maker.move(child);
        int same = Arrays.mismatch(child, one);
        parted += same > 0 ? 1 : 0;
        if (same >= 0) {
          long whole = decoder.forward(child);
          decoder.note(anew);
          assertThat(decoder.forward(child, same, places, Decoder.NONE)).as(file).isEqualTo(whole);
          decoder.note(places);
          assertThat(places).as("%s: from task %d of the list on", file, same).isEqualTo(anew);
        }
      }
    }
    assertThat(parted).as("children that begin like their parent").isGreaterThan(200);
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"j30", "j60", "j120", "patterson"})
  void a_list_that_ends_like_another_need_not_be_put_in_from_the_back_once_more(String set) {
    int parted = 0;
    for (var each : decoders(set).entrySet()) {
      String file = each.getKey();
      var decoder = each.getValue();
      var maker = new ListMaker(decoder, new RandomDraw(7), 0.02, 0.3);
      int n = decoder.size;
      int[] one = new int[n];
      int[] other = new int[n];
      int[] child = new int[n];
      int[] places = new int[n];
      int[] anew = new int[n];
      for (int k = 1; k <= 20; k++) {
        maker.fill(other, k);
        maker.fill(one, k);
        decoder.backward(one, Decoder.NONE);
        decoder.noteFromBack(places);

        maker.cross(other, one, child);
        maker.move(child);
        int same = 0;
        while (same < n && child[n - 1 - same] == one[n - 1 - same]) {
          same++;
        }
        parted += same > 0 && same < n ? 1 : 0;
        long whole = decoder.backward(child, Decoder.NONE);
        decoder.noteFromBack(anew);
        decoder.forward(one); // what is free, and the end, are now those of another schedule
        assertThat(decoder.backward(child, same, places, Decoder.NONE)).as(file).isEqualTo(whole);
        decoder.noteFromBack(places);
        assertThat(places).as("%s: the last %d tasks known", file, same).isEqualTo(anew);
      }
    }
    assertThat(parted).as("children that end like their parent").isGreaterThan(200);
  }

  /** Facts of the instances alone: links, needs and numbers of crews. */
  @ParameterizedTest(name = "{0}")
  @ValueSource(strings = {"j30", "j60", "j120", "patterson"})
  void a_schedule_found_in_reversed_time_is_kept_as_one_that_can_be_worked(String set) {
    for (var each : decoders(set).entrySet()) {
      String file = each.getKey();
      var decoder = each.getValue();
      var reversed = decoder.reversed();
      var maker = new ListMaker(reversed, new RandomDraw(7), 0.02, 0.3);
      int n = decoder.size;
      int[] list = new int[n];
      ScaledProject p = decoder.p;
      for (int k = 1; k <= 5; k++) {
        maker.fill(list, k);
        long end = reversed.forward(list);
        reversed.keep();

        int[] start = decoder.kept;
        assertThat(Arrays.stream(start).min()).as(file).hasValue(0);
        long last = 0;
        for (int j = 0; j < n; j++) {
          last = Math.max(last, start[j] + p.duration[j]);
          for (int a = 0; a < p.before[j].length; a++) {
            assertThat(start[j])
                .as("%s: task %d after %d", file, j, p.before[j][a])
                .isGreaterThanOrEqualTo(start[p.before[j][a]] + p.lagBefore[j][a]);
          }
        }
        assertThat(last).as(file).isEqualTo(end);
        for (int c = 0; c < p.crewAvailable.length; c++) {
          long[] asked = new long[(int) end];
          for (int j = 0; j < n; j++) {
            for (int t = start[j]; t < start[j] + p.duration[j]; t++) {
              asked[t] += p.need[c][j];
            }
          }
          assertThat(Arrays.stream(asked).max().orElse(0))
              .as("%s: crew %d", file, c)
              .isLessThanOrEqualTo(p.crewAvailable[c]);
        }
      }
    }
  }

  private static Map<String, ScaledDecoder> decoders(String set) {
    boolean patterson = set.equals("patterson");
    var all = new TreeMap<String, ScaledDecoder>();
    for (String file : Networks.known(patterson ? set : "psplib/" + set).keySet()) {
      var problem = patterson ? Networks.patterson(file) : Networks.psplib(set, file);
      Network network = problem.network(Networks.EVERY_DAY);
      var early = new Sweep(network.graph());
      early.forward(network.graph().minutes);
      all.put(file, new ScaledDecoder(ScaledProject.of(network, early).orElseThrow()));
    }
    return all;
  }
}
