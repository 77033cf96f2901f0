package cornerpost.app;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Reads a workbook that nobody else is writing. */
final class InputFile {
  /** Larger than any workbook of choices; read whole into memory. */
  private static final long MOST_BYTES = 64L << 20;

  private InputFile() {}

  static byte[] read(Path file) throws RefusedException {
    var name = file.getFileName().toString();
    if (Files.isDirectory(file)) {
      throw new RefusedException(name, "is a folder", "expected a workbook (.xlsx)");
    }
    if (!Files.exists(file)) {
      throw new RefusedException(name, "there is no such file", "check the path of the workbook");
    }
    if (!Files.isReadable(file)) {
      throw new RefusedException(name, "may not be read", "expected a workbook you may open");
    }
    refuseIfOpenElsewhere(file);
    try {
      long size = Files.size(file);
      if (size > MOST_BYTES) {
        throw new RefusedException(
            name,
            "is " + (size >> 20) + " MB large",
            "expected at most " + (MOST_BYTES >> 20) + " MB");
      }
      return Files.readAllBytes(file);
    } catch (NoSuchFileException e) {
      throw new RefusedException(name, "there is no such file", "check the path of the workbook");
    } catch (IOException e) {
      throw new RefusedException(name, "cannot be read (" + e.getMessage() + ")", "try again");
    }
  }

  /**
   * Refuses a file that another program holds for writing: half-written choices would make a wrong
   * plan. Two signs: a lock of the operating system, and the owner file that office programs lay
   * beside an open document.
   */
  static void refuseIfOpenElsewhere(Path file) throws RefusedException {
    var name = file.getFileName().toString();
    var folder = file.toAbsolutePath().getParent();
    for (var mark : new String[] {".~lock." + name + "#", "~$" + name}) {
      if (Files.exists(folder.resolve(mark))) {
        throw new RefusedException(
            name,
            "is open in another program (" + mark + " lies beside it)",
            "save and close it there, then run again; if no program has it open, delete that file");
      }
    }
    if (!Files.exists(file) || !Files.isWritable(file)) return;
    try (var channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
      var lock = channel.tryLock();
      if (lock == null) throw openElsewhere(name);
      lock.release();
    } catch (OverlappingFileLockException e) {
      throw openElsewhere(name);
    } catch (IOException e) {
      throw openElsewhere(name); // a sharing violation, on systems that lock open files
    }
  }

  private static RefusedException openElsewhere(String name) {
    return new RefusedException(
        name, "is open in another program for writing", "save and close it there, then run again");
  }
}
