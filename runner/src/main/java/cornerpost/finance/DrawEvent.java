package cornerpost.finance;

import java.time.LocalDate;
import java.util.List;

/**
 * A day on which the lender looks at what is in place and pays.
 *
 * @param name what happened: a stage finished, a month ended, an inspection passed
 * @param inspections passed since the event before, by name
 * @param completion whether the house is complete, so that what was held back is paid
 */
public record DrawEvent(LocalDate date, String name, List<String> inspections, boolean completion) {
  public DrawEvent {
    inspections = List.copyOf(inspections);
  }
}
