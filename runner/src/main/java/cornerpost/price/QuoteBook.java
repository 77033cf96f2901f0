package cornerpost.price;

import cornerpost.measure.Spoken;
import cornerpost.scope.Problem;
import cornerpost.scope.Quote;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The quotes in use, one for a line at most. */
final class QuoteBook {
  private final Map<String, Quote> used = new LinkedHashMap<>();

  /**
   * @param statusDate the day the plan speaks from: quotes that ended before it are remarked
   */
  QuoteBook(List<Quote> quotes, LocalDate statusDate, List<Problem> problems) {
    for (var quote : quotes) {
      if (!quote.used()) continue;
      var before = used.putIfAbsent(quote.line(), quote);
      if (before != null) {
        problems.add(
            Costing.fault(
                quote.cell(),
                "a second used quote for '" + quote.line() + "'",
                "one used quote for a line; the other is in " + before.cell()));
      } else if (quote.validUntil().map(statusDate::isAfter).orElse(false)) {
        problems.add(
            Costing.remark(
                quote.cell(),
                "the quote of "
                    + quote.supplier()
                    + " ended on "
                    + Spoken.day(quote.validUntil().get()),
                "it is still used; ask whether it holds on " + Spoken.day(statusDate)));
      }
    }
  }

  Optional<Quote> find(String line) {
    return Optional.ofNullable(used.get(line));
  }

  /** Remarks on every quote, used or not, that is for no line that can be quoted. */
  static void reportStray(List<Quote> quotes, Set<String> quotable, List<Problem> problems) {
    for (var quote : quotes) {
      if (quotable.contains(quote.line())) continue;
      problems.add(
          Costing.remark(
              quote.cell(),
              "a quote for '" + quote.line() + "', which is no line of this plan that is paid for",
              "it is kept and not used; maybe its line has another id now, see Cost plan"));
    }
  }
}
