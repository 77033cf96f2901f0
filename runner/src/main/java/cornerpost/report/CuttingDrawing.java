package cornerpost.report;

import cornerpost.measure.UnitSystem;
import cornerpost.plan.CuttingPlan;
import cornerpost.plan.Plan;
import java.util.ArrayList;
import java.util.List;

/** The cutting plan of one item: its figures, and bars to scale with the mark of each piece. */
final class CuttingDrawing {
  /**
   * One item.
   *
   * @param cuts mark, length and number of each piece, and what it is for
   */
  public record Shown(
      String name, String figures, boolean billIsShort, List<Cut> cuts, List<Object> bars) {}

  /** A piece in words. */
  public record Cut(String mark, String length, int count, String what) {}

  private static final double WIDTH = 700;
  private static final double LEFT = 44;
  private static final double BAR = 16;
  private static final double ROW = 22;

  /** Bars cut alike in one picture: more would not stay on a page when printed. */
  private static final int MOST_ROWS = 30;

  private CuttingDrawing() {}

  static Shown of(CuttingPlan plan, Plan whole) {
    var units = whole.scope().units();
    var figures =
        plan.bars()
            + (plan.bars() == 1 ? " bar of " : " bars of ")
            + Words.length(plan.stock(), units)
            + "; no plan can do with fewer than "
            + plan.leastBars()
            + ". Loss "
            + Words.percent(plan.loss())
            + ": ends of "
            + Words.length(plan.left(), units)
            + ", saw cuts of "
            + Words.length(plan.sawn(), units)
            + ". The bill buys "
            + Words.number(plan.bought())
            + (plan.billIsShort() ? ", too few for this plan." : ".");
    var cuts =
        plan.cuts().stream()
            .map(c -> new Cut(c.mark(), Words.length(c.length(), units), c.count(), c.what()))
            .toList();
    var pictures = new ArrayList<Object>();
    for (int from = 0; from < plan.patterns().size(); from += MOST_ROWS) {
      var to = Math.min(plan.patterns().size(), from + MOST_ROWS);
      pictures.add(PageModel.markup(picture(plan, plan.patterns().subList(from, to), from, units)));
    }
    return new Shown(plan.description(), figures, plan.billIsShort(), cuts, pictures);
  }

  private static String picture(
      CuttingPlan plan, List<CuttingPlan.Pattern> patterns, int from, UnitSystem units) {
    double height = patterns.size() * ROW + 4;
    var svg =
        Svg.picture(
            Anchors.cutting(plan.item(), from),
            "0 0 " + (int) WIDTH + " " + (int) height,
            "cutting",
            "width:100%;max-width:" + (int) WIDTH + "px",
            "Cutting plan: " + plan.description(),
            "Bars to scale, each " + Words.length(plan.stock(), units) + " long");
    double y = 2;
    for (var p : patterns) {
      svg.label("cut-times", LEFT - 6, y + 12, "end", p.bars() + " \u00d7");
      bar(svg, plan, p, y);
      y += ROW;
    }
    return svg.done();
  }

  private static void bar(Svg svg, CuttingPlan plan, CuttingPlan.Pattern p, double y) {
    double scale = (WIDTH - LEFT - 2) / plan.stock().doubleValue();
    svg.rect("cut-bar", LEFT, y, plan.stock().doubleValue() * scale, BAR);
    double at = 0;
    for (var part : p.parts()) {
      for (int k = 0; k < part.count(); k++) {
        double x = LEFT + at * scale;
        double width = part.length().doubleValue() * scale;
        svg.rect("cut-piece", x, y, width, BAR);
        if (width > 7.0 * part.mark().length() + 2) {
          svg.label("cut-mark", x + width / 2, y + 12, "middle", part.mark());
        }
        at += part.length().add(plan.kerf()).doubleValue();
      }
    }
  }
}
