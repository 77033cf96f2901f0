package cornerpost.finance;

import cornerpost.scope.Stage;
import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * A cost line, or a part of one, that falls due on a day.
 *
 * @param costLine id of the cost line
 * @param due the day it is paid
 * @param inPlace the day from which the lender counts it as value in place
 * @param amount with the decimals of the currency
 */
public record Payment(
    String costLine, Stage stage, LocalDate due, LocalDate inPlace, BigDecimal amount) {}
