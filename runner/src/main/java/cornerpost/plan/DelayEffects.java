package cornerpost.plan;

import cornerpost.finance.Finance.Asked;
import cornerpost.finance.Finance.DelayEffect;
import cornerpost.measure.Spoken;
import cornerpost.schedule.Network;
import cornerpost.schedule.Timing;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What each delay does: the plan with it beside the plan without it.
 *
 * <p>An entered delay is compared with the plan that has all the others. The days by which move-in
 * comes later cost what is paid by the month, and interest on all that is drawn. What does not
 * reach move-in was absorbed: by float, which belongs to whoever uses it first, by days on which
 * nobody works anyhow, or by another order of the crews.
 */
final class DelayEffects {
  /** The late deliveries of the boxes that are always asked about, in days. */
  private static final List<Integer> WHAT_IF = List.of(7, 14, 28);

  private static final int NAMED = 3;

  private final Delays planning;
  private final Sequence plain;
  private final Sequence plan;
  private final List<Delay> entered;
  private final DelayCosts costs;

  /**
   * @param plain without any delay
   * @param plan with all that are entered
   */
  DelayEffects(
      Delays planning, Sequence plain, Sequence plan, List<Delay> entered, DelayCosts costs) {
    this.planning = planning;
    this.plain = plain;
    this.plan = plan;
    this.entered = entered;
    this.costs = costs;
  }

  List<DelayEffect> all() {
    var effects = ofEntered();
    if (entered.size() > 1) effects.add(together());
    var delivery = plan.network().find(ProgrammeMaker.DELIVERY);
    if (delivery.isPresent() && Delays.canMove(delivery.get())) {
      var cause = entered.isEmpty() ? "what if" : "what if, on top of the delays entered";
      for (int days : WHAT_IF) {
        var late = new Delay(delivery.get().id(), delivery.get().name(), days, cause, "", "", "");
        effects.add(effect(Asked.WHAT_IF, late, plan, planning.with(List.of(late), plan)));
      }
    }
    return effects;
  }

  List<DelayEffect> ofEntered() {
    var effects = new ArrayList<DelayEffect>();
    for (int i = 0; i < entered.size(); i++) {
      var others = new ArrayList<>(entered);
      var delay = others.remove(i);
      effects.add(effect(Asked.ENTERED, delay, without(others), plan));
    }
    return effects;
  }

  /** Beside the plan without any. */
  private DelayEffect together() {
    var goal = Delays.goal(plan.ordered());
    int moved = (int) Math.max(0, ChronoUnit.DAYS.between(Delays.goal(plain.ordered()), goal));
    var cost = costs.of(moved, plain, plan);
    return new DelayEffect(
        Asked.TOGETHER,
        "",
        "All of these together",
        entered.stream().mapToInt(Delay::days).sum(),
        "",
        "",
        moved,
        goal,
        cost.total(),
        "Each one above is what it adds to the others, so the rows do not add up: days that run side"
            + " by side count once"
            + said(cost));
  }

  /** The plan without one delay never ends after the plan with it: its order would serve, too. */
  private Sequence without(List<Delay> others) {
    var anew = others.isEmpty() ? plain : planning.with(others, plain);
    if (!plan.crewLimited()) return anew;
    var network = anew.network();
    var asPlanned =
        plan.keeping(entered.stream().map(d -> d.task()).distinct().map(network::get).toList());
    return Delays.goal(asPlanned.ordered()).isBefore(Delays.goal(anew.ordered()))
        ? asPlanned
        : anew;
  }

  private DelayEffect effect(Asked asked, Delay delay, Sequence before, Sequence after) {
    var goalBefore = Delays.goal(before.ordered());
    var goalAfter = Delays.goal(after.ordered());
    int moved = (int) Math.max(0, ChronoUnit.DAYS.between(goalBefore, goalAfter));
    var cost = costs.of(moved, before, after);
    return new DelayEffect(
        asked,
        delay.task(),
        delay.name(),
        delay.days(),
        delay.cause(),
        delay.borneBy(),
        moved,
        goalAfter,
        cost.total(),
        words(delay, before, after, moved, goalAfter) + said(cost));
  }

  // ---- in words -----------------------------------------------------------------------------

  private String words(Delay delay, Sequence before, Sequence after, int moved, LocalDate goal) {
    var network = before.network();
    if (!Delays.canMove(network.get(delay.task()))) {
      return delay.name() + " has begun already: the delay changes nothing";
    }
    var target = network.find(ProgrammeMaker.MOVE_IN).map(a -> a.name()).orElse("The finish");
    var text = new StringBuilder(delay.name() + " " + days(delay.days()) + " late: ");
    text.append(
        moved == 0
            ? target + " stays on " + Spoken.day(goal)
            : target + " comes " + days(moved) + " later, on " + Spoken.day(goal));
    text.append(absorbed(delay, before, moved));
    var losers = losers(delay, before, after, network);
    if (!losers.isEmpty()) text.append("; ").append(losers);
    return text.toString();
  }

  /** What became of the days that do not reach the goal. */
  private String absorbed(Delay delay, Sequence before, int moved) {
    int slack = planning.floatDays(delay.task(), before, delay.days());
    int left = delay.days() - moved;
    if (left <= 0) {
      return slack == 0 ? "" : "; up to " + days(slack) + " late would have moved nothing";
    }
    int byFloat = Math.min(left, slack);
    int byOrder = Math.max(0, Math.min(left - byFloat, inThePresentOrder(delay, before) - moved));
    int byRest = left - byFloat - byOrder;
    var parts = new ArrayList<String>();
    if (byFloat > 0) parts.add(days(byFloat) + " by the float of " + delay.name());
    if (byOrder > 0) parts.add(days(byOrder) + " by another order of the crews");
    if (byRest > 0) parts.add(days(byRest) + " by days on which nobody works anyhow");
    return "; absorbed: " + String.join(", ", parts);
  }

  private int inThePresentOrder(Delay delay, Sequence before) {
    var kept = before.with(Delays.putOff(List.of(delay), before));
    return (int)
        Math.max(0, ChronoUnit.DAYS.between(Delays.goal(before.ordered()), Delays.goal(kept)));
  }

  /** The tasks that lose most float to the delay. */
  private static String losers(Delay delay, Sequence before, Sequence after, Network network) {
    record Loss(String name, long minutes, Timing now) {}
    var losses = new ArrayList<Loss>();
    for (var a : network.activities()) {
      var was = before.ordered().timing(a.id());
      var is = after.ordered().timing(a.id());
      long lost = was.totalFloatMinutes() - is.totalFloatMinutes();
      if (lost > 0 && !a.id().equals(delay.task()) && !a.isMilestone()) {
        losses.add(new Loss(a.name(), lost, is));
      }
    }
    losses.sort(Comparator.comparingLong(Loss::minutes).reversed());
    var named =
        losses.stream()
            .limit(NAMED)
            .map(
                l ->
                    l.name()
                        + " ("
                        + Days.shown(l.minutes(), l.now().dayMinutes())
                        + " d, "
                        + Days.shown(l.now().totalFloatMinutes(), l.now().dayMinutes())
                        + " d left)")
            .toList();
    if (named.isEmpty()) return "";
    int more = losses.size() - named.size();
    return "float lost by "
        + String.join(", ", named)
        + (more == 0 ? "" : " and " + more + " more");
  }

  private String said(DelayCosts.Cost cost) {
    if (cost.total().signum() == 0) return "";
    return "; costs "
        + costs.currency()
        + " "
        + cost.hire().toPlainString()
        + " for hire, insurance and rent and "
        + cost.interest().toPlainString()
        + " interest"
        + (cost.crane().signum() == 0
            ? ""
            : ", and " + cost.crane().toPlainString() + " for booking the crane again");
  }

  private static String days(int number) {
    return number + (number == 1 ? " day" : " days");
  }
}
