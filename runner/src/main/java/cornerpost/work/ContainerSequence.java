package cornerpost.work;

import static cornerpost.takeoff.BuildTask.*;

import cornerpost.fact.Facts;
import java.util.List;

/** From the yard to boxes that are set, level, fixed down and joined: then they may be cut. */
final class ContainerSequence implements SequenceRule {
  @Override
  public List<Tie> ties(Facts facts) {
    return new Ties()
        .then(
            List.of(ENGINEERING, PERMIT_GRANTED),
            YARD_STEELWORK,
            "it is cut as designed and permitted")
        .then(CHOOSE_BOXES, YARD_STEELWORK, "the chosen box goes to the yard")
        .then(YARD_STEELWORK, DELIVERY, "the box leaves the yard when its steelwork is done")
        .then(CHOOSE_BOXES, DELIVERY, "the chosen box is delivered")
        .then(SITE_SET_UP, DELIVERY, "the site is ready to take it")
        .then(DELIVERY, SET_BOXES, "it is lifted off the truck")
        .then(SET_BOXES, LEVEL_BOXES, "it is shimmed where it stands")
        .then(LEVEL_BOXES, FIX_DOWN, "it is fixed when it is level")
        .then(
            FIX_DOWN,
            List.of(STRIP_FLOOR, RUST_REPAIR, JOIN_BOXES, BOND_SHELL, MARK_OPENINGS, CARGO_DOORS),
            "nothing is cut or moved before the box is fixed on its supports")
        .then(
            STRIP_FLOOR,
            List.of(JOIN_BOXES, FIT_FRAMES),
            "the floor is out before hot work near it")
        .then(STRIP_FLOOR, FLOOR_PREPARE, "the new floor replaces it")
        .then(JOIN_BOXES, SEAL_JOINTS, "a seam is sealed when it is welded, the top first")
        .then(JOIN_BOXES, BOND_SHELL, "every joined box is bonded")
        .then(JOIN_BOXES, WELD_INSPECTION, "the welds are looked at")
        .then(List.of(SEAL_JOINTS, RUST_REPAIR), WATERTIGHT, "holes and seams are closed")
        .then(BOND_SHELL, List.of(PANEL, CONNECT_POWER), "the shell is earthed before any power")
        .all();
  }
}
