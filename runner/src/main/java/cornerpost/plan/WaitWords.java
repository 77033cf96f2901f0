package cornerpost.plan;

import cornerpost.measure.Spoken;
import cornerpost.schedule.LagUnit;
import cornerpost.schedule.Link;
import cornerpost.schedule.Timing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Says in words what sets the planned start of a task. */
final class WaitWords {
  /**
   * What a task waits for.
   *
   * @param ids of the tasks waited for
   */
  record Why(String text, List<String> ids) {}

  private final Sequence sequence;
  private final Map<String, String> delays;
  private final LocalDate status;
  private final Set<Link> links;

  /**
   * @param delays what is said of a task that starts where a delay put it, by task id
   */
  WaitWords(Sequence sequence, Map<String, String> delays, LocalDate status) {
    this.sequence = sequence;
    this.delays = Map.copyOf(delays);
    this.status = status;
    links = new HashSet<>(sequence.network().links());
  }

  Why of(String id) {
    var timing = sequence.ordered().timing(id);
    var progress = timing.activity().progress();
    if (progress.finish().isPresent()) return new Why("done", List.of());
    if (progress.start().isPresent()) return new Why("under way", List.of());
    var said = new LinkedHashSet<String>();
    var ids = new LinkedHashSet<String>();
    for (var link : timing.drivers()) {
      said.add(of(link));
      ids.add(link.before());
    }
    if (said.isEmpty()) said.add(date(timing));
    return new Why(String.join("; ", said), new ArrayList<>(ids));
  }

  /** What one link, or one crew on its way from task to task, makes the task after wait for. */
  String of(Link link) {
    var name = sequence.network().get(link.before()).name();
    if (!links.contains(link)) {
      return "waits for crew "
          + String.join(" and crew ", sequence.crewsBetween(link.before(), link.after()))
          + ", busy with "
          + name;
    }
    var what =
        switch (link.relation()) {
          case FINISH_TO_START -> "waits for " + name;
          case START_TO_START -> "waits for the start of " + name;
          case FINISH_TO_FINISH -> "finishes after " + name;
          case START_TO_FINISH -> "finishes after the start of " + name;
        };
    return link.lagMinutes() == 0 ? what : what + lag(link);
  }

  private String lag(Link link) {
    boolean elapsed = link.lagUnit() == LagUnit.ELAPSED_MINUTES;
    long day = elapsed ? 24 * 60 : sequence.network().calendarOf(link.after()).dayMinutes();
    var days = Days.shown(Math.abs(link.lagMinutes()), day);
    var unit = elapsed ? " elapsed d" : " d";
    return link.lagMinutes() > 0
        ? ", and " + days + unit + " more"
        : ", but " + days + unit + " sooner";
  }

  private String date(Timing timing) {
    var id = timing.id();
    var network = sequence.network();
    var own = network.get(id).notBefore();
    if (own.isPresent()
        && own.get().isAfter(network.start())
        && !own.get().isBefore(status.atStartOfDay())) {
      var delay = delays.get(id);
      return delay != null ? delay : "not before " + Spoken.day(own.get().toLocalDate());
    }
    if (status.atStartOfDay().isAfter(network.start())) return "can go on from the status date";
    return "starts with the project";
  }
}
