package cornerpost.schedule;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Which tasks can keep the day they are booked for, as many as possible, when all must end in time.
 *
 * <p>All are supposed to keep their day, and {@link TimeWindows} says whether that can be. Where it
 * cannot, a smallest set of days that cannot all be kept is looked for; of each such set at least
 * one booking must change, so the fewest that strike every set found are a number below which no
 * order of the work can go. The days of those few are given up and the rest tried again: either
 * another set is found, or an order of the work that keeps all the others, which then is the best.
 * Where the effort is spent before, orders that keep fewer days are taken, and the number shows by
 * how much they might be bettered.
 *
 * <p>Sources: R. Reiter, "A theory of diagnosis from first principles", Artificial Intelligence 32
 * (1987) 57-95 (conflict sets and the sets that strike them all); E. Moreno-Centeno and R. M. Karp,
 * "The implicit hitting set approach", Operations Research 61 (2013) 453-468; U. Junker,
 * "QuickXplain", AAAI 2004, 167-172 (smallest sets by taking out halves).
 */
public final class FewestChanges {
  /** Orders of two tasks that are tried for one set of days. */
  private static final int NODES_OF_A_TRY = 400;

  /** Tries at striking the sets that cost about as much as a look at the windows. */
  private static final int TRIES_OF_A_LOOK = 16;

  private final Graph g;
  private final TimeWindows windows;
  private final OrderChoices orders;
  private final List<Booking> bookings;
  private final int[] task;
  private final long[] from;
  private final long[] before;
  private final List<BitSet> sets = new ArrayList<>();
  private long[][] opened;
  private long effort;
  private long nodes;
  private long tries;
  private boolean cut;
  private long[] places;

  /**
   * A task with the day it is booked for.
   *
   * @param day on which it starts if the booking is kept
   */
  public record Booking(String id, LocalDate day) {}

  /**
   * What was found.
   *
   * @param dates of all tasks by their position in the network, if any order was found
   * @param changed bookings with another day in it
   * @param atLeast no order of the work changes fewer
   */
  public record Found(Optional<List<Dates>> dates, int changed, int atLeast) {}

  private FewestChanges(Network network, List<Booking> bookings, long effort) {
    this.bookings = List.copyOf(bookings);
    this.effort = effort;
    g = network.graph();
    var use = new CrewUse(network);
    windows = new TimeWindows(network, use);
    orders = new OrderChoices(g, use, windows);
    int n = bookings.size();
    task = new int[n];
    from = new long[n];
    before = new long[n];
    for (int b = 0; b < n; b++) {
      task[b] = network.indexOf(bookings.get(b).id());
      from[b] = Minutes.of(bookings.get(b).day().atStartOfDay());
      // A moment at midnight may be shown on the day before.
      before[b] = from[b] + Minutes.A_DAY + (g.kind[task[b]] == Graph.MOMENT ? 1 : 0);
    }
  }

  /**
   * Looks for the order of the work that changes the fewest bookings.
   *
   * @param network with what must not start sooner as not-before dates
   * @param bookings of tasks that have not begun
   * @param firm ids of those that must be kept
   * @param lastDays the last day of some tasks, by id
   * @param end by which everything must be finished
   * @param effort how often it may look at what a set of days leaves possible; the same effort
   *     gives the same
   */
  public static Found search(
      Network network,
      List<Booking> bookings,
      Set<String> firm,
      Map<String, LocalDate> lastDays,
      LocalDateTime end,
      long effort) {
    return new FewestChanges(network, bookings, effort)
        .run(network, firm, lastDays, Minutes.of(end));
  }

  private Found run(Network network, Set<String> firm, Map<String, LocalDate> lastDays, long end) {
    if (g.size > TimeWindows.MOST_TASKS) return new Found(Optional.empty(), bookings.size(), 0);
    var early = new Sweep(g);
    early.forward(g.minutes);
    boolean possible = windows.open(early, end);
    for (var d : lastDays.entrySet()) {
      int i = network.indexOf(d.getKey());
      long by = Minutes.of(d.getValue().plusDays(1).atStartOfDay());
      possible = possible && (g.state[i] == Graph.DONE || windows.finishBy(i, by));
    }
    var soft = new BitSet();
    for (int b = 0; b < task.length; b++) {
      if (!firm.contains(bookings.get(b).id())) soft.set(b);
      else possible = possible && windows.startWithin(task[b], from[b], before[b]);
    }
    if (!windows.settled(possible)) return new Found(Optional.empty(), bookings.size(), 0);
    opened = windows.state();
    int forced = 0;
    for (int b = soft.nextSetBit(0); b >= 0; b = soft.nextSetBit(b + 1)) {
      if (holds(only(b))) continue;
      soft.clear(b);
      forced++;
    }
    return strike(soft, forced);
  }

  private static BitSet only(int b) {
    var set = new BitSet();
    set.set(b);
    return set;
  }

  private Found strike(BitSet soft, int forced) {
    int least = 0;
    var best = new Found(Optional.empty(), bookings.size(), 0);
    while (effort > 0) {
      var given = strikingAll(least);
      if (given == null) break;
      least = given.cardinality();
      if (best.dates.isPresent() && best.changed <= forced + least) break;
      var kept = without(soft, given);
      var first = possible(kept);
      var answer = first;
      int known = sets.size();
      while (answer != Answer.YES && effort > 0 && !kept.isEmpty()) {
        if (answer == Answer.UNKNOWN) {
          kept.clear(kept.nextSetBit(0)); // proves nothing, but an order is easier to find
        } else {
          var set = smallest(kept);
          sets.add(set);
          kept.andNot(set);
        }
        answer = possible(kept);
      }
      if (answer == Answer.YES) {
        var found = found(places);
        if (best.dates.isEmpty() || found.changed < best.changed) best = found;
      }
      // Either the given days are enough, or nothing was learned that would give others.
      if (first == Answer.YES || sets.size() == known) break;
    }
    return new Found(
        nobodySooner(best).dates, best.changed, Math.min(best.changed, forced + least));
  }

  /** The same days kept, and the others later than booked, not sooner, if that can be. */
  private Found nobodySooner(Found best) {
    if (best.dates.isEmpty()) return best;
    var dates = best.dates.get();
    var kept = new BitSet();
    for (int b = 0; b < task.length; b++) {
      if (dates.get(task[b]).firstDay().equals(bookings.get(b).day())) kept.set(b);
    }
    boolean possible = holds(kept);
    for (int b = 0; possible && b < task.length; b++) {
      possible = kept.get(b) || windows.startFrom(task[b], from[b]);
    }
    nodes = NODES_OF_A_TRY;
    boolean found = windows.settled(possible) && node() && changed(places) <= best.changed;
    return found ? found(places) : best;
  }

  private static BitSet without(BitSet all, BitSet some) {
    var rest = (BitSet) all.clone();
    rest.andNot(some);
    return rest;
  }

  // ---- whether days can be kept -------------------------------------------------------------

  private enum Answer {
    YES,
    NO,
    UNKNOWN
  }

  /** Whether the windows leave room with these days kept. */
  private boolean holds(BitSet kept) {
    effort--;
    windows.restore(opened);
    boolean possible = true;
    for (int b = kept.nextSetBit(0); possible && b >= 0; b = kept.nextSetBit(b + 1)) {
      possible = windows.startWithin(task[b], from[b], before[b]);
    }
    return windows.settled(possible);
  }

  /** Whether an order of the work keeps these days; if so, its places are noted. */
  private Answer possible(BitSet kept) {
    if (!holds(kept)) return Answer.NO;
    cut = false;
    nodes = NODES_OF_A_TRY;
    if (node()) return Answer.YES;
    return cut ? Answer.UNKNOWN : Answer.NO;
  }

  private boolean node() {
    int[][] choices = orders.choices();
    if (choices.length == 0) {
      places = windows.low.clone();
      return true;
    }
    long[][] state = windows.state();
    for (int[] c : choices) {
      if (nodes <= 0) {
        cut = true;
        return false;
      }
      nodes--;
      effort--;
      if (windows.decide(c[0], c[1]) && node()) return true;
      if (cut) return false;
      windows.restore(state);
    }
    return false;
  }

  private Found found(long[] places) {
    var dates = dates(places);
    return new Found(Optional.of(dates), changed(dates), 0);
  }

  private int changed(long[] places) {
    return changed(dates(places));
  }

  private int changed(List<Dates> dates) {
    int changed = 0;
    for (int b = 0; b < task.length; b++) {
      if (!dates.get(task[b]).firstDay().equals(bookings.get(b).day())) changed++;
    }
    return changed;
  }

  private List<Dates> dates(long[] places) {
    var plan = new Sweep(g);
    for (int i = 0; i < g.size; i++) plan.put(i, places[i], g.minutes[i]);
    var dates = new ArrayList<Dates>();
    for (int i = 0; i < g.size; i++) {
      dates.add(ShownDays.dates(plan.start[i], plan.finish[i], plan.followsFinish(i)));
    }
    return dates;
  }

  // ---- sets of days that cannot all be kept -------------------------------------------------

  /** Takes out of a set that cannot be kept as long as the rest cannot be kept either. */
  private BitSet smallest(BitSet impossible) {
    boolean byWindows = !holds(impossible);
    var set = (BitSet) impossible.clone();
    for (int size = Math.max(1, set.cardinality() / 2); ; size = size / 2) {
      int at = set.nextSetBit(0);
      while (at >= 0 && effort > 0) {
        var part = new BitSet();
        for (; at >= 0 && part.cardinality() < size; at = set.nextSetBit(at + 1)) part.set(at);
        var rest = without(set, part);
        if (byWindows ? !holds(rest) : possible(rest) == Answer.NO) set = rest;
      }
      if (size == 1) return set;
    }
  }

  /** The fewest bookings of which each set found has one, or null once the effort is spent. */
  private BitSet strikingAll(int least) {
    for (int most = least; ; most++) {
      var struck = new BitSet();
      if (striking(struck, most)) return struck;
      if (effort <= 0) return null;
    }
  }

  private boolean striking(BitSet struck, int left) {
    if (tries++ % TRIES_OF_A_LOOK == 0) effort--;
    if (effort <= 0) return false;
    BitSet next = null;
    var taken = new BitSet();
    int apart = 0;
    for (var s : sets) {
      if (s.intersects(struck)) continue;
      if (next == null || s.cardinality() < next.cardinality()) next = s;
      if (!s.intersects(taken)) {
        taken.or(s);
        apart++;
      }
    }
    if (next == null) return true;
    if (apart > left) return false;
    for (int b = next.nextSetBit(0); b >= 0; b = next.nextSetBit(b + 1)) {
      struck.set(b);
      if (striking(struck, left - 1)) return true;
      struck.clear(b);
    }
    return false;
  }
}
