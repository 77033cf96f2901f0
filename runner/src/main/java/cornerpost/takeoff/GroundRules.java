package cornerpost.takeoff;

import java.util.List;

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
          new ReadyMixTrips(),
          new Bearings(),
          new GroundUnderBoxes(),
          new Earthworks(),
          new BoxPurchase(),
          new BoxSetting(),
          new RustRepair(),
          new BoxJoints(),
          new PlywoodFloor());

  private GroundRules() {}
}
