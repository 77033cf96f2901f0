package cornerpost.takeoff;

import java.util.List;

/** Membranes, insulation inside, boards, their joints, and paint on them. */
final class InsulationRules {
  static final List<TakeoffRule> ALL =
      List.of(new Membranes(), new Insulation(), new Lining(), new InsidePaint());

  private InsulationRules() {}
}
