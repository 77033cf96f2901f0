package cornerpost.schedule;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * By how many calendar days the last day of a plan moves if one task starts so many days late.
 *
 * <p>Exact for any mix of calendars, relations and lags, without planning anew for each task: the
 * plan still ends by a day if the late start is no later than the task's latest start for an end by
 * that day, and late dates are the exact inverse of early ones. So one backward pass for each day
 * that the end may move answers for all tasks together. Deadlines are left aside. A day ends at
 * midnight: an end at that very moment counts to the day before.
 */
final class FinishMoves {
  private static final int MOST_DAYS = 400; // no delay asked for is absorbed for longer

  private FinishMoves() {}

  /**
   * The moves by task id, one for each delay; tasks that have begun are left out.
   *
   * @param delays days of the task's own calendar, elapsed days of a wait
   */
  static Map<String, List<Integer>> of(
      Timetable times, Sweep early, long[] minutes, List<Integer> delays) {
    Graph g = early.graph;
    Network network = times.network();
    var open = new ArrayList<Integer>();
    var late = new ArrayList<long[]>(); // places of each open task, delayed
    for (int i = 0; i < g.size; i++) {
      if (g.state[i] != Graph.NOT_STARTED) {
        continue;
      }
      long[] places = new long[delays.size()];
      for (int k = 0; k < places.length; k++) {
        var a = network.activities().get(i);
        var from = times.timings().get(i).early().start();
        places[k] =
            g.placeStartingFrom(i, Minutes.of(DelayEffect.later(network, a, from, delays.get(k))));
      }
      open.add(i);
      late.add(places);
    }
    int[][] moves = new int[open.size()][delays.size()];
    for (int[] m : moves) {
      java.util.Arrays.fill(m, -1);
    }
    LocalDate last = times.lastDay();
    boolean all = false;
    for (int day = 0; !all && day <= MOST_DAYS; day++) {
      long end = Math.max(early.end, Minutes.of(last.plusDays(day + 1L).atStartOfDay()));
      long[] latest = early.backward(minutes, end, false);
      all = true;
      for (int q = 0; q < moves.length; q++) {
        for (int k = 0; k < moves[q].length; k++) {
          if (moves[q][k] < 0 && late.get(q)[k] <= latest[open.get(q)]) {
            moves[q][k] = day;
          }
          all &= moves[q][k] >= 0;
        }
      }
    }
    var found = new HashMap<String, List<Integer>>();
    for (int q = 0; q < moves.length; q++) {
      var each = new ArrayList<Integer>();
      for (int m : moves[q]) {
        each.add(m < 0 ? MOST_DAYS : m);
      }
      found.put(network.activities().get(open.get(q)).id(), List.copyOf(each));
    }
    return Map.copyOf(found);
  }
}
