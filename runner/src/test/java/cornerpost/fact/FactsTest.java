package cornerpost.fact;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FactsTest {
  private static final String HEADER = "id,name,value,unit,source,certainty\n";
  private static final String GOOD = "a.b,\"a, b\",1.5,m,\"A book, p. 3\",confirmed\n";

  private static Facts read(String rows) throws IOException {
    var file = HEADER + rows;
    return Facts.read("t.csv", new ByteArrayInputStream(file.getBytes(StandardCharsets.UTF_8)));
  }

  @Test
  void a_row_is_a_fact_with_its_source() throws IOException {
    var fact = read("# a remark\n" + GOOD + "\n").all().iterator().next();
    assertThat(fact.id()).isEqualTo("a.b");
    assertThat(fact.source()).contains("A book, p. 3");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      value = {
        "a.c,c,2,m,,confirmed | t.csv line 3 | source",
        "a.c,c,2,furlongs,A book,confirmed | t.csv line 3 | furlongs",
        "a.c,c,2,m,A book,surely | t.csv line 3 | surely",
        "a.c,c,two,m,A book,confirmed | t.csv line 3 | two",
        "a.b,c,2,m,A book,confirmed | t.csv line 3 | used before"
      })
  void a_row_that_cannot_be_relied_on_does_not_load(String row, String place, String what) {
    assertThatThrownBy(() -> read(GOOD + row + "\n"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining(place)
        .hasMessageContaining(what);
  }

  @Test
  void every_supplied_fact_names_its_source() {
    assertThat(Facts.supplied().all()).hasSizeGreaterThan(100).allMatch(f -> !f.source().isBlank());
  }
}
