package cornerpost.report;

import cornerpost.finance.Finance;
import cornerpost.plan.Plan;
import cornerpost.risk.Spread;
import java.math.BigDecimal;
import java.time.YearMonth;
import java.util.List;
import java.util.function.DoubleFunction;

/** Money over time, and the spread of outcomes, as lines. */
final class MoneyCharts {
  private static final double WIDTH = 900;
  private static final double HEIGHT = 320;
  private static final double LEFT = 84;
  private static final double BOTTOM = 34;
  private static final double TOP = 14;
  private static final double RIGHT = 16;

  private final Plan plan;

  MoneyCharts(Plan plan) {
    this.plan = plan;
  }

  /** Paid out, paid in by the lender and owed, month by month; empty without months. */
  String cash() {
    var months = plan.finance().months();
    if (months.isEmpty()) return "";
    double most = 1;
    for (var m : months) {
      most = Math.max(most, m.cumulativeOut().max(m.borrowed()).doubleValue());
    }
    double step = step(most);
    double top = Math.ceil(most / step) * step;
    var svg =
        Svg.picture(
            "cash",
            "0 0 " + Svg.number(WIDTH) + " " + Svg.number(HEIGHT),
            "chart",
            "--chart-width:" + Svg.number(WIDTH) + "px",
            "Money paid out and borrowed, month by month",
            "The same amounts stand in the table of months.");
    double bottom = HEIGHT - BOTTOM;
    for (double v = 0; v <= top + step / 2; v += step) {
      double y = bottom - v / top * (bottom - TOP);
      svg.line("grid", LEFT, y, WIDTH - RIGHT, y);
      svg.label("axis", LEFT - 8, y + 4, "end", Words.number(BigDecimal.valueOf(v), 0));
    }
    var first = months.get(0).month();
    int count = months.size();
    for (int i = 0; i < count; i++) {
      if (i % (1 + count / 12) == 0) {
        svg.label("axis", x(i, count), bottom + 18, "middle", name(first.plusMonths(i), i));
      }
    }
    line(svg, "money-out", months, Finance.CashMonth::cumulativeOut, top, bottom);
    if (months.stream().anyMatch(m -> m.borrowed().signum() > 0)) {
      line(svg, "money-borrowed", months, Finance.CashMonth::borrowed, top, bottom);
    }
    for (int i = 0; i < count; i++) {
      double drawn = months.get(i).drawn().doubleValue() / top * (bottom - TOP);
      if (drawn > 0) svg.rect("money-in", x(i, count) - 7, bottom - drawn, 14, drawn);
    }
    svg.line("axis-line", LEFT, bottom, WIDTH - RIGHT, bottom);
    return svg.done();
  }

  private static String name(YearMonth month, int i) {
    var words = Words.month(month);
    return i == 0 || month.getMonthValue() == 1 ? words : words.substring(0, 3);
  }

  private interface Amount {
    BigDecimal of(Finance.CashMonth month);
  }

  private static double x(int i, int count) {
    double room = WIDTH - LEFT - RIGHT - 24;
    return LEFT + 12 + (count == 1 ? room / 2 : room * i / (count - 1));
  }

  private void line(
      Svg svg,
      String cssClass,
      List<Finance.CashMonth> months,
      Amount amount,
      double top,
      double bottom) {
    var path = new StringBuilder();
    for (int i = 0; i < months.size(); i++) {
      double y = bottom - amount.of(months.get(i)).doubleValue() / top * (bottom - TOP);
      path.append(i == 0 ? "M" : " L")
          .append(Svg.number(x(i, months.size())))
          .append(' ')
          .append(Svg.number(y));
    }
    svg.add("path", "class", cssClass, "d", path);
  }

  /** 1, 2 or 5 times a power of ten, so that some five lines lie below {@code most}. */
  static double step(double most) {
    double raw = most / 5;
    double power = Math.pow(10, Math.floor(Math.log10(raw)));
    for (int f : new int[] {1, 2, 5}) if (raw <= f * power) return f * power;
    return 10 * power;
  }

  /** The share of trials that cost no more. */
  String costSpread() {
    return spread(
        "spread-cost",
        "How likely the cost stays below an amount",
        plan.risk().cost(),
        plan.estimate().total().doubleValue(),
        v -> Words.number(BigDecimal.valueOf(v), 0));
  }

  /** The share of trials that are done by then. */
  String finishSpread() {
    return spread(
        "spread-finish",
        "How likely the work is done by a day",
        plan.risk().finish(),
        Words.minutes(RiskWords.plannedFinish(plan)),
        v -> Words.dayOnly(Words.lastDay(Words.moment(v))));
  }

  private String spread(
      String id, String title, Spread s, double planned, DoubleFunction<String> shown) {
    double width = 430;
    double height = 250;
    double left = 46;
    double bottom = height - 34;
    double top = 22;
    double low = Math.min(s.quantile(0.01), planned);
    double high = Math.max(s.quantile(0.99), planned);
    double room = high > low ? high - low : 1;
    var svg =
        Svg.picture(
            id,
            "0 0 " + Svg.number(width) + " " + Svg.number(height),
            "chart small-chart",
            "--chart-width:" + Svg.number(width) + "px",
            title,
            "From "
                + shown.apply(s.quantile(0.1))
                + " in one of ten trials to "
                + shown.apply(s.quantile(0.9))
                + " in nine of ten; planned "
                + shown.apply(planned)
                + ".");
    for (int p = 0; p <= 100; p += 25) {
      double y = bottom - p / 100.0 * (bottom - top);
      svg.line("grid", left, y, width - 10, y);
      svg.label("axis", left - 6, y + 4, "end", p + " %");
    }
    var path = new StringBuilder();
    for (int p = 1; p <= 99; p++) {
      double x = left + (s.quantile(p / 100.0) - low) / room * (width - left - 10);
      double y = bottom - p / 100.0 * (bottom - top);
      path.append(p == 1 ? "M" : " L").append(Svg.number(x)).append(' ').append(Svg.number(y));
    }
    svg.add("path", "class", "spread", "d", path);
    double at = left + (planned - low) / room * (width - left - 10);
    svg.line("plan-line", at, top - 4, at, bottom);
    svg.label(
        "axis strong",
        Math.min(width - 60, Math.max(left + 30, at)),
        top - 9,
        "middle",
        "planned " + shown.apply(planned));
    svg.label("axis", left, bottom + 18, "start", shown.apply(low));
    svg.label("axis", width - 10, bottom + 18, "end", shown.apply(high));
    svg.line("axis-line", left, bottom, width - 10, bottom);
    return svg.done();
  }
}
