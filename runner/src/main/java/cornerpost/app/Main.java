package cornerpost.app;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Starts the program: arguments in, exit status out. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    // UTF-8 whatever the terminal's locale says: files and room names carry any letter.
    var out =
        new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
    var err =
        new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
    var home = Path.of(System.getProperty("cornerpost.home", "."));
    System.exit(new Cli(out, err, home).run(args).exitStatus());
  }
}
