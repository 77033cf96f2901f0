package cornerpost.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.measure.UnitSystem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The document of the rules has a row for every line that they can write, and for no other. */
class GroundAndShellDocumentTest {
  @Test
  void document_and_rules_name_the_same_lines() throws IOException {
    var text = Files.readString(Path.of("..", "docs", "rules-ground-and-shell.md"));
    var written = new TreeSet<String>();
    var rows = Pattern.compile("^\\| `([^`]+)` \\|", Pattern.MULTILINE).matcher(text);
    while (rows.find()) written.add(rows.group(1));
    var measured = new TreeSet<String>();
    for (var house : Variants.all(UnitSystem.METRIC).values()) {
      var scope = house.scope();
      for (var l : Takeoff.measure(scope, TestScopes.FACTS, GroundAndShellRules.ALL)) {
        // what it weighs: docs/method-mass.md, held by OwnMassTest
        if (l.id().startsWith("mass/")) continue;
        measured.add(GroundAndShellRules.pattern(l, scope));
      }
    }
    assertThat(written).isEqualTo(measured);
  }
}
