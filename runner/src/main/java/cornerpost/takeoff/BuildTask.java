package cornerpost.takeoff;

import cornerpost.scope.Stage;
import cornerpost.scope.Trade;
import java.util.Arrays;
import java.util.Optional;

/**
 * The tasks a container home may need, in the order they are usually met. Quantities say at which
 * task they are needed or worked; the work plan takes those that have anything to do.
 */
public enum BuildTask {
  SURVEY("survey", "Soil and site survey", Stage.PREPARATION, of(Trade.DESIGN), Kind.WORK),
  DRAWINGS("drawings", "Drawings", Stage.PREPARATION, of(Trade.DESIGN), Kind.WORK),
  ENGINEERING(
      "engineering",
      "Engineer's design of openings, joints and footings",
      Stage.PREPARATION,
      of(Trade.DESIGN),
      Kind.WORK),
  PERMIT_APPLY(
      "permit-application", "Apply for the permit", Stage.PREPARATION, of(Trade.DESIGN), Kind.WORK),
  PERMIT_REVIEW("permit-review", "Permit review", Stage.PREPARATION, Optional.empty(), Kind.WAIT),
  PERMIT_GRANTED(
      "permit-granted", "Permit granted", Stage.PREPARATION, Optional.empty(), Kind.MILESTONE),
  LOAN_CLOSING("loan-closing", "Loan closing", Stage.PREPARATION, Optional.empty(), Kind.WAIT),
  INSURANCE("insurance", "Insurance in place", Stage.PREPARATION, of(Trade.DESIGN), Kind.WORK),
  UTILITY_APPLY(
      "utility-application",
      "Apply for electricity, water and waste water",
      Stage.PREPARATION,
      of(Trade.DESIGN),
      Kind.WORK),
  UTILITY_WAIT(
      "utility-wait",
      "Utility companies bring their services",
      Stage.PREPARATION,
      Optional.empty(),
      Kind.WAIT),
  CHOOSE_BOXES(
      "choose-boxes",
      "Inspect and choose the boxes",
      Stage.PREPARATION,
      of(Trade.DESIGN),
      Kind.WORK),
  BOOK_CRANE(
      "book-crane",
      "Book crane and truck together",
      Stage.PREPARATION,
      of(Trade.DESIGN),
      Kind.WORK),
  SITE_SET_UP(
      "site-set-up",
      "Set up the site: fence, toilet, skip, tools",
      Stage.PREPARATION,
      of(Trade.GROUNDWORKS),
      Kind.WORK),
  TEMPORARY_POWER(
      "temporary-power", "Temporary power", Stage.PREPARATION, of(Trade.ELECTRICAL), Kind.WORK),

  CLEAR("clear", "Clear the ground", Stage.FOUNDATION, of(Trade.GROUNDWORKS), Kind.WORK),
  ACCESS_TRACK(
      "access-track",
      "Access track and crane stand",
      Stage.FOUNDATION,
      of(Trade.GROUNDWORKS),
      Kind.WORK),
  SET_OUT("set-out", "Set out the supports", Stage.FOUNDATION, of(Trade.GROUNDWORKS), Kind.WORK),
  EXCAVATE("excavate", "Dig the footings", Stage.FOUNDATION, of(Trade.GROUNDWORKS), Kind.WORK),
  FORMWORK("formwork", "Formwork", Stage.FOUNDATION, of(Trade.CONCRETE), Kind.WORK),
  REINFORCE("reinforce", "Reinforcement", Stage.FOUNDATION, of(Trade.CONCRETE), Kind.WORK),
  FOOTING_INSPECTION(
      "footing-inspection",
      "Footing inspection, before concrete",
      Stage.FOUNDATION,
      Optional.empty(),
      Kind.INSPECTION),
  POUR("pour", "Pour concrete", Stage.FOUNDATION, of(Trade.CONCRETE), Kind.WORK),
  CURE("cure", "Concrete cures", Stage.FOUNDATION, Optional.empty(), Kind.WAIT),
  STRIP_FORMS("strip-forms", "Strip the forms", Stage.FOUNDATION, of(Trade.CONCRETE), Kind.WORK),
  PILES("piles", "Install piles, pads or skids", Stage.FOUNDATION, of(Trade.CONCRETE), Kind.WORK),
  BEARING_PLATES(
      "bearing-plates",
      "Level and fix bearing plates",
      Stage.FOUNDATION,
      of(Trade.CONCRETE),
      Kind.WORK),
  BACKFILL("backfill", "Backfill and level", Stage.FOUNDATION, of(Trade.GROUNDWORKS), Kind.WORK),
  DRAINAGE("drainage", "Ground drainage", Stage.FOUNDATION, of(Trade.GROUNDWORKS), Kind.WORK),
  TRENCHES("trenches", "Dig service trenches", Stage.FOUNDATION, of(Trade.UTILITIES), Kind.WORK),
  LAY_WASTE(
      "lay-waste", "Lay waste pipe underground", Stage.FOUNDATION, of(Trade.UTILITIES), Kind.WORK),
  LAY_WATER(
      "lay-water", "Lay water pipe underground", Stage.FOUNDATION, of(Trade.UTILITIES), Kind.WORK),
  LAY_CABLE(
      "lay-cable", "Lay cable duct underground", Stage.FOUNDATION, of(Trade.UTILITIES), Kind.WORK),
  SEPTIC("septic", "Waste-water tank and field", Stage.FOUNDATION, of(Trade.UTILITIES), Kind.WORK),
  WELL("well", "Well or water tank", Stage.FOUNDATION, of(Trade.UTILITIES), Kind.WORK),
  UNDERGROUND_INSPECTION(
      "underground-inspection",
      "Underground inspection, before backfill",
      Stage.FOUNDATION,
      Optional.empty(),
      Kind.INSPECTION),
  CLOSE_TRENCHES(
      "close-trenches",
      "Backfill service trenches",
      Stage.FOUNDATION,
      of(Trade.UTILITIES),
      Kind.WORK),

  YARD_STEELWORK(
      "yard-steelwork",
      "Steelwork on the boxes in the yard",
      Stage.CONTAINERS,
      of(Trade.STEELWORK),
      Kind.WORK),
  DELIVERY("delivery", "Boxes delivered", Stage.CONTAINERS, Optional.empty(), Kind.MILESTONE),
  SET_BOXES(
      "set-boxes",
      "Set the boxes on their supports",
      Stage.CONTAINERS,
      of(Trade.HAULAGE),
      Kind.WORK),
  LEVEL_BOXES(
      "level-boxes", "Level and shim the boxes", Stage.CONTAINERS, of(Trade.HAULAGE), Kind.WORK),
  FIX_DOWN("fix-down", "Fix the boxes down", Stage.CONTAINERS, of(Trade.HAULAGE), Kind.WORK),
  STRIP_FLOOR(
      "strip-floor",
      "Take out the container floor",
      Stage.CONTAINERS,
      of(Trade.STEELWORK),
      Kind.WORK),
  RUST_REPAIR(
      "rust-repair",
      "Rust repair and spot priming",
      Stage.CONTAINERS,
      of(Trade.STEELWORK),
      Kind.WORK),
  JOIN_BOXES(
      "join-boxes",
      "Join the boxes, stitch the seams",
      Stage.CONTAINERS,
      of(Trade.STEELWORK),
      Kind.WORK),
  SEAL_JOINTS(
      "seal-joints", "Flash and seal the joints", Stage.CONTAINERS, of(Trade.STEELWORK), Kind.WORK),
  BOND_SHELL(
      "bond-shell",
      "Earth and bond the steel shell",
      Stage.CONTAINERS,
      of(Trade.ELECTRICAL),
      Kind.WORK),

  MARK_OPENINGS(
      "mark-openings",
      "Settle floor levels, mark the openings",
      Stage.SHELL,
      of(Trade.STEELWORK),
      Kind.WORK),
  MAKE_FRAMES(
      "make-frames",
      "Cut and weld the opening frames",
      Stage.SHELL,
      of(Trade.STEELWORK),
      Kind.WORK),
  FIT_FRAMES(
      "fit-frames",
      "Fit the frames before the sheet is cut out",
      Stage.SHELL,
      of(Trade.STEELWORK),
      Kind.WORK),
  CUT_OPENINGS("cut-openings", "Cut out the openings", Stage.SHELL, of(Trade.STEELWORK), Kind.WORK),
  WELD_FRAMES(
      "weld-frames", "Weld the frames, fit drip bars", Stage.SHELL, of(Trade.STEELWORK), Kind.WORK),
  PRIME_EDGES(
      "prime-edges",
      "Prime and paint raw edges, same day",
      Stage.SHELL,
      of(Trade.STEELWORK),
      Kind.WORK),
  CARGO_DOORS("cargo-doors", "Cargo doors", Stage.SHELL, of(Trade.STEELWORK), Kind.WORK),
  WELD_INSPECTION(
      "weld-inspection",
      "Inspection of the welded frames",
      Stage.SHELL,
      Optional.empty(),
      Kind.INSPECTION),
  SET_WINDOWS("set-windows", "Set the windows", Stage.SHELL, of(Trade.WINDOWS), Kind.WORK),
  SET_DOORS("set-doors", "Set the outside doors", Stage.SHELL, of(Trade.WINDOWS), Kind.WORK),
  SEAL_OPENINGS(
      "seal-openings", "Seal round the openings", Stage.SHELL, of(Trade.WINDOWS), Kind.WORK),
  HOSE_TEST("hose-test", "Hose test", Stage.SHELL, of(Trade.WINDOWS), Kind.WORK),
  WATERTIGHT("watertight", "Shell watertight", Stage.SHELL, Optional.empty(), Kind.MILESTONE),

  ROOF_PREPARE(
      "roof-prepare", "Clean and prepare the roof", Stage.OUTSIDE, of(Trade.ROOFING), Kind.WORK),
  ROOF_COAT("roof-coat", "Coat the roof", Stage.OUTSIDE, of(Trade.ROOFING), Kind.WORK),
  ROOF_FRAME("roof-frame", "Roof frame and purlins", Stage.OUTSIDE, of(Trade.ROOFING), Kind.WORK),
  ROOF_INSULATION(
      "roof-insulation", "Insulation above the roof", Stage.OUTSIDE, of(Trade.ROOFING), Kind.WORK),
  ROOF_SHEETS(
      "roof-sheets",
      "Roof sheets or membrane, flashings",
      Stage.OUTSIDE,
      of(Trade.ROOFING),
      Kind.WORK),
  GUTTERS("gutters", "Gutters and downpipes", Stage.OUTSIDE, of(Trade.ROOFING), Kind.WORK),
  WALL_PREPARE(
      "wall-prepare", "Prepare the outside walls", Stage.OUTSIDE, of(Trade.PAINTING), Kind.WORK),
  WALL_PAINT("wall-paint", "Paint the outside walls", Stage.OUTSIDE, of(Trade.PAINTING), Kind.WORK),
  OUTSIDE_INSULATION(
      "outside-insulation",
      "Insulate the walls outside",
      Stage.OUTSIDE,
      of(Trade.ROOFING),
      Kind.WORK),
  CLADDING_BATTENS(
      "cladding-battens", "Cladding battens", Stage.OUTSIDE, of(Trade.ROOFING), Kind.WORK),
  CLADDING("cladding", "Cladding", Stage.OUTSIDE, of(Trade.ROOFING), Kind.WORK),

  STEEL_MEMBRANE(
      "steel-membrane", "Membrane on the steel", Stage.FRAMING, of(Trade.INSULATION), Kind.WORK),
  WALL_STUDS(
      "wall-studs",
      "Studs, plates and noggings on the walls",
      Stage.FRAMING,
      of(Trade.FRAMING),
      Kind.WORK),
  CEILING_BATTENS(
      "ceiling-battens", "Ceiling battens", Stage.FRAMING, of(Trade.FRAMING), Kind.WORK),
  PARTITIONS("partitions", "Partitions", Stage.FRAMING, of(Trade.FRAMING), Kind.WORK),
  BACKING(
      "backing", "Backing for units, basin, rails", Stage.FRAMING, of(Trade.FRAMING), Kind.WORK),

  ELECTRICAL_FIRST(
      "electrical-first-fix",
      "Electrical first fix",
      Stage.SERVICES,
      of(Trade.ELECTRICAL),
      Kind.WORK),
  PANEL("panel", "Service panel and earthing", Stage.SERVICES, of(Trade.ELECTRICAL), Kind.WORK),
  SOLAR("solar", "Solar panels and battery", Stage.SERVICES, of(Trade.ELECTRICAL), Kind.WORK),
  PLUMBING_WASTE(
      "plumbing-waste",
      "Plumbing first fix: wastes and vent",
      Stage.SERVICES,
      of(Trade.PLUMBING),
      Kind.WORK),
  PLUMBING_SUPPLY(
      "plumbing-supply",
      "Plumbing first fix: hot and cold",
      Stage.SERVICES,
      of(Trade.PLUMBING),
      Kind.WORK),
  DUCTS("ducts", "Ventilation ducts and fans", Stage.SERVICES, of(Trade.CLIMATE), Kind.WORK),
  SPLIT_LINES(
      "split-lines", "Split unit: lines and bracket", Stage.SERVICES, of(Trade.CLIMATE), Kind.WORK),
  PRESSURE_TEST(
      "pressure-test", "Pressure test of pipes", Stage.SERVICES, of(Trade.PLUMBING), Kind.WORK),
  ROUGH_IN_INSPECTION(
      "rough-in-inspection",
      "Rough-in inspection, before cover",
      Stage.SERVICES,
      Optional.empty(),
      Kind.INSPECTION),
  FRAMING_INSPECTION(
      "framing-inspection",
      "Framing inspection",
      Stage.SERVICES,
      Optional.empty(),
      Kind.INSPECTION),
  PHOTOGRAPH(
      "photograph",
      "Photograph the open walls with a tape",
      Stage.SERVICES,
      of(Trade.CLEANING),
      Kind.WORK),
  CONNECT_POWER(
      "connect-power", "Connect electricity", Stage.SERVICES, of(Trade.UTILITIES), Kind.WORK),
  CONNECT_WATER("connect-water", "Connect water", Stage.SERVICES, of(Trade.UTILITIES), Kind.WORK),
  CONNECT_WASTE(
      "connect-waste", "Connect waste water", Stage.SERVICES, of(Trade.UTILITIES), Kind.WORK),
  WATER_HEATER("water-heater", "Water heater", Stage.SERVICES, of(Trade.PLUMBING), Kind.WORK),
  SPLIT_UNITS(
      "split-units",
      "Hang heating and cooling units",
      Stage.SERVICES,
      of(Trade.CLIMATE),
      Kind.WORK),
  ELECTRICAL_SECOND(
      "electrical-second-fix",
      "Electrical second fix: outlets, lights, alarms",
      Stage.SERVICES,
      of(Trade.ELECTRICAL),
      Kind.WORK),
  PLUMBING_SECOND(
      "plumbing-second-fix",
      "Plumbing second fix: fittings",
      Stage.SERVICES,
      of(Trade.PLUMBING),
      Kind.WORK),

  UNDERFLOOR_INSULATION(
      "underfloor-insulation",
      "Underfloor insulation",
      Stage.INSULATION,
      of(Trade.INSULATION),
      Kind.WORK),
  WALL_INSULATION(
      "wall-insulation", "Wall insulation", Stage.INSULATION, of(Trade.INSULATION), Kind.WORK),
  CEILING_INSULATION(
      "ceiling-insulation",
      "Ceiling insulation",
      Stage.INSULATION,
      of(Trade.INSULATION),
      Kind.WORK),
  FOAM_WAIT(
      "foam-wait", "Foam cures, nobody inside", Stage.INSULATION, Optional.empty(), Kind.WAIT),
  INSULATION_INSPECTION(
      "insulation-inspection",
      "Insulation inspection, before board",
      Stage.INSULATION,
      Optional.empty(),
      Kind.INSPECTION),
  VAPOUR_MEMBRANE(
      "vapour-membrane", "Vapour control", Stage.INSULATION, of(Trade.INSULATION), Kind.WORK),
  CEILING_BOARD(
      "ceiling-board", "Board the ceilings", Stage.INSULATION, of(Trade.BOARDING), Kind.WORK),
  WALL_BOARD("wall-board", "Board the walls", Stage.INSULATION, of(Trade.BOARDING), Kind.WORK),
  JOINTS("joints", "Tape, fill or skim", Stage.INSULATION, of(Trade.BOARDING), Kind.WORK),
  JOINTS_DRY("joints-dry", "Compound dries", Stage.INSULATION, Optional.empty(), Kind.WAIT),

  PRIME_WALLS(
      "prime-walls", "Prime walls and ceilings", Stage.FINISHES, of(Trade.PAINTING), Kind.WORK),
  PAINT_WALLS(
      "paint-walls", "Paint walls and ceilings", Stage.FINISHES, of(Trade.PAINTING), Kind.WORK),
  PAINT_DRY("paint-dry", "Paint dries", Stage.FINISHES, Optional.empty(), Kind.WAIT),
  FLOOR_PREPARE(
      "floor-prepare", "Prepare and seal the floor", Stage.FINISHES, of(Trade.FLOORING), Kind.WORK),
  FLOOR_DRY("floor-dry", "Floor sealer dries", Stage.FINISHES, Optional.empty(), Kind.WAIT),
  FLOORING("flooring", "Lay the floor", Stage.FINISHES, of(Trade.FLOORING), Kind.WORK),
  WATERPROOF("waterproof", "Waterproof the wet rooms", Stage.FINISHES, of(Trade.TILING), Kind.WORK),
  WATERPROOF_DRY(
      "waterproof-dry", "Waterproofing dries", Stage.FINISHES, Optional.empty(), Kind.WAIT),
  WALL_TILES("wall-tiles", "Wall tiles", Stage.FINISHES, of(Trade.TILING), Kind.WORK),
  FLOOR_TILES("floor-tiles", "Floor tiles or sheet", Stage.FINISHES, of(Trade.TILING), Kind.WORK),
  TILES_DRY("tiles-dry", "Adhesive and grout set", Stage.FINISHES, Optional.empty(), Kind.WAIT),
  KITCHEN_UNITS("kitchen-units", "Kitchen units", Stage.FINISHES, of(Trade.JOINERY), Kind.WORK),
  WORKTOP("worktop", "Worktop and splashback", Stage.FINISHES, of(Trade.JOINERY), Kind.WORK),
  APPLIANCES("appliances", "Appliances", Stage.FINISHES, of(Trade.JOINERY), Kind.WORK),
  INNER_DOORS("inner-doors", "Inner doors", Stage.FINISHES, of(Trade.JOINERY), Kind.WORK),
  SKIRTING("skirting", "Skirting and trim", Stage.FINISHES, of(Trade.JOINERY), Kind.WORK),
  WARDROBE("wardrobe", "Wardrobes", Stage.FINISHES, of(Trade.JOINERY), Kind.WORK),
  BLINDS("blinds", "Blinds", Stage.FINISHES, of(Trade.JOINERY), Kind.WORK),
  TOUCH_UP("touch-up", "Touch up paint", Stage.FINISHES, of(Trade.PAINTING), Kind.WORK),
  FURNITURE("furniture", "Furniture", Stage.FINISHES, of(Trade.JOINERY), Kind.WORK),

  DECK_FOOTINGS("deck-footings", "Deck footings", Stage.OUTSIDE, of(Trade.DECKING), Kind.WORK),
  DECK_INSPECTION(
      "deck-inspection",
      "Deck footing inspection",
      Stage.OUTSIDE,
      Optional.empty(),
      Kind.INSPECTION),
  DECK_CONCRETE(
      "deck-concrete", "Concrete the deck footings", Stage.OUTSIDE, of(Trade.DECKING), Kind.WORK),
  DECK_CURE("deck-cure", "Deck footings cure", Stage.OUTSIDE, Optional.empty(), Kind.WAIT),
  DECK_FRAME(
      "deck-frame", "Deck posts, beams and joists", Stage.OUTSIDE, of(Trade.DECKING), Kind.WORK),
  DECK_BOARDS("deck-boards", "Deck boards", Stage.OUTSIDE, of(Trade.DECKING), Kind.WORK),
  GUARD("guard", "Guard rails", Stage.OUTSIDE, of(Trade.DECKING), Kind.WORK),
  STEPS("steps", "Steps", Stage.OUTSIDE, of(Trade.DECKING), Kind.WORK),
  AWNING("awning", "Awning", Stage.OUTSIDE, of(Trade.DECKING), Kind.WORK),
  PATHS("paths", "Paths", Stage.OUTSIDE, of(Trade.GROUNDWORKS), Kind.WORK),
  PLANTING("planting", "Grade and plant", Stage.OUTSIDE, of(Trade.GROUNDWORKS), Kind.WORK),

  TEST_ELECTRICS(
      "test-electrics", "Test the electrics", Stage.CLOSE_OUT, of(Trade.ELECTRICAL), Kind.WORK),
  TEST_PLUMBING(
      "test-plumbing", "Test the plumbing", Stage.CLOSE_OUT, of(Trade.PLUMBING), Kind.WORK),
  COMMISSION(
      "commission",
      "Commission heating and ventilation",
      Stage.CLOSE_OUT,
      of(Trade.CLIMATE),
      Kind.WORK),
  SNAGS("snags", "Snag list", Stage.CLOSE_OUT, of(Trade.CLEANING), Kind.WORK),
  FINAL_CLEAN(
      "final-clean", "Final clean, clear the site", Stage.CLOSE_OUT, of(Trade.CLEANING), Kind.WORK),
  FINAL_INSPECTION(
      "final-inspection", "Final inspection", Stage.CLOSE_OUT, Optional.empty(), Kind.INSPECTION),
  CERTIFICATE_WAIT(
      "certificate-wait",
      "Certificate of occupancy is written",
      Stage.CLOSE_OUT,
      Optional.empty(),
      Kind.WAIT),
  CERTIFICATE(
      "certificate", "Certificate of occupancy", Stage.CLOSE_OUT, Optional.empty(), Kind.MILESTONE),
  MOVE_IN("move-in", "Move-in", Stage.CLOSE_OUT, Optional.empty(), Kind.MILESTONE);

  /** What kind of task it is. */
  public enum Kind {
    /** People work on it. */
    WORK,
    /** Time passes: permits, curing, drying. */
    WAIT,
    /** A hold point: work behind it waits until it is passed. */
    INSPECTION,
    /** A moment. */
    MILESTONE
  }

  private final String id;
  private final String title;
  private final Stage stage;
  private final Optional<Trade> trade;
  private final Kind kind;

  BuildTask(String id, String title, Stage stage, Optional<Trade> trade, Kind kind) {
    this.id = id;
    this.title = title;
    this.stage = stage;
    this.trade = trade;
    this.kind = kind;
  }

  private static Optional<Trade> of(Trade trade) {
    return Optional.of(trade);
  }

  /** Stable across runs and changes of scope. */
  public String id() {
    return id;
  }

  public String title() {
    return title;
  }

  public Stage stage() {
    return stage;
  }

  public Optional<Trade> trade() {
    return trade;
  }

  public Kind kind() {
    return kind;
  }

  /**
   * Whether it is over once its time has passed, as concrete that has cured; the answer of an
   * office, a lender or a utility company is only there when it has come.
   */
  public boolean endsByItself() {
    return switch (this) {
      case CURE,
          DECK_CURE,
          FOAM_WAIT,
          JOINTS_DRY,
          PAINT_DRY,
          FLOOR_DRY,
          WATERPROOF_DRY,
          TILES_DRY ->
          true;
      default -> false;
    };
  }

  public static Optional<BuildTask> find(String id) {
    return Arrays.stream(values()).filter(t -> t.id.equals(id)).findFirst();
  }
}
