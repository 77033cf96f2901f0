package cornerpost.report;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.measure.NumberStyle;
import org.junit.jupiter.api.Test;

class TextOfPageTest {
  private static final NumberStyle COMMA = NumberStyle.find("1.234,56").orElseThrow();

  @Test
  void turns_text_but_neither_tags_nor_the_style_sheet() {
    var page =
        "<style>\np{margin:1.5em}</style><p id=\"a1.5\">1,234.5 kg<svg width=\"2.5\"></svg> 0.5</p>";
    assertThat(TextOfPage.turned(page, COMMA))
        .isEqualTo(
            "<style>\np{margin:1.5em}</style><p id=\"a1.5\">1.234,5 kg<svg width=\"2.5\"></svg> 0,5</p>");
    assertThat(TextOfPage.turned(page, NumberStyle.PLAIN)).isSameAs(page);
  }
}
