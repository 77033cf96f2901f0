package cornerpost.app;

import cornerpost.check.Check;
import cornerpost.measure.Spoken;
import cornerpost.plan.Plan;
import cornerpost.scope.ProjectQuestions;
import java.util.ArrayList;
import java.util.List;

/** The result in three lines, for the terminal. */
final class Headline {
  private Headline() {}

  static List<String> of(Plan plan) {
    var lines = new ArrayList<String>();
    var name = plan.scope().project().findText(ProjectQuestions.NAME).orElse("Plan");
    var estimate = plan.estimate();
    lines.add(
        name
            + ": "
            + estimate.currency().getCurrencyCode()
            + " "
            + Spoken.number(estimate.total(), 2)
            + ", move-in "
            + Spoken.day(plan.programme().moveIn()));
    plan.programme()
        .delivery()
        .ifPresent(
            d ->
                lines.add(
                    "Delivery "
                        + Spoken.day(d)
                        + plan.programme()
                            .deliveryFloatDays()
                            .map(
                                f ->
                                    "; with the crews in this order it may slip "
                                        + f
                                        + (f == 1 ? " day" : " days")
                                        + " before move-in moves")
                            .orElse("")));
    plan.finance().verdict(estimate.currency().getCurrencyCode()).ifPresent(lines::add);
    long ask = count(plan, Check.Severity.PROFESSIONAL);
    long stop = count(plan, Check.Severity.STOP);
    lines.add(
        "Checks: " + stop + " to stop for, " + ask + " to ask a professional about (sheet Checks)");
    return lines.stream().map(plan.numbers()::turned).toList();
  }

  private static long count(Plan plan, Check.Severity severity) {
    return plan.checks().stream().filter(c -> c.severity() == severity).count();
  }
}
