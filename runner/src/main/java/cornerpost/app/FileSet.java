package cornerpost.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Files that are written all or not at all. Contents go to temporary files beside their targets
 * first; only when all of them are on disk are they moved into place, and if a move fails, those
 * made before are taken back.
 */
final class FileSet {
  private final Map<Path, byte[]> contents = new LinkedHashMap<>();
  private final Map<Path, Path> setAside = new LinkedHashMap<>();

  void put(Path target, byte[] content) {
    contents.put(target, content);
  }

  /** Before writing, the file is renamed; it is never written to. */
  void setAside(Path file, Path underName) {
    setAside.put(file, underName);
  }

  void write() throws IOException {
    var temporary = new LinkedHashMap<Path, Path>();
    Deque<Step> done = new ArrayDeque<>();
    var leftovers = new ArrayList<Path>();
    try {
      for (var c : contents.entrySet()) {
        var folder = c.getKey().toAbsolutePath().getParent();
        Files.createDirectories(folder);
        var temp = scrap(folder, c.getKey(), "part");
        temporary.put(c.getKey(), temp);
        Files.write(temp, c.getValue(), StandardOpenOption.CREATE_NEW);
      }
      for (var s : setAside.entrySet()) move(s.getKey(), s.getValue(), done);
      for (var t : temporary.entrySet()) {
        var target = t.getKey();
        if (Files.isDirectory(target)) throw new IOException(target + " is a folder");
        if (Files.exists(target)) {
          var old = scrap(target.toAbsolutePath().getParent(), target, "old");
          leftovers.add(old);
          move(target, old, done);
        }
        move(t.getValue(), target, done);
      }
    } catch (IOException e) {
      takeBack(done, e);
      throw e;
    } finally {
      delete(temporary.values());
    }
    delete(leftovers);
  }

  /** A name that is free, for a file with the permissions of any new file. */
  private static Path scrap(Path folder, Path target, String ending) {
    for (int n = 0; ; n++) {
      var path = folder.resolve("." + target.getFileName() + "." + n + "." + ending);
      if (!Files.exists(path)) return path;
    }
  }

  private record Step(Path from, Path to) {}

  private static void move(Path from, Path to, Deque<Step> done) throws IOException {
    Files.move(from, to);
    done.push(new Step(from, to));
  }

  private static void takeBack(Deque<Step> done, IOException cause) {
    while (!done.isEmpty()) {
      var step = done.pop();
      try {
        Files.move(step.to, step.from, StandardCopyOption.REPLACE_EXISTING);
      } catch (IOException e) {
        cause.addSuppressed(e);
      }
    }
  }

  private static void delete(Iterable<Path> files) {
    for (var f : files) {
      try {
        Files.deleteIfExists(f);
      } catch (IOException e) {
        f.toFile().deleteOnExit(); // the result stands; only a scrap is left, removed at exit
      }
    }
  }

  /** Targets, for messages. */
  List<Path> targets() {
    return List.copyOf(contents.keySet());
  }
}
