package cornerpost.check;

import static cornerpost.check.Check.Severity.NOTE;
import static cornerpost.check.Check.Severity.PROFESSIONAL;

import cornerpost.check.Check.Topic;
import cornerpost.measure.Dimension;
import cornerpost.scope.Box;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.FrameSection;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.Wall;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** How much of each wall is cut away, and what steel stays between openings and at the corners. */
final class SteelCutAway implements CheckRule {
  private static final String ENGINEER = ": needs an engineer";

  @Override
  public List<Check> look(CheckInput in) {
    var found = new ArrayList<Check>();
    for (var box : in.scope().boxes()) {
      for (var wall : List.of(Wall.LEFT, Wall.RIGHT)) {
        found.add(share(in, box, wall));
        remaining(in, box, wall, found);
      }
      for (var o : in.scope().openingsOf(box)) single(in, box, o, found);
    }
    return found;
  }

  private static List<Opening> cutsIn(CheckInput in, Box box, Wall wall) {
    return in.scope().openingsIn(box, wall).stream()
        .filter(o -> o.kind() != OpeningKind.SLEEVE)
        .sorted(Comparator.comparing((Opening o) -> o.offset().value()))
        .toList();
  }

  private static Check share(CheckInput in, Box box, Wall wall) {
    var length = box.fact(in.facts(), "length");
    var widths = cutsIn(in, box, wall).stream().map(Opening::width).toList();
    var cut = Figure.sum(Dimension.LENGTH, widths).over(length);
    var limit = in.limit("cut-share");
    boolean much = Say.less(limit, cut);
    var say = new Say(in);
    return new Check(
        "cut-share/" + box.id() + "/" + wall.label(),
        Topic.STEEL,
        much ? PROFESSIONAL : NOTE,
        "Box "
            + box.id()
            + ", "
            + wall.label()
            + ": "
            + Say.share(cut)
            + " of its "
            + say.length(length)
            + " is cut away ("
            + widths.size()
            + (widths.size() == 1 ? " opening" : " openings")
            + "); above "
            + Say.share(limit)
            + " an engineer should design the frames"
            + (much ? ENGINEER : "")
            + ". The sheet carries load: frames go in before it is cut out",
        in.source("cut-share"),
        List.of(box.row().cell(BoxQuestions.ID)),
        in.tasks("fit-frames", "cut-openings"));
  }

  private static void remaining(CheckInput in, Box box, Wall wall, List<Check> found) {
    var length = box.fact(in.facts(), "length");
    var cuts = cutsIn(in, box, wall);
    for (int i = 0; i < cuts.size(); i++) {
      corners(in, cuts.get(i), length, found);
      for (var later : cuts.subList(i + 1, cuts.size())) {
        if (none(cuts, cuts.get(i), later)) between(in, cuts.get(i), later, found);
      }
    }
  }

  private static void corners(CheckInput in, Opening o, Figure length, List<Check> found) {
    var say = new Say(in);
    for (var left : List.of(o.offset(), length.minus(end(o)))) {
      if (!Say.less(left, in.limit("corner-steel"))) continue;
      found.add(
          steel(
              in,
              o,
              "corner",
              "Opening "
                  + o.id()
                  + " leaves "
                  + say.length(left)
                  + " of sheet beside a corner post; at least "
                  + say.length(in.limit("corner-steel"))
                  + " is usual",
              "corner-steel"));
    }
  }

  private static Figure end(Opening o) {
    return o.offset().plus(o.width());
  }

  /** Whether no third opening lies wholly between the two along the wall. */
  private static boolean none(List<Opening> cuts, Opening a, Opening b) {
    return cuts.stream()
        .filter(o -> o != a && o != b)
        .noneMatch(o -> !Say.less(o.offset(), end(a)) && !Say.less(b.offset(), end(o)));
  }

  /**
   * The sheet between two openings is measured in the direction in which they are further apart,
   * along the wall or up it: one that stands above the other has sheet above it and none beside.
   */
  private static void between(CheckInput in, Opening a, Opening b, List<Check> found) {
    var sideways = b.offset().minus(end(a));
    var lower = Say.less(b.sill(), a.sill()) ? b : a;
    var upper = lower == a ? b : a;
    var upwards = upper.sill().minus(lower.sill().plus(lower.height()));
    boolean beside = !Say.less(sideways, upwards);
    var apart = (beside ? sideways : upwards).atLeastZero();
    if (!Say.less(apart, in.limit("pier-steel"))) return;
    var say = new Say(in);
    found.add(
        steel(
            in,
            a,
            "between/" + b.id(),
            (beside
                    ? "Openings " + a.id() + " and " + b.id() + " leave "
                    : "Opening " + upper.id() + " above opening " + lower.id() + " leaves ")
                + say.length(apart)
                + " of sheet between them, measured "
                + (beside ? "along the wall" : "up the wall")
                + "; at least "
                + say.length(in.limit("pier-steel"))
                + " is usual",
            "pier-steel"));
  }

  private static Check steel(CheckInput in, Opening o, String what, String text, String limit) {
    return new Check(
        "steel-left/" + o.id() + "/" + what,
        Topic.STEEL,
        PROFESSIONAL,
        text + ENGINEER,
        in.source(limit),
        List.of(o.row().cell(OpeningQuestions.OFFSET)),
        in.tasks("cut-openings"));
  }

  private static void single(CheckInput in, Box box, Opening o, List<Check> found) {
    var say = new Say(in);
    if (o.wall() == Wall.ROOF) {
      found.add(
          steel(
              in,
              o,
              "roof",
              "Opening "
                  + o.id()
                  + " cuts the roof, which braces the box and was tested for 300 kg on 600 x 300 mm"
                  + " (660 lb on 24 x 12 in) only",
              "rail-depth"));
      return;
    }
    if (Say.less(in.limit("opening-width"), o.width()) && o.kind() != OpeningKind.PASS_THROUGH) {
      found.add(
          steel(
              in,
              o,
              "wide",
              "Opening "
                  + o.id()
                  + " is "
                  + say.length(o.width())
                  + " wide; above "
                  + say.length(in.limit("opening-width"))
                  + " the frame needs designing",
              "opening-width"));
    }
    var top = o.sill().plus(o.height());
    var under = box.fact(in.facts(), "inside-height");
    if (Say.less(under, top)) {
      found.add(
          steel(
              in,
              o,
              "rail",
              "Opening "
                  + o.id()
                  + " reaches "
                  + say.small(top)
                  + " above the floor and cuts into the top rail ("
                  + say.small(under)
                  + " clear): rails and posts must stay whole",
              "rail-depth"));
    }
    boolean bare =
        o.frame() == FrameSection.NO_FRAME
            && o.kind() != OpeningKind.SLEEVE
            && o.kind() != OpeningKind.VENT;
    if (bare) {
      found.add(
          steel(
              in,
              o,
              "frame",
              "Opening " + o.id() + " has no steel frame; every opening gets a full one",
              "cut-share"));
    }
  }
}
