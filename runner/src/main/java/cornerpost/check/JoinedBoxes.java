package cornerpost.check;

import static cornerpost.check.Check.Severity.PROFESSIONAL;

import cornerpost.check.Check.Topic;
import cornerpost.scope.Box;
import cornerpost.scope.BoxCondition;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.Joint;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/** Boxes joined or stacked, and used ones. */
final class JoinedBoxes implements CheckRule {
  @Override
  public List<Check> look(CheckInput in) {
    var found = new ArrayList<Check>();
    for (var box : in.scope().boxes()) {
      if (box.joint() == Joint.STACKED) {
        found.add(stacked(in, box));
      } else if (box.joint() != Joint.NONE) {
        found.add(
            new Check(
                "joined/" + box.id(),
                Topic.STEEL,
                PROFESSIONAL,
                "Box "
                    + box.id()
                    + " is joined to box "
                    + box.joinedTo().orElse("?")
                    + ": where side walls are cut out between them, beams and posts at the joint need"
                    + " an engineer; seal the top of the joint first and let its cover move",
                "IBC 2021 section 3115, simplified method: single boxes; common practice",
                List.of(box.row().cell(BoxQuestions.JOINT)),
                in.tasks("join-boxes", "seal-joints")));
      }
      boolean used =
          box.condition() == BoxCondition.AS_IS
              || box.condition() == BoxCondition.WIND_TIGHT
              || box.condition() == BoxCondition.CARGO_WORTHY;
      if (used) {
        found.add(
            new Check(
                "used-box/" + box.id(),
                Topic.STEEL,
                Check.Severity.NOTE,
                "Box "
                    + box.id()
                    + " is bought used: look at doors, seals, roof dents, underside rust,"
                    + " floor smell and the data plate before paying; a one-trip box is the usual"
                    + " choice for a dwelling",
                "common practice, no source",
                List.of(box.row().cell(BoxQuestions.CONDITION)),
                in.tasks("choose-boxes")));
      }
    }
    return found;
  }

  private static Check stacked(CheckInput in, Box box) {
    var below = box.joinedTo().flatMap(in.scope()::box);
    var lengths = below.map(b -> in.facts().figure(b.size().factId() + ".length"));
    boolean same = lengths.filter(l -> !differs(l, box.fact(in.facts(), "length"))).isPresent();
    var name = below.map(Box::id).orElse("?");
    return new Check(
        "stacked/" + box.id(),
        Topic.STEEL,
        PROFESSIONAL,
        "Box "
            + box.id()
            + " is stacked: boxes are tested to carry one another on their corner fittings only, and"
            + " only while uncut. "
            + (same
                ? ""
                : "It is not as long as box "
                    + name
                    + ", so that a pair of its corners has no corner post below: posts or a beam must"
                    + " carry them down. ")
            + "Stacked boxes, their connections and footings need an engineer; the quantities here"
            + " are for the budget alone. The bill holds one stair inside, with the stairwell cut"
            + " through both boxes; where it stands is not chosen, and it takes floor from a room"
            + " of each",
        "ISO 1496-1 test 1 (stacking); IBC 2021 section 3115, simplified method: single boxes",
        List.of(box.row().cell(BoxQuestions.JOINT)),
        in.tasks("set-boxes", "join-boxes"));
  }

  private static boolean differs(Figure a, Figure b) {
    return Say.less(a, b) || Say.less(b, a);
  }
}
