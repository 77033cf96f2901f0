package cornerpost.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberStyleTest {
  private static final NumberStyle COMMA = NumberStyle.find("1.234,56").orElseThrow();

  /** The signs of the Unicode Common Locale Data Repository, as the JDK carries it. */
  @ParameterizedTest
  @CsvSource({"en-US,'1,234.56'", "de-DE,'1.234,56'", "fr-FR,'1 234,56'", "de-CH,'1''234.56'"})
  void writes_numbers_as_the_locale_data_of_unicode_do(String tag, String sample) {
    var style = NumberStyle.find(sample).orElseThrow();
    var symbols = DecimalFormatSymbols.getInstance(Locale.forLanguageTag(tag));
    var format = new DecimalFormat("#,##0.00", symbols);
    var random = new Random(4);
    for (int i = 0; i < 500; i++) {
      double value = Math.round(random.nextDouble() * 1e9) / 100.0;
      var plain = new DecimalFormat("#,##0.00", DecimalFormatSymbols.getInstance(Locale.ROOT));
      assertThat(style.turned(plain.format(value))).isEqualTo(format.format(value));
    }
  }

  @Test
  void turns_the_numbers_of_a_sentence() {
    assertThat(COMMA.turned("costs EUR 79,203.82, of it 1,200 for hire; 0.5 days, 2.25 %"))
        .isEqualTo("costs EUR 79.203,82, of it 1.200 for hire; 0,5 days, 2,25 %");
    assertThat(COMMA.turned("(−12.5 °C) 3 × 2.4 m")).isEqualTo("(−12,5 °C) 3 × 2,4 m");
  }

  /** The numbers of clauses, editions and days are printed so in every language. */
  @Test
  void leaves_references_days_and_sizes_alone() {
    for (var text :
        new String[] {
          "IRC 2021 R304.1",
          "ACI 308.1; ACI 318-19 26.5.3",
          "NEC 210.52",
          "29 CFR 1910.184",
          "table 25.4",
          "Mon 12 Apr 2027",
          "2027-04-12",
          "R319.2.1",
          "box A, W1, 4x8",
          "Openings!E9"
        }) {
      assertThat(COMMA.turned(text)).isEqualTo(text);
    }
  }

  @Test
  void plain_style_changes_nothing_and_unknown_samples_are_none() {
    var text = "USD 1,234.56";
    assertThat(NumberStyle.PLAIN.turned(text)).isSameAs(text);
    assertThat(NumberStyle.find("1_234.56")).isEmpty();
  }
}
