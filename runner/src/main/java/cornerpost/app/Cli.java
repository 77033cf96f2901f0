package cornerpost.app;

import cornerpost.measure.UnitSystem;
import cornerpost.plan.RunOptions;
import cornerpost.scope.Problem;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;

/**
 * The commands. Results go to standard output, messages to standard error; the exit status says how
 * it went ({@link Outcome}).
 */
public final class Cli {
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
    var commands = new CommandLine(specification());
    commands.setCaseInsensitiveEnumValuesAllowed(true);
    try {
      var parsed = commands.parseArgs(args);
      return dispatch(commands, parsed);
    } catch (ParameterException e) {
      return usage(e.getCommandLine(), e.getMessage());
    } catch (RefusedException e) {
      return refuse(e.problems());
    } catch (OutOfMemoryError e) {
      err.println("cornerpost: there is not enough memory for this workbook");
      return Outcome.OUR_FAULT;
    } catch (IOException | RuntimeException | StackOverflowError e) {
      return fault(e);
    }
  }

  private Outcome dispatch(CommandLine commands, ParseResult parsed)
      throws RefusedException, IOException {
    if (parsed.isUsageHelpRequested()) {
      out.print(commands.getUsageMessage(CommandLine.Help.Ansi.OFF));
      return Outcome.DONE;
    }
    if (parsed.isVersionHelpRequested()) {
      out.println("cornerpost " + version());
      return Outcome.DONE;
    }
    if (!parsed.hasSubcommand()) return usage(commands, "a command is missing");
    var sub = parsed.subcommand();
    var command = sub.commandSpec().commandLine();
    if (sub.isUsageHelpRequested()) {
      out.print(command.getUsageMessage(CommandLine.Help.Ansi.OFF));
      return Outcome.DONE;
    }
    return switch (sub.commandSpec().name()) {
      case "plan" -> plan(command, sub);
      case "check" -> check(command, sub);
      case "new" -> create(command, sub);
      default -> throw new IllegalStateException(sub.commandSpec().name());
    };
  }

  private Outcome plan(CommandLine command, ParseResult parsed)
      throws RefusedException, IOException {
    var request = request(command, parsed);
    var result = new PlanRun(home, err).plan(request);
    for (var p : result.remarks()) err.println("note: " + p.message());
    for (var line : result.summary()) out.println(line);
    for (var file : result.files()) out.println(file);
    return Outcome.DONE;
  }

  private Outcome check(CommandLine command, ParseResult parsed)
      throws RefusedException, IOException {
    var remarks = new PlanRun(home, err).check(request(command, parsed));
    for (var p : remarks) err.println("note: " + p.message());
    out.println(
        "No faults found" + (remarks.isEmpty() ? "." : "; " + remarks.size() + " to note."));
    return Outcome.DONE;
  }

  private Outcome create(CommandLine command, ParseResult parsed)
      throws RefusedException, IOException {
    var file = path(command, parsed.matchedPositionalValue(0, ""));
    var example = Optional.ofNullable(parsed.<String>matchedOptionValue("--example", null));
    var units = Optional.ofNullable(parsed.<String>matchedOptionValue("--units", null));
    if (example.isPresent() && units.isPresent()) {
      return usage(command, "--example and --units do not go together: an example has its units");
    }
    if (!file.toString().endsWith(".xlsx")) {
      return usage(command, "the new file's name must end in .xlsx");
    }
    if (units.isPresent() && UnitSystem.find(units.get()).isEmpty()) {
      return usage(command, "--units takes metric or us, found '" + units.get() + "'");
    }
    var content = Examples.content(example, units.flatMap(UnitSystem::find));
    if (content.isEmpty()) {
      return usage(command, "no example '" + example.orElse("") + "'; there are " + Examples.NAMES);
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

  private PlanRun.Request request(CommandLine command, ParseResult parsed) {
    var workbook = path(command, parsed.matchedPositionalValue(0, ""));
    var delays = new ArrayList<RunOptions.DelayOption>();
    for (var d : parsed.matchedOptionValue("--delay", List.<String>of())) {
      int equals = d.lastIndexOf('=');
      try {
        if (equals < 1) throw new NumberFormatException();
        int days = Integer.parseInt(d.substring(equals + 1).strip());
        delays.add(new RunOptions.DelayOption(d.substring(0, equals).strip(), days));
      } catch (NumberFormatException e) {
        throw new ParameterException(
            command, "--delay takes EVENT=DAYS, such as delivery=12; found '" + d + "'");
      }
    }
    Long seed = parsed.matchedOptionValue("--seed", null);
    Integer trials = parsed.matchedOptionValue("--trials", null);
    return new PlanRun.Request(
        workbook,
        Optional.ofNullable(parsed.<String>matchedOptionValue("--prices", null))
            .map(p -> path(command, p)),
        Optional.ofNullable(parsed.<String>matchedOptionValue("--out", null))
            .map(p -> path(command, p)),
        Optional.ofNullable(parsed.<String>matchedOptionValue("--as-of", null))
            .map(d -> date(command, d)),
        delays,
        seed == null ? OptionalLong.empty() : OptionalLong.of(seed),
        trials == null ? OptionalInt.empty() : OptionalInt.of(atLeastOne(command, trials)));
  }

  private static Path path(CommandLine command, String text) {
    try {
      return Path.of(text);
    } catch (InvalidPathException e) {
      throw new ParameterException(command, "'" + text + "' cannot be a path");
    }
  }

  private static LocalDate date(CommandLine command, String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeParseException e) {
      throw new ParameterException(
          command, "--as-of takes a date such as 2027-03-01, found '" + text + "'");
    }
  }

  private static int atLeastOne(CommandLine command, int n) {
    if (n < 1) throw new ParameterException(command, "--trials must be 1 or more, found " + n);
    return n;
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

  private Outcome usage(CommandLine command, String message) {
    err.println("cornerpost: " + message);
    err.print(command.getUsageMessage(CommandLine.Help.Ansi.OFF));
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

  private static CommandSpec specification() {
    var top = CommandSpec.create().name("cornerpost").mixinStandardHelpOptions(true);
    top.usageMessage()
        .description("Costs and dates of a home made from shipping containers, from a workbook.");
    top.addSubcommand("plan", planning("plan", "Plan a workbook and write the four files."));
    top.addSubcommand(
        "check", planning("check", "List every problem of a workbook; write nothing."));
    var create = CommandSpec.create().name("new");
    create.usageMessage().description("Make a workbook to fill in, or an example.");
    create.addOption(help());
    create.addPositional(
        PositionalParamSpec.builder()
            .paramLabel("FILE")
            .type(String.class)
            .index("0")
            .required(true)
            .description("the file to make (.xlsx)")
            .build());
    create.addOption(text("--example", "NAME", "one of " + String.join(", ", Examples.NAMES)));
    create.addOption(text("--units", "metric|us", "units of a blank workbook (metric)"));
    top.addSubcommand("new", create);
    return top;
  }

  private static CommandSpec planning(String name, String description) {
    var spec = CommandSpec.create().name(name);
    spec.usageMessage().description(description);
    spec.addOption(help());
    spec.addPositional(
        PositionalParamSpec.builder()
            .paramLabel("WORKBOOK")
            .type(String.class)
            .index("0")
            .required(true)
            .description("the filled-in workbook (.xlsx)")
            .build());
    spec.addOption(text("--prices", "FOLDER", "the price book (else the one sheet Project names)"));
    if (name.equals("plan")) {
      spec.addOption(text("--out", "FOLDER", "where to write (else beside the workbook)"));
    }
    spec.addOption(text("--as-of", "DATE", "status date, such as 2027-03-01"));
    spec.addOption(
        OptionSpec.builder("--delay")
            .paramLabel("EVENT=DAYS")
            .type(List.class)
            .auxiliaryTypes(String.class)
            .arity("1")
            .description("an event comes later, such as delivery=12; may be repeated")
            .build());
    spec.addOption(
        OptionSpec.builder("--seed")
            .paramLabel("N")
            .type(Long.class)
            .description("seed of the trials")
            .build());
    spec.addOption(
        OptionSpec.builder("--trials")
            .paramLabel("N")
            .type(Integer.class)
            .description("number of trials")
            .build());
    return spec;
  }

  private static OptionSpec help() {
    return OptionSpec.builder("-h", "--help").usageHelp(true).description("show this help").build();
  }

  private static OptionSpec text(String name, String label, String description) {
    return OptionSpec.builder(name)
        .paramLabel(label)
        .type(String.class)
        .description(description)
        .build();
  }
}
