package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.OPTIONS;

import cornerpost.measure.Unit;
import java.util.List;

/** What sheet Options asks. */
public final class OptionsQuestions {
  public static final Question PRICE_POINT =
      Question.oneOf(OPTIONS, "Prices used", PricePoint.class)
          .standard(PricePoint.LIKELY)
          .help("Which of the price book's three prices of an item is taken.");
  public static final Question CONTINGENCY_SHELL =
      Question.share(OPTIONS, "Contingency, ground and shell")
          .standard("0.08")
          .upTo("1")
          .help("Stages 1 to 3.");
  public static final Question CONTINGENCY_REST =
      Question.share(OPTIONS, "Contingency, the rest")
          .standard("0.12")
          .upTo("1")
          .help("Stages 0 and 4 to 9.");
  public static final Question ESCALATION =
      Question.share(OPTIONS, "Price rise a year")
          .from("-0.2")
          .upTo("1")
          .standard("0.03")
          .help("From the date of the price book to the time of buying.");
  public static final Question OWNER_FACTOR =
      Question.number(OPTIONS, "Owner's time factor", Unit.ONE)
          .from("0.5")
          .upTo("5")
          .standard("1.5")
          .help("An unpractised hand takes this many times the trade's hours.");
  public static final Question OWNER_CALENDAR =
      Question.from(OPTIONS, "Owner's calendar", Question.OwnList.CALENDARS)
          .standard("Weekends")
          .help("The days on which you work; its hours stand on sheet Calendars.");
  public static final Question OWNER_HANDS =
      Question.whole(OPTIONS, "Owner's hands")
          .from("1")
          .upTo("12")
          .standard("2")
          .help("People, the owner counted.");
  public static final Question LIMIT_CREWS =
      Question.yesNo(OPTIONS, "One job at a time for each crew")
          .standard("yes")
          .help("no: a crew may be at several tasks on one day.");
  public static final Question ORDER_MARGIN =
      Question.whole(OPTIONS, "Order margin, days")
          .standard("7")
          .upTo("120")
          .help("Orders are placed this much earlier than the lead time asks.");
  public static final Question NEAR_CRITICAL =
      Question.whole(OPTIONS, "Near-critical float, days")
          .standard("5")
          .upTo("60")
          .help("Tasks with no more float than this are shown as close to driving move-in.");
  public static final Question RENT =
      Question.money(OPTIONS, "Rent elsewhere, a month")
          .standard("0")
          .help("What living elsewhere costs until move-in.");
  public static final Question CORRELATION =
      Question.share(OPTIONS, "How far prices move together")
          .standard("0.3")
          .upTo("0.95")
          .help("0 %: each price for itself. Higher: when one rises, the others tend to.");
  public static final Question TRIALS =
      Question.whole(OPTIONS, "Trials")
          .from("100")
          .upTo("1000000")
          .standard("2000")
          .help("How often the plan is played through with other prices and durations.");
  public static final Question WANTED =
      Question.date(OPTIONS, "Wanted move-in")
          .optional()
          .help("A day to win back, where the plan ends later: what that costs is worked out.");
  public static final Question KEEP_BASELINE =
      Question.text(OPTIONS, "Keep as baseline")
          .optional()
          .help(
              "A name under which the next run keeps its plan on sheet Baseline, to compare later"
                  + " ones with; another name keeps another.");
  public static final Question OVERTIME =
      Question.share(OPTIONS, "Extra pay on a sixth day")
          .standard("0.5")
          .upTo("3")
          .help("On top of the usual rate, for hired work on a Saturday.");
  public static final Question EXTRA_HANDS =
      Question.share(OPTIONS, "Work of extra hands")
          .standard("0.6")
          .from("0.05")
          .upTo("1")
          .help("A crew twice as large does this much more, for hands are in each other's way.");
  public static final Question OVERLAP =
      Question.share(OPTIONS, "Overlap at most")
          .standard("0.25")
          .upTo("0.9")
          .help("Share of a task still to do when the next may begin, if days are to be won back.");
  public static final Question REWORK =
      Question.share(OPTIONS, "Rework in an overlap")
          .standard("0.1")
          .upTo("1")
          .help("Share of the work done during an overlap that is done twice.");
  public static final Question CRANE_AGAIN =
      Question.money(OPTIONS, "Booking the crane again")
          .standard("0")
          .help("What the crane firm asks for another day, once for each delay that moves it.");
  public static final Question PATH_FROM =
      Question.from(OPTIONS, "Longest path from", Question.OwnList.TASKS)
          .standard("delivery")
          .optional()
          .help("Id or name of a task or an event, as on sheet Schedule.");
  public static final Question PATH_TO =
      Question.from(OPTIONS, "Longest path to", Question.OwnList.TASKS)
          .standard("move-in")
          .optional()
          .help(
              "Sheet Longest path shows what decides how soon this one can follow the one above.");
  public static final Question SEED =
      Question.whole(OPTIONS, "Seed of the trials")
          .standard("1")
          .help("The same number gives the same trials again.");

  public static final List<Question> ALL =
      List.of(
          PRICE_POINT,
          CONTINGENCY_SHELL,
          CONTINGENCY_REST,
          ESCALATION,
          OWNER_FACTOR,
          OWNER_CALENDAR,
          OWNER_HANDS,
          LIMIT_CREWS,
          ORDER_MARGIN,
          NEAR_CRITICAL,
          RENT,
          CORRELATION,
          TRIALS,
          SEED,
          WANTED,
          KEEP_BASELINE,
          EXTRA_HANDS,
          OVERTIME,
          OVERLAP,
          REWORK,
          CRANE_AGAIN,
          PATH_FROM,
          PATH_TO);

  private OptionsQuestions() {}
}
