package cornerpost.takeoff;

import java.util.List;

/** Membranes, insulation, linings, skirting and the paint inside. */
final class InsulationRules {
  static final List<TakeoffRule> ALL =
      List.of(new Membranes(), new Insulation(), new Lining(), new Skirting(), new InsidePaint());

  private InsulationRules() {}
}
