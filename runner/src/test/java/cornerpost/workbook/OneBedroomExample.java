package cornerpost.workbook;

import static cornerpost.scope.OwnerSheet.CALENDARS;
import static cornerpost.scope.OwnerSheet.CONTAINERS;
import static cornerpost.scope.OwnerSheet.CREWS;
import static cornerpost.scope.OwnerSheet.HOLIDAYS;
import static cornerpost.scope.OwnerSheet.OPENINGS;
import static cornerpost.scope.OwnerSheet.OWN_ITEMS;
import static cornerpost.scope.OwnerSheet.OWN_LINKS;
import static cornerpost.scope.OwnerSheet.OWN_TASKS;
import static cornerpost.scope.OwnerSheet.QUOTES;
import static cornerpost.scope.OwnerSheet.ROOMS;
import static cornerpost.scope.OwnerSheet.WHO_DOES_WHAT;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.SiteQuestions;

/** One bedroom in one 40 ft high cube, US customary, the owner doing about half the work. */
final class OneBedroomExample {
  private static final String TUBE = "2x2x1/8 square tube";
  private static final String WIDE_TUBE = "3x2x3/16 rectangular tube";
  private static final String NO_FRAME = "no steel frame";
  private static final String EVENINGS = "Evenings and Saturdays";

  private OneBedroomExample() {}

  static WorkbookEntries entries() {
    var e = new WorkbookEntries(UnitSystem.US);
    e.answer(ProjectQuestions.NAME, "Juniper Lane cabin")
        .answer(ProjectQuestions.START, "2027-03-01")
        .answer(ProjectQuestions.PRICE_BOOK, "quarrow-plains-2026")
        .answer(ProjectQuestions.TIME_ALLOWED, "9");
    house(e);
    ground(e);
    inside(e);
    work(e);
    money(e);
    own(e);
    return e;
  }

  /** Inside length 39.475 ft (12.032 m): 19.5 + 7.5 + 12.475. */
  private static void house(WorkbookEntries e) {
    e.row(
        CONTAINERS,
        "A",
        "40 ft high cube",
        "one trip",
        "on site, after setting",
        "",
        "stands alone",
        "0",
        "seal and overlay",
        "known treated",
        "welded shut",
        "0",
        "0",
        "0");
    e.row(ROOMS, "Living", "A", "living and kitchen", "19.5", "partition, sliding door");
    e.row(ROOMS, "Bath", "A", "bathroom", "7.5", "partition, pocket door");
    e.row(ROOMS, "Bedroom", "A", "bedroom", "12.475", "open, no partition");
    opening(e, "D1", "right side", "door", "36", "80", "0", "1.5", "none", "yes", TUBE);
    opening(
        e,
        "SD1",
        "right side",
        "sliding door",
        "72",
        "80",
        "0",
        "8",
        "double, low-e",
        "yes",
        WIDE_TUBE);
    opening(e, "W1", "left side", "window", "48", "36", "42", "7", "double, low-e", "yes", TUBE);
    opening(e, "W2", "left side", "window", "24", "18", "60", "22", "double, low-e", "yes", TUBE);
    opening(e, "W3", "right side", "window", "36", "48", "24", "31", "double, low-e", "yes", TUBE);
    opening(e, "V1", "left side", "vent", "6", "6", "84", "12.5", "none", "no", NO_FRAME);
    opening(e, "V2", "left side", "vent", "6", "6", "88", "25", "none", "no", NO_FRAME);
    opening(e, "S1", "left side", "service sleeve", "4", "4", "3", "23", "none", "no", NO_FRAME);
    opening(e, "S2", "left side", "service sleeve", "3", "3", "4", "26", "none", "no", NO_FRAME);
    opening(e, "S3", "left side", "service sleeve", "3", "3", "48", "38", "none", "no", NO_FRAME);
    opening(e, "S4", "left side", "service sleeve", "3", "3", "84", "17", "none", "no", NO_FRAME);
  }

  private static void opening(
      WorkbookEntries e,
      String id,
      String wall,
      String kind,
      String width,
      String height,
      String sill,
      String offset,
      String glazing,
      String opens,
      String frame) {
    e.row(OPENINGS, id, "A", wall, kind, width, height, sill, offset, glazing, opens, frame);
  }

  private static void ground(WorkbookEntries e) {
    e.answer(SiteQuestions.CRANE_REACH, "24")
        .answer(SiteQuestions.DELIVERY_DISTANCE, "40")
        .answer(SiteQuestions.CLEARING, "900")
        .answer(SiteQuestions.ACCESS_TRACK, "20")
        .answer(SiteQuestions.FENCE, "60")
        .answer(SiteQuestions.FROST_DEPTH, "30")
        .answer(DeckAndRoofQuestions.DECK_BOX, "A")
        .answer(DeckAndRoofQuestions.DECK_LENGTH, "12")
        .answer(DeckAndRoofQuestions.ROOF, "coated")
        .answer(DeckAndRoofQuestions.GUTTERS, "no")
        .answer(DeckAndRoofQuestions.PATH_LENGTH, "12")
        .answer(DeckAndRoofQuestions.PLANTING, "400");
  }

  private static void inside(WorkbookEntries e) {
    e.answer(EnvelopeQuestions.UNDERFLOOR, "extruded polystyrene board")
        .answer(EnvelopeQuestions.BOARD_FINISH, "tape and fill")
        .answer(ServicesQuestions.POWER_DISTANCE, "40")
        .answer(ServicesQuestions.WATER_DISTANCE, "40")
        .answer(ServicesQuestions.WASTE_DISTANCE, "45")
        .answer(ServicesQuestions.DATA, "no")
        .answer(ServicesQuestions.EXTRA_SOCKETS, "0")
        .answer(ServicesQuestions.OUTSIDE_LIGHTS, "1")
        .answer(FinishesQuestions.WALL_TILE_HEIGHT, "0")
        .answer(FinishesQuestions.WET_FLOOR, "sheet vinyl")
        .answer(FinishesQuestions.BATHROOM_LEVEL, "basic")
        .answer(FinishesQuestions.KITCHEN_RUN, "8")
        .answer(FinishesQuestions.KITCHEN_LEVEL, "basic")
        .answer(FinishesQuestions.APPLIANCES, "basic")
        .answer(FinishesQuestions.WARDROBE, "4")
        .answer(FinishesQuestions.BLINDS, "no");
  }

  private static void work(WorkbookEntries e) {
    who(e, "Design and permits", "hired", "", "");
    who(e, "Groundworks", "hired", "", "");
    who(e, "Foundations", "hired", "", "");
    who(e, "Utility connections", "hired", "", "");
    who(e, "Delivery and setting", "hired", "", "");
    who(e, "Steelwork and openings", "hired", "", "");
    who(e, "Windows and doors", "owner", "", "2");
    who(e, "Roofing and cladding", "owner", "", "2");
    who(e, "Deck and outside works", "owner", "", "2");
    who(e, "Framing", "owner", "", "2");
    who(e, "Electrical", "hired", "", "");
    who(e, "Plumbing", "hired", "", "");
    who(e, "Heating and cooling", "hired", "", "");
    who(e, "Insulation", "mixed", "0.4", "");
    who(e, "Boarding and plastering", "owner", "", "2");
    who(e, "Painting", "owner", "", "2");
    who(e, "Flooring", "owner", "", "");
    who(e, "Tiling", "owner", "", "");
    who(e, "Kitchen and joinery", "owner", "", "");
    who(e, "Cleaning and close-out", "owner", "", "");
    e.row(CALENDARS, "Weekdays", "8", "8", "8", "8", "8", "0", "0", "yes");
    e.row(CALENDARS, "Six days", "8", "8", "8", "8", "8", "8", "0", "yes");
    e.row(CALENDARS, "Every day", "8", "8", "8", "8", "8", "8", "8", "yes");
    e.row(CALENDARS, "Weekends", "0", "0", "0", "0", "0", "8", "8", "yes");
    e.row(CALENDARS, EVENINGS, "2", "2", "2", "2", "2", "8", "0", "yes");
    e.row(HOLIDAYS, "2027-08-07", "Wedding in the family");
    e.answer(OptionsQuestions.OWNER_CALENDAR, EVENINGS);
  }

  private static void who(
      WorkbookEntries e, String trade, String party, String share, String people) {
    e.row(WHO_DOES_WHAT, trade, party, share, people);
  }

  private static void money(WorkbookEntries e) {
    e.answer(LoanQuestions.AMOUNT, "40000")
        .answer(LoanQuestions.CASH, "58000")
        .answer(LoanQuestions.RATE, "0.0825")
        .answer(LoanQuestions.VALUE, "125000")
        .answer(LoanQuestions.MATURITY, "2028-03-01");
  }

  private static void own(WorkbookEntries e) {
    e.row(
        OWN_ITEMS,
        "wood-store",
        "8 Outside",
        "Wood store, timber and roof sheet",
        "1",
        "each",
        "260",
        "owner",
        "yes",
        "Put up with friends");
    e.row(
        OWN_ITEMS,
        "camera",
        "0 Before the box",
        "Site camera, by the month",
        "6",
        "month",
        "25",
        "hired",
        "yes",
        "");
    e.row(
        OWN_ITEMS,
        "scrap",
        "3 Openings and shell",
        "Scrap steel from the openings, sold",
        "1",
        "lot",
        "-60",
        "hired",
        "no",
        "Less than nothing: a credit");
    e.row(
        QUOTES,
        "box/A/purchase:box-40hc-one-trip",
        "Tallgrass Container Yard",
        "the whole line",
        "4450",
        "2026-11-16",
        "2027-03-31",
        "yes",
        "Doors facing the cab");
    e.row(
        QUOTES,
        "box/A/purchase:box-40hc-one-trip",
        "Bluestem Boxes",
        "the whole line",
        "4790",
        "2026-11-12",
        "2027-02-28",
        "no",
        "Turned down");
    e.row(CREWS, "Friends", "2", "Weekends", "");
    e.row(
        OWN_TASKS,
        "wood-store",
        "Put up the wood store",
        "2",
        "d",
        "1.5",
        "4",
        "Weekends",
        "",
        "",
        "2");
    e.row(OWN_LINKS, "planting", "wood-store", "finish-to-start", "0", "d");
  }
}
