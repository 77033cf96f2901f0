package cornerpost.takeoff;

import cornerpost.trace.Figure;

/**
 * The two load calculations of NFPA 70 (NEC) for a dwelling, in volt-amperes, as live figures.
 * Worked examples D1(a) and D2(a) of its Informative Annex D hold them.
 */
final class ServiceLoad {
  private final Job job;

  ServiceLoad(Job job) {
    this.job = job;
  }

  /**
   * Standard method, part III of article 220: lighting, small-appliance and laundry load with the
   * demand factors of table 220.45; everything else as it comes.
   */
  Figure standard(Figure lightingAndSmall, Figure rest) {
    var first = job.fact("load.standard-first");
    return lightingAndSmall
        .min(first)
        .plus(
            lightingAndSmall.minus(first).atLeastZero().times(job.fact("load.standard-remainder")))
        .plus(rest);
  }

  /** Optional method, 220.82(B): the first part of the general load whole, the rest at a share. */
  Figure optional(Figure general, Figure heat) {
    var first = job.fact("load.optional-first");
    return general
        .min(first)
        .plus(general.minus(first).atLeastZero().times(job.fact("load.optional-remainder")))
        .plus(heat);
  }

  /** 220.82(C): separately controlled heaters, at a lower share from four on. */
  Figure heaters(Figure units, Figure each) {
    var share =
        units.ifAtLeast(
            Figure.count(4), job.fact("load.heaters-many"), job.fact("load.heaters-few"));
    return units.times(each).times(share);
  }

  /** Lighting circuits that carry a lighting load: load / (15 A x 120 V), rounded up. */
  Figure lightingCircuits(Figure lighting) {
    return lighting.over(job.fact("load.lighting-circuit")).roundedUp();
  }
}
