package cornerpost.app;

import cornerpost.measure.Spelling;
import cornerpost.measure.Spoken;
import cornerpost.scope.Problem;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Finds a price book's folder and reads its files. */
final class PriceBookFolder {
  private static final String MARK = "region.csv";
  private static final long MOST_BYTES = 32L << 20;

  private PriceBookFolder() {}

  /** The files of a book, by path inside its folder with forward slashes, in order of path. */
  record Contents(String name, Map<String, byte[]> files) {}

  /**
   * @param given the folder named on the command line: that of the book, or one that holds it
   * @param name what sheet Project says; empty if nothing
   * @param cell where sheet Project says it
   * @param workbook beside which it may lie
   * @param home of the program, whose own books lie under {@code price-books}
   */
  static Optional<Contents> find(
      Optional<Path> given, Optional<String> name, Optional<String> cell, Path workbook, Path home)
      throws RefusedException {
    if (given.isEmpty() && name.isEmpty()) return Optional.empty();
    var tried = new ArrayList<Path>();
    if (given.isPresent()) {
      tried.add(given.get());
      name.ifPresent(n -> addIfPlain(tried, given.get(), n));
    } else {
      var beside = workbook.toAbsolutePath().getParent();
      for (var base : List.of(beside, beside.resolve("price-books"), home.resolve("price-books"))) {
        addIfPlain(tried, base, name.get());
      }
    }
    for (var folder : tried) {
      if (Files.isRegularFile(folder.resolve(MARK))) return Optional.of(read(folder));
    }
    var what = given.map(Path::toString).orElse(name.orElse(""));
    var none = "there is no such price book (a folder with " + MARK + " in it)";
    if (given.isPresent() || cell.isEmpty()) {
      throw new RefusedException("Price book '" + what + "'", none, expected(home));
    }
    var place = cell.get().split("!", 2);
    throw new RefusedException(
        List.of(
            Problem.fault(
                place[0],
                place.length > 1 ? place[1] : "",
                "'" + what + "' (Price book): " + none,
                expected(home)
                    + Spelling.nearest(what, supplied(home))
                        .map(n -> "; maybe '" + n + "'")
                        .orElse(""))));
  }

  /** What would be right where no book is named, or none is found. */
  static String expected(Path home) {
    var supplied = supplied(home);
    return "expected the name of a folder of prices"
        + (supplied.isEmpty()
            ? ""
            : ": supplied, with invented prices, are "
                + Spoken.list(supplied)
                + "; or a folder of your own beside the workbook or in a folder price-books there")
        + "; --prices names a folder anywhere, for a single run";
  }

  /** A name from the workbook leads into a folder, never out of it. */
  private static void addIfPlain(List<Path> tried, Path base, String name) {
    var folder = base.resolve(name).normalize();
    if (folder.startsWith(base.normalize())) tried.add(folder);
  }

  private static List<String> supplied(Path home) {
    try (var folders = Files.list(home.resolve("price-books"))) {
      return folders
          .filter(f -> Files.isRegularFile(f.resolve(MARK)))
          .map(f -> f.getFileName().toString())
          .sorted()
          .toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  private static Contents read(Path folder) throws RefusedException {
    var files = new TreeMap<String, byte[]>();
    var name = folder.toAbsolutePath().normalize().getFileName().toString();
    try (var walk = Files.walk(folder, 2)) {
      long total = 0;
      for (var file : (Iterable<Path>) walk::iterator) {
        if (!file.toString().endsWith(".csv") || !Files.isRegularFile(file)) continue;
        total += Files.size(file);
        if (total > MOST_BYTES) {
          throw new RefusedException(name, "is too large", "expected at most 32 MB of tables");
        }
        files.put(folder.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
      }
    } catch (IOException e) {
      throw new RefusedException(name, "cannot be read (" + e.getMessage() + ")", "try again");
    }
    return new Contents(name, files);
  }
}
