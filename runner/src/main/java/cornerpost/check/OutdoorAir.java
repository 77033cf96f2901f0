package cornerpost.check;

import static cornerpost.check.Check.Severity.NOTE;
import static cornerpost.check.Check.Severity.PROFESSIONAL;

import cornerpost.check.Check.Topic;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.ServicesQuestions;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** The outdoor air that the whole dwelling asks for, against what the fans chosen move. */
final class OutdoorAir implements CheckRule {
  // a cubic foot a minute: 0.3048^3 m3 in 60 s
  private static final BigDecimal LITRES_A_SECOND = new BigDecimal("0.4719474432");

  @Override
  public List<Check> look(CheckInput in) {
    var asked = in.measured("climate/ventilation/rate");
    var moved = in.measured("climate/ventilation/capacity");
    if (asked.isEmpty() || moved.isEmpty()) return List.of();
    boolean lacks = Say.less(moved.get(), asked.get());
    return List.of(
        new Check(
            "outdoor-air",
            Topic.ROOMS,
            lacks ? PROFESSIONAL : NOTE,
            "The dwelling asks for "
                + airflow(in, asked.get())
                + " of outdoor air all the time; the fans chosen move about "
                + airflow(in, moved.get())
                + (lacks
                    ? ": more or stronger fans are needed, or a heat-recovery unit"
                    : ", with some of them running all the time. Measure the airflow at hand-over"),
            in.facts().get("ventilation.per-area").source(),
            List.of(in.scope().services().cell(ServicesQuestions.VENTILATION)),
            in.tasks("ducts")));
  }

  /** In the reader's unit. */
  private static String airflow(CheckInput in, Figure cubicFeetAMinute) {
    boolean metric = in.scope().units() == UnitSystem.METRIC;
    var number = cubicFeetAMinute.in(Unit.ONE);
    var shown = metric ? number.multiply(LITRES_A_SECOND) : number;
    return shown.setScale(0, RoundingMode.HALF_UP).toPlainString() + (metric ? " l/s" : " cfm");
  }
}
