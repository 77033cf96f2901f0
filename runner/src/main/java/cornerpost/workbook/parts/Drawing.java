package cornerpost.workbook.parts;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;

/**
 * What lies on top of a sheet (DrawingML, ISO/IEC 29500 part 1, 20.5). A chart of an earlier run is
 * found by its name and given its new content, so that charts never pile up.
 */
final class Drawing {
  private static final String SHEET_DRAWING =
      "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing";
  private static final String DRAWING = "http://schemas.openxmlformats.org/drawingml/2006/main";
  private static final String CHART = "http://schemas.openxmlformats.org/drawingml/2006/chart";
  private static final String DRAWING_TYPE =
      "application/vnd.openxmlformats-officedocument.drawing+xml";
  private static final String CHART_TYPE =
      "application/vnd.openxmlformats-officedocument.drawingml.chart+xml";

  private final String part;
  private final Element root;
  private final Links links;

  private Drawing(String part, Element root, Links links) {
    this.part = part;
    this.root = root;
    this.links = links;
  }

  /** The drawing of a sheet, made where it has none. */
  static Drawing on(SheetFrame frame, Links sheetLinks, Parts parts, ContentTypes types) {
    var there = frame.drawing().flatMap(sheetLinks::byId).map(Links.Link::part);
    var part = there.orElseGet(() -> parts.free("xl/drawings/drawing", ".xml"));
    if (there.isEmpty()) {
      frame.drawing(sheetLinks.add("drawing", part));
      types.put(part, DRAWING_TYPE);
      var root =
          Element.of("wsDr")
              .prefixed("xdr")
              .set("xmlns:xdr", SHEET_DRAWING)
              .set("xmlns:a", DRAWING);
      parts.put(part, root.part());
    }
    return new Drawing(part, Element.read(parts.get(part)), Links.of(parts, part));
  }

  /**
   * Puts a chart on the sheet.
   *
   * @param cells first column and row, and those behind the last, counted from nothing
   */
  void chart(String name, List<Integer> cells, String content, Parts parts, ContentTypes types) {
    var there = find(name);
    var chart =
        there
            .flatMap(a -> a.inside("chart"))
            .map(Element::link)
            .flatMap(links::byId)
            .map(Links.Link::part);
    var target = chart.orElseGet(() -> parts.free("xl/charts/chart", ".xml"));
    parts.put(target, content.getBytes(StandardCharsets.UTF_8));
    types.put(target, CHART_TYPE);
    if (chart.isPresent()) {
      there.get().child("from").ifPresent(e -> corner(e, cells.get(0), cells.get(1)));
      there.get().child("to").ifPresent(e -> corner(e, cells.get(2), cells.get(3)));
    } else {
      add(name, cells, links.add("chart", target));
    }
  }

  private Optional<Element> find(String name) {
    return root.children().stream()
        .filter(a -> a.inside("graphicFrame").isPresent())
        .filter(a -> a.inside("cNvPr").filter(p -> p.get("name").equals(name)).isPresent())
        .findFirst();
  }

  private static void corner(Element corner, int column, int row) {
    corner.removeIf(e -> true);
    corner.add("col").text(String.valueOf(column));
    corner.add("colOff").text("0");
    corner.add("row").text(String.valueOf(row));
    corner.add("rowOff").text("0");
  }

  private void add(String name, List<Integer> cells, String link) {
    var anchor = root.add("twoCellAnchor").set("editAs", "twoCell");
    corner(anchor.add("from"), cells.get(0), cells.get(1));
    corner(anchor.add("to"), cells.get(2), cells.get(3));
    var frame = anchor.add("graphicFrame").set("macro", "");
    var about = frame.add("nvGraphicFramePr");
    about.add("cNvPr").set("id", root.children().size() + 1).set("name", name);
    about.add("cNvGraphicFramePr");
    var size = frame.add("xfrm");
    size.add(drawn("off").set("x", 0).set("y", 0));
    size.add(drawn("ext").set("cx", 0).set("cy", 0));
    var data = drawn("graphicData").set("uri", CHART);
    data.add(Element.of("chart").prefixed("c").set("xmlns:c", CHART).link(link));
    var graphic = drawn("graphic");
    graphic.add(data);
    frame.add(graphic);
    anchor.add("clientData");
  }

  private static Element drawn(String name) {
    return Element.of(name).prefixed("a").set("xmlns:a", DRAWING);
  }

  void save(Parts parts) {
    parts.put(part, root.part());
    links.save(parts);
  }
}
