/**
 * Calendars, task network, critical path and crew-limited sequence: a pure planning engine on whole
 * minutes.
 *
 * <p>It knows nothing of containers, money or spreadsheets. It imports no other package of this
 * program; of the libraries only JGraphT, and that only to name the tasks of a loop. The
 * conventions (how a lag is counted, what float means with several calendars, on which day a
 * milestone is shown) are told in {@code docs/method-schedule.md} and held in one place each:
 * {@link cornerpost.schedule.WorkCalendar}, {@link cornerpost.schedule.Relation}, {@link
 * cornerpost.schedule.LagUnit}, {@link cornerpost.schedule.Timing}, {@link
 * cornerpost.schedule.ShownDays}.
 */
package cornerpost.schedule;
