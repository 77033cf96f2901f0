package cornerpost.workbook.parts;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;

/** The links of one part to others (relationships, ISO/IEC 29500 part 2, 6.5). */
public final class Links {
  private static final String NAMESPACE =
      "http://schemas.openxmlformats.org/package/2006/relationships";
  private static final String TYPES = Element.LINKS + "/";

  private final String source;
  private final Element root;
  private boolean changed;

  private Links(String source, Element root) {
    this.source = source;
    this.root = root;
  }

  /**
   * @param kind the last word of its type, such as {@code worksheet}
   * @param part name of the part it leads to; the address as it is where that lies outside
   */
  public record Link(String id, String kind, String part) {}

  /**
   * @param source name of the part they start from; empty for the package itself
   */
  public static Links of(Parts parts, String source) {
    var root =
        parts
            .find(nameFor(source))
            .map(Element::read)
            .orElseGet(() -> Element.of("Relationships").set("xmlns", NAMESPACE));
    return new Links(source, root);
  }

  private static String nameFor(String source) {
    int slash = source.lastIndexOf('/');
    return source.substring(0, slash + 1) + "_rels/" + source.substring(slash + 1) + ".rels";
  }

  public List<Link> all() {
    return root.children("Relationship").stream().map(this::link).toList();
  }

  private Link link(Element e) {
    var type = e.get("Type");
    var target = e.get("Target");
    boolean outside = e.get("TargetMode").equals("External");
    return new Link(
        e.get("Id"),
        type.substring(type.lastIndexOf('/') + 1),
        outside ? target : resolved(target));
  }

  public Optional<Link> byId(String id) {
    return root.children("Relationship").stream()
        .filter(e -> e.get("Id").equals(id))
        .findFirst()
        .map(this::link);
  }

  public Optional<Link> first(String kind) {
    return all().stream().filter(l -> l.kind.equals(kind)).findFirst();
  }

  /** The part a target stands for, seen from the source. */
  private String resolved(String target) {
    if (target.startsWith("/")) return target.substring(1);
    var path = new java.util.ArrayDeque<String>();
    var folder = source.substring(0, source.lastIndexOf('/') + 1);
    for (var step : (folder + target).split("/")) {
      if (step.equals("..")) path.pollLast();
      else if (!step.isEmpty() && !step.equals(".")) path.addLast(step);
    }
    return String.join("/", path);
  }

  /** Adds a link to a part of the package; its id. */
  public String add(String kind, String part) {
    var taken = new HashSet<String>();
    for (var link : root.children("Relationship")) taken.add(link.get("Id"));
    int n = taken.size() + 1;
    while (taken.contains("rId" + n)) n++;
    root.add("Relationship")
        .set("Id", "rId" + n)
        .set("Type", TYPES + kind)
        .set("Target", "/" + part);
    changed = true;
    return "rId" + n;
  }

  public void remove(String id) {
    root.removeIf(e -> e.get("Id").equals(id));
    changed = true;
  }

  /** Puts them back into the package if they were changed. */
  public void save(Parts parts) {
    if (changed) parts.put(nameFor(source), root.part());
  }
}
