package cornerpost.takeoff;

import java.util.List;

/** Measures one part of the build. */
public interface TakeoffRule {
  /** The lines of this part; none where it does not apply to the choices. */
  List<Line> measure(Job job);
}
