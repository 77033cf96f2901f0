package cornerpost.check;

import java.util.Comparator;
import java.util.List;

/** Every check, in the order of the build. */
public final class Checks {
  private static final List<CheckRule> RULES =
      List.of(
          new ClearSizes(),
          new LightAndAir(),
          new OutdoorAir(),
          new WayOut(),
          new BedroomsInLine(),
          new OpeningsAcross(),
          new DoorLandings(),
          new SteelCutAway(),
          new JoinedBoxes(),
          new GroundBearing(),
          new SteelAndMoisture(),
          new LicensedWork(),
          new MoneyAndTime(),
          new Cautions());

  private Checks() {}

  /** What matters most first; within that in the order of the build. */
  public static List<Check> of(CheckInput in) {
    return RULES.stream()
        .flatMap(r -> r.look(in).stream())
        .sorted(Comparator.comparing((Check c) -> c.severity().ordinal()).reversed())
        .toList();
  }
}
