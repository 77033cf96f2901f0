package cornerpost.schedule;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/**
 * Is the network a sound basis for dates? Checks after published schedule guides, each a finding
 * with its items, no grade: in a plan of 20 to 60 tasks a 5 % rule trips on one or two of them.
 *
 * <p>Sources: US Department of Defense, Defense Contract Management Agency, DCMA-EA PAM 200.1
 * (October 2012), section 4, the fourteen-point check; US Government Accountability Office,
 * Schedule Assessment Guide, GAO-16-89G (December 2015). The points on baselines, resources and
 * tasks completed need more than a network and are not here.
 */
public final class NetworkHealth {
  private static final String DCMA = "DCMA-EA PAM 200.1 (2012), section 4, check ";
  private static final String GAO = "GAO-16-89G (2015), best practice ";

  /** Working days of float above which a link seems to be missing: two months. */
  public static final int HIGH_FLOAT_DAYS = 44;

  private static final int LONG_DAYS = 44; // two months of working days
  private static final double FEW = 0.05;
  private static final double MOST = 0.90;

  private final Network network;
  private final Timetable timetable;
  private final List<Finding> findings = new ArrayList<>();
  private final List<Timing> open;

  private NetworkHealth(Timetable timetable) {
    this.timetable = timetable;
    network = timetable.network();
    open =
        timetable.timings().stream()
            .filter(t -> t.activity().progress().finish().isEmpty())
            .toList();
  }

  /** All findings; none for a network that meets every measure. */
  public static List<Finding> of(Timetable timetable) {
    var health = new NetworkHealth(timetable);
    if (!health.open.isEmpty()) {
      health.logic();
      health.links();
      health.floats();
      health.dates();
      health.criticalPath();
    }
    return List.copyOf(health.findings);
  }

  /**
   * Critical path length index: (length + float) / length, both in days; 1 is on time, below 0.95
   * is reason to act.
   */
  public static double criticalPathLengthIndex(double lengthDays, double totalFloatDays) {
    return (lengthDays + totalFloatDays) / lengthDays;
  }

  private void add(
      String check,
      Finding.Severity severity,
      String message,
      List<String> items,
      double found,
      String source) {
    if (!items.isEmpty()) {
      findings.add(new Finding(check, severity, message, items, found, source));
    }
  }

  private List<String> tasks(Predicate<Timing> which) {
    return open.stream().filter(which).map(Timing::id).toList();
  }

  private List<String> linksWith(Predicate<Link> which) {
    return network.links().stream()
        .filter(which)
        .map(l -> l.before() + " -> " + l.after())
        .toList();
  }

  /**
   * One task may begin the work and one may end it; every other needs a task before and one after.
   */
  private void logic() {
    Set<String> hasBefore = network.links().stream().map(Link::after).collect(Collectors.toSet());
    Set<String> hasAfter = network.links().stream().map(Link::before).collect(Collectors.toSet());
    var noBefore = tasks(t -> !hasBefore.contains(t.id()));
    var noAfter = tasks(t -> !hasAfter.contains(t.id()));
    if (noBefore.size() > 1) {
      add(
          "no task before",
          Finding.Severity.ERROR,
          noBefore.size() + " tasks wait for nothing; a plan has one beginning",
          noBefore,
          share(noBefore.size() - 1, open.size()),
          DCMA + "1; " + GAO + "2");
    }
    if (noAfter.size() > 1) {
      add(
          "no task after",
          Finding.Severity.ERROR,
          "Nothing waits for " + noAfter.size() + " tasks; a plan has one end",
          noAfter,
          share(noAfter.size() - 1, open.size()),
          DCMA + "1; " + GAO + "2");
    }
    var startHeld = new HashSet<String>();
    var finishFree = new HashSet<String>();
    for (Link l : network.links()) {
      if (!l.relation().toFinish()) {
        startHeld.add(l.after());
      }
      if (!l.relation().fromStart()) {
        finishFree.add(l.before());
      }
    }
    var looseStart = tasks(t -> hasBefore.contains(t.id()) && !startHeld.contains(t.id()));
    var looseFinish = tasks(t -> hasAfter.contains(t.id()) && !finishFree.contains(t.id()));
    add(
        "loose start",
        Finding.Severity.WARNING,
        "Only the finish of these tasks waits for something; nothing holds their start",
        looseStart,
        share(looseStart.size(), open.size()),
        GAO + "2");
    add(
        "loose finish",
        Finding.Severity.WARNING,
        "Only the start of these tasks is waited for; they may run on without moving anything",
        looseFinish,
        share(looseFinish.size(), open.size()),
        GAO + "2");
  }

  private void links() {
    int all = network.links().size();
    if (all == 0) {
      return;
    }
    var leads = linksWith(l -> l.lagMinutes() < 0);
    add(
        "negative lag",
        Finding.Severity.ERROR,
        "A task starts or ends before the moment it waits for; split the task before instead",
        leads,
        share(leads.size(), all),
        DCMA + "2");
    var lags = linksWith(l -> l.lagMinutes() > 0);
    if (share(lags.size(), all) > FEW) {
      add(
          "lags",
          Finding.Severity.WARNING,
          percent(share(lags.size(), all))
              + " of the links have a lag (measure: at most 5 %); a wait that someone must"
              + " see to is better a task",
          lags,
          share(lags.size(), all),
          DCMA + "3");
    }
    var others = linksWith(l -> l.relation() != Relation.FINISH_TO_START);
    double plain = 1 - share(others.size(), all);
    if (plain < MOST) {
      add(
          "relations",
          Finding.Severity.WARNING,
          percent(plain) + " of the links are finish-to-start (measure: at least 90 %)",
          others,
          plain,
          DCMA + "4");
    }
  }

  private void floats() {
    var due = tasks(t -> t.activity().deadline().isPresent());
    if (share(due.size(), open.size()) > FEW) {
      add(
          "deadlines",
          Finding.Severity.NOTE,
          percent(share(due.size(), open.size()))
              + " of the tasks have a deadline of their own (measure: at most 5 %)",
          due,
          share(due.size(), open.size()),
          DCMA + "5");
    }
    var high = tasks(t -> floatDays(timetable, t) > HIGH_FLOAT_DAYS);
    if (share(high.size(), open.size()) > FEW) {
      add(
          "high float",
          Finding.Severity.WARNING,
          percent(share(high.size(), open.size()))
              + " of the tasks can slip by more than "
              + HIGH_FLOAT_DAYS
              + " days (measure: at most 5 %); does nothing else wait for them?",
          high,
          share(high.size(), open.size()),
          DCMA + "6");
    }
    var negative = tasks(t -> t.totalFloatMinutes() < 0);
    add(
        "negative float",
        Finding.Severity.ERROR,
        "These tasks are too late for a deadline",
        negative,
        share(negative.size(), open.size()),
        DCMA + "7");
    List<Timing> lasting = open.stream().filter(t -> !t.activity().isMilestone()).toList();
    var longTasks = tasks(t -> workingDays(t) > LONG_DAYS);
    if (share(longTasks.size(), lasting.size()) > FEW) {
      add(
          "long tasks",
          Finding.Severity.WARNING,
          percent(share(longTasks.size(), lasting.size()))
              + " of the tasks last more than "
              + LONG_DAYS
              + " days (measure: at most 5 %); progress on them is hard to see",
          longTasks,
          share(longTasks.size(), lasting.size()),
          DCMA + "8");
    }
  }

  /** Total float in working days of the plan's own calendar, whatever calendar the task has. */
  public static double floatDays(Timetable times, Timing t) {
    WorkCalendar days = times.network().defaultCalendar();
    return (double) days.between(t.early().start(), t.late().start()) / days.dayMinutes();
  }

  /** The days of its calendar that a task lasts; of a wait, the working days that pass. */
  private double workingDays(Timing t) {
    WorkCalendar days = network.defaultCalendar();
    return t.activity().isElapsed()
        ? (double) days.between(t.early().start(), t.early().finish()) / days.dayMinutes()
        : t.durationDays();
  }

  private void dates() {
    var outOfOrder =
        linksWith(
            l -> {
              Activity before = network.get(l.before());
              Activity after = network.get(l.after());
              boolean beforeMet =
                  l.relation().fromStart()
                      ? before.progress().start().isPresent()
                      : before.progress().finish().isPresent();
              boolean afterGone =
                  l.relation().toFinish()
                      ? after.progress().finish().isPresent()
                      : after.progress().start().isPresent();
              return afterGone && !beforeMet;
            });
    add(
        "out of sequence",
        Finding.Severity.WARNING,
        "The task after has gone ahead although the task before has not; what remains of it still waits",
        outOfOrder,
        share(outOfOrder.size(), network.links().size()),
        GAO + "9");
  }

  private void criticalPath() {
    DelayProbe.of(timetable)
        .filter(o -> !o.exact())
        .ifPresent(
            o ->
                add(
                    "critical path test",
                    Finding.Severity.WARNING,
                    "A delay of "
                        + DelayProbe.DAYS
                        + " days in '"
                        + o.task().name()
                        + "' moves the finish by "
                        + String.format(Locale.ROOT, "%.1f", o.movedDays())
                        + " days of its calendar; the path drives by starts, or a date holds it",
                    List.of(o.task().id()),
                    o.movedDays() / DelayProbe.DAYS,
                    DCMA + "12"));
  }

  private static double share(int part, int whole) {
    return whole == 0 ? 0 : (double) part / whole;
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * share);
  }
}
