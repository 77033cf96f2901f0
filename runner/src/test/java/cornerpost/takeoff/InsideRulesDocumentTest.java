package cornerpost.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** The document of the rules names every line that they can write. */
class InsideRulesDocumentTest {
  @Test
  void every_line_has_a_row_in_the_document() throws IOException {
    var text = Files.readString(Path.of("../docs/rules-inside.md"));
    var missing = new TreeSet<String>();
    for (var line : InsidePricesTest.everyOption()) {
      var id = general(line.id());
      if (!text.contains("`" + id + "`")) missing.add(id);
    }
    assertThat(missing).isEmpty();
  }

  /** The id with box, wall, opening and room left open: {@code framing/<box>-<wall>/studs}. */
  static String general(String id) {
    var part = id.substring(0, id.indexOf('/'));
    var rest = id.substring(id.indexOf('/') + 1);
    int slash = rest.lastIndexOf('/');
    if (slash < 0) return id;
    var subject = rest.substring(0, slash);
    var what = rest.substring(slash + 1);
    if (part.startsWith("room") || part.equals("partition")) subject = "<room>";
    else if (part.equals("framing-opening")) subject = "<box>-<opening>";
    else if (part.equals("opening")) subject = "<opening>";
    else if (subject.matches("[A-Z]-[a-z-]+")) subject = "<box>-<wall>";
    else if (subject.matches("[A-Z]")) subject = "<box>";
    return part + "/" + subject + "/" + what;
  }
}
