package cornerpost.takeoff;

import cornerpost.measure.Unit;
import cornerpost.scope.Room;
import cornerpost.scope.RoomUse;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.VentilationKind;
import java.util.ArrayList;
import java.util.List;

/**
 * Outdoor air for the whole dwelling by IRC M1505.4.3, all the time: a share for its floor and one
 * for each bedroom and one more, and never less than the least of the table there; beside it what
 * the fans chosen move. Airflows are numbers in cubic feet a minute, as the rule is written.
 */
final class Ventilation {
  private Ventilation() {}

  static void rows(Job job, Inside in, Tally out) {
    var asked =
        job.measured("inside/floor-area")
            .times(job.fact("ventilation.per-area"))
            .plus(job.fact("ventilation.per-bedroom").times(in.sleeping().size() + 1L))
            .max(job.fact("ventilation.least"));
    boolean recovery =
        job.scope().services().option(ServicesQuestions.VENTILATION, VentilationKind.class)
            == VentilationKind.RECOVERY;
    var moved =
        recovery
            ? job.fact("ventilation.recovery-unit")
            : job.fact("ventilation.fan").times(fanned(in).size());
    out.add(
        "climate/ventilation/rate",
        "Outdoor air that the dwelling asks for, cfm",
        asked,
        Unit.ONE,
        "IRC M1505.4.3: 0.01 cfm a sq ft + 7.5 cfm for each bedroom and one more, 30 cfm at least");
    out.add(
        "climate/ventilation/capacity",
        "Air that the fans chosen move, cfm",
        moved,
        Unit.ONE,
        recovery ? "the unit at its middle step" : "extract fans x airflow of one");
  }

  /** An extract fan in each bathroom and utility room. */
  static List<Room> fanned(Inside in) {
    var rooms = new ArrayList<>(in.bathrooms());
    rooms.addAll(in.rooms(RoomUse.UTILITY));
    return List.copyOf(rooms);
  }
}
