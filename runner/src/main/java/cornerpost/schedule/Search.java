package cornerpost.schedule;

import java.util.Arrays;
import java.util.Comparator;

/**
 * Looks for a better order of work: a genetic algorithm on lists of tasks with forward-backward
 * improvement.
 *
 * <p>A list becomes a schedule by serial generation; each new schedule is pushed to the back and
 * then to the front again (justification). Where 46 tasks or more share a calendar the list is put
 * in from the back at once, then pushed to the front, and the order of finishes that comes of it is
 * the list of the next children: two schedules a child instead of three. What a child has in common
 * with its parent where it begins to be put in is not worked out again. A child takes a block of
 * neighbours from one parent and the order of all others from the other; some tasks are then moved
 * within what their links allow. Each parent is the better of two at random, and the second, of
 * some such, the one whose list is least like that of the first: what two nearly equal lists have
 * for a child they mostly are themselves. A child that is much longer than its parents is given up
 * before it is pushed: it hardly ever becomes better than they. The child takes the place of the
 * worse parent (where children are put in from the back, of the worst of both and some others) if
 * it is no worse. Among schedules of equal end that with fewer tasks held fast between back and
 * front is better.
 *
 * <p>When nothing improves any more a population starts anew, and where lists are put in from the
 * back the one at rest is put by. When the next is at rest too, the better halves of both are bred
 * on together; what comes of two such pairs is joined likewise, and so on. Up to 80 tasks every
 * second population is bred in reversed time: what one direction hardly ever finds the other often
 * does. The best schedule of all is kept.
 *
 * <p>Sources: S. Hartmann, "A competitive genetic algorithm for resource-constrained project
 * scheduling", Naval Research Logistics 45 (1998) 733-750 (lists); V. Valls, F. Ballestin and S.
 * Quintanilla, "Justification and RCPSP", European Journal of Operational Research 165 (2005)
 * 375-386, and "A hybrid genetic algorithm for the RCPSP", ibid. 185 (2008) 495-508 (justification;
 * blocks from one parent); R. Kolisch, "Efficient priority rules for the RCPSP", Journal of
 * Operations Management 14 (1996) 179-192 (first lists: biased random sampling by latest start).
 * Parents that are unlike each other are after L. J. Eshelman and J. D. Schaffer, "Preventing
 * premature convergence in genetic algorithms by preventing incest", ICGA 1991, 115-122. The tie
 * rule, the joining in pairs, the turning round and the sizes are our own; that children are put in
 * from the other end than their parents is after D. Debels and M. Vanhoucke, "A bi-population based
 * genetic algorithm for the resource-constrained project scheduling problem", ICCSA 2005, 378-387.
 */
final class Search {
  private static final int ASK_AFTER = 5_000; // tasks put in

  private final Direction front;
  private final Direction reversed; // null where lists go in one direction of time alone
  private Direction now; // that of the population there is
  private Decoder decoder;
  private ListMaker maker;
  private final int n;
  private final Budget budget;
  private final RandomDraw draw;
  private final boolean fromBack;
  private final SearchSizes sizes;
  private final int population;
  private final int[][] lists;
  private final int[][] places; // where each list puts its tasks; null where that is of no use
  private final boolean[] placesNoted;
  private final ListPrints prints;
  private final long[] ends;
  private final long[] worth; // end first, then tasks held fast
  private int filled;
  private int stale;
  private int[] child;
  private int[] placesOfChild;
  private long bestEnd = Long.MAX_VALUE;
  private long bestOfPopulation = Long.MAX_VALUE;
  private long built;
  private long builtAtAsked;
  private boolean stopped;
  private long builtAtBest;
  private final Half[] putBy = new Half[64]; // by how often they were joined
  private int joined;

  Search(Decoder decoder, Budget budget, long seed) {
    this.budget = budget;
    n = decoder.size;
    draw = new RandomDraw(seed);
    fromBack = decoder.startsFromBack() && SearchSizes.fromBack(n);
    sizes = SearchSizes.of(n, fromBack);
    front = direction(decoder);
    Decoder back = fromBack && sizes.bothWays() ? decoder.reversed() : null;
    reversed = back == null ? null : direction(back);
    go(front);
    population = (int) Math.max(10, Math.min(sizes.population(), budget.schedules() / 60));
    lists = new int[population][];
    places = fromBack || decoder.resumes() ? new int[population][n] : null;
    placesNoted = new boolean[population];
    placesOfChild = places == null ? null : new int[n];
    prints = new ListPrints(population, n);
    ends = new long[population];
    worth = new long[population];
    child = new int[n];
  }

  /** What puts lists in, and what makes them, in one direction of time. */
  private record Direction(Decoder decoder, ListMaker maker) {}

  private Direction direction(Decoder decoder) {
    return new Direction(
        decoder, new ListMaker(decoder, draw, sizes.moveRate(), sizes.longestBlock()));
  }

  private void go(Direction direction) {
    now = direction;
    decoder = direction.decoder;
    maker = direction.maker;
  }

  long bestEnd() {
    return bestEnd;
  }

  long built() {
    return built;
  }

  /** Whether the budget is spent. */
  boolean spent() {
    return built >= budget.schedules()
        || built - builtAtBest >= budget.patience()
        || built > 0 && stopped();
  }

  /** Asks only after some work: what is asked may be a clock, which takes as long as some tasks. */
  private boolean stopped() {
    if (built == builtAtAsked || builtAtAsked == 0 || (built - builtAtAsked) * n >= ASK_AFTER) {
      builtAtAsked = built;
      stopped = budget.stop().getAsBoolean();
    }
    return stopped;
  }

  /** The better half of a population. */
  private record Half(Direction direction, int[][] lists, long[] ends, long[] worth) {}

  /**
   * Lets the decoder hold the schedule of one of the best of the population, at random; only where
   * lists are put in from the front.
   */
  void showElite() {
    int chosen = draw.below(filled);
    for (int k = 0; k < 20; k++) {
      int other = draw.below(filled);
      chosen = ends[other] < ends[chosen] ? other : chosen;
    }
    System.arraycopy(lists[chosen], 0, child, 0, n);
    decoder.forward(child);
  }

  /**
   * Takes the schedule that the decoder this was made with holds now into the population, in place
   * of one of the worse; into an empty one as its first.
   *
   * @param end of that schedule
   */
  void takeIn(long end) {
    keep(front.decoder, end);
    Arrays.setAll(child, k -> k); // tasks are numbered in an order of waiting
    if (now == front) {
      decoder.listByStart(child);
    } else {
      front.decoder.listByFinish(child);
      turn(child);
    }
    if (filled == 0) {
      makeRoom();
    }
    int worst = 0;
    for (int q = 1; q < filled; q++) {
      worst = worth[q] > worth[worst] ? q : worst;
    }
    System.arraycopy(child, 0, lists[worst], 0, n);
    keep(decoder.forward(lists[worst]));
    built++;
    list(lists[worst]);
    evaluate(lists[worst], fromBack);
    settle(worst);
    stale = 0;
  }

  /** Builds up to so many more schedules, or until one ends by the goal. */
  void run(long more, long goal) {
    long until = built + Math.min(more, budget.schedules() - built);
    while (bestEnd > goal && built < until && !spent()) {
      if (filled < population) {
        int member = makeRoom();
        maker.fill(lists[member], member);
        evaluate(lists[member], member > 0 && fromBack);
        settle(member);
      } else {
        breed();
        if (stale > sizes.staleRounds() * population) {
          stale = 0;
          join();
        }
      }
    }
  }

  /** The next member, its list not yet made. */
  private int makeRoom() {
    if (lists[filled] == null) {
      lists[filled] = new int[n];
    }
    return filled++;
  }

  private long lastEnd;
  private long lastWorth;

  /** Builds the schedule of a list, whatever comes of it. */
  private void evaluate(int[] list, boolean back) {
    long first = back ? decoder.backward(list, Decoder.NONE) : decoder.forward(list);
    push(list, back, first, Decoder.NONE);
  }

  /**
   * Pushes the schedule just built to the other end, if it was put in from the front, and to the
   * front, and makes the list the order that comes of it; false, and the list of no use, if it then
   * ends later than is wanted.
   *
   * @param back whether it was put in from the back
   * @param first its end, or its length
   */
  private boolean push(int[] list, boolean back, long first, long wanted) {
    if (!back) {
      keep(first);
      decoder.listByFinish(list);
      decoder.backward(list, Decoder.NONE);
    }
    decoder.listByStart(list);
    long end = decoder.forward(list, wanted);
    built += back ? 2 : 3;
    if (end == Decoder.NONE) {
      return false;
    }
    keep(end);
    lastEnd = end;
    lastWorth = end * (n + 1) + decoder.unmoved();
    list(list);
    if (places != null && !fromBack) {
      decoder.note(placesOfChild);
    }
    return true;
  }

  /** Puts the list in the order in which it will be put in. */
  private void list(int[] list) {
    if (fromBack) {
      decoder.listByFinish(list);
    } else {
      decoder.listByStart(list);
    }
  }

  /**
   * Puts a population at rest by, or joins its better half with that of one that was joined as
   * often.
   */
  private void join() {
    if (!fromBack) {
      filled = 0;
      bestOfPopulation = Long.MAX_VALUE;
      return;
    }
    Integer[] byWorth = new Integer[population];
    Arrays.setAll(byWorth, k -> k);
    Arrays.sort(byWorth, Comparator.comparingLong(k -> worth[k])); // keeps the order of equals
    int half = population / 2;
    Half other = putBy[joined];
    if (other == null) {
      other = new Half(now, new int[half][], new long[half], new long[half]);
      for (int k = 0; k < half; k++) {
        int from = byWorth[k];
        other.lists[k] = lists[from];
        lists[from] = null;
        other.ends[k] = ends[from];
        other.worth[k] = worth[from];
      }
      putBy[joined] = other;
      joined = 0;
      filled = 0;
      bestOfPopulation = Long.MAX_VALUE;
      if (reversed != null) {
        go(now == front ? reversed : front);
      }
      return;
    }
    for (int k = 0; k < half; k++) {
      int to = byWorth[population - 1 - k];
      lists[to] = other.lists[k];
      if (other.direction == now) {
        lastEnd = other.ends[k];
        lastWorth = other.worth[k];
      } else {
        turn(lists[to]);
        evaluate(lists[to], false);
      }
      settle(to);
    }
    putBy[joined] = null;
    joined++;
  }

  /** Makes a list of one direction of time one of the other. */
  private void turn(int[] list) {
    for (int k = 0, last = n - 1; k <= last; k++, last--) {
      int j = list[k];
      list[k] = n - 1 - list[last];
      list[last] = n - 1 - j;
    }
  }

  private void keep(long end) {
    keep(decoder, end);
  }

  private void keep(Decoder holder, long end) {
    if (end < bestEnd) {
      bestEnd = end;
      builtAtBest = built;
      holder.keep();
    }
  }

  private void breed() {
    int a = drawn();
    int b = partner(a);
    stale++;
    if (a == b) {
      return;
    }
    int[] known = places == null ? null : placesOf(b); // first: the list may change
    maker.cross(lists[a], lists[b], child);
    maker.move(child);
    int same = places == null ? 0 : fromBack ? alikeAtEnd(child, lists[b]) : alike(child, lists[b]);
    if (same == n) {
      return;
    }
    long longer = Math.max(ends[a], ends[b]); // what ends later is not taken in
    long limit = decoder.stretched(longer, sizes.worthPushing());
    long first =
        fromBack
            ? decoder.backward(child, same, known, limit)
            : decoder.forward(child, same, known, limit);
    if (first == Decoder.NONE) {
      built++;
      return;
    }
    if (!push(child, fromBack, first, longer)) {
      return;
    }
    if (lastWorth < bestOfPopulation) {
      stale = 0;
    }
    for (int q = 0; q < population; q++) {
      if (worth[q] == lastWorth && Arrays.equals(lists[q], child)) {
        return;
      }
    }
    int worse = worst(a, b);
    if (lastWorth <= worth[worse]) {
      replace(worse);
    }
  }

  /** The child takes the place of the member. */
  private void replace(int member) {
    int[] freed = lists[member];
    lists[member] = child;
    child = freed;
    settle(member);
  }

  /** The member's list is new, and the schedule built last is what came of it. */
  private void settle(int member) {
    ends[member] = lastEnd;
    worth[member] = lastWorth;
    bestOfPopulation = Math.min(bestOfPopulation, lastWorth);
    prints.note(member, lists[member]);
    if (places != null) {
      int[] freed = places[member];
      places[member] = placesOfChild;
      placesOfChild = freed;
      placesNoted[member] = !fromBack;
    }
  }

  /**
   * Where the member's list puts its tasks. Put in from the back it goes elsewhere than its
   * schedule: worked out when asked for. About one in ten turns out shorter than that schedule and
   * is pushed on until no more is gained: a better schedule in the place of its own, which leaves
   * the population as mixed as it was. Where dates or leads hold tasks the front may gain nothing.
   */
  private int[] placesOf(int member) {
    while (!placesNoted[member]) {
      long length = decoder.backward(lists[member], Decoder.NONE);
      decoder.noteFromBack(places[member]);
      if (length < ends[member]) {
        placesNoted[member] = !pushOn(member, length);
      } else {
        placesNoted[member] = true;
        built++;
      }
    }
    return places[member];
  }

  /** Pushes the member's list, just put in from the back, and takes it if that is better. */
  private boolean pushOn(int member, long length) {
    System.arraycopy(lists[member], 0, child, 0, n);
    push(child, true, length, Decoder.NONE);
    boolean better = lastEnd < ends[member];
    if (better) {
      replace(member);
    }
    return better;
  }

  /** How many tasks two lists have in common at their beginning. */
  private static int alike(int[] one, int[] other) {
    int first = Arrays.mismatch(one, other);
    return first < 0 ? one.length : first;
  }

  /** How many tasks two lists have in common at their end. */
  private static int alikeAtEnd(int[] one, int[] other) {
    int same = 0;
    while (same < one.length && one[one.length - 1 - same] == other[one.length - 1 - same]) {
      same++;
    }
    return same;
  }

  /** The worst of two and some others at random. */
  private int worst(int a, int b) {
    int worst = worth[a] > worth[b] ? a : b;
    for (int k = 0; k < sizes.rivals(); k++) {
      int other = draw.below(population);
      worst = worth[other] > worth[worst] ? other : worst;
    }
    return worst;
  }

  /** The better of two at random. */
  private int drawn() {
    int a = draw.below(population);
    int b = draw.below(population);
    return worth[a] <= worth[b] ? a : b;
  }

  /** Of some drawn, the one with the most tasks at another place of the list than in that of a. */
  private int partner(int a) {
    int farthest = a;
    int most = -1;
    for (int k = 0; k < sizes.partners(); k++) {
      int b = drawn();
      int different = prints.different(a, b);
      if (different > most) {
        most = different;
        farthest = b;
      }
    }
    return farthest;
  }
}
