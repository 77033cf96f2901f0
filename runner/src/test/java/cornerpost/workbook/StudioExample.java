package cornerpost.workbook;

import static cornerpost.scope.OwnerSheet.CONTAINERS;
import static cornerpost.scope.OwnerSheet.OPENINGS;
import static cornerpost.scope.OwnerSheet.ROOMS;
import static cornerpost.scope.OwnerSheet.WHO_DOES_WHAT;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Trade;
import java.util.Set;

/** A studio in one 20 ft high cube, metric, mostly hired work. */
final class StudioExample {
  private static final String TUBE = "50x50x3 square tube";
  private static final Set<Trade> OWNER = Set.of(Trade.PAINTING, Trade.CLEANING);

  private StudioExample() {}

  static WorkbookEntries entries() {
    var e = new WorkbookEntries(UnitSystem.METRIC);
    e.answer(ProjectQuestions.NAME, "Garden studio, Saltmarsh Road")
        .answer(ProjectQuestions.START, "2027-04-05")
        .answer(ProjectQuestions.PRICE_BOOK, "velmark-coast-2026")
        .answer(ProjectQuestions.TIME_ALLOWED, "7");
    house(e);
    e.answer(SiteQuestions.CRANE_REACH, "7")
        .answer(SiteQuestions.DELIVERY_DISTANCE, "60")
        .answer(SiteQuestions.CLEARING, "60")
        .answer(SiteQuestions.ACCESS_TRACK, "5")
        .answer(SiteQuestions.FENCE, "20")
        .answer(SiteQuestions.SOIL, "sand, silty or clayey sand or gravel")
        .answer(SiteQuestions.FROST_DEPTH, "800")
        .answer(SiteQuestions.FOUNDATION, "screw piles")
        .answer(SiteQuestions.SUPPORTS_A_SIDE, "2");
    e.answer(DeckAndRoofQuestions.DECK_BOX, "A")
        .answer(DeckAndRoofQuestions.DECK_LENGTH, "3")
        .answer(DeckAndRoofQuestions.DECK_DEPTH, "2")
        .answer(DeckAndRoofQuestions.CLADDING, "paint on the steel")
        .answer(DeckAndRoofQuestions.ROOF, "coated")
        .answer(DeckAndRoofQuestions.PATH_LENGTH, "8")
        .answer(DeckAndRoofQuestions.PLANTING, "30");
    e.answer(ServicesQuestions.POWER_DISTANCE, "12")
        .answer(ServicesQuestions.WATER_DISTANCE, "12")
        .answer(ServicesQuestions.WASTE_DISTANCE, "14")
        .answer(FinishesQuestions.KITCHEN_RUN, "2.1")
        .answer(FinishesQuestions.KITCHEN_LEVEL, "basic")
        .answer(FinishesQuestions.APPLIANCES, "basic")
        .answer(FinishesQuestions.BATHROOM_LEVEL, "basic")
        .answer(FinishesQuestions.WARDROBE, "1.2")
        .answer(OptionsQuestions.OWNER_HANDS, "1");
    for (var trade : Trade.values()) {
      e.row(WHO_DOES_WHAT, trade.label(), OWNER.contains(trade) ? "owner" : "hired");
    }
    return e;
  }

  /** Inside length 5.898 m: 4.248 + 1.65. */
  private static void house(WorkbookEntries e) {
    e.row(
        CONTAINERS,
        "A",
        "20 ft high cube",
        "one trip",
        "in a yard, before delivery",
        "",
        "stands alone",
        "0",
        "seal and overlay",
        "known treated",
        "welded shut",
        "0",
        "0",
        "0");
    e.row(ROOMS, "Studio", "A", "living, kitchen and sleeping", "4.248", "partition, sliding door");
    e.row(ROOMS, "Shower room", "A", "bathroom", "1.65", "open, no partition");
    opening(
        e,
        "SD1",
        "right side",
        "sliding door",
        "1800",
        "2100",
        "0",
        "0.6",
        "double, low-e",
        "yes",
        TUBE);
    opening(
        e,
        "D1",
        "right side",
        "glazed door",
        "900",
        "2050",
        "0",
        "2.9",
        "double, low-e",
        "yes",
        TUBE);
    opening(
        e, "W1", "left side", "window", "1200", "1000", "1100", "1", "double, low-e", "yes", TUBE);
    opening(
        e, "W2", "left side", "window", "500", "500", "1500", "4.9", "double, low-e", "yes", TUBE);
    opening(
        e, "V1", "left side", "vent", "125", "125", "2200", "3", "none", "no", "no steel frame");
    opening(
        e, "V2", "blind end", "vent", "125", "125", "2250", "0.6", "none", "no", "no steel frame");
    opening(
        e,
        "S1",
        "blind end",
        "service sleeve",
        "110",
        "110",
        "60",
        "1.6",
        "none",
        "no",
        "no steel frame");
    opening(
        e,
        "S2",
        "blind end",
        "service sleeve",
        "60",
        "60",
        "80",
        "1.9",
        "none",
        "no",
        "no steel frame");
    opening(
        e,
        "S3",
        "left side",
        "service sleeve",
        "75",
        "75",
        "1200",
        "0.4",
        "none",
        "no",
        "no steel frame");
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
}
