package cornerpost.schedule;

import java.util.Arrays;
import java.util.List;

/**
 * Works out what an event of the {@link Trail} rests on, so that a dead end can be traced back to
 * the orders that made it.
 *
 * <p>A reason is worked out when it is asked for, and for no more than is asked: that a task cannot
 * start before Thursday, say, though Friday was found. What is asked is marked on events, with the
 * place that is needed; whoever traces goes from the last event back and takes the marks off.
 *
 * <p>Method: A. Schutt, T. Feydt, P. J. Stuckey and M. G. Wallace, "Explaining the cumulative
 * propagator", Constraints 16 (2011) 250-282; M. Siala, C. Artigues and E. Hebrard, "Two clause
 * learning approaches for disjunctive scheduling", CP 2015, 393-402 (what is learned speaks of
 * orders alone).
 */
final class Reasons {
  private final Trail trail;
  private final Graph g;
  private final long[] minutes;
  private final OrderLiterals orders;
  private final List<CrewTasks> groups;
  private final Nogoods nogoods;

  private boolean[] asked = new boolean[1024]; // by event
  private long[] needed = new long[1024]; // place that is asked for
  private int askedOfLast; // how many events of the last level

  Reasons(Trail trail, List<CrewTasks> groups, Nogoods nogoods) {
    this.trail = trail;
    this.groups = groups;
    this.nogoods = nogoods;
    g = trail.g;
    minutes = g.minutes;
    orders = trail.orders;
  }

  // ---- what is asked ------------------------------------------------------------------------

  /** Asks why the literal is true; nothing to ask if it is a fact, or follows from links. */
  void askFor(int l) {
    askFor(l, trail.events);
  }

  /** The same of a literal that was true before the event. */
  void askFor(int l, int until) {
    if (l < 0) return;
    int e = trail.eventOf[l >> 1];
    assert trail.value[l] > 0 && e < until : "asked for what was not known";
    if (e >= 0 && !isAsked(e)) ask(e);
  }

  /** Asks why the task had no place before this one, as was known before the event. */
  void needLow(int i, long at, int until) {
    int e = trail.lastOfLow(i);
    while (e >= until) {
      e = trail.previous[e];
    }
    if (e < 0) return;
    assert trail.now[e] >= at : "asked for more than was found";
    while (e >= 0 && trail.was[e] >= at) {
      e = trail.previous[e];
    }
    if (e < 0) return;
    if (!isAsked(e)) {
      ask(e);
      needed[e] = at;
    } else {
      needed[e] = Math.max(needed[e], at);
    }
  }

  /** Asks why the task had no place after this one, as was known before the event. */
  void needHigh(int i, long at, int until) {
    int e = trail.lastOfHigh(i);
    while (e >= until) {
      e = trail.previous[e];
    }
    if (e < 0) return;
    assert trail.now[e] <= at : "asked for more than was found";
    while (e >= 0 && trail.was[e] <= at) {
      e = trail.previous[e];
    }
    if (e < 0) return;
    if (!isAsked(e)) {
      ask(e);
      needed[e] = at;
    } else {
      needed[e] = Math.min(needed[e], at);
    }
  }

  /** Asks why the task lies between two numbers of the crew's time, which count back if so told. */
  void needWithin(CrewTasks group, boolean back, int i, long from, long limit, int until) {
    needFrom(group, back, i, from, until);
    needFrom(group, !back, i, -limit, until);
  }

  private void needFrom(CrewTasks group, boolean back, int i, long from, int until) {
    if (back) {
      needHigh(i, g.placeFinishingBy(i, group.union.startOf(-from), minutes[i]), until);
    } else {
      needLow(i, g.placeStartingFrom(i, group.union.endOf(from)), until);
    }
  }

  private boolean isAsked(int e) {
    return e < asked.length && asked[e];
  }

  private void ask(int e) {
    if (e >= asked.length) {
      asked = Arrays.copyOf(asked, trail.what.length);
      needed = Arrays.copyOf(needed, trail.what.length);
    }
    asked[e] = true;
    if (trail.level[e] == trail.depth) askedOfLast++;
  }

  // ---- how it is traced ---------------------------------------------------------------------

  /** Takes the mark off an event; false if there was none. */
  boolean takeUp(int e) {
    if (!isAsked(e)) return false;
    asked[e] = false;
    if (trail.level[e] == trail.depth) askedOfLast--;
    return true;
  }

  /** Whether events of the last level are still asked for. */
  boolean asksOfLast() {
    return askedOfLast > 0;
  }

  /** Asks for what made an event, among those before it. */
  void explain(int e) {
    int l = trail.what[e];
    switch (trail.cause[e]) {
      case Trail.LINK -> explainLink(e);
      case Trail.ORDER -> explainOrder(e);
      case Trail.NO_ROOM -> explainNoRoom(e, l ^ 1);
      case Trail.BETWEEN -> {
        askFor(orders.of(orders.first[l], trail.by[e]), e);
        askFor(orders.of(trail.by[e], orders.second[l]), e);
      }
      case Trail.NOGOOD -> nogoods.askOthers(this, trail.by[e], l, e);
      case Trail.EDGE -> explainEdge(e);
      case Trail.KNOWN -> explainKnown(e);
      default -> {}
    }
  }

  private void explainLink(int e) {
    int l = trail.by[e];
    int i = g.before[l];
    int a = g.after[l];
    if (trail.ofLow(e)) {
      needLow(i, g.placeBefore(l, needed[e] - 1, minutes[a], minutes[i]) + 1, e);
    } else {
      long start = g.startAt(i, needed[e] + 1);
      long finish = g.finishAt(i, needed[e] + 1, minutes[i]);
      needHigh(a, g.placeAfter(l, start, finish, minutes[a]) - 1, e);
    }
  }

  private void explainOrder(int e) {
    int other = trail.by[e];
    int task = trail.task(e);
    if (trail.ofLow(e)) {
      askFor(orders.of(other, task), e);
      long start = g.startAt(task, needed[e] - 1);
      needLow(other, g.placeFinishingBy(other, start, minutes[other]) + 1, e);
    } else {
      askFor(orders.of(task, other), e);
      long finish = g.finishAt(task, needed[e] + 1, minutes[task]);
      needHigh(other, g.placeStartingFrom(other, finish) - 1, e);
    }
  }

  private void explainNoRoom(int e, int impossible) {
    int i = orders.first[impossible];
    int j = orders.second[impossible];
    long latest = trail.highBefore(j, e);
    needHigh(j, latest, e);
    needLow(i, g.placeFinishingBy(i, g.startAt(j, latest), minutes[i]) + 1, e);
  }

  private void explainKnown(int e) {
    CrewSets sets = trail.sets;
    int set = trail.by[e];
    CrewTasks group = groups.get(sets.group(set));
    boolean back = sets.back(set);
    int j = trail.task(e);
    long start = earliestEnd(e, group, back) - work(set, sets.making(set));
    for (int k = 0; k < sets.making(set); k++) {
      int i = sets.task(set, k);
      askFor(back ? orders.of(j, i) : orders.of(i, j), e);
      needFrom(group, back, i, start, e);
    }
  }

  private void explainEdge(int e) {
    CrewSets sets = trail.sets;
    int set = trail.by[e];
    CrewTasks group = groups.get(sets.group(set));
    boolean back = sets.back(set);
    long limit = sets.limit(set);
    int making = sets.making(set);
    int j = trail.task(e);
    long start = earliestEnd(e, group, back) - work(set, making);
    long earliest = limit - work(set, sets.tasks(set)) - minutes[j] + 1;
    needFrom(group, back, j, earliest, e);
    for (int k = 0; k < sets.tasks(set); k++) {
      long from = k < making ? Math.max(start, earliest) : earliest;
      needWithin(group, back, sets.task(set, k), from, limit, e);
    }
  }

  /** Number of the crew's time at which the tasks that make the end must end at the least. */
  private long earliestEnd(int e, CrewTasks group, boolean back) {
    int j = trail.task(e);
    return back
        ? 1 - group.union.worked(g.finishAt(j, needed[e] + 1, minutes[j]))
        : group.union.worked(g.startAt(j, needed[e] - 1)) + 1;
  }

  private long work(int set, int count) {
    long sum = 0;
    for (int k = 0; k < count; k++) {
      sum += minutes[trail.sets.task(set, k)];
    }
    return sum;
  }
}
