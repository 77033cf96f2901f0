package cornerpost.workbook.parts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A workbook as the file has it: its sheets, the texts they share and their number formats. */
public final class StoredBook {
  private static final String STRICT = "http://purl.oclc.org/ooxml/spreadsheetml/main";

  private final Parts parts;
  private final String part;
  private final Element root;
  private final List<StoredSheet> sheets = new ArrayList<>();
  private final List<String> texts;
  private final Styles styles;
  private final boolean from1904;

  private StoredBook(Parts parts) {
    this.parts = parts;
    this.part =
        Links.of(parts, "")
            .first("officeDocument")
            .orElseThrow(() -> new DamagedFileException("no workbook in it"))
            .part();
    this.root = Element.read(parts.get(part));
    if (!root.name().equals("workbook")) throw new DamagedFileException("no workbook in it");
    if (root.declares(STRICT)) {
      throw new DamagedFileException(DamagedFileException.Kind.STRICT, "the strict form");
    }
    if (ContentTypes.of(parts).typeOf(part).contains("macroEnabled")) {
      throw new DamagedFileException(DamagedFileException.Kind.MACROS, part);
    }
    this.from1904 = root.child("workbookPr").filter(p -> p.says("date1904")).isPresent();
    var links = Links.of(parts, part);
    this.texts =
        links
            .first("sharedStrings")
            .map(l -> SharedTexts.read(parts.get(l.part())))
            .orElse(List.of());
    this.styles =
        links.first("styles").map(l -> Styles.read(parts.get(l.part()))).orElseGet(Styles::plain);
    for (var entry : entries(root)) {
      var link =
          links
              .byId(entry.link())
              .orElseThrow(
                  () -> new DamagedFileException("no part for sheet " + entry.get("name")));
      if (!link.kind().equals("worksheet")) continue;
      sheets.add(
          new StoredSheet(this, entry.get("name"), link.part()).read(parts.get(link.part())));
    }
  }

  /**
   * Reads every sheet.
   *
   * @throws DamagedFileException if the file is not a workbook, or one that cannot be taken
   */
  public static StoredBook read(byte[] content) {
    return new StoredBook(Parts.read(content));
  }

  static List<Element> entries(Element workbook) {
    return workbook.child("sheets").map(s -> s.children("sheet")).orElse(List.of());
  }

  Parts parts() {
    return parts;
  }

  /** Name of the part that lists the sheets. */
  String part() {
    return part;
  }

  /** The worksheets, in the order of their tabs. */
  public List<StoredSheet> sheets() {
    return List.copyOf(sheets);
  }

  /** A sheet by its title, whatever the case, as formulas find it. */
  public Optional<StoredSheet> sheet(String title) {
    return sheets.stream().filter(s -> s.title().equalsIgnoreCase(title)).findFirst();
  }

  /** Whether days are counted from 1904 rather than 1900. */
  public boolean from1904() {
    return from1904;
  }

  /**
   * A text that cells share.
   *
   * @throws IndexOutOfBoundsException if there is none in that place
   */
  public String sharedText(int place) {
    return texts.get(place);
  }

  public Styles styles() {
    return styles;
  }
}
