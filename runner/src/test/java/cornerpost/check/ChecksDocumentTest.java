package cornerpost.check;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The page about checks names every limit they use, with its value and source. */
class ChecksDocumentTest {
  @Test
  void every_limit_stands_in_the_document() throws IOException {
    var text = Files.readString(Path.of("../docs/checks.md"));
    for (var fact : Facts.supplied().all()) {
      if (!fact.id().startsWith("limit.")) continue;
      var row = text.lines().filter(l -> l.contains("`" + fact.id() + "`")).findFirst();
      assertThat(row).as(fact.id()).isPresent();
      assertThat(row.get()).contains(fact.name()).contains(fact.source());
      if (!fact.id().equals("limit.cut-share")) { // written out there
        assertThat(row.get()).contains("| " + fact.value().toPlainString());
      }
    }
  }
}
