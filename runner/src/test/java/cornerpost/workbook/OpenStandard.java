package cornerpost.workbook;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.InvocationTargetException;
import java.net.MalformedURLException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.zip.ZipInputStream;

/**
 * Holds the parts of a workbook to the schemas of ISO/IEC 29500 transitional (edition of 2016), as
 * compiled into poi-ooxml-full. They are loaded apart from the program's own libraries, which carry
 * only the part of the schemas they use.
 */
final class OpenStandard {
  private static final String MAIN = "org.openxmlformats.schemas.spreadsheetml.x2006.main.";
  private static final ClassLoader SCHEMAS = schemas();

  private OpenStandard() {}

  private static ClassLoader schemas() {
    try (var jars = Files.list(Path.of("target/schemas"))) {
      return new URLClassLoader(
          jars.map(OpenStandard::url).toArray(URL[]::new), ClassLoader.getPlatformClassLoader());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static URL url(Path jar) {
    try {
      return jar.toUri().toURL();
    } catch (MalformedURLException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The document class for a part; empty for parts of other standards. */
  private static String document(String part) {
    if (part.equals("xl/workbook.xml")) return MAIN + "WorkbookDocument";
    if (part.equals("xl/styles.xml")) return MAIN + "StyleSheetDocument";
    if (part.equals("xl/sharedStrings.xml")) return MAIN + "SstDocument";
    if (part.matches("xl/worksheets/[^/]+\\.xml")) return MAIN + "WorksheetDocument";
    if (part.matches("xl/comments[^/]*\\.xml")) return MAIN + "CommentsDocument";
    if (part.matches("xl/charts/chart[^/]*\\.xml")) {
      return "org.openxmlformats.schemas.drawingml.x2006.chart.ChartSpaceDocument";
    }
    if (part.matches("xl/drawings/drawing[^/]*\\.xml")) {
      return "org.openxmlformats.schemas.drawingml.x2006.spreadsheetDrawing.WsDrDocument";
    }
    return "";
  }

  /** What the schemas do not allow, by part; empty where all is well. */
  static List<String> faults(byte[] workbook) {
    var faults = new ArrayList<String>();
    int held = 0;
    for (var part : parts(workbook).entrySet()) {
      var document = document(part.getKey());
      if (document.isEmpty()) continue;
      held++;
      for (var f : faults(part.getValue(), document)) faults.add(part.getKey() + ": " + f);
      if (document.endsWith("WorksheetDocument") && !columnsAscend(part.getValue())) {
        faults.add(part.getKey() + ": columns out of order or over each other (18.3.1.13)");
      }
    }
    if (held == 0) faults.add("no part to hold to the standard");
    return faults;
  }

  /** What the schema cannot say and spreadsheet programs ask for. */
  private static boolean columnsAscend(byte[] sheet) {
    var column = Pattern.compile("<col min=\"(\\d+)\" max=\"(\\d+)\"");
    var found = column.matcher(new String(sheet, StandardCharsets.UTF_8));
    int before = 0;
    while (found.find()) {
      if (Integer.parseInt(found.group(1)) <= before) return false;
      before = Integer.parseInt(found.group(2));
    }
    return true;
  }

  private static Map<String, byte[]> parts(byte[] workbook) {
    var parts = new LinkedHashMap<String, byte[]>();
    try (var zip = new ZipInputStream(new ByteArrayInputStream(workbook))) {
      for (var e = zip.getNextEntry(); e != null; e = zip.getNextEntry()) {
        parts.put(e.getName(), zip.readAllBytes());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return parts;
  }

  private static List<String> faults(byte[] part, String document) {
    var before = Thread.currentThread().getContextClassLoader();
    Thread.currentThread().setContextClassLoader(SCHEMAS);
    try {
      var factory = SCHEMAS.loadClass(document).getField("Factory").get(null);
      var read =
          factory
              .getClass()
              .getMethod("parse", InputStream.class)
              .invoke(factory, new ByteArrayInputStream(part));
      var options =
          SCHEMAS.loadClass("org.apache.xmlbeans.XmlOptions").getConstructor().newInstance();
      var errors = new ArrayList<Object>();
      options
          .getClass()
          .getMethod("setErrorListener", java.util.Collection.class)
          .invoke(options, errors);
      SCHEMAS
          .loadClass("org.apache.xmlbeans.XmlObject")
          .getMethod("validate", options.getClass())
          .invoke(read, options);
      return errors.stream().map(String::valueOf).distinct().toList();
    } catch (InvocationTargetException e) {
      return List.of(String.valueOf(e.getCause()));
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    } finally {
      Thread.currentThread().setContextClassLoader(before);
    }
  }
}
