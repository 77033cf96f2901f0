package cornerpost.plan;

import cornerpost.takeoff.BuildTask;
import java.math.BigDecimal;

/**
 * What days of delay cost: what is paid by the month, interest on all that is drawn, and the crane
 * booked again where its day moves.
 */
final class DelayCosts {
  private final MoneyPlan money;
  private final BigDecimal crane;

  DelayCosts(MoneyPlan money, BigDecimal crane) {
    this.money = money;
    this.crane = crane;
  }

  /** Each rounded to the cent. */
  record Cost(BigDecimal hire, BigDecimal interest, BigDecimal crane) {
    BigDecimal total() {
      return hire.add(interest).add(crane);
    }
  }

  /**
   * @param days by which move-in comes later
   */
  Cost of(int days, Sequence before, Sequence after) {
    var number = BigDecimal.valueOf(days);
    return new Cost(
        money.rounded(money.hireADay().multiply(number)),
        money.rounded(money.interestADay().multiply(number)),
        craneMoves(before, after) ? crane : money.rounded(BigDecimal.ZERO));
  }

  private boolean craneMoves(Sequence before, Sequence after) {
    var id = BuildTask.SET_BOXES.id();
    return crane.signum() > 0
        && before.network().find(id).isPresent()
        && !before.planned(id).firstDay().equals(after.planned(id).firstDay());
  }

  Replanning.DayCost day() {
    return new Replanning.DayCost(
        money.rounded(money.hireADay()), money.rounded(money.interestADay()), crane);
  }

  String currency() {
    return money.currency();
  }
}
