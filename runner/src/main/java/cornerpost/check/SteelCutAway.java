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
import cornerpost.scope.WallCuts;
import cornerpost.scope.WallCuts.Cut;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How much of each wall is cut away, and what steel stays between openings and at the corners. A
 * passage counts in the walls of both boxes.
 */
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

  private static List<Cut> cutsIn(CheckInput in, Box box, Wall wall) {
    return new WallCuts(in.scope(), in.facts())
        .in(box, wall).stream()
            .filter(c -> c.opening().kind() != OpeningKind.SLEEVE)
            .sorted(Comparator.comparing((Cut c) -> c.offset().value()))
            .toList();
  }

  private static Check share(CheckInput in, Box box, Wall wall) {
    var length = box.fact(in.facts(), "length");
    var widths = cutsIn(in, box, wall).stream().map(c -> c.opening().width()).toList();
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
      corners(in, box, cuts.get(i), length, found);
      for (var later : cuts.subList(i + 1, cuts.size())) {
        if (saidElsewhere(box, cuts.get(i), later)) continue;
        if (none(cuts, cuts.get(i), later)) between(in, box, cuts.get(i), later, found);
      }
    }
  }

  private static void corners(CheckInput in, Box box, Cut cut, Figure length, List<Check> found) {
    var say = new Say(in);
    var o = cut.opening();
    for (var left : List.of(cut.offset(), length.minus(cut.end()))) {
      if (!Say.less(left, in.limit("corner-steel"))) continue;
      found.add(
          steel(
              in,
              o,
              "corner" + of(o, box),
              "Opening "
                  + o.id()
                  + through(o, box)
                  + " leaves "
                  + say.length(left)
                  + " of sheet beside a corner post; at least "
                  + say.length(in.limit("corner-steel"))
                  + " is usual",
              "corner-steel"));
    }
  }

  /** Which wall is meant where a passage goes through the steel of two boxes. */
  private static String through(Opening o, Box box) {
    return o.box().equals(box.id()) ? "" : " in box " + box.id();
  }

  private static String of(Opening o, Box box) {
    return o.box().equals(box.id()) ? "" : "/" + box.id();
  }

  /** Two passages out of the same other box leave as much sheet there as here. */
  private static boolean saidElsewhere(Box box, Cut a, Cut b) {
    return !a.opening().box().equals(box.id()) && a.opening().box().equals(b.opening().box());
  }

  /** Whether no third opening lies wholly between the two along the wall. */
  private static boolean none(List<Cut> cuts, Cut a, Cut b) {
    return cuts.stream()
        .filter(o -> o != a && o != b)
        .noneMatch(o -> !Say.less(o.offset(), a.end()) && !Say.less(b.offset(), o.end()));
  }

  /**
   * The sheet between two openings is measured in the direction in which they are further apart,
   * along the wall or up it: one that stands above the other has sheet above it and none beside.
   */
  private static void between(CheckInput in, Box box, Cut first, Cut next, List<Check> found) {
    var sideways = next.offset().minus(first.end());
    var a = first.opening();
    var b = next.opening();
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
            "between/" + b.id() + of(a.box().equals(box.id()) ? b : a, box),
            (beside
                    ? "Openings " + a.id() + " and " + b.id() + " leave "
                    : "Opening " + upper.id() + " above opening " + lower.id() + " leaves ")
                + say.length(apart)
                + " of sheet between them"
                + (a.box().equals(b.box()) ? "" : " in box " + box.id())
                + ", measured "
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
