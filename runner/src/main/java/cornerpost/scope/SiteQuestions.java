package cornerpost.scope;

import static cornerpost.scope.OwnerSheet.SITE;

import cornerpost.measure.Unit;
import java.util.List;

/** What sheet Site and foundation asks. */
public final class SiteQuestions {
  public static final Question ACCESS =
      Question.oneOf(SITE, "Access", SiteAccess.class).standard(SiteAccess.CRANE);
  public static final Question CRANE_REACH =
      Question.number(SITE, "Crane reach", Unit.M, Unit.FT)
          .standard("8", "26")
          .upTo("60")
          .help("From the crane's centre to the middle of the box.");
  public static final Question DELIVERY_DISTANCE =
      Question.number(SITE, "Delivery distance", Unit.KM, Unit.MILE)
          .standard("80", "50")
          .upTo("2000")
          .help("Road from the depot to the site.");
  public static final Question SLOPE =
      Question.share(SITE, "Slope of the ground")
          .standard("0.03")
          .upTo("0.6")
          .help("Fall over length, where the boxes stand.");
  public static final Question CLEARING =
      Question.number(SITE, "Area to clear", Unit.M2, Unit.SQ_FT)
          .standard("150", "1600")
          .upTo("20000")
          .help("Where scrub and turf come off.");
  public static final Question ACCESS_TRACK =
      Question.number(SITE, "Access track length", Unit.M, Unit.FT)
          .standard("15", "50")
          .upTo("2000");
  public static final Question FENCE =
      Question.number(SITE, "Site fence length", Unit.M, Unit.FT)
          .standard("50", "160")
          .upTo("2000");
  public static final Question SOIL =
      Question.oneOf(SITE, "Soil", SoilClass.class)
          .standard(SoilClass.CLAY)
          .help("Under the footings; the checks set its bearing against the load.");
  public static final Question FROST_DEPTH =
      Question.number(SITE, "Frost depth", Unit.MM, Unit.IN)
          .standard("600", "24")
          .upTo("3000")
          .help("How deep the ground freezes; footings stand below that.");
  public static final Question SNOW =
      Question.number(SITE, "Ground snow load", Unit.KPA, Unit.PSF)
          .standard("1", "20")
          .upTo("15")
          .help("From the local table.");
  public static final Question FLOOR_HEIGHT =
      Question.number(SITE, "Floor above ground", Unit.MM, Unit.IN)
          .standard("600", "24")
          .upTo("3000")
          .help("From the ground to the top of the container floor.");
  public static final Question FOUNDATION =
      Question.oneOf(SITE, "Foundation", Foundation.class).standard(Foundation.PIERS);
  public static final Question SUPPORTS_A_SIDE =
      Question.whole(SITE, "Supports on each long side")
          .from("2")
          .upTo("12")
          .standard("3")
          .help("Corners counted: 3 is one at each end and one in the middle.");
  public static final Question PIER_WIDTH =
      Question.number(SITE, "Pier width", Unit.MM, Unit.IN)
          .from("150")
          .upTo("1200")
          .standard("400", "16");
  public static final Question PAD_DEPTH =
      Question.number(SITE, "Footing thickness", Unit.MM, Unit.IN)
          .from("100")
          .upTo("1200")
          .standard("250", "10");
  public static final Question CONCRETE =
      Question.oneOf(SITE, "Concrete", ConcreteSupply.class).standard(ConcreteSupply.READY_MIX);
  public static final Question DIGGING =
      Question.oneOf(SITE, "Digging", Digging.class).standard(Digging.MACHINE);
  public static final Question DRAINAGE =
      Question.oneOf(SITE, "Drainage", Drainage.class).standard(Drainage.SWALE);

  public static final List<Question> ALL =
      List.of(
          ACCESS,
          CRANE_REACH,
          DELIVERY_DISTANCE,
          SLOPE,
          CLEARING,
          ACCESS_TRACK,
          FENCE,
          SOIL,
          FROST_DEPTH,
          SNOW,
          FLOOR_HEIGHT,
          FOUNDATION,
          SUPPORTS_A_SIDE,
          PIER_WIDTH,
          PAD_DEPTH,
          CONCRETE,
          DIGGING,
          DRAINAGE);

  private SiteQuestions() {}
}
