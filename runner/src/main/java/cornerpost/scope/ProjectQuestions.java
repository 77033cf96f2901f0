package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.PROJECT;

import cornerpost.measure.Unit;
import java.util.List;

/** What sheet Project asks. */
public final class ProjectQuestions {
  public static final Question NAME =
      Question.text(PROJECT, "Project name")
          .standard("My container home")
          .help("Printed on every page.");
  public static final Question START =
      Question.date(PROJECT, "Start date").help("The first day anything is done or ordered.");
  public static final Question STATUS =
      Question.date(PROJECT, "Status date")
          .optional()
          .help("The day this plan speaks from. Empty: the start date.");
  public static final Question CALENDAR =
      Question.from(PROJECT, "Calendar", Question.OwnList.CALENDARS)
          .standard("Weekdays")
          .help("The days on which hired crews work; the plan's duration is counted in it.");
  public static final Question UNITS =
      Question.text(PROJECT, "Units")
          .standard("metric", "US customary")
          .help("metric or US customary, for every number in this workbook.");
  public static final Question PRICE_BOOK =
      Question.text(PROJECT, "Price book")
          .optional()
          .help(
              "The name of a folder of prices: quarrow-plains-2026 (USD) or velmark-coast-2026 (EUR),"
                  + " both invented for trying out, or one of your own.");
  public static final Question GENERATED_TASKS =
      Question.oneOf(PROJECT, "Generated tasks", GeneratedTasks.class)
          .standard(GeneratedTasks.ALL)
          .help("none: only the sheets Own tasks and Own links are planned.");
  public static final Question TIME_ALLOWED =
      Question.number(PROJECT, "Time allowed, start to move-in", Unit.count("month"))
          .from("0.5")
          .upTo("120")
          .standard("9")
          .help(
              "Months of rent and interest in the budget; hire and insurance have the share of them in"
                  + " which the site is open. The checks compare both with the programme.");
  public static final Question PERMIT =
      Question.oneOf(PROJECT, "Permit", PermitClass.class)
          .standard(PermitClass.FULL)
          .help("What the local building office asks for.");
  public static final Question ORDER_EARLY =
      Question.yesNo(PROJECT, "Order before the permit")
          .standard("no")
          .help("yes: goods may be ordered once the drawings stand; that money is then at risk.");
  public static final Question ENGINEER =
      Question.yesNo(PROJECT, "Engineer's design")
          .standard("yes")
          .help("Structural design for openings, joints and footings.");

  public static final List<Question> ALL =
      List.of(
          NAME,
          START,
          STATUS,
          CALENDAR,
          UNITS,
          PRICE_BOOK,
          GENERATED_TASKS,
          TIME_ALLOWED,
          PERMIT,
          ORDER_EARLY,
          ENGINEER);

  private ProjectQuestions() {}
}
