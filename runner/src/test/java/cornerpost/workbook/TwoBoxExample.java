package cornerpost.workbook;

import static cornerpost.scope.OwnerSheet.CONTAINERS;
import static cornerpost.scope.OwnerSheet.OPENINGS;
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
import cornerpost.scope.Trade;
import java.util.Set;

/** Two bedrooms in two 40 ft high cubes side by side, metric. */
final class TwoBoxExample {
  private static final String TUBE = "50x50x4 square tube";
  private static final String WIDE_TUBE = "100x50x4 rectangular tube";
  private static final Set<Trade> OWNER =
      Set.of(Trade.PAINTING, Trade.FLOORING, Trade.DECKING, Trade.CLEANING);

  private TwoBoxExample() {}

  static WorkbookEntries entries() {
    var e = new WorkbookEntries(UnitSystem.METRIC);
    e.answer(ProjectQuestions.NAME, "Two boxes at Heron Field")
        .answer(ProjectQuestions.START, "2027-02-01")
        .answer(ProjectQuestions.PRICE_BOOK, "velmark-coast-2026")
        .answer(ProjectQuestions.TIME_ALLOWED, "12");
    boxes(e);
    openings(e);
    e.answer(SiteQuestions.CRANE_REACH, "10")
        .answer(SiteQuestions.DELIVERY_DISTANCE, "95")
        .answer(SiteQuestions.CLEARING, "260")
        .answer(SiteQuestions.ACCESS_TRACK, "25")
        .answer(SiteQuestions.FENCE, "90")
        .answer(SiteQuestions.FOUNDATION, "strip footings")
        .answer(SiteQuestions.FLOOR_HEIGHT, "500")
        .answer(SiteQuestions.DRAINAGE, "french drain");
    e.answer(DeckAndRoofQuestions.DECK_BOX, "A")
        .answer(DeckAndRoofQuestions.DECK_SIDE, "left side")
        .answer(DeckAndRoofQuestions.DECK_LENGTH, "8")
        .answer(DeckAndRoofQuestions.DECK_DEPTH, "3")
        .answer(DeckAndRoofQuestions.CLADDING, "metal sheet on battens")
        .answer(DeckAndRoofQuestions.CLAD_SHARE, "0.6")
        .answer(DeckAndRoofQuestions.PLANTING, "150");
    e.answer(EnvelopeQuestions.INSIDE_THICKNESS, "60")
        .answer(EnvelopeQuestions.CEILING_THICKNESS, "100")
        .answer(ServicesQuestions.HEADS, "3")
        .answer(ServicesQuestions.VENTILATION, "heat-recovery unit")
        .answer(ServicesQuestions.HOT_WATER, "heat-pump tank")
        .answer(ServicesQuestions.DISHWASHER, "yes")
        .answer(FinishesQuestions.KITCHEN_RUN, "4.2")
        .answer(FinishesQuestions.WASHING, "bath with shower over")
        .answer(FinishesQuestions.WARDROBE, "3.6")
        .answer(LoanQuestions.AMOUNT, "90000")
        .answer(LoanQuestions.CASH, "110000")
        .answer(LoanQuestions.RATE, "0.055")
        .answer(LoanQuestions.DRAWS, "inspected share")
        .answer(LoanQuestions.VALUE, "230000")
        .answer(OptionsQuestions.RENT, "900");
    for (var trade : Trade.values()) {
      e.row(WHO_DOES_WHAT, trade.label(), OWNER.contains(trade) ? "owner" : "hired");
    }
    return e;
  }

  /** Inside length 12.032 m: 8.5 + 3.532, and 3.9 + 1.5 + 2.4 + 4.232. */
  private static void boxes(WorkbookEntries e) {
    e.row(
        CONTAINERS,
        "A",
        "40 ft high cube",
        "one trip",
        "in a yard, before delivery",
        "",
        "stands alone",
        "0",
        "seal and overlay",
        "known treated",
        "removed",
        "0",
        "0",
        "0");
    e.row(
        CONTAINERS,
        "B",
        "40 ft high cube",
        "one trip",
        "in a yard, before delivery",
        "A",
        "side by side",
        "12.192",
        "seal and overlay",
        "known treated",
        "welded shut",
        "0",
        "2.438",
        "0");
    e.row(ROOMS, "Living", "A", "living and kitchen", "8.5", "open, no partition");
    e.row(ROOMS, "Den", "A", "living", "3.532", "open, no partition");
    e.row(ROOMS, "Bedroom 1", "B", "bedroom", "3.9", "partition, hinged door");
    e.row(ROOMS, "Hall", "B", "hall", "1.5", "partition, hinged door");
    e.row(ROOMS, "Bathroom", "B", "bathroom", "2.4", "partition, no door");
    e.row(ROOMS, "Bedroom 2", "B", "bedroom", "4.232", "open, no partition");
  }

  private static void openings(WorkbookEntries e) {
    unit(e, "SD1", "A", "left side", "sliding door", "2400", "2100", "0", "1.2", WIDE_TUBE);
    unit(e, "D1", "A", "left side", "glazed door", "950", "2100", "0", "5.4", TUBE);
    unit(e, "W1", "A", "left side", "window", "1500", "1100", "1000", "9.6", TUBE);
    unit(e, "W2", "A", "door end", "window", "1800", "1800", "300", "0.3", WIDE_TUBE);
    hole(
        e,
        "P1",
        "A",
        "right side",
        "pass-through to next box",
        "1000",
        "2100",
        "0",
        "4.25",
        WIDE_TUBE);
    hole(
        e,
        "P2",
        "A",
        "right side",
        "pass-through to next box",
        "900",
        "2100",
        "0",
        "10.4",
        WIDE_TUBE);
    unit(e, "W3", "B", "right side", "window", "1200", "1300", "800", "1.4", TUBE);
    unit(e, "W4", "B", "right side", "window", "600", "600", "1500", "6.3", TUBE);
    unit(e, "W5", "B", "right side", "window", "1200", "1300", "800", "9.3", TUBE);
    hole(e, "V1", "A", "left side", "vent", "160", "160", "2250", "4.2", "no steel frame");
    hole(e, "V2", "B", "right side", "vent", "160", "160", "2300", "7.4", "no steel frame");
    hole(e, "S1", "B", "right side", "service sleeve", "110", "110", "60", "5.8", "no steel frame");
    hole(e, "S2", "B", "right side", "service sleeve", "60", "60", "80", "6.2", "no steel frame");
    hole(e, "S3", "A", "blind end", "service sleeve", "75", "75", "1200", "0.5", "no steel frame");
    hole(e, "S4", "A", "left side", "service sleeve", "75", "75", "2250", "8.6", "no steel frame");
  }

  private static void unit(
      WorkbookEntries e,
      String id,
      String box,
      String wall,
      String kind,
      String width,
      String height,
      String sill,
      String offset,
      String frame) {
    e.row(
        OPENINGS, id, box, wall, kind, width, height, sill, offset, "double, low-e", "yes", frame);
  }

  private static void hole(
      WorkbookEntries e,
      String id,
      String box,
      String wall,
      String kind,
      String width,
      String height,
      String sill,
      String offset,
      String frame) {
    e.row(OPENINGS, id, box, wall, kind, width, height, sill, offset, "none", "no", frame);
  }
}
