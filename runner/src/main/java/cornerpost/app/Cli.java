package cornerpost.app;

import cornerpost.measure.UnitSystem;
import cornerpost.plan.RunOptions;
import cornerpost.scope.Problem;
import cornerpost.workbook.Layouts;
import java.io.IOException;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.regex.Pattern;
import org.apache.commons.cli.CommandLine;
import org.apache.commons.cli.DefaultParser;
import org.apache.commons.cli.HelpFormatter;
import org.apache.commons.cli.MissingArgumentException;
import org.apache.commons.cli.Option;
import org.apache.commons.cli.Options;
import org.apache.commons.cli.ParseException;
import org.apache.commons.cli.UnrecognizedOptionException;

/**
 * The commands. Results go to standard output, messages to standard error; the exit status says how
 * it went ({@link Outcome}).
 */
public final class Cli {
  /** Event, days, and behind commas the cause and who bears it. */
  private static final Pattern DELAY =
      Pattern.compile("(.+?)=\\s*([-+]?\\d+)\\s*(?:,([^,]*)(?:,(.*))?)?");

  private static final int WIDTH = 90;

  private final PrintStream out;
  private final PrintStream err;
  private final Path home;

  /**
   * @param home of the program: price books and examples lie below it
   */
  public Cli(PrintStream out, PrintStream err, Path home) {
    this.out = out;
    this.err = err;
    this.home = home;
  }

  Outcome run(String... args) {
    try {
      return dispatch(args);
    } catch (UsageException e) {
      return usage(e.command, e.getMessage());
    } catch (RefusedException e) {
      return refuse(e.problems());
    } catch (OutOfMemoryError e) {
      err.println("cornerpost: there is not enough memory for this workbook");
      return Outcome.OUR_FAULT;
    } catch (IOException | RuntimeException | StackOverflowError e) {
      return fault(e);
    }
  }

  /** What a command is called with, and what for. */
  private enum Command {
    PLAN("plan", "WORKBOOK", "Plan a workbook and write the four files.") {
      @Override
      Options options() {
        return planning()
            .addOption(option("out", "FOLDER", "where to write (else beside the workbook)"))
            .addOption(
                Option.builder()
                    .longOpt("crew-calendars")
                    .desc("write a calendar for each crew as well")
                    .build());
      }
    },
    CHECK("check", "WORKBOOK", "List every problem of a workbook; write nothing.") {
      @Override
      Options options() {
        return planning();
      }
    },
    NEW("new", "FILE", "Make a workbook to fill in, or an example.") {
      @Override
      Options options() {
        return helping()
            .addOption(option("example", "NAME", "one of " + String.join(", ", Examples.NAMES)))
            .addOption(
                option(
                    "layout",
                    "NAME",
                    "a starting layout, such as studio-20hc (a wrong name lists all)"))
            .addOption(
                option("units", "metric|us", "units of a blank workbook or layout (metric)"));
      }
    };

    final String word;
    final String operand;
    final String purpose;

    Command(String word, String operand, String purpose) {
      this.word = word;
      this.operand = operand;
      this.purpose = purpose;
    }

    abstract Options options();

    static Options helping() {
      return new Options().addOption("h", "help", false, "show this help");
    }

    static Options planning() {
      return helping()
          .addOption(
              option("prices", "FOLDER", "the price book (else the one sheet Project names)"))
          .addOption(option("as-of", "DATE", "status date, such as 2027-03-01"))
          .addOption(
              option(
                  "delay",
                  "EVENT=DAYS",
                  "an event comes later, such as delivery=12 or"
                      + " \"delivery=12,flood on the road,haulier\"; may be repeated"))
          .addOption(
              option("baseline", "NAME", "keep this plan on sheet Baseline, to compare later ones"))
          .addOption(
              option("path-from", "EVENT", "show the longest path from this task (delivery)"))
          .addOption(option("path-to", "EVENT", "and to this one, by id or name (move-in)"))
          .addOption(option("seed", "N", "seed of the trials"))
          .addOption(option("trials", "N", "number of trials"));
    }

    private static Option option(String name, String argument, String description) {
      return Option.builder().longOpt(name).hasArg().argName(argument).desc(description).build();
    }
  }

  /** The command line is not one of ours; the help of the command is shown, or of all. */
  private static final class UsageException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Optional<Command> command;

    UsageException(Optional<Command> command, String message) {
      super(message);
      this.command = command;
    }

    UsageException(Command command, String message) {
      this(Optional.of(command), message);
    }
  }

  private Outcome dispatch(String... args) throws UsageException, RefusedException, IOException {
    if (args.length == 0) throw new UsageException(Optional.empty(), "a command is missing");
    switch (args[0]) {
      case "-h", "--help" -> {
        out.print(help(Optional.empty()));
        return Outcome.DONE;
      }
      case "-V", "--version" -> {
        out.println("cornerpost " + version());
        return Outcome.DONE;
      }
      default -> {}
    }
    var command =
        Arrays.stream(Command.values())
            .filter(c -> c.word.equals(args[0]))
            .findFirst()
            .orElseThrow(
                () -> new UsageException(Optional.empty(), "no command '" + args[0] + "'"));
    var rest = Arrays.copyOfRange(args, 1, args.length);
    if (List.of(rest).contains("-h") || List.of(rest).contains("--help")) {
      out.print(help(Optional.of(command)));
      return Outcome.DONE;
    }
    var parsed = parsed(command, rest);
    return switch (command) {
      case PLAN -> plan(command, parsed);
      case CHECK -> check(command, parsed);
      case NEW -> create(command, parsed);
    };
  }

  private static CommandLine parsed(Command command, String... args) throws UsageException {
    try {
      var parsed = new DefaultParser(false).parse(command.options(), args);
      for (var option : parsed.getOptions()) {
        if (option.hasArg()
            && !option.getLongOpt().equals("delay")
            && parsed.getOptionValues(option.getLongOpt()).length > 1) {
          throw new UsageException(command, "--" + option.getLongOpt() + " is given twice");
        }
      }
      var operands = parsed.getArgList();
      if (operands.isEmpty()) throw new UsageException(command, command.operand + " is missing");
      if (operands.size() > 1) {
        throw new UsageException(
            command, "one " + command.operand + " at a time; found '" + operands.get(1) + "' too");
      }
      return parsed;
    } catch (UnrecognizedOptionException e) {
      throw new UsageException(command, "no option '" + e.getOption() + "'");
    } catch (MissingArgumentException e) {
      var option = e.getOption();
      throw new UsageException(
          command, "--" + option.getLongOpt() + " needs its " + option.getArgName());
    } catch (ParseException e) {
      throw new UsageException(command, e.getMessage());
    }
  }

  private Outcome plan(Command command, CommandLine parsed)
      throws UsageException, RefusedException, IOException {
    var request = request(command, parsed);
    var result = new PlanRun(home, err).plan(request);
    for (var p : result.remarks()) err.println("note: " + p.message());
    for (var line : result.summary()) out.println(line);
    for (var file : result.files()) out.println(file);
    return Outcome.DONE;
  }

  private Outcome check(Command command, CommandLine parsed)
      throws UsageException, RefusedException, IOException {
    var remarks = new PlanRun(home, err).check(request(command, parsed));
    for (var p : remarks) err.println("note: " + p.message());
    out.println(
        "No faults found" + (remarks.isEmpty() ? "." : "; " + remarks.size() + " to note."));
    return Outcome.DONE;
  }

  private Outcome create(Command command, CommandLine parsed)
      throws UsageException, RefusedException, IOException {
    var file = path(command, parsed.getArgList().get(0));
    var example = value(parsed, "example");
    var units = value(parsed, "units");
    if (example.isPresent() && units.isPresent()) {
      throw new UsageException(
          command, "--example and --units do not go together: an example has its units");
    }
    if (!file.toString().endsWith(".xlsx")) {
      throw new UsageException(command, "the new file's name must end in .xlsx");
    }
    if (units.isPresent() && UnitSystem.find(units.get()).isEmpty()) {
      throw new UsageException(command, "--units takes metric or us, found '" + units.get() + "'");
    }
    var layout = value(parsed, "layout");
    if (layout.isPresent() && example.isPresent()) {
      throw new UsageException(command, "--example and --layout do not go together");
    }
    if (layout.isPresent() && !Layouts.names().contains(layout.get())) {
      throw new UsageException(
          command, "no layout '" + layout.get() + "'; there are " + Layouts.names());
    }
    var content = Examples.content(example, layout, units.flatMap(UnitSystem::find));
    if (content.isEmpty()) {
      throw new UsageException(
          command, "no example '" + example.orElse("") + "'; there are " + Examples.NAMES);
    }
    if (Files.exists(file)) {
      throw new RefusedException(
          file.toString(), "is there already", "choose another name; nothing was written");
    }
    var set = new FileSet();
    set.put(file, content.get());
    set.write();
    out.println(file);
    return Outcome.DONE;
  }

  private static String said(String words) {
    return words == null ? "" : words.strip();
  }

  private static PlanRun.Request request(Command command, CommandLine parsed)
      throws UsageException {
    var workbook = path(command, parsed.getArgList().get(0));
    var delays = new ArrayList<RunOptions.DelayOption>();
    for (var d : values(parsed, "delay")) {
      var read = DELAY.matcher(d);
      try {
        if (!read.matches()) throw new NumberFormatException();
        delays.add(
            new RunOptions.DelayOption(
                read.group(1).strip(),
                Integer.parseInt(read.group(2)),
                said(read.group(3)),
                said(read.group(4))));
      } catch (NumberFormatException e) {
        throw new UsageException(
            command,
            "--delay takes EVENT=DAYS, such as delivery=12, with cause and who bears it behind"
                + " commas if you like; found '"
                + d
                + "'");
      }
    }
    var prices = value(parsed, "prices");
    var folder = value(parsed, "out");
    var day = value(parsed, "as-of");
    var seed = value(parsed, "seed");
    var trials = value(parsed, "trials");
    var baseline = value(parsed, "baseline").map(String::strip).filter(b -> !b.isEmpty());
    return new PlanRun.Request(
        workbook,
        prices.isEmpty() ? Optional.empty() : Optional.of(path(command, prices.get())),
        folder.isEmpty() ? Optional.empty() : Optional.of(path(command, folder.get())),
        day.isEmpty() ? Optional.empty() : Optional.of(date(command, day.get())),
        delays,
        seed.isEmpty() ? OptionalLong.empty() : OptionalLong.of(seed(command, seed.get())),
        trials.isEmpty() ? OptionalInt.empty() : OptionalInt.of(trials(command, trials.get())),
        baseline,
        new RunOptions.PathOption(end(parsed, "path-from"), end(parsed, "path-to")),
        parsed.hasOption("crew-calendars"));
  }

  private static Optional<String> end(CommandLine parsed, String option) {
    return value(parsed, option).map(String::strip).filter(e -> !e.isEmpty());
  }

  private static Optional<String> value(CommandLine parsed, String option) {
    return parsed.hasOption(option) ? Optional.of(parsed.getOptionValue(option)) : Optional.empty();
  }

  private static List<String> values(CommandLine parsed, String option) {
    return parsed.hasOption(option) ? List.of(parsed.getOptionValues(option)) : List.of();
  }

  private static long seed(Command command, String text) throws UsageException {
    try {
      return Long.parseLong(text);
    } catch (NumberFormatException e) {
      throw new UsageException(command, "--seed takes a whole number, found '" + text + "'");
    }
  }

  private static int trials(Command command, String text) throws UsageException {
    try {
      int n = Integer.parseInt(text);
      if (n >= 1) return n;
    } catch (NumberFormatException e) {
      // said below, as for a number that is too small
    }
    throw new UsageException(
        command, "--trials takes a whole number from 1 up, found '" + text + "'");
  }

  private static Path path(Command command, String text) throws UsageException {
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw new UsageException(command, "'" + text + "' cannot be a path");
    }
  }

  private static LocalDate date(Command command, String text) throws UsageException {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw new UsageException(
          command, "--as-of takes a date such as 2027-03-01, found '" + text + "'");
    }
  }

  private Outcome refuse(List<Problem> problems) {
    var faults = problems.stream().filter(p -> p.severity() == Problem.Severity.FAULT).toList();
    for (var p : problems) {
      err.println((p.severity() == Problem.Severity.FAULT ? "" : "note: ") + p.message());
    }
    err.println(
        "cornerpost: "
            + faults.size()
            + (faults.size() == 1 ? " fault" : " faults")
            + "; nothing was written");
    return Outcome.INPUT_REFUSED;
  }

  private Outcome usage(Optional<Command> command, String message) {
    err.println("cornerpost: " + message);
    err.print(help(command));
    return Outcome.WRONG_USAGE;
  }

  /** A defect of ours is told in a line; the trace is for whoever asks for it. */
  private Outcome fault(Throwable e) {
    err.println("cornerpost: a fault of the program, not of your workbook: " + e);
    if (Boolean.getBoolean("cornerpost.trace")) e.printStackTrace(err);
    else err.println("Nothing was written. Run with -Dcornerpost.trace=true for details.");
    return Outcome.OUR_FAULT;
  }

  private static String version() {
    var v = Cli.class.getPackage().getImplementationVersion();
    return v == null ? "(built from source)" : v;
  }

  /** How to call a command; of none, which there are. */
  private static String help(Optional<Command> command) {
    var text = new StringWriter();
    var lines = new PrintWriter(text);
    if (command.isPresent()) {
      var c = command.get();
      var formatter = new HelpFormatter();
      formatter.setSyntaxPrefix("Usage: ");
      formatter.setOptionComparator(null); // in the order they are listed here
      formatter.printHelp(
          lines,
          WIDTH,
          "cornerpost " + c.word + " " + c.operand + " [options]",
          c.purpose,
          c.options(),
          2,
          3,
          "",
          false);
    } else {
      lines.println("Usage: cornerpost COMMAND ...");
      lines.println("Costs and dates of a home made from shipping containers, from a workbook.");
      for (var c : Command.values()) {
        lines.println("  " + c.word + " ".repeat(8 - c.word.length()) + c.purpose);
      }
      lines.println("  --help, -h with or without a command; --version, -V");
    }
    lines.flush();
    return text.toString().replace(System.lineSeparator(), "\n");
  }
}
