package cornerpost.workbook;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The text of a native chart (ECMA-376, DrawingML charts): bars, columns and lines over cell
 * ranges, with the values of those cells beside, so that it shows before anything is recalculated.
 */
final class ChartXml {
  private static final int CATEGORY_AXIS = 111;
  private static final int VALUE_AXIS = 222;

  /** Names under columns that find room side by side; more of them are turned. */
  private static final int MOST_UPRIGHT = 15;

  /** A colour with its second sign: a pattern inside, or the kind of a line. */
  record Paint(String colour, String pattern, String dash) {
    static Paint solid(String colour) {
      return new Paint(colour, "", "");
    }

    static Paint hatched(String colour) {
      return new Paint(colour, "ltUpDiag", "");
    }

    static Paint crossed(String colour) {
      return new Paint(colour, "smGrid", "");
    }

    static Paint dotted(String colour) {
      return new Paint(colour, "pct25", "");
    }

    /** Nothing is drawn: room before what is. */
    static Paint none() {
      return new Paint("", "", "");
    }

    boolean isNone() {
      return colour.isEmpty();
    }

    static Paint line(String colour, String dash) {
      return new Paint(colour, "", dash);
    }
  }

  /**
   * One row of numbers.
   *
   * @param labels reference of the cells that name them, such as {@code Summary!$A$30:$A$39}
   */
  record Series(
      String name,
      String labels,
      List<String> labelTexts,
      String values,
      List<Double> numbers,
      Paint paint) {}

  private final String title;
  private final String valueTitle;
  private final String format;
  private final List<Series> bars = new ArrayList<>();
  private final List<Series> lines = new ArrayList<>();
  private boolean sideways;
  private boolean stacked;
  private boolean labelled;
  private Optional<Double> least = Optional.empty();

  /**
   * @param valueTitle what the numbers are, with their unit
   * @param format number format of the axis
   */
  ChartXml(String title, String valueTitle, String format) {
    this.title = title;
    this.valueTitle = valueTitle;
    this.format = format;
  }

  ChartXml sideways() {
    sideways = true;
    return this;
  }

  ChartXml stacked() {
    stacked = true;
    return this;
  }

  /** Where the axis of numbers begins. */
  ChartXml from(double number) {
    least = Optional.of(number);
    return this;
  }

  ChartXml labelled() {
    labelled = true;
    return this;
  }

  ChartXml bar(Series series) {
    bars.add(series);
    return this;
  }

  ChartXml line(Series series) {
    lines.add(series);
    return this;
  }

  String text() {
    var x = new StringBuilder("<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n");
    x.append("<c:chartSpace xmlns:c=\"http://schemas.openxmlformats.org/drawingml/2006/chart\"");
    x.append(" xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\"");
    x.append(" xmlns:r=\"http://schemas.openxmlformats.org/officeDocument/2006/relationships\">");
    x.append("<c:roundedCorners val=\"0\"/><c:chart>");
    title(x, title, 1200, true);
    x.append("<c:autoTitleDeleted val=\"0\"/><c:plotArea><c:layout/>");
    if (!bars.isEmpty()) bars(x);
    if (!lines.isEmpty()) lines(x);
    axes(x);
    x.append("</c:plotArea>");
    if (bars.size() + lines.size() > 1) {
      x.append("<c:legend><c:legendPos val=\"b\"/>");
      x.append("<c:overlay val=\"0\"/></c:legend>");
    }
    x.append("<c:plotVisOnly val=\"0\"/><c:dispBlanksAs val=\"gap\"/></c:chart>");
    x.append(
        "<c:spPr><a:solidFill><a:srgbClr val=\"FFFFFF\"/></a:solidFill><a:ln><a:noFill/></a:ln></c:spPr>");
    x.append("<c:txPr><a:bodyPr/><a:lstStyle/><a:p><a:pPr><a:defRPr sz=\"900\">");
    x.append("<a:solidFill><a:srgbClr val=\"").append(SheetStyle.INK).append("\"/></a:solidFill>");
    x.append("</a:defRPr></a:pPr><a:endParaRPr lang=\"en-GB\"/></a:p></c:txPr>");
    return x.append("</c:chartSpace>").toString();
  }

  private void bars(StringBuilder x) {
    x.append("<c:barChart><c:barDir val=\"").append(sideways ? "bar" : "col").append("\"/>");
    x.append("<c:grouping val=\"").append(stacked ? "stacked" : "clustered").append("\"/>");
    x.append("<c:varyColors val=\"0\"/>");
    for (int i = 0; i < bars.size(); i++) series(x, bars.get(i), i, true);
    x.append("<c:gapWidth val=\"50\"/>");
    if (stacked) x.append("<c:overlap val=\"100\"/>");
    x.append(axisIds()).append("</c:barChart>");
  }

  private void lines(StringBuilder x) {
    x.append("<c:lineChart><c:grouping val=\"standard\"/><c:varyColors val=\"0\"/>");
    for (int i = 0; i < lines.size(); i++) series(x, lines.get(i), bars.size() + i, false);
    x.append("<c:marker val=\"1\"/>").append(axisIds()).append("</c:lineChart>");
  }

  private int categories() {
    return Stream.concat(bars.stream(), lines.stream())
        .mapToInt(s -> s.labelTexts.size())
        .max()
        .orElse(0);
  }

  private static String axisIds() {
    return "<c:axId val=\"" + CATEGORY_AXIS + "\"/><c:axId val=\"" + VALUE_AXIS + "\"/>";
  }

  private void series(StringBuilder x, Series s, int index, boolean bar) {
    x.append("<c:ser><c:idx val=\"").append(index).append("\"/><c:order val=\"").append(index);
    x.append("\"/><c:tx><c:v>").append(escaped(s.name)).append("</c:v></c:tx><c:spPr>");
    if (bar && s.paint.isNone()) {
      x.append("<a:noFill/><a:ln><a:noFill/></a:ln>");
    } else if (bar) {
      fill(x, s.paint);
      x.append("<a:ln w=\"6350\"><a:solidFill><a:srgbClr val=\"").append(s.paint.colour);
      x.append("\"/></a:solidFill></a:ln>");
    } else {
      x.append("<a:ln w=\"28575\" cap=\"rnd\"><a:solidFill><a:srgbClr val=\"");
      x.append(s.paint.colour).append("\"/></a:solidFill>");
      if (!s.paint.dash.isEmpty()) {
        x.append("<a:prstDash val=\"").append(s.paint.dash).append("\"/>");
      }
      x.append("<a:round/></a:ln>");
    }
    x.append("</c:spPr>");
    x.append(
        bar ? "<c:invertIfNegative val=\"0\"/>" : "<c:marker><c:symbol val=\"none\"/></c:marker>");
    if (bar && labelled) {
      x.append("<c:dLbls><c:numFmt formatCode=\"").append(escaped(format));
      x.append("\" sourceLinked=\"0\"/><c:spPr><a:noFill/><a:ln><a:noFill/></a:ln></c:spPr>");
      x.append("<c:showLegendKey val=\"0\"/><c:showVal val=\"1\"/><c:showCatName val=\"0\"/>");
      x.append("<c:showSerName val=\"0\"/><c:showPercent val=\"0\"/><c:showBubbleSize val=\"0\"/>");
      x.append("</c:dLbls>");
    }
    x.append("<c:cat><c:strRef><c:f>").append(escaped(s.labels)).append("</c:f><c:strCache>");
    x.append("<c:ptCount val=\"").append(s.labelTexts.size()).append("\"/>");
    for (int i = 0; i < s.labelTexts.size(); i++) {
      x.append("<c:pt idx=\"").append(i).append("\"><c:v>").append(escaped(s.labelTexts.get(i)));
      x.append("</c:v></c:pt>");
    }
    x.append("</c:strCache></c:strRef></c:cat><c:val><c:numRef><c:f>").append(escaped(s.values));
    x.append("</c:f><c:numCache><c:formatCode>General</c:formatCode><c:ptCount val=\"");
    x.append(s.numbers.size()).append("\"/>");
    for (int i = 0; i < s.numbers.size(); i++) {
      x.append("<c:pt idx=\"").append(i).append("\"><c:v>").append(s.numbers.get(i));
      x.append("</c:v></c:pt>");
    }
    x.append("</c:numCache></c:numRef></c:val>");
    if (!bar) x.append("<c:smooth val=\"0\"/>");
    x.append("</c:ser>");
  }

  private static void fill(StringBuilder x, Paint p) {
    if (p.pattern.isEmpty()) {
      x.append("<a:solidFill><a:srgbClr val=\"").append(p.colour).append("\"/></a:solidFill>");
      return;
    }
    x.append("<a:pattFill prst=\"").append(p.pattern).append("\"><a:fgClr><a:srgbClr val=\"");
    x.append(p.colour).append("\"/></a:fgClr><a:bgClr><a:srgbClr val=\"FFFFFF\"/></a:bgClr>");
    x.append("</a:pattFill>");
  }

  private void axes(StringBuilder x) {
    var rule =
        "<c:spPr><a:ln w=\"6350\"><a:solidFill><a:srgbClr val=\"%s\"/></a:solidFill></a:ln></c:spPr>";
    x.append("<c:catAx><c:axId val=\"").append(CATEGORY_AXIS).append("\"/><c:scaling>");
    x.append("<c:orientation val=\"").append(sideways ? "maxMin" : "minMax");
    x.append("\"/></c:scaling><c:delete val=\"0\"/><c:axPos val=\"").append(sideways ? "l" : "b");
    x.append("\"/><c:majorTickMark val=\"none\"/><c:minorTickMark val=\"none\"/>");
    x.append("<c:tickLblPos val=\"low\"/>").append(rule.formatted(SheetStyle.DONE));
    if (!sideways && categories() > MOST_UPRIGHT) {
      x.append("<c:txPr><a:bodyPr rot=\"-5400000\" vert=\"horz\"/><a:lstStyle/><a:p><a:pPr>");
      x.append("<a:defRPr sz=\"800\"/></a:pPr><a:endParaRPr lang=\"en-GB\"/></a:p></c:txPr>");
    }
    x.append("<c:crossAx val=\"").append(VALUE_AXIS).append("\"/><c:crosses val=\"autoZero\"/>");
    x.append("<c:auto val=\"0\"/><c:lblAlgn val=\"ctr\"/><c:lblOffset val=\"100\"/>");
    x.append("<c:noMultiLvlLbl val=\"1\"/></c:catAx>");
    x.append("<c:valAx><c:axId val=\"").append(VALUE_AXIS).append("\"/><c:scaling>");
    x.append("<c:orientation val=\"minMax\"/>");
    least.ifPresent(n -> x.append("<c:min val=\"").append(n).append("\"/>"));
    x.append("</c:scaling><c:delete val=\"0\"/><c:axPos val=\"");
    x.append(sideways ? "b" : "l").append("\"/><c:majorGridlines>");
    x.append(rule.formatted(SheetStyle.RULE)).append("</c:majorGridlines>");
    title(x, valueTitle, 900, false);
    x.append("<c:numFmt formatCode=\"").append(escaped(format)).append("\" sourceLinked=\"0\"/>");
    x.append("<c:majorTickMark val=\"none\"/><c:minorTickMark val=\"none\"/>");
    x.append("<c:tickLblPos val=\"nextTo\"/>").append(rule.formatted(SheetStyle.RULE));
    x.append("<c:crossAx val=\"").append(CATEGORY_AXIS).append("\"/><c:crosses val=\"");
    x.append(sideways ? "max" : "autoZero")
        .append("\"/><c:crossBetween val=\"between\"/></c:valAx>");
  }

  private static void title(StringBuilder x, String text, int size, boolean bold) {
    x.append("<c:title><c:tx><c:rich><a:bodyPr/><a:lstStyle/><a:p><a:pPr><a:defRPr sz=\"");
    x.append(size).append("\" b=\"").append(bold ? 1 : 0).append("\"/></a:pPr><a:r><a:rPr lang=");
    x.append("\"en-GB\" sz=\"").append(size).append("\" b=\"").append(bold ? 1 : 0);
    x.append("\"/><a:t>").append(escaped(text)).append("</a:t></a:r></a:p></c:rich></c:tx>");
    x.append("<c:overlay val=\"0\"/></c:title>");
  }

  private static String escaped(String text) {
    return SheetPage.fitting(text)
        .replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
