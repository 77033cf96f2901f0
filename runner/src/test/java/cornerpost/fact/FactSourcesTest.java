package cornerpost.fact;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FactSourcesTest {
  @Test
  void every_supplied_row_has_a_source_and_says_how_sure_it_is() {
    assertThat(Facts.supplied().all())
        .isNotEmpty()
        .allSatisfy(
            f -> {
              assertThat(f.source()).as(f.id()).isNotBlank();
              assertThat(f.certainty())
                  .as(f.id())
                  .isIn("confirmed", "computed", "from memory", "common practice");
            });
  }
}
