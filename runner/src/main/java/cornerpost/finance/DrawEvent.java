package cornerpost.finance;

import java.time.LocalDate;

/**
 * A day on which the lender looks at what is in place and pays.
 *
 * @param name what happened: a stage finished, a month ended, an inspection passed
 * @param needs the inspection and papers the draw waits for
 * @param completion whether the house is complete, so that what was held back is paid
 */
public record DrawEvent(LocalDate date, String name, String needs, boolean completion) {}
