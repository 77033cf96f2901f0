package cornerpost.price;

import cornerpost.measure.Dimension;
import cornerpost.scope.Party;
import cornerpost.scope.Problem;
import cornerpost.scope.Scope;
import cornerpost.takeoff.Line;
import cornerpost.takeoff.Resource;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Everything the quantities ask of a price book and do not find there, before anything is priced:
 * one run names every item, rate and hours row that is missing or measured in something else.
 */
final class Needs {
  private final PriceBook book;
  private final Scope scope;
  private final Map<String, List<String>> missing = new TreeMap<>();
  private final Map<String, String> advice = new TreeMap<>();

  private Needs(PriceBook book, Scope scope) {
    this.book = book;
    this.scope = scope;
  }

  static List<Problem> missing(Scope scope, List<Line> lines, PriceBook book) {
    var needs = new Needs(book, scope);
    for (var line : lines) {
      for (var r : line.resources()) {
        if (r instanceof Resource.Buy buy) needs.item(line, buy.item());
        else if (r instanceof Resource.Labour labour) needs.labour(line, labour);
      }
    }
    return needs.problems();
  }

  private void item(Line line, String code) {
    var item = book.findItem(code);
    if (item.isEmpty()) {
      note("no item '" + code + "'", "a row for it in a file of items/", line);
    } else if (!item.get().contentUnit().measures(line.quantity().dimension())) {
      note(
          "item '" + code + "' holds " + item.get().contentUnit(),
          "a content of " + line.quantity().dimension() + ", as in " + line.shownIn(),
          line);
    }
  }

  private void labour(Line line, Resource.Labour labour) {
    var row = book.findHours(labour.activity());
    if (row.isEmpty()) {
      note("no hours for '" + labour.activity() + "'", "a row for it in a file of hours/", line);
    } else if (!row.get().per().measures(line.quantity().dimension())) {
      Dimension wanted = line.quantity().dimension();
      note(
          "hours for '" + labour.activity() + "' are per " + row.get().per(),
          "hours per " + wanted + ", as in " + line.shownIn(),
          line);
    }
    var assignment = scope.assignment(labour.trade());
    if (assignment == null) {
      note(
          "nobody for trade '" + labour.trade().label() + "'",
          "a row for it on sheet Who does what",
          line);
    } else if (assignment.party() != Party.OWNER && book.findRate(labour.trade()).isEmpty()) {
      note(
          "no rate for trade '" + labour.trade().label() + "'", "a row for it in labour.csv", line);
    }
  }

  private void note(String found, String expected, Line line) {
    advice.put(found, expected);
    missing.computeIfAbsent(found, k -> new ArrayList<>()).add(line.id());
  }

  private List<Problem> problems() {
    var problems = new ArrayList<Problem>();
    missing.forEach(
        (found, ids) -> {
          var some = ids.stream().distinct().limit(3).toList();
          long more = ids.stream().distinct().count() - some.size();
          problems.add(
              Problem.fault(
                  "Price book " + book.name(),
                  "",
                  found
                      + ", needed by "
                      + String.join(", ", some)
                      + (more > 0 ? " and " + more + " more" : ""),
                  advice.get(found)));
        });
    return problems;
  }
}
