package cornerpost.check;

import static cornerpost.check.Check.Severity.NOTE;
import static cornerpost.check.Check.Severity.PROFESSIONAL;

import cornerpost.check.Check.Topic;
import cornerpost.scope.Box;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.Joint;
import cornerpost.scope.Neighbours;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Outside doors above the ground with no deck before them, or one that is not deep enough; where
 * the owner has given the door a landing of its own, what that must be.
 */
final class DoorLandings implements CheckRule {
  @Override
  public List<Check> look(CheckInput in) {
    var found = new ArrayList<Check>();
    var neighbours = new Neighbours(in.scope().boxes());
    for (var box : in.scope().boxes()) {
      for (var o : in.scope().openingsOf(box)) {
        if (!RoomOpenings.door(o) || o.wall() == Wall.ROOF) continue;
        if (neighbours.before(box, o, in.facts())) continue; // it leads into the next box
        look(in, box, o).ifPresent(found::add);
      }
    }
    return found;
  }

  private static Optional<Check> look(CheckInput in, Box box, Opening o) {
    var say = new Say(in);
    boolean upstairs = box.joint() == Joint.STACKED;
    var drop = in.scope().site().figure(SiteQuestions.FLOOR_HEIGHT).plus(o.sill());
    if (!upstairs && !Say.less(in.limit("landing-drop"), drop)) return Optional.empty();
    var lacking = lacking(in, box, o);
    if (lacking.isEmpty()) return Optional.empty();
    if (o.landing().isPresent()) return Optional.of(own(in, o, o.landing().get()));
    return Optional.of(
        new Check(
            "landing/" + o.id(),
            Topic.ROOMS,
            PROFESSIONAL,
            "Door "
                + o.id()
                + (upstairs
                    ? " opens above another box"
                    : " opens " + say.length(drop) + " above the ground")
                + lacking.get()
                + ". A landing at least "
                + say.length(in.limit("landing-depth"))
                + " deep and as wide as the door is asked for outside every outside door, with"
                + " steps down from it: a deck there, or a landing as a row of sheet Own items, with"
                + " its Id in column "
                + OpeningQuestions.LANDING.label()
                + " of the door; local codes decide",
            in.source("landing-depth"),
            List.of(
                o.row().cell(OpeningQuestions.OFFSET),
                in.scope().deckAndRoof().cell(DeckAndRoofQuestions.DECK)),
            in.tasks("set-doors", "deck-frame")));
  }

  /** What a landing of the owner's must be: its row holds money and no sizes. */
  private static Check own(CheckInput in, Opening o, String item) {
    return new Check(
        "landing/" + o.id(),
        Topic.ROOMS,
        NOTE,
        "Door "
            + o.id()
            + " opens onto its own landing, "
            + item
            + " of sheet Own items: at least "
            + new Say(in).length(in.limit("landing-depth"))
            + " deep and as wide as the door, with steps down from it and a guard where the drop asks"
            + " for one; local codes decide",
        in.source("landing-depth"),
        List.of(o.row().cell(OpeningQuestions.LANDING)),
        in.tasks("set-doors"));
  }

  /** What is wrong before the door; empty where the deck serves it whole. */
  private static Optional<String> lacking(CheckInput in, Box box, Opening o) {
    var deck = in.scope().deckAndRoof();
    var say = new Say(in);
    var at = deck.findText(DeckAndRoofQuestions.DECK_BOX);
    var deckBox = at.orElseGet(() -> in.scope().boxes().get(0).id());
    if (!deck.yes(DeckAndRoofQuestions.DECK)) {
      return Optional.of(", and the plan has no deck or landing before it");
    }
    boolean beside =
        deckBox.equals(box.id())
            && deck.option(DeckAndRoofQuestions.DECK_SIDE, Wall.class) == o.wall();
    if (!beside) return Optional.of(", on a side where the plan has no deck or landing");
    var length = deck.figure(DeckAndRoofQuestions.DECK_LENGTH);
    var end = o.offset().plus(o.width());
    // like the drawing: a deck begins at the corner from which offsets are measured
    if (Say.less(length, end)) {
      return Optional.of(
          ", and its far edge lies "
              + say.length(end.minus(length))
              + " beyond the end of the deck (drawn from the corner that offsets are measured from)");
    }
    var depth = deck.figure(DeckAndRoofQuestions.DECK_DEPTH);
    if (Say.less(depth, in.limit("landing-depth"))) {
      return Optional.of(", and the deck before it is only " + say.length(depth) + " deep");
    }
    return Optional.empty();
  }
}
