package cornerpost.fact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FactSourcesTest {
  private static final String HEAD = "id,name,value,unit,source,certainty\n";
  private static final String GOOD = "soil.x,bearing,72,kPa,IRC table R401.4.1,confirmed\n";

  private static Facts read(String rows) throws IOException {
    return Facts.read(
        "own.csv", new ByteArrayInputStream((HEAD + rows).getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void a_row_with_its_source_loads() throws IOException {
    assertThat(read(GOOD).get("soil.x").source()).isEqualTo("IRC table R401.4.1");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          no source | soil.y,bearing,72,kPa,,confirmed
          a blank source | soil.y,bearing,72,kPa,"  ",confirmed
          no word how sure | soil.y,bearing,72,kPa,IRC table R401.4.1,
          a word of its own how sure | soil.y,bearing,72,kPa,IRC table R401.4.1,certain
          no such unit | soil.y,bearing,72,stone,IRC table R401.4.1,confirmed
          an id used before | soil.x,bearing,72,kPa,IRC table R401.4.1,confirmed
          """)
  void a_row_that_lacks_something_does_not_load(String what, String row) {
    assertThatThrownBy(() -> read(GOOD + row + "\n"))
        .as(what)
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("own.csv line 3");
  }

  @Test
  void every_supplied_row_has_a_source_and_says_how_sure_it_is() {
    assertThat(Facts.supplied().all())
        .isNotEmpty()
        .allSatisfy(f -> assertThat(f.source()).as(f.id()).isNotBlank());
  }
}
