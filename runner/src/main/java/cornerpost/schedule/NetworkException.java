package cornerpost.schedule;

import java.util.List;
import java.util.stream.Collectors;

/** A network that cannot be planned, with every fault found in it. */
public final class NetworkException extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final transient List<NetworkFault> faults;

  public NetworkException(List<NetworkFault> faults) {
    super(faults.stream().map(NetworkFault::message).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  /** One or more. */
  public List<NetworkFault> faults() {
    return faults;
  }
}
