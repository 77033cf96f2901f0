package cornerpost.office;

import static org.assertj.core.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * A second opinion on our workbooks: LibreOffice opens them, calculates every formula anew and
 * saves what it found. Tests that need it are skipped where it is not installed, unless the
 * environment sets {@code CORNERPOST_REQUIRE_OFFICE=1}.
 */
public final class LibreOffice {
  private static final String COMMAND = "soffice";
  private static final int MINUTES = 8; // it takes seconds where nothing else runs

  /** Without this a file's stored values are trusted, whoever wrote them. */
  private static final String ALWAYS_RECALCULATE =
      """
      <?xml version="1.0" encoding="UTF-8"?>
      <oor:items xmlns:oor="http://openoffice.org/2001/registry"
          xmlns:xs="http://www.w3.org/2001/XMLSchema"
          xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
        <item oor:path="/org.openoffice.Office.Calc/Formula/Load">
          <prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop>
        </item>
      </oor:items>
      """;

  private LibreOffice() {}

  /** Skips the test where there is no LibreOffice; fails it where there must be one. */
  public static void needed() {
    boolean there = isInstalled();
    if (!there && "1".equals(System.getenv("CORNERPOST_REQUIRE_OFFICE"))) {
      fail("LibreOffice is required here, but there is no command 'soffice'");
    }
    assumeTrue(there, "LibreOffice is not installed");
  }

  private static boolean isInstalled() {
    for (var folder : System.getenv().getOrDefault("PATH", "").split(java.io.File.pathSeparator)) {
      if (Files.isExecutable(Path.of(folder, COMMAND))) return true;
    }
    return false;
  }

  /** The workbook as LibreOffice saves it after calculating every formula. */
  public static byte[] recalculated(byte[] workbook) {
    return converted(workbook, "xlsx:Calc MS Excel 2007 XML", "xlsx");
  }

  /** The workbook as it prints. */
  public static byte[] pdf(byte[] workbook) {
    return converted(workbook, "pdf", "pdf");
  }

  private static byte[] converted(byte[] workbook, String filter, String extension) {
    try {
      var folder = Files.createTempDirectory("cornerpost-office");
      try {
        var profile = Files.createDirectories(folder.resolve("profile/user"));
        Files.writeString(profile.resolve("registrymodifications.xcu"), ALWAYS_RECALCULATE);
        var in = Files.write(folder.resolve("book.xlsx"), workbook);
        var out = Files.createDirectory(folder.resolve("out"));
        run(folder, filter, in, out);
        return Files.readAllBytes(out.resolve("book." + extension));
      } finally {
        delete(folder);
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static void run(Path folder, String filter, Path in, Path out) throws IOException {
    var command =
        List.of(
            COMMAND,
            "--headless",
            "--norestore",
            "-env:UserInstallation=" + folder.resolve("profile").toUri(),
            "--convert-to",
            filter,
            "--outdir",
            out.toString(),
            in.toString());
    var log = folder.resolve("log.txt").toFile();
    var process = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(log).start();
    try {
      if (!process.waitFor(MINUTES, TimeUnit.MINUTES)) {
        process.destroyForcibly();
        fail("LibreOffice did not end within " + MINUTES + " minutes");
      }
    } catch (InterruptedException e) {
      process.destroyForcibly();
      Thread.currentThread().interrupt();
      fail("interrupted");
    }
    if (process.exitValue() != 0) fail("LibreOffice failed: " + Files.readString(log.toPath()));
  }

  private static void delete(Path folder) throws IOException {
    try (var all = Files.walk(folder)) {
      for (var path : all.sorted(Comparator.reverseOrder()).toList()) Files.deleteIfExists(path);
    }
  }
}
