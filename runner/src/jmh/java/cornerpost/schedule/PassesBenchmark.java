package cornerpost.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Speed of the passes on networks of a house and of a large site, with calendars and holidays. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(value = 1, jvmArgs = "-Xmx3g")
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class PassesBenchmark {
  /** Number of tasks; five links a task. */
  @Param({"100", "1000", "10000", "100000", "1000000"})
  public int tasks;

  private Network network;
  private Trial trial;
  private long[] minutes;

  /** A random network on weekdays with holidays. */
  @Setup
  public void make() {
    var random = new Random(1);
    var activities = new ArrayList<Activity>();
    var links = new ArrayList<Link>();
    for (int i = 0; i < tasks; i++) {
      activities.add(Activity.working("" + i, "task", 60 + random.nextInt(2400)));
      for (int k = 0; k < 5 && i > 0; k++) {
        links.add(Link.of("" + (i - 1 - random.nextInt(Math.min(i, 200))), "" + i));
      }
    }
    network =
        Network.of(
            activities,
            links,
            List.of(),
            Networks.MONDAY.atStartOfDay(),
            WorkCalendar.weekdays(RandomNetworks.HOLIDAYS));
    trial = Passes.trial(network);
    minutes = activities.stream().mapToLong(Activity::minutes).toArray();
  }

  /** One forward pass, as a simulation runs it. */
  @Benchmark
  public long forwardPass() {
    trial.run(minutes);
    return trial.finishMinute();
  }

  /** Early and late dates, floats, drivers and shown days of all tasks. */
  @Benchmark
  public Timetable wholeTimetable() {
    return Passes.of(network);
  }
}
