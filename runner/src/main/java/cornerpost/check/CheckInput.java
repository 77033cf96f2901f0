package cornerpost.check;

import cornerpost.fact.Facts;
import cornerpost.price.Estimate;
import cornerpost.price.PriceBook;
import cornerpost.scope.Scope;
import cornerpost.takeoff.Line;
import cornerpost.trace.Figure;
import cornerpost.work.WorkPlan;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the checks look at.
 *
 * @param firstDays first planned day of each task, by id
 * @param lastDays last planned day of each task, by id
 * @param lateOrders descriptions of orders whose day has passed
 * @param shortOfBars items of which the bill buys fewer bars than their cutting plan takes
 */
public record CheckInput(
    Scope scope,
    Facts facts,
    List<Line> lines,
    Estimate estimate,
    Optional<PriceBook> book,
    WorkPlan work,
    LocalDate statusDate,
    LocalDate start,
    LocalDate moveIn,
    Map<String, LocalDate> firstDays,
    Map<String, LocalDate> lastDays,
    List<String> lateOrders,
    List<String> shortOfBars) {
  public CheckInput {
    lines = List.copyOf(lines);
    firstDays = Map.copyOf(firstDays);
    lastDays = Map.copyOf(lastDays);
    lateOrders = List.copyOf(lateOrders);
    shortOfBars = List.copyOf(shortOfBars);
  }

  Figure limit(String id) {
    return facts.figure("limit." + id);
  }

  String source(String id) {
    return facts.get("limit." + id).source();
  }

  Optional<Figure> measured(String lineId) {
    return lines.stream().filter(l -> l.id().equals(lineId)).map(Line::quantity).findFirst();
  }

  /** The ids of those of the tasks that the plan has. */
  List<String> tasks(String... ids) {
    return List.of(ids).stream().filter(id -> work.task(id).isPresent()).toList();
  }
}
