package cornerpost.workbook.parts;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Changes to a workbook: sheets written whole, added or in the place of those of an earlier run.
 * Parts that no change concerns keep their bytes.
 */
public final class BookEdit {
  private static final String SHEET_TYPE =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml";
  private static final String STYLES_TYPE =
      "application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml";
  private static final List<String> BEHIND_NAMES =
      List.of(
          "calcPr",
          "oleSize",
          "customWorkbookViews",
          "pivotCaches",
          "smartTagPr",
          "smartTagTypes",
          "webPublishing",
          "fileRecoveryPr",
          "webPublishObjects",
          "extLst");

  private final StoredBook book;
  private final Parts parts;
  private final ContentTypes types;
  private final Links links;
  private final Element root;
  private final Styles styles;
  private final List<SheetEdit> edits = new ArrayList<>();

  /** Titles of sheets by the number that names of one sheet go by, before and after. */
  private final List<String> before = new ArrayList<>();

  /** New names of one sheet: the sheet's title, the name, what it stands for. */
  private record SheetName(String sheet, String name, String range, boolean hidden) {}

  private record Chart(String name, List<Integer> cells, String content) {}

  /** The book itself stays as it is. */
  public BookEdit(StoredBook book) {
    this.book = book;
    this.parts = book.parts().copy();
    this.types = ContentTypes.of(parts);
    this.links = Links.of(parts, book.part());
    this.root = Element.read(parts.get(book.part()));
    this.styles = book.styles().copy();
    for (var entry : StoredBook.entries(root)) before.add(entry.get("name"));
    dropCalculationChain();
  }

  public StoredBook book() {
    return book;
  }

  public Styles styles() {
    return styles;
  }

  /** The order in which a spreadsheet last calculated; each makes its own when it opens a file. */
  private void dropCalculationChain() {
    links
        .first("calcChain")
        .ifPresent(
            l -> {
              parts.remove(l.part());
              types.remove(l.part());
              links.remove(l.id());
            });
  }

  // ---- sheets -------------------------------------------------------------------------------

  private List<Element> entries() {
    return StoredBook.entries(root);
  }

  private Optional<Element> entry(String title) {
    return entries().stream().filter(e -> e.get("name").equalsIgnoreCase(title)).findFirst();
  }

  public boolean has(String title) {
    return entry(title).isPresent();
  }

  /** One sheet under change. Different sheets can be filled by different threads. */
  public final class SheetEdit {
    private final String title;
    private final String part;
    private final SheetFrame frame;
    private final Links sheetLinks;
    private final List<Chart> charts = new ArrayList<>();
    private final List<SheetName> names = new ArrayList<>();
    private CharSequence rows = "";

    private SheetEdit(String title, String part, SheetFrame frame) {
      this.title = title;
      this.part = part;
      this.frame = frame;
      this.sheetLinks = Links.of(parts, part);
    }

    public String title() {
      return title;
    }

    public SheetFrame frame() {
      return frame;
    }

    /** Its rows, as markup. */
    public void rows(CharSequence markup) {
      rows = markup;
    }

    /**
     * Puts a chart on it, or new content into the one of that name.
     *
     * @param cells first column and row, and those behind the last, counted from nothing
     */
    public void chart(String name, List<Integer> cells, String content) {
      charts.add(new Chart(name, cells, content));
    }

    /**
     * A range by one of the standard's own names, such as {@code _xlnm.Print_Area}.
     *
     * @param range without the sheet's title, such as {@code $A$1:$G$40}
     */
    public void name(String name, String range, boolean hidden) {
      names.add(new SheetName(title, name, range, hidden));
    }

    private void save() {
      if (!charts.isEmpty()) {
        var drawing = Drawing.on(frame, sheetLinks, parts, types);
        for (var c : charts) drawing.chart(c.name, c.cells, c.content, parts, types);
        drawing.save(parts);
      }
      parts.put(part, frame.part(rows));
      sheetLinks.save(parts);
    }
  }

  /**
   * A sheet to be written: the one of that title emptied, or a new one.
   *
   * @param behind title of the sheet whose tab it follows if it is new; empty for the last place
   */
  public SheetEdit sheet(String title, String behind) {
    var there = entry(title);
    SheetEdit edit;
    if (there.isPresent()) {
      var part = links.byId(there.get().link()).orElseThrow().part();
      edit = new SheetEdit(there.get().get("name"), part, SheetFrame.of(parts.get(part)));
    } else {
      var part = parts.free("xl/worksheets/sheet", ".xml");
      parts.put(part, new byte[0]);
      types.put(part, SHEET_TYPE);
      var sheets = root.child("sheets").orElseThrow();
      int id = entries().stream().mapToInt(e -> e.number("sheetId", 0)).max().orElse(0) + 1;
      var all = entries();
      int at = behind.isEmpty() ? all.size() : all.indexOf(entry(behind).orElseThrow()) + 1;
      var next = at < all.size() ? Optional.of(all.get(at)) : Optional.<Element>empty();
      sheets
          .addBefore(next, "sheet")
          .set("name", title)
          .set("sheetId", id)
          .link(links.add("worksheet", part));
      edit = new SheetEdit(title, part, SheetFrame.fresh());
    }
    edits.add(edit);
    return edit;
  }

  /** Gives a sheet another title, in the formulas that name it too. */
  public void rename(String title, String newTitle) {
    var entry = entry(title).orElseThrow();
    var old = entry.get("name");
    entry.set("name", newTitle);
    before.replaceAll(t -> t.equals(old) ? newTitle : t);
    var named =
        Pattern.compile(
            "(?<![\\p{L}\\p{N}_.'\\]])(?:"
                + Pattern.quote(old)
                + "|'"
                + Pattern.quote(old.replace("'", "''"))
                + "')!",
            Pattern.CASE_INSENSITIVE);
    var to = Matcher.quoteReplacement("'" + newTitle.replace("'", "''") + "'!");
    root.child("definedNames")
        .ifPresent(
            all -> {
              for (var n : all.children()) n.text(named.matcher(n.text()).replaceAll(to));
            });
    var formula = Pattern.compile("(<(?:\\w+:)?f(?: [^>]*)?>)([^<]*)(?=</)");
    for (var e : entries()) {
      var part = links.byId(e.link()).map(Links.Link::part).orElse("");
      if (parts.find(part).isEmpty()) continue;
      var xml = new String(parts.get(part), StandardCharsets.UTF_8);
      if (!named.matcher(xml.replace("&apos;", "'")).find()) continue;
      var changed =
          formula
              .matcher(xml)
              .replaceAll(
                  f ->
                      Matcher.quoteReplacement(
                          f.group(1)
                              + named.matcher(f.group(2).replace("&apos;", "'")).replaceAll(to)));
      parts.put(part, changed.getBytes(StandardCharsets.UTF_8));
    }
  }

  /** Shows a sheet first, and no other with it: what is typed would go to both. */
  public void show(String title) {
    int at = entries().indexOf(entry(title).orElseThrow());
    var views =
        root.child("bookViews").orElseGet(() -> root.addBefore(root.child("sheets"), "bookViews"));
    var view = views.child("workbookView").orElseGet(() -> views.add("workbookView"));
    view.set("firstSheet", at).set("activeTab", at);
    for (var e : edits) e.frame.select(e.title.equalsIgnoreCase(title));
    for (var e : entries()) unselect(links.byId(e.link()).map(Links.Link::part).orElse(""));
  }

  private void unselect(String part) {
    if (part.isEmpty() || edits.stream().anyMatch(e -> e.part.equals(part))) return;
    var xml = new String(parts.get(part), StandardCharsets.ISO_8859_1); // bytes stay as they are
    int end = xml.indexOf("<sheetData");
    var head = xml.substring(0, Math.max(0, end));
    var changed = head.replaceFirst(" tabSelected=\"(1|true)\"", " tabSelected=\"0\"");
    if (!changed.equals(head)) {
      parts.put(
          part, (changed + xml.substring(head.length())).getBytes(StandardCharsets.ISO_8859_1));
    }
  }

  // ---- the whole ----------------------------------------------------------------------------

  private void saveNames() {
    var now = entries().stream().map(e -> e.get("name")).toList();
    var replaced = edits.stream().map(SheetEdit::title).toList();
    var names = edits.stream().flatMap(e -> e.names.stream()).toList();
    var all = root.child("definedNames");
    if (all.isEmpty() && names.isEmpty()) return;
    var list =
        all.orElseGet(
            () ->
                root.addBefore(
                    root.children().stream()
                        .filter(e -> BEHIND_NAMES.contains(e.name()))
                        .findFirst(),
                    "definedNames"));
    for (var n : list.children()) {
      int sheet = n.number("localSheetId", -1);
      if (sheet >= 0 && sheet < before.size()) {
        n.set("localSheetId", now.indexOf(before.get(sheet)));
        if (replaced.contains(before.get(sheet)) && isOurs(n.get("name"))) n.set("name", "");
      }
    }
    list.removeIf(n -> n.get("name").isEmpty());
    for (var n : names) {
      var made =
          list.add("definedName").set("name", n.name).set("localSheetId", now.indexOf(n.sheet));
      if (n.hidden) made.set("hidden", 1);
      made.text(titled(n.sheet, n.range));
    }
  }

  private static boolean isOurs(String name) {
    return name.equals("_xlnm.Print_Area")
        || name.equals("_xlnm.Print_Titles")
        || name.equals("_xlnm._FilterDatabase");
  }

  private static String titled(String sheet, String range) {
    boolean bare = sheet.matches("[A-Za-z_][A-Za-z0-9_]*");
    return (bare ? sheet : "'" + sheet.replace("'", "''") + "'") + "!" + range;
  }

  /** The changed workbook as a file; once only. */
  public byte[] packed() {
    for (var e : edits) e.save();
    saveNames();
    var stylesPart =
        links
            .first("styles")
            .map(Links.Link::part)
            .orElseGet(
                () -> {
                  var part = parts.free("xl/styles", ".xml");
                  links.add("styles", part);
                  types.put(part, STYLES_TYPE);
                  return part;
                });
    parts.put(stylesPart, styles.part());
    parts.put(book.part(), root.part());
    links.save(parts);
    types.save(parts);
    return parts.packed();
  }
}
