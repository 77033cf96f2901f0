package cornerpost.workbook;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.scope.Box;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.Neighbours;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.Scope;
import cornerpost.scope.Wall;
import cornerpost.trace.Figure;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether each opening fits its wall. Walls are measured outside along, and from the container
 * floor to the inside of the roof upwards; in a roof, width runs along the box, and sill height and
 * height across it from the left.
 */
final class OpeningChecks {
  /** A tenth of a millimetre: less than anyone cuts, more than inches lose in conversion. */
  private static final BigDecimal SLACK_M = new BigDecimal("0.0001");

  private final Scope scope;
  private final Facts facts;
  private final FaultLog faults;
  private final TapeWords tape;

  OpeningChecks(Scope scope, Facts facts, FaultLog faults) {
    this.scope = scope;
    this.facts = facts;
    this.faults = faults;
    this.tape = new TapeWords(scope.units());
  }

  void run() {
    var before = new ArrayList<Opening>();
    for (var opening : scope.openings()) {
      if (!isComplete(opening)) continue;
      var box =
          scope.boxes().stream()
              .filter(b -> b.row().has(BoxQuestions.ID) && b.id().equals(opening.box()))
              .findFirst();
      if (box.isEmpty()) continue; // reported as an unknown name
      fits(opening, box.get());
      passage(opening, box.get());
      landing(opening);
      overlap(opening, before);
      before.add(opening);
    }
    for (var opening : before) {
      leadsInto(opening);
      comesOutAt(opening, before);
    }
  }

  private static boolean isComplete(Opening opening) {
    return List.of(
            OpeningQuestions.ID,
            OpeningQuestions.BOX,
            OpeningQuestions.WALL,
            OpeningQuestions.KIND,
            OpeningQuestions.WIDTH,
            OpeningQuestions.HEIGHT,
            OpeningQuestions.SILL,
            OpeningQuestions.OFFSET)
        .stream()
        .allMatch(opening.row()::has);
  }

  private void landing(Opening o) {
    if (o.landing().isEmpty() || o.kind().isDoor()) return;
    faults.faultAt(
        o.row().cell(OpeningQuestions.LANDING),
        "a landing for opening '" + o.id() + "', a " + o.kind().label(),
        "expected one for outside doors only");
  }

  private Optional<BigDecimal> run(Box box, Wall wall) {
    return BoxChecks.metres(
        box,
        switch (wall) {
          case LEFT, RIGHT, ROOF -> "length";
          case DOOR_END, BLIND_END -> "width";
        },
        facts);
  }

  private Optional<BigDecimal> rise(Box box, Wall wall) {
    return BoxChecks.metres(box, wall == Wall.ROOF ? "width" : "inside-height", facts);
  }

  private static boolean over(BigDecimal value, BigDecimal limit) {
    return value.compareTo(limit.add(SLACK_M)) > 0;
  }

  private void fits(Opening o, Box box) {
    var row = o.row();
    var wall = "the " + o.wall().label() + " of box '" + box.id() + "'";
    var width = o.width().in(Unit.M);
    var end = width.add(o.offset().in(Unit.M));
    run(box, o.wall())
        .ifPresent(
            run -> {
              if (over(width, run)) {
                faults.faultAt(
                    row.cell(OpeningQuestions.WIDTH),
                    "opening '" + o.id() + "' is " + tape.foundSmall(width) + " wide",
                    "expected at most " + tape.atMostSmall(run) + ", the length of " + wall);
              } else if (over(end, run)) {
                faults.faultAt(
                    row.cell(OpeningQuestions.OFFSET),
                    "opening '" + o.id() + "' ends at " + tape.foundLarge(end),
                    "expected it to end by " + tape.atMostLarge(run) + ", the length of " + wall);
              }
            });
    var height = o.height().in(Unit.M);
    var head = o.wall() == Wall.ROOF ? height : height.add(o.sill().in(Unit.M));
    var reach = o.wall() == Wall.ROOF ? "the width of " : "the clear height at ";
    rise(box, o.wall())
        .ifPresent(
            rise -> {
              if (over(height, rise)) {
                faults.faultAt(
                    row.cell(OpeningQuestions.HEIGHT),
                    "opening '" + o.id() + "' is " + tape.foundSmall(height) + " high",
                    "expected at most " + tape.atMostSmall(rise) + ", " + reach + wall);
              } else if (over(head, rise)) {
                faults.faultAt(
                    row.cell(OpeningQuestions.SILL),
                    "opening '" + o.id() + "' reaches up to " + tape.foundSmall(head),
                    "expected at most " + tape.atMostSmall(rise) + ", " + reach + wall);
              }
            });
  }

  /** A passage leads into another box, so its own must be joined to one. */
  private void passage(Opening o, Box box) {
    if (o.kind() != OpeningKind.PASS_THROUGH) return;
    boolean joined =
        box.joinedTo().isPresent()
            || scope.boxes().stream()
                .anyMatch(b -> b.joinedTo().filter(box.id()::equals).isPresent());
    if (!joined) {
      faults.faultAt(
          o.row().cell(OpeningQuestions.KIND),
          "'" + o.kind().label() + "' in box '" + box.id() + "', which is joined to none",
          "expected another kind, or a joint on sheet Containers");
    }
  }

  private void overlap(Opening o, List<Opening> before) {
    before.stream()
        .filter(b -> b.box().equals(o.box()) && b.wall() == o.wall())
        .filter(b -> crosses(b.offset(), b.width(), o.offset(), o.width()))
        .filter(b -> o.wall() == Wall.ROOF || crosses(b.sill(), b.height(), o.sill(), o.height()))
        .findFirst()
        .ifPresent(
            b ->
                faults.faultAt(
                    o.row().cell(OpeningQuestions.OFFSET),
                    "opening '" + o.id() + "' lies over opening '" + b.id() + "'",
                    "expected openings of one wall beside each other; '"
                        + b.id()
                        + "' takes "
                        + tape.large(b.offset().in(Unit.M))
                        + " to "
                        + tape.large(b.offset().plus(b.width()).in(Unit.M))));
  }

  /**
   * A passage goes through the facing wall of the next box where that stands, and nothing else may
   * be; one entered in both boxes is reported at the later row.
   */
  private void comesOutAt(Opening passage, List<Opening> all) {
    if (passage.kind() != OpeningKind.PASS_THROUGH || passage.wall() == Wall.ROOF) return;
    var from = box(passage);
    if (from.isEmpty()) return;
    var next = new Neighbours(whole().toList()).behind(from.get(), passage.wall());
    for (var other : all) {
      boolean later = all.indexOf(other) > all.indexOf(passage);
      if (other.wall() != passage.wall().facing()) continue;
      if (other.kind() == OpeningKind.PASS_THROUGH && later) continue;
      var to = box(other).filter(next::contains);
      var start = to.flatMap(b -> startFrom(passage.wall(), other, from.get(), b));
      if (start.isEmpty()
          || !crosses(start.get(), other.width(), passage.offset(), passage.width())
          || !crosses(other.sill(), other.height(), passage.sill(), passage.height())) {
        continue;
      }
      faults.faultAt(
          passage.row().cell(OpeningQuestions.OFFSET),
          "passage '%s' comes out at opening '%s' of box '%s'"
              .formatted(passage.id(), other.id(), other.box()),
          "expected a passage, entered once, with nothing facing it; there '"
              + other.id()
              + "' takes "
              + tape.large(start.get().in(Unit.M))
              + " to "
              + tape.large(start.get().plus(other.width()).in(Unit.M)));
      return;
    }
  }

  /** The box an opening is in, if it says enough of how it is joined. */
  private Optional<Box> box(Opening opening) {
    return whole().filter(b -> b.id().equals(opening.box())).findFirst();
  }

  private Stream<Box> whole() {
    return scope.boxes().stream()
        .filter(b -> b.row().has(BoxQuestions.ID) && b.row().has(BoxQuestions.JOINT));
  }

  private static boolean straight(Box box) {
    var row = box.row();
    return row.has(BoxQuestions.ALONG)
        && row.has(BoxQuestions.ROTATION)
        && box.rotation().value().signum() == 0;
  }

  /**
   * A passage in a long side of which no box stands behind the whole: it would lead, in part, into
   * the open.
   */
  private void leadsInto(Opening passage) {
    boolean side = passage.wall() == Wall.LEFT || passage.wall() == Wall.RIGHT;
    if (passage.kind() != OpeningKind.PASS_THROUGH || !side) return;
    var from = box(passage);
    if (from.isEmpty() || !straight(from.get())) return;
    var next = new Neighbours(whole().toList()).behind(from.get(), passage.wall());
    if (next.isEmpty() || !next.stream().allMatch(OpeningChecks::straight)) return;
    var near = passage.offset().in(Unit.M);
    var far = near.add(passage.width().in(Unit.M));
    for (var b : next) {
      var length = BoxChecks.metres(b, "length", facts);
      if (length.isEmpty()) return;
      var begin = b.along().minus(from.get().along()).in(Unit.M);
      if (!over(begin, near) && !over(far, begin.add(length.get()))) return;
    }
    var b = next.get(0);
    var begin = b.along().minus(from.get().along()).in(Unit.M);
    faults.faultAt(
        passage.row().cell(OpeningQuestions.OFFSET),
        "passage '%s' takes %s to %s, not all of it before box '%s'"
            .formatted(passage.id(), tape.large(near), tape.large(far), b.id()),
        "expected it within the length of the next box, which stands from "
            + tape.large(begin)
            + " to "
            + tape.large(begin.add(BoxChecks.metres(b, "length", facts).orElseThrow()))
            + " along this one by the positions on sheet Containers");
  }

  /** Where it begins as the passage's offset counts: at ends that meet, from the other corner. */
  private Optional<Figure> startFrom(Wall passage, Opening other, Box from, Box box) {
    return switch (passage) {
      case LEFT, RIGHT ->
          Optional.of(
              straight(from) && straight(box)
                  ? other.offset().plus(box.along()).minus(from.along())
                  : other.offset());
      case ROOF -> Optional.of(other.offset());
      case DOOR_END, BLIND_END ->
          run(box, other.wall())
              .map(run -> Figure.constant(run.toPlainString(), Unit.M))
              .map(run -> run.minus(other.offset()).minus(other.width()));
    };
  }

  private static boolean crosses(Figure startA, Figure sizeA, Figure startB, Figure sizeB) {
    return over(startA.plus(sizeA).value(), startB.value())
        && over(startB.plus(sizeB).value(), startA.value());
  }
}
