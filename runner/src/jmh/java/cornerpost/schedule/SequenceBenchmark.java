package cornerpost.schedule;

import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Schedules a second of the crew-limited search on one thread, exact search and windows included, on
 * hard PSPLIB instances that it does not prove within the count.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class SequenceBenchmark {
  private static final int SCHEDULES = 6_000;

  /** Set and file of the instance. */
  @Param({"j30/j3013_1.sm", "j60/j6013_1.sm", "j120/j12016_1.sm"})
  public String instance;

  /** One calendar for all tasks, or every second task on weekdays. */
  @Param({"one", "two"})
  public String calendars;

  private Network network;

  /** Reads the instance. */
  @Setup
  public void read() {
    String[] parts = instance.split("/");
    Network days = Networks.psplib(parts[0], parts[1]).network(Networks.EVERY_DAY);
    var weekdays = WorkCalendar.weekdays(List.of());
    var mixed =
        IntStream.range(0, days.activities().size())
            .mapToObj(i -> i % 2 == 0 ? days.activities().get(i) : days.activities().get(i).in(weekdays))
            .toList();
    network =
        calendars.equals("one")
            ? days
            : Network.of(mixed, days.links(), days.crews(), days.start(), Networks.EVERY_DAY);
  }

  /** The search with a budget of that many schedules. */
  @Benchmark
  @OperationsPerInvocation(SCHEDULES)
  public CrewSchedule schedules() {
    var schedule = Sequencer.sequence(network, Budget.schedules(SCHEDULES), 1);
    if (schedule.schedulesBuilt() < SCHEDULES) {
      throw new IllegalStateException("ended before the count, after " + schedule.schedulesBuilt());
    }
    return schedule;
  }
}
