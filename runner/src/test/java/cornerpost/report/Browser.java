package cornerpost.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A real browser, Chromium without a window, that opens a page and gives it back as it stands then.
 * Tests that need it are skipped where there is none, unless the environment sets {@code
 * CORNERPOST_REQUIRE_OFFICE=1}.
 */
final class Browser {
  private static final int MINUTES = 4;
  private static final List<String> FLAGS =
      List.of(
          "--headless",
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync",
          "--hide-scrollbars");

  private Browser() {}

  static void needed() {
    if (command().isEmpty() && "1".equals(System.getenv("CORNERPOST_REQUIRE_OFFICE"))) {
      fail("Chromium is required here, but there is no command 'chromium'");
    }
    assumeTrue(command().isPresent(), "Chromium is not installed");
  }

  private static Optional<Path> command() {
    return Stream.of(System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator))
        .flatMap(f -> Stream.of("chromium", "chromium-browser").map(c -> Path.of(f, c)))
        .filter(Files::isExecutable)
        .findFirst();
  }

  /** The document after its scripts have run, in a window 1,400 pixels wide. */
  static String document(String html, boolean dark) {
    return run(
        html,
        List.of(
            "--window-size=1400,1000",
            "--blink-settings=preferredColorScheme=" + (dark ? 0 : 1),
            "--virtual-time-budget=120000",
            "--dump-dom"),
        (folder, out) -> Files.readString(out, StandardCharsets.UTF_8));
  }

  /** Every word of the page as it prints, by page: what poppler's pdftotext finds and where. */
  static String printed(String html) {
    return run(
        html,
        List.of("--no-pdf-header-footer", "--print-to-pdf=page.pdf"),
        (folder, out) -> {
          var words = folder.resolve("words.html");
          var process =
              new ProcessBuilder("pdftotext", "-bbox", "page.pdf", words.toString())
                  .directory(folder.toFile())
                  .inheritIO()
                  .start();
          try {
            assertThat(process.waitFor(MINUTES, TimeUnit.MINUTES)).isTrue();
          } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
          }
          return Files.readString(words, StandardCharsets.UTF_8);
        });
  }

  /** What a run left behind, read before it is cleared away. */
  private interface Result {
    String read(Path folder, Path out) throws IOException;
  }

  private static String run(String html, List<String> flags, Result result) {
    try {
      var folder = Files.createTempDirectory("cornerpost-browser");
      try {
        var page = Files.writeString(folder.resolve("page.html"), html);
        var out = folder.resolve("document.html");
        var words = new ArrayList<String>();
        words.add(command().orElseThrow().toString());
        words.addAll(FLAGS);
        words.add("--user-data-dir=" + folder.resolve("profile"));
        words.addAll(flags);
        words.add(page.toUri().toString());
        var process =
            new ProcessBuilder(words)
                .directory(folder.toFile())
                .redirectOutput(out.toFile())
                .redirectError(folder.resolve("messages").toFile())
                .start();
        if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
          process.destroyForcibly();
          throw new AssertionError("Chromium did not end within " + MINUTES + " minutes");
        }
        return result.read(folder, out);
      } finally {
        delete(folder);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError(e);
    }
  }

  private static void delete(Path folder) throws IOException {
    try (var all = Files.walk(folder)) {
      for (var p : all.sorted(Comparator.reverseOrder()).toList()) Files.deleteIfExists(p);
    }
  }
}
