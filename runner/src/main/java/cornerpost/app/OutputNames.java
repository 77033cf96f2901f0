package cornerpost.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;

/** The names of a plan's four files: those of the workbook with {@code -plan}, not doubled. */
record OutputNames(Path folder, String stem) {
  private static final String SUFFIX = "-plan";

  static OutputNames of(Path workbook, Path folder) {
    var name = workbook.getFileName().toString();
    int dot = name.lastIndexOf('.');
    var stem = dot > 0 ? name.substring(0, dot) : name;
    if (stem.endsWith(SUFFIX) && stem.length() > SUFFIX.length()) {
      stem = stem.substring(0, stem.length() - SUFFIX.length());
    }
    return new OutputNames(folder, stem + SUFFIX);
  }

  Path workbook() {
    return folder.resolve(stem + ".xlsx");
  }

  Path page() {
    return folder.resolve(stem + ".html");
  }

  Path json() {
    return folder.resolve(stem + ".json");
  }

  Path calendar() {
    return folder.resolve(stem + ".ics");
  }

  /** The calendar of a crew: letters and numbers of its name, all else as one hyphen. */
  Path calendarOf(String crew) {
    var plain =
        crew.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
    return folder.resolve(stem + "-" + (plain.isEmpty() ? "crew" : plain) + ".ics");
  }

  List<Path> all() {
    return List.of(workbook(), page(), json(), calendar());
  }
}
