package cornerpost.schedule;

/**
 * The forward and the backward pass over a network.
 *
 * <p>Cost O(tasks + links). Starts are clamped at the network's start moment: a relation that holds
 * only a finish never pulls a start before it. Method: J. E. Kelley and M. R. Walker,
 * "Critical-path planning and scheduling", EJCC 1959, pp. 160-173, with the relations of {@link
 * Relation}.
 */
public final class Passes {
  private Passes() {}

  public static Timetable of(Network network) {
    var sweep = new Sweep(network.graph());
    sweep.forward(network.graph().minutes);
    return new Timetable(network, sweep, network.graph().minutes);
  }

  /** For many forward passes over one network with changing durations, as a simulation needs. */
  public static Trial trial(Network network) {
    return new Trial(network);
  }
}
