package cornerpost.plan;

import static java.util.Objects.requireNonNull;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;

/**
 * What a run is asked for beside the workbook; each overrules the workbook's own entry.
 *
 * @param asOf the status date
 * @param delays added to those of sheet Delays
 * @param seed of the trials and of the search for a sequence
 * @param trials how many trials the simulation makes, 1 or more
 * @param baseline the name under which to keep this plan as a baseline
 * @param path the events whose longest path is asked for
 * @param fingerprint of workbook, price book and options; carried into the plan
 */
public record RunOptions(
    Optional<LocalDate> asOf,
    List<DelayOption> delays,
    OptionalLong seed,
    OptionalInt trials,
    Optional<String> baseline,
    PathOption path,
    String fingerprint) {

  /** Without keeping a baseline. */
  public RunOptions(
      Optional<LocalDate> asOf,
      List<DelayOption> delays,
      OptionalLong seed,
      OptionalInt trials,
      String fingerprint) {
    this(asOf, delays, seed, trials, Optional.empty(), PathOption.NONE, fingerprint);
  }

  /** Nothing overruled. */
  public static final RunOptions NONE =
      new RunOptions(
          Optional.empty(), List.of(), OptionalLong.empty(), OptionalInt.empty(), "000000000000");

  /**
   * A delay asked for on the command line.
   *
   * @param event id or name of a task or milestone, in any case
   * @param days calendar days by which it comes later
   * @param cause and {@code borneBy} in words; empty if not said
   */
  public record DelayOption(String event, int days, String cause, String borneBy) {
    /** Of no cause that is told. */
    public DelayOption(String event, int days) {
      this(event, days, "", "");
    }

    /** As it is written on the command line. */
    @Override
    public String toString() {
      var words = cause + (borneBy.isEmpty() ? "" : "," + borneBy);
      return event + "=" + days + (words.isEmpty() ? "" : "," + words);
    }
  }

  /**
   * The ends of a path; each overrules the entry on sheet Options.
   *
   * @param from id or name of a task or milestone, in any case, and so {@code to}
   */
  public record PathOption(Optional<String> from, Optional<String> to) {
    /** As sheet Options has it. */
    public static final PathOption NONE = new PathOption(Optional.empty(), Optional.empty());
  }

  public RunOptions {
    requireNonNull(asOf, "asOf");
    requireNonNull(seed, "seed");
    requireNonNull(trials, "trials");
    requireNonNull(baseline, "baseline");
    requireNonNull(path, "path");
    requireNonNull(fingerprint, "fingerprint");
    delays = List.copyOf(delays);
  }

  public RunOptions asOf(LocalDate date) {
    return new RunOptions(Optional.of(date), delays, seed, trials, baseline, path, fingerprint);
  }

  public RunOptions keeping(String name) {
    return new RunOptions(asOf, delays, seed, trials, Optional.of(name), path, fingerprint);
  }

  public RunOptions path(String from, String to) {
    var ends = new PathOption(Optional.of(from), Optional.of(to));
    return new RunOptions(asOf, delays, seed, trials, baseline, ends, fingerprint);
  }

  public RunOptions delaying(List<DelayOption> others) {
    return new RunOptions(asOf, others, seed, trials, baseline, path, fingerprint);
  }
}
