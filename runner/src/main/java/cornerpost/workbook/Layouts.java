package cornerpost.workbook;

import static cornerpost.scope.OwnerSheet.CONTAINERS;
import static cornerpost.scope.OwnerSheet.OPENINGS;
import static cornerpost.scope.OwnerSheet.ROOMS;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.BoxSize;
import cornerpost.scope.DeckAndRoofQuestions;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Starting layouts: rooms and openings for a box of each length, for the owner to change. Rooms lie
 * in line along the box, the wet room beside the living or the sleeping end; the deck runs the
 * box's whole length. Common practice, no source.
 */
public final class Layouts {
  /** A room: its name, use, share of the length, and what stands towards the next room. */
  private record Part(String name, String use, String share, String next) {}

  private static final String OPEN = "open, no partition";
  private static final String WALL = "partition, no door";
  private static final String SLIDING = "partition, sliding door";
  private static final String HINGED = "partition, hinged door";

  private enum Kind {
    OPEN_SHELL("open", part("Open space", "living", "1", OPEN)),
    STUDIO(
        "studio",
        part("Studio", "living, kitchen and sleeping", "0.74", SLIDING),
        part("Shower room", "bathroom", "0.26", OPEN)),
    ONE_BEDROOM(
        "one-bedroom",
        part("Living", "living and kitchen", "0.5", SLIDING),
        part("Bath", "bathroom", "0.19", SLIDING),
        part("Bedroom", "bedroom", "0.31", OPEN)),
    ONE_BEDROOM_BATH_LAST(
        "one-bedroom-bath-last",
        part("Living", "living and kitchen", "0.5", HINGED),
        part("Bedroom", "bedroom", "0.31", SLIDING),
        part("Bath", "bathroom", "0.19", OPEN)),
    LIVING_BETWEEN(
        "two-bedrooms-living-between",
        part("Bedroom 1", "bedroom", "0.25", HINGED),
        part("Living", "living and kitchen", "0.33", SLIDING),
        part("Bath", "bathroom", "0.17", SLIDING),
        part("Bedroom 2", "bedroom", "0.25", OPEN)),
    LIVING_BESIDE(
        "two-bedrooms-living-beside",
        part("Living", "living and kitchen", "0.33", SLIDING),
        part("Bath", "bathroom", "0.17", SLIDING),
        part("Bedroom 1", "bedroom", "0.25", HINGED),
        part("Bedroom 2", "bedroom", "0.25", OPEN));

    private final String word;
    private final List<Part> parts;

    Kind(String word, Part... parts) {
      this.word = word;
      this.parts = List.of(parts);
    }

    private static Part part(String name, String use, String share, String next) {
      return new Part(name, use, share, next);
    }

    /** Rooms and a passage need length; an open space needs none. */
    private boolean fits(BoxSize size) {
      return switch (this) {
        case OPEN_SHELL -> true;
        case STUDIO -> !isTen(size);
        case ONE_BEDROOM, ONE_BEDROOM_BATH_LAST, LIVING_BETWEEN, LIVING_BESIDE ->
            !isTen(size) && size != BoxSize.TWENTY && size != BoxSize.TWENTY_HIGH;
      };
    }
  }

  private static final String TWO_BOXES = "two-boxes";

  private Layouts() {}

  private static boolean isTen(BoxSize size) {
    return size == BoxSize.TEN || size == BoxSize.TEN_HIGH;
  }

  /** Every layout, such as {@code studio-20hc}: what it is and the box it is for. */
  public static List<String> names() {
    var names = new ArrayList<String>();
    for (var kind : Kind.values()) {
      for (var size : BoxSize.values()) if (kind.fits(size)) names.add(name(kind.word, size));
    }
    for (var size : BoxSize.values()) if (!isTen(size)) names.add(name(TWO_BOXES, size));
    return List.copyOf(names);
  }

  private static String name(String word, BoxSize size) {
    return word + "-" + size.factId().substring("box.".length());
  }

  /** The workbook of a layout, a start date still missing; empty if there is no such layout. */
  public static Optional<byte[]> workbook(String name, UnitSystem units) {
    return entries(name, units).map(e -> TemplateWriter.write(e, Facts.supplied()));
  }

  /** What stands in that workbook. */
  static Optional<WorkbookEntries> entries(String name, UnitSystem units) {
    if (!names().contains(name)) return Optional.empty();
    var entries = new WorkbookEntries(units);
    for (var size : BoxSize.values()) {
      var layout = new Layout(entries, size, Facts.supplied());
      if (name.equals(name(TWO_BOXES, size))) layout.twoBoxes();
      for (var kind : Kind.values()) {
        if (name.equals(name(kind.word, size))) layout.oneBox(kind.parts);
      }
    }
    return Optional.of(TemplateWriter.withUsualRows(entries));
  }

  /** Writes one layout in the units of its workbook. */
  private record Layout(WorkbookEntries entries, BoxSize size, Facts facts) {
    private static final BigDecimal MM_AN_INCH = new BigDecimal(25);

    private void oneBox(List<Part> parts) {
      box("A", "stands alone", "");
      rooms("A", "", parts, "right side");
      deck();
    }

    private void twoBoxes() {
      box("A", "stands alone", "");
      box("B", "side by side", "A");
      rooms("A", "", List.of(new Part("Living", "living and kitchen", "1", OPEN)), "left side");
      rooms(
          "B",
          "",
          List.of(
              new Part("Bath", "bathroom", "0.36", WALL),
              new Part("Bedroom", "bedroom", "0.64", OPEN)),
          "right side");
      passage("P1", metres("length").multiply(new BigDecimal("0.12")));
      passage("P2", metres("length").multiply(new BigDecimal("0.8")));
      entries.answer(DeckAndRoofQuestions.DECK_SIDE, "left side");
      deck();
    }

    private void box(String id, String joint, String to) {
      entries.row(
          CONTAINERS,
          id,
          size.label(),
          "one trip",
          "on site, after setting",
          to,
          joint,
          to.isEmpty() ? "0" : length(metres("length")),
          "seal and overlay",
          "not known",
          "welded shut",
          "0",
          to.isEmpty() ? "0" : length(metres("width")),
          "0");
    }

    private void rooms(String box, String mark, List<Part> parts, String side) {
      var inside = metres("inside-length");
      var used = BigDecimal.ZERO; // in the unit of the workbook, so that the rooms fill the box
      var from = BigDecimal.ZERO;
      for (int i = 0; i < parts.size(); i++) {
        var part = parts.get(i);
        var metres = inside.multiply(new BigDecimal(part.share()));
        var last = i == parts.size() - 1;
        var entered =
            last
                ? new BigDecimal(length(inside)).subtract(used)
                : new BigDecimal(length(metres)).setScale(2, RoundingMode.HALF_UP);
        used = used.add(entered);
        entries.row(
            ROOMS, part.name() + mark, box, part.use(), entered.toPlainString(), part.next());
        openings(box, box + (i + 1), part, from.add(metres.divide(new BigDecimal(2))), side);
        from = from.add(metres);
      }
    }

    /** What a room opens on: living rooms a sliding door and a window, bedrooms a way of escape. */
    private void openings(String box, String id, Part part, BigDecimal middle, String side) {
      // a side that another box touches takes no window
      boolean joined = entries.rows(CONTAINERS).size() > 1;
      var behind = joined ? side : "left side";
      switch (part.use()) {
        case "bathroom" -> {
          unit(box, "W" + id, behind, "window", 500, 500, 1500, middle.subtract(offset("0.25")));
          hole(box, "S" + id, behind, "service sleeve", 100, 75, middle.add(offset("0.6")));
        }
        case "bedroom" ->
            unit(box, "W" + id, side, "window", 900, 1200, 600, middle.subtract(offset("0.45")));
        default ->
            unit(
                box, "D" + id, side, "sliding door", 1800, 2050, 0, middle.subtract(offset("0.9")));
      }
    }

    private static BigDecimal offset(String metres) {
      return new BigDecimal(metres);
    }

    private void unit(
        String box, String id, String wall, String kind, int w, int h, int sill, BigDecimal from) {
      var tube =
          entries.units() == UnitSystem.METRIC ? "50x50x3 square tube" : "2x2x1/8 square tube";
      entries.row(
          OPENINGS,
          id,
          box,
          wall,
          kind,
          small(w),
          small(h),
          small(sill),
          length(from),
          "double, low-e",
          "yes",
          tube);
    }

    private void hole(
        String box, String id, String wall, String kind, int size, int sill, BigDecimal from) {
      entries.row(
          OPENINGS,
          id,
          box,
          wall,
          kind,
          small(size),
          small(size),
          small(sill),
          length(from),
          "none",
          "no",
          "no steel frame");
    }

    private void passage(String id, BigDecimal from) {
      var tube =
          entries.units() == UnitSystem.METRIC
              ? "100x50x4 rectangular tube"
              : "4x2x3/16 rectangular tube";
      entries.row(
          OPENINGS,
          id,
          "A",
          "right side",
          "pass-through to next box",
          small(900),
          small(2050),
          "0",
          length(from),
          "none",
          "no",
          tube);
    }

    private void deck() {
      entries
          .answer(DeckAndRoofQuestions.DECK_BOX, "A")
          .answer(DeckAndRoofQuestions.DECK_LENGTH, length(metres("length")));
    }

    private BigDecimal metres(String dimension) {
      return facts.figure(size.factId() + "." + dimension).in(Unit.M).round(MathContext.DECIMAL64);
    }

    private String length(BigDecimal metres) {
      var amount =
          entries.units() == UnitSystem.METRIC
              ? metres
              : metres.divide(new BigDecimal("0.3048"), MathContext.DECIMAL64);
      return amount.setScale(3, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString();
    }

    /** Millimetres, or the nominal inches. */
    private String small(int mm) {
      return entries.units() == UnitSystem.METRIC
          ? "" + mm
          : new BigDecimal(mm).divide(MM_AN_INCH, 0, RoundingMode.HALF_UP).toPlainString();
    }
  }
}
