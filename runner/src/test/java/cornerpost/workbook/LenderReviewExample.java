package cornerpost.workbook;

import static cornerpost.scope.OwnerSheet.COST_LEDGER;
import static cornerpost.scope.OwnerSheet.OWN_ITEMS;
import static cornerpost.scope.OwnerSheet.OWN_LINKS;
import static cornerpost.scope.OwnerSheet.OWN_TASKS;
import static cornerpost.scope.OwnerSheet.PROGRESS;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.ProjectQuestions;

/**
 * A home of two boxes, half built, with its loan out of balance: a bill short enough to be reckoned
 * by hand. All of it is invented.
 */
final class LenderReviewExample {
  private LenderReviewExample() {}

  static WorkbookEntries entries() {
    var e = new WorkbookEntries(UnitSystem.METRIC);
    e.answer(ProjectQuestions.NAME, "Two boxes, Larkspur Bank: half built")
        .answer(ProjectQuestions.START, "2027-03-01")
        .answer(ProjectQuestions.STATUS, "2027-07-01")
        .answer(ProjectQuestions.GENERATED_TASKS, "none")
        .answer(ProjectQuestions.TIME_ALLOWED, "6")
        .answer(OptionsQuestions.CONTINGENCY_SHELL, "0.1")
        .answer(OptionsQuestions.CONTINGENCY_REST, "0.1")
        .answer(OptionsQuestions.RENT, "800");
    e.answer(LoanQuestions.AMOUNT, "120000")
        .answer(LoanQuestions.CASH, "50000")
        .answer(LoanQuestions.RATE, "0.08")
        .answer(LoanQuestions.DRAWS, "month")
        .answer(LoanQuestions.RETAINAGE, "0.1")
        .answer(LoanQuestions.VALUE, "210000")
        .answer(LoanQuestions.MATURITY, "2027-10-31");
    items(e);
    tasks(e);
    ledger(e);
    return e;
  }

  private static void items(WorkbookEntries e) {
    item(e, "design", "0 Before the box", "Design, survey and permits", "1", "job", "12000");
    item(e, "ground", "1 Site and foundation", "Ground works and footings", "1", "job", "18000");
    item(e, "boxes", "2 Containers", "Boxes, delivered and set", "2", "box", "9500");
    item(e, "shell", "3 Openings and shell", "Openings, frames, windows", "1", "job", "24000");
    item(e, "framing", "4 Framing and partitions", "Framing", "60", "m2", "150");
    item(e, "services", "5 Services", "Electricity, water, heating", "1", "job", "28000");
    item(e, "lining", "6 Insulation and lining", "Insulation and lining", "1", "job", "14000");
    item(e, "finishes", "7 Finishes and fixtures", "Finishes and kitchen", "1", "job", "27500");
    item(e, "deck", "8 Outside", "Deck and paths", "1", "job", "9000");
  }

  private static void item(
      WorkbookEntries e,
      String id,
      String stage,
      String what,
      String quantity,
      String unit,
      String rate) {
    e.row(OWN_ITEMS, id, stage, what, quantity, unit, rate, "hired", "no");
  }

  /** One after the other, the deck beside the lining. */
  private static void tasks(WorkbookEntries e) {
    String[][] tasks = {
      {"design", "Design, survey and permits", "20"},
      {"ground", "Ground works and footings", "15"},
      {"boxes", "Boxes delivered and set", "5"},
      {"shell", "Openings cut, windows in", "25"},
      {"framing", "Framing", "15"},
      {"services", "Services", "20"},
      {"lining", "Insulation and lining", "15"},
      {"finishes", "Finishes and kitchen", "20"},
      {"close", "Final inspection and keys", "5"},
    };
    String before = "";
    for (var t : tasks) {
      e.row(OWN_TASKS, t[0], t[1], t[2], "d");
      if (!before.isEmpty()) e.row(OWN_LINKS, before, t[0], "finish-to-start", "0", "d");
      before = t[0];
    }
    e.row(OWN_TASKS, "deck", "Deck and paths", "10", "d");
    e.row(OWN_LINKS, "services", "deck", "finish-to-start", "0", "d");
    e.row(OWN_LINKS, "deck", "close", "finish-to-start", "0", "d");
    e.row(PROGRESS, "design", "2027-03-01", "2027-03-26");
    e.row(PROGRESS, "ground", "2027-03-29", "2027-04-16");
    e.row(PROGRESS, "boxes", "2027-04-19", "2027-04-23");
    e.row(PROGRESS, "shell", "2027-04-26", "2027-05-28");
    e.row(PROGRESS, "framing", "2027-05-31", "2027-06-18");
    e.row(PROGRESS, "services", "2027-06-21", "", "12", "0.4");
  }

  private static void ledger(WorkbookEntries e) {
    // original budget and quantity, changes, committed, invoiced, paid, retained, in place,
    // stored, drawn
    row(e, "own/design", "12000", "", "", "", "12400", "12400", "", "1", "", "");
    row(e, "own/ground", "18000", "", "", "18000", "18000", "16200", "1800", "1", "", "");
    row(e, "own/boxes", "19000", "", "", "19000", "19000", "19000", "", "1", "", "6000");
    row(e, "own/shell", "22000", "", "", "24000", "24000", "21600", "2400", "1", "", "20000");
    row(e, "own/framing", "7800", "52", "", "", "9000", "6000", "", "1", "", "8000");
    row(e, "own/services", "26000", "", "", "28000", "11200", "10080", "1120", "", "", "14000");
    row(e, "own/lining", "14000", "", "", "", "3500", "3500", "", "0", "3500", "");
    row(e, "own/finishes", "26000", "", "1500", "", "", "", "", "0", "", "");
    row(e, "own/deck", "9000", "", "", "", "", "", "", "0", "", "");
    row(e, "contingency/finishes", "2600", "", "-1500", "", "", "", "", "", "", "");
    row(e, "rent", "4800", "", "", "", "3200", "3200", "", "", "", "");
    row(e, "interest", "2400", "", "", "", "700", "700", "", "", "", "");
  }

  private static void row(WorkbookEntries e, String... cells) {
    e.row(COST_LEDGER, cells);
  }
}
