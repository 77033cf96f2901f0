package cornerpost.finance;

import java.math.BigDecimal;
import java.util.List;

/**
 * What can be drawn today; the arithmetic of Form RD 1924-18.
 *
 * @param inPlace and stored, all stages
 * @param own the borrower's cash, spent first
 * @param part the loan's part of what is in place
 * @param above what was drawn above that less what is held back: nothing is due until the work has
 *     caught up with it
 */
public record DrawRequest(
    BigDecimal inPlace,
    BigDecimal own,
    BigDecimal part,
    BigDecimal held,
    BigDecimal before,
    BigDecimal due,
    BigDecimal above,
    BigDecimal toFinish) {
  /** From what is in place and stored. */
  static DrawRequest of(LoanTerms terms, List<StageValue> stages, BigDecimal drawn, int decimals) {
    BigDecimal inPlace = BigDecimal.ZERO;
    for (var s : stages) inPlace = inPlace.add(s.earned()).add(s.stored());
    var part = inPlace.subtract(terms.cash()).max(BigDecimal.ZERO).min(terms.loan());
    var held = terms.retainage().held(part, terms.loan(), decimals);
    var form = new PaymentRequest(terms.loan(), part, held, drawn);
    return new DrawRequest(
        inPlace.setScale(decimals),
        terms.cash().setScale(decimals),
        part.setScale(decimals),
        held.setScale(decimals),
        drawn.setScale(decimals),
        form.due().max(BigDecimal.ZERO).setScale(decimals),
        form.due().negate().max(BigDecimal.ZERO).setScale(decimals),
        form.toFinish().setScale(decimals));
  }
}
