package cornerpost.workbook;

import cornerpost.scope.OwnerSheet;
import java.util.List;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** What each sheet is for, in words. */
final class TemplateTexts {
  private static final List<String> START =
      List.of(
          "1. Project: name, start date, units, price book. A start date is the one thing the plan cannot do without.",
          "2. Containers, Rooms, Openings: the boxes, the rooms in line along each, and every hole in the shell.",
          "3. Site and foundation, Deck and roof, Envelope, Services, Finishes: usual values stand there already; change what differs.",
          "4. Who does what: you, a hired firm, or both. This moves cost and dates most.",
          "Then run the plan. These may wait until you need them:",
          "5. Loan and Options: borrowing, contingency, price rise, your own hours.",
          "6. Own items, Own tasks, Own links, Crews: what the plan should hold besides.",
          "7. Quotes, Progress, Delays, Cost ledger: as prices and invoices come in and work goes on. Lines and tasks are named by the ids that a run shows.",
          "8. Calendars, Holidays: working weeks and days off; four weeks stand there already.",
          "Shaded cells are yours to fill in. An empty one takes the usual value shown beside it or in the note on its column.",
          "You may add rows, columns, notes and sheets of your own; keep the labels and column names as they are.",
          "A run writes a new workbook with these sheets unchanged and the results beside them; it never changes the file it reads.",
          "The plan is a budget and a programme, not a permit drawing: structure, hot work, electricity and gas are for licensed people and the local code.");

  private static final int START_WIDTH = 118;
  private static final double EDGES = 14; // points: indent, and what a cell keeps free

  private TemplateTexts() {}

  static void start(XSSFSheet sheet, TemplateStyles styles) {
    for (int i = 0; i < START.size(); i++) {
      var cell = TemplateCells.text(sheet, i + 3, 0, START.get(i), styles.startLine);
      cell.getRow().setHeightInPoints(21 + 13 * (lines(START.get(i), 10, START_WIDTH) - 1));
    }
    sheet.setColumnWidth(0, START_WIDTH * 256);
  }

  /** Lines of a text in a column so many digits wide. */
  static int lines(String text, int size, int width) {
    return TextWidth.lines(text, size, false, TextWidth.room(width, EDGES));
  }

  static void top(XSSFSheet sheet, OwnerSheet owner, TemplateStyles styles) {
    var lines = lines(owner);
    TemplateCells.text(sheet, 0, 0, lines[0], styles.purpose);
    TemplateCells.text(sheet, 1, 0, lines[1], styles.note);
  }

  private static String[] lines(OwnerSheet sheet) {
    return switch (sheet) {
      case START_HERE ->
          two(
              "A home made from shipping containers: what it takes, what it costs, when you move in",
              "Fill in the sheets from left to right.");
      case PROJECT ->
          two(
              "What is built, from when, and by which price book",
              "Needed: the start date. Units hold for every number in this workbook.");
      case CONTAINERS ->
          two(
              "The boxes, one row each, and how they meet",
              "Left and right are seen from the cargo-door end looking in. Enter a joint once, on either row.");
      case ROOMS ->
          two(
              "The rooms of each box in line, from the cargo-door end",
              "The lengths of a box's rooms should add up to its inside length; the lines at the right keep count.");
      case OPENINGS ->
          two(
              "Every hole in the shell and what goes into it",
              "Doors, windows, passages between boxes, vents, sleeves for pipes. An opening in a roof lies in the middle of its width; its sill height does not matter.");
      case SITE ->
          two(
              "The ground, the way in, and what the boxes stand on",
              "Frost depth, snow and soil come from the local building office or a survey.");
      case DECK_AND_ROOF ->
          two(
              "The outside: deck, awning, roof, cladding, paths",
              "A length of 0 leaves the thing out.");
      case ENVELOPE ->
          two(
              "Insulation, vapour control, studs, lining and paint",
              "The checks of a run say whether steel behind the lining will sweat.");
      case SERVICES ->
          two(
              "Electricity, water, heating and cooling",
              "Distances are from the box to the point of connection.");
      case FINISHES ->
          two(
              "Floors, wet rooms, kitchen, doors and fittings",
              "Lengths are measured along the wall.");
      case WHO_DOES_WHAT ->
          two(
              "Who does each package of work",
              "A package without a row is hired. Many places ask for licensed trades for electricity, gas and structure.");
      case QUOTES ->
          two(
              "Prices from suppliers, in place of the price book's",
              "Run the plan once; its cost plan shows the id of each line. Keep quotes you turned down, with Use it = no.");
      case OWN_ITEMS ->
          two("Costs that the plan does not know of", "Each joins the cost plan in its stage.");
      case OWN_TASKS ->
          two(
              "Tasks that the plan does not know of",
              "The columns to the right of Deadline take the names of the crews on sheet Crews; enter how many the task needs.");
      case OWN_LINKS ->
          two(
              "Which task waits for which",
              "One row a link, between own tasks or those of the plan, by their ids.");
      case CREWS ->
          two("Crews with limited numbers", "Needed where own tasks share people or machines.");
      case CALENDARS -> two("Working weeks, in hours a day", "Add rows for weeks of your own.");
      case HOLIDAYS ->
          two(
              "Days off besides the price book's public holidays",
              "Calendars with Holidays kept = yes rest on them.");
      case PROGRESS ->
          two(
              "What has happened so far, task by task",
              "By the ids of the schedule. The status date on Project says up to which day.");
      case DELAYS ->
          two(
              "What comes later than planned",
              "Each row makes one task or delivery later; the run shows what that moves.");
      case COST_LEDGER ->
          two(
              "The money already moved, line by line of the cost plan",
              "By the ids of the cost plan; one row a line or one an invoice. Amounts before tax; tax has lines of its own.");
      case LOAN ->
          two(
              "What is borrowed, and how it is paid out",
              "Leave the amount at 0 to build without.");
      case OPTIONS ->
          two(
              "Contingency, price rise, your own hours, and how the risk is counted",
              "The usual values are a fair start.");
    };
  }

  private static String[] two(String purpose, String note) {
    return new String[] {purpose, note};
  }
}
