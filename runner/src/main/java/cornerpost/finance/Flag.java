package cornerpost.finance;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * A sign, raised or not.
 *
 * @param figure the amount or the number it is raised by; nothing where it cannot be told
 * @param money whether the figure is an amount
 * @param untold why it cannot be told, in two words; empty where it can
 */
public record Flag(
    Sign sign, boolean raised, BigDecimal figure, boolean money, Optional<String> untold) {

  /** A sign that can be told. */
  Flag(Sign sign, boolean raised, BigDecimal figure, boolean money) {
    this(sign, raised, figure, money, Optional.empty());
  }

  static Flag untold(Sign sign, String why) {
    return new Flag(sign, false, BigDecimal.ZERO, false, Optional.of(why));
  }
}
