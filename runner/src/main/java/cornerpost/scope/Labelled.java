package cornerpost.scope;

import java.util.Arrays;
import java.util.Optional;

/** A value offered in a drop-down under a plain label. */
public interface Labelled {
  String label();

  static <E extends Enum<E> & Labelled> Optional<E> find(Class<E> type, String label) {
    return Arrays.stream(type.getEnumConstants())
        .filter(e -> e.label().equalsIgnoreCase(label.strip()))
        .findFirst();
  }
}
