package cornerpost.takeoff;

import cornerpost.scope.InsulationMaterial;
import cornerpost.scope.LiningBoard;
import cornerpost.scope.StudSection;

/** Codes in the price book of materials that the owner picks from a list. */
final class Materials {
  private Materials() {}

  /** {@code stud-timber-38x89}, {@code stud-timber-38x89-treated}, {@code stud-steel-64}. */
  static String stud(StudSection section, boolean treated) {
    var code = section.factId().replace('.', '-');
    return treated && Inside.isTimber(section) ? code + "-treated" : code;
  }

  /** What runs along floor and ceiling: timber of the same section, or a track. */
  static String plate(StudSection section, boolean treated) {
    return Inside.isTimber(section)
        ? stud(section, treated)
        : section.factId().replace("stud.steel", "track-steel");
  }

  /** {@code board-plasterboard}. */
  static String board(LiningBoard board) {
    return board.factId().replace('.', '-');
  }

  /** {@code insulation-closed-cell}; never asked for where there is none. */
  static String insulation(InsulationMaterial material) {
    return material.factId().replace('.', '-');
  }
}
