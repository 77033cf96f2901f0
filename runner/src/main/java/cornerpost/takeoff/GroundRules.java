package cornerpost.takeoff;

import java.util.List;
import java.util.Set;

/** Geometry that all build on; before the box, site and foundation, containers. */
final class GroundRules {
  static final List<TakeoffRule> ALL =
      List.of(
          new DevelopedLengths(),
          new OpeningAreas(),
          new ShellGeometry(),
          new PaperWork(),
          new SiteSetUp(),
          new BoxLoads(),
          new Supports(),
          new SitePreparation(),
          new PadSizes(),
          new PierFoundation(),
          new PileFoundation(),
          new StripFoundation(),
          new SlabFoundation(),
          new PrecastPadFoundation(),
          new SkidFoundation(),
          new GroundPressures(),
          new ReadyMixTrips(),
          new Bearings(),
          new GroundUnderBoxes(),
          new Earthworks(),
          new BoxPurchase(),
          new BoxSetting(),
          new RustRepair(),
          new BoxJoints(),
          new PlywoodFloor());

  /**
   * Those that rest on what the boxes weigh, and those that rest on these: worked out last, though
   * the build and the list begin with them.
   */
  static boolean restsOnMass(TakeoffRule rule) {
    return CARRYING.contains(rule.getClass());
  }

  private static final Set<Class<?>> CARRYING =
      Set.of(
          BoxLoads.class,
          Supports.class,
          SitePreparation.class,
          PadSizes.class,
          PierFoundation.class,
          PileFoundation.class,
          StripFoundation.class,
          SlabFoundation.class,
          PrecastPadFoundation.class,
          SkidFoundation.class,
          GroundPressures.class,
          ReadyMixTrips.class,
          Bearings.class,
          Earthworks.class,
          BoxSetting.class);

  private GroundRules() {}
}
