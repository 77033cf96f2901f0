package cornerpost.report;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.workbook.Examples;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The page keeps to the HTML standard, by the Nu checker (nu.validator 20.7.2, W3C and WHATWG),
 * which is loaded apart from the program's own libraries.
 */
class HtmlStandardTest {
  private static List<String> errors(String page) throws Exception {
    try (var jars = Files.list(Path.of("target/html-checker"));
        var loader =
            new URLClassLoader(
                jars.map(HtmlStandardTest::url).toArray(URL[]::new),
                ClassLoader.getPlatformClassLoader())) {
      var before = Thread.currentThread().getContextClassLoader();
      Thread.currentThread().setContextClassLoader(loader);
      try {
        var type = loader.loadClass("nu.validator.client.EmbeddedValidator");
        var checker = type.getConstructor().newInstance();
        type.getMethod("setNoLangDetect", boolean.class).invoke(checker, true);
        var format = loader.loadClass("nu.validator.client.EmbeddedValidator$OutputFormat");
        type.getMethod("setOutputFormat", format)
            .invoke(checker, format.getMethod("valueOf", String.class).invoke(null, "GNU"));
        var found =
            type.getMethod("validate", InputStream.class)
                .invoke(checker, new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8)));
        return Arrays.stream(String.valueOf(found).split("\n"))
            .filter(l -> l.contains("error"))
            .filter(
                l -> !l.contains("error: CSS")) // of 2020: it knows no custom properties in sums
            .toList();
      } finally {
        Thread.currentThread().setContextClassLoader(before);
      }
    }
  }

  private static URL url(Path jar) {
    try {
      return jar.toUri().toURL();
    } catch (MalformedURLException e) {
      throw new UncheckedIOException(new IOException(e));
    }
  }

  private static String page(String example) {
    var plan = Examples.plan(Examples.workbook(example));
    return new String(PlanPage.write(plan), StandardCharsets.UTF_8);
  }

  @ParameterizedTest(name = "{0}")
  @ValueSource(
      strings = {"one-bedroom-40hc.xlsx", "studio-20hc-metric.xlsx", "two-bedroom-two-boxes.xlsx"})
  void page_of_an_example_is_valid(String example) throws Exception {
    assertThat(errors(page(example))).isEmpty();
  }

  /** A checker that finds nothing must be able to find something. */
  @Test
  void an_attribute_nobody_knows_is_found() throws Exception {
    var page = page("studio-20hc-metric.xlsx");
    assertThat(errors(page.replaceFirst("<main", "<main unheard-of=\"1\""))).isNotEmpty();
  }
}
