package cornerpost.takeoff;

import cornerpost.trace.Figure;

/** What a fillet weld uses up, for its length. */
final class Welds {
  private Welds() {}

  /**
   * Mass of wire: leg x leg / 2 x density x length, the convexity added, over the share of the wire
   * that is deposited. Formula: electrode makers' handbooks, P = W L / E.
   */
  static Figure wire(Job job, Figure length) {
    return metal(job, length)
        .times(Figure.count(1).plus(job.fact("weld.convexity")))
        .over(job.fact("weld.efficiency"));
  }

  /** Mass of the flat fillet. */
  static Figure metal(Job job, Figure length) {
    var leg = job.fact("weld.leg");
    return leg.times(leg).over(2).times(job.fact("steel.density")).times(length);
  }

  /** Volume of shielding gas for a mass of wire. */
  static Figure gas(Job job, Figure wire) {
    return wire.times(job.fact("weld.gas"));
  }
}
