package cornerpost.workbook;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.scope.Box;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.Footprint;
import cornerpost.scope.Joint;
import cornerpost.scope.RoomQuestions;
import cornerpost.scope.Scope;
import cornerpost.scope.Wall;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How boxes meet, and whether the rooms fit into them. */
final class BoxChecks {
  /** A builder measures rooms to the centimetre; twelve of them may be this far off together. */
  private static final BigDecimal ROOM_SLACK_M = new BigDecimal("0.01");

  /** Length in no room that is worth a word. */
  private static final BigDecimal LEFT_OVER_M = new BigDecimal("0.1");

  /** Boxes set out to the inch or with a joint between them may be this much into each other. */
  private static final double OVERLAP_MM = 100;

  private final Scope scope;
  private final Facts facts;
  private final FaultLog faults;
  private final TapeWords tape;

  BoxChecks(Scope scope, Facts facts, FaultLog faults) {
    this.scope = scope;
    this.facts = facts;
    this.faults = faults;
    this.tape = new TapeWords(scope.units());
  }

  void run() {
    var boxes = scope.boxes().stream().filter(b -> b.row().has(BoxQuestions.ID)).toList();
    for (var box : boxes) {
      if (box.row().has(BoxQuestions.JOINT)) joint(box, boxes);
      rooms(box);
    }
    places(boxes);
    deckSide();
  }

  /** Two boxes on the ground of which the one stands in the other; said at the later one. */
  private void places(List<Box> boxes) {
    for (int i = 0; i < boxes.size(); i++) {
      for (var other : boxes.subList(0, i)) {
        if (!placed(boxes.get(i)) || !placed(other) || !within(boxes.get(i), other)) continue;
        faults.remarkAt(
            boxes.get(i).row().cell(BoxQuestions.ALONG),
            "box '" + boxes.get(i).id() + "' stands where box '" + other.id() + "' stands",
            "expected a place of its own under Position along and Position across: drawings and"
                + " checks go by it"
                + beside(boxes.get(i), other));
        break;
      }
    }
  }

  private String beside(Box box, Box other) {
    boolean joined =
        box.row().has(BoxQuestions.JOINT)
            && box.joint() == Joint.SIDE_BY_SIDE
            && box.joinedTo().filter(other.id()::equals).isPresent();
    if (!joined) return "";
    return metres(other, "width", facts)
        .map(
            w ->
                "; on the right side of '"
                    + other.id()
                    + "' it lies "
                    + tape.large(w)
                    + " further across")
        .orElse("");
  }

  /** Whether its place on the plot is known, and it is on the ground. */
  private boolean placed(Box box) {
    var row = box.row();
    return row.has(BoxQuestions.ALONG)
        && row.has(BoxQuestions.ACROSS)
        && row.has(BoxQuestions.ROTATION)
        && row.has(BoxQuestions.JOINT)
        && box.joint() != Joint.STACKED
        && metres(box, "length", facts).isPresent()
        && metres(box, "width", facts).isPresent();
  }

  private boolean within(Box a, Box b) {
    return Footprint.of(a, facts).overlaps(Footprint.of(b, facts), OVERLAP_MM);
  }

  /** A dimension of a box, in metres; empty where the size or the fact is missing. */
  static Optional<BigDecimal> metres(Box box, String dimension, Facts facts) {
    if (!box.row().has(BoxQuestions.SIZE)) return Optional.empty();
    return facts.find(box.size().factId() + "." + dimension).map(f -> f.figure().in(Unit.M));
  }

  private void joint(Box box, List<Box> boxes) {
    var row = box.row();
    var partner = box.joinedTo();
    if (box.joint() == Joint.NONE) {
      partner.ifPresent(
          p ->
              faults.faultAt(
                  row.cell(BoxQuestions.JOINT),
                  "box '"
                      + box.id()
                      + "' is joined to '"
                      + p
                      + "', yet '"
                      + Joint.NONE.label()
                      + "'",
                  "expected how they meet, or an empty cell under Joined to"));
      return;
    }
    if (partner.isEmpty()) {
      faults.faultAt(
          row.cell(BoxQuestions.JOINT),
          "'" + box.joint().label() + "' with no box under Joined to",
          "expected the box that '" + box.id() + "' is joined to, or '" + Joint.NONE.label() + "'");
      return;
    }
    if (Plain.same(partner.get(), box.id())) {
      faults.faultAt(
          row.cell(BoxQuestions.JOINED_TO),
          "box '" + box.id() + "' is joined to itself",
          "expected another box, or an empty cell");
      return;
    }
    var other = boxes.stream().filter(b -> b.id().equals(partner.get())).findFirst();
    if (other.isEmpty()) return; // reported as an unknown name
    ring(box, boxes);
    if (row.has(BoxQuestions.JOINT_LENGTH)) jointLength(box, other.get());
  }

  /** Boxes joined in a ring, two or more, reported at the last of them. */
  private void ring(Box box, List<Box> boxes) {
    var met = new ArrayList<Box>(List.of(box));
    while (true) {
      var next = met.get(met.size() - 1).joinedTo();
      var at = boxes.stream().filter(b -> next.filter(b.id()::equals).isPresent()).findFirst();
      if (at.isEmpty()) return;
      if (at.get().equals(box)) break;
      if (met.contains(at.get())) return; // a ring further on, reported there
      met.add(at.get());
    }
    if (met.stream().anyMatch(b -> boxes.indexOf(b) > boxes.indexOf(box))) return;
    faults.faultAt(
        box.row().cell(BoxQuestions.JOINED_TO),
        "boxes joined in a ring: "
            + String.join(" to ", met.stream().map(Box::id).toList())
            + " to "
            + box.id(),
        "expected each joint once, on the row of the later box");
  }

  private void jointLength(Box box, Box other) {
    var length = box.jointLength().in(Unit.M);
    var cell = box.row().cell(BoxQuestions.JOINT_LENGTH);
    var expected = "expected the length over which the two boxes touch";
    if (length.signum() == 0) {
      faults.faultAt(cell, "a joint of no length", expected);
      return;
    }
    var along = box.joint() == Joint.END_TO_END ? "width" : "length";
    var most = metres(box, along, facts).flatMap(a -> metres(other, along, facts).map(a::min));
    if (most.filter(m -> length.compareTo(m.add(ROOM_SLACK_M)) > 0).isPresent()) {
      faults.faultAt(
          cell,
          "a joint of " + tape.foundLarge(length),
          expected + ", at most " + tape.atMostLarge(most.get()));
    }
  }

  private void rooms(Box box) {
    var rooms =
        scope.rooms().stream()
            .filter(r -> r.row().has(RoomQuestions.BOX) && r.row().has(RoomQuestions.LENGTH))
            .filter(r -> r.box().equals(box.id()))
            .toList();
    var inside = metres(box, "inside-length", facts);
    if (rooms.isEmpty()) {
      faults.remarkAt(
          box.row().cell(BoxQuestions.ID),
          "box '" + box.id() + "' has no room",
          "expected its rooms on sheet Rooms; without one it stays an empty shell");
    }
    if (rooms.isEmpty() || inside.isEmpty()) return;
    var used = BigDecimal.ZERO;
    for (var room : rooms) {
      used = used.add(room.length().in(Unit.M));
      if (used.compareTo(inside.get().add(ROOM_SLACK_M)) > 0) {
        faults.faultAt(
            room.row().cell(RoomQuestions.LENGTH),
            "the rooms of box '"
                + box.id()
                + "' up to this one are "
                + tape.foundLarge(used)
                + " long",
            "expected at most its inside length of " + tape.atMostLarge(inside.get()));
        return;
      }
    }
    var left = inside.get().subtract(used);
    if (left.compareTo(LEFT_OVER_M) > 0) {
      faults.remarkAt(
          rooms.get(rooms.size() - 1).row().cell(RoomQuestions.LENGTH),
          tape.large(left) + " of box '" + box.id() + "' is in no room",
          "expected rooms that add up to its inside length of " + tape.large(inside.get()));
    }
  }

  private void deckSide() {
    var deck = scope.deckAndRoof();
    if (deck.has(DeckAndRoofQuestions.DECK)
        && deck.has(DeckAndRoofQuestions.DECK_SIDE)
        && deck.yes(DeckAndRoofQuestions.DECK)
        && deck.option(DeckAndRoofQuestions.DECK_SIDE, Wall.class) == Wall.ROOF) {
      faults.faultAt(
          deck.cell(DeckAndRoofQuestions.DECK_SIDE),
          "a deck on the roof",
          "expected a side or an end of the box");
    }
  }
}
