package cornerpost.plan;

import cornerpost.fact.Facts;
import cornerpost.measure.Dimension;
import cornerpost.measure.Ratio;
import cornerpost.measure.Unit;
import cornerpost.price.CostLine;
import cornerpost.price.Estimate;
import cornerpost.price.Item;
import cornerpost.price.PriceBook;
import cornerpost.takeoff.Line;
import cornerpost.takeoff.Piece;
import cornerpost.takeoff.Resource;
import cornerpost.takeoff.cutting.Cutting;
import cornerpost.takeoff.cutting.Stock;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A cutting plan for each item whose lines say what they are cut as. The bar is what the price book
 * sells whole; what it sells by the metre comes at any length. Worked out by an algorithm: no money
 * rests on it, since the bill buys by length and waste, and stays live.
 *
 * <p>Lengths count in tenths of a millimetre: pieces rounded up, the bar down. A piece longer than
 * the bar is a run: whole bars and what is left of it, joined.
 */
final class CuttingPlans {
  private static final BigDecimal TENTHS = BigDecimal.valueOf(10_000);

  private final Facts facts;
  private final PriceBook book;
  private final Map<String, List<CostLine>> billed = new HashMap<>();

  private CuttingPlans(Facts facts, PriceBook book, Estimate estimate) {
    this.facts = facts;
    this.book = book;
    for (var l : estimate.lines()) {
      if (l.item().isEmpty()) continue;
      billed.computeIfAbsent(l.item().get(), k -> new ArrayList<>()).add(l);
    }
  }

  /** In the order in which the lines first ask for the items. */
  static List<CuttingPlan> of(
      Facts facts, Optional<PriceBook> book, List<Line> lines, Estimate estimate) {
    if (book.isEmpty()) return List.of();
    var plans = new CuttingPlans(facts, book.get(), estimate);
    var byItem = new LinkedHashMap<String, List<Line>>();
    for (var line : lines) {
      for (var r : line.resources()) {
        if (r instanceof Resource.Buy buy) {
          byItem.computeIfAbsent(buy.item(), k -> new ArrayList<>()).add(line);
        }
      }
    }
    var all = new ArrayList<CuttingPlan>();
    byItem.forEach(
        (code, of) -> {
          if (of.stream().anyMatch(l -> !l.pieces().isEmpty())) {
            plans.book.findItem(code).flatMap(i -> plans.plan(i, of)).ifPresent(all::add);
          }
        });
    return all;
  }

  private Optional<CuttingPlan> plan(Item item, List<Line> lines) {
    if (!item.contentUnit().dimension().equals(Dimension.LENGTH)) return Optional.empty();
    if (!item.wholeOnly()) return Optional.empty();
    var stockM = item.contentUnit().toBase().applyTo(item.content());
    var stock =
        new Stock(
            tenths(stockM, RoundingMode.FLOOR),
            tenths(facts.figure("cutting.kerf").in(Unit.M), RoundingMode.CEILING));
    var wanted = wanted(lines, stock.length());
    if (wanted.isEmpty()) return Optional.empty();
    var lengths = new ArrayList<Integer>();
    wanted.forEach((length, w) -> lengths.addAll(Collections.nCopies(w.count, length)));
    return Optional.of(row(item, lines, Cutting.of(stock, lengths), lengths, wanted));
  }

  private CuttingPlan row(
      Item item,
      List<Line> lines,
      Cutting cutting,
      List<Integer> lengths,
      TreeMap<Integer, Wanted> wanted) {
    var marks = new LinkedHashMap<Integer, String>();
    var cuts = new ArrayList<CuttingPlan.Cut>();
    wanted.forEach(
        (length, w) -> {
          marks.put(length, mark(marks.size()));
          cuts.add(
              new CuttingPlan.Cut(
                  marks.get(length), metres(length), w.count, String.join("; ", w.what)));
        });
    long cut = lengths.stream().mapToLong(l -> l).sum();
    var stock = metres(cutting.stock().length());
    return new CuttingPlan(
        item.code(),
        item.description(),
        stock,
        metres(cutting.stock().kerf()),
        cuts,
        patterns(cutting, lengths, marks),
        cutting.bars().size(),
        cutting.lowerBound(),
        metres(cut),
        metres(cutting.sawn()),
        metres(cutting.left()),
        unplanned(lines),
        bought(item, stock));
  }

  private static List<CuttingPlan.Pattern> patterns(
      Cutting cutting, List<Integer> lengths, Map<Integer, String> marks) {
    var alike = new LinkedHashMap<List<Integer>, List<Cutting.Bar>>();
    for (var bar : cutting.bars()) {
      alike
          .computeIfAbsent(bar.pieces().stream().map(lengths::get).toList(), k -> new ArrayList<>())
          .add(bar);
    }
    var patterns = new ArrayList<CuttingPlan.Pattern>();
    alike.forEach(
        (pieces, bars) -> {
          var counts = new LinkedHashMap<Integer, Integer>();
          pieces.forEach(l -> counts.merge(l, 1, Integer::sum));
          var parts = new ArrayList<CuttingPlan.Part>();
          counts.forEach((l, n) -> parts.add(new CuttingPlan.Part(marks.get(l), metres(l), n)));
          var bar = bars.get(0);
          patterns.add(
              new CuttingPlan.Pattern(bars.size(), parts, metres(bar.sawn()), metres(bar.left())));
        });
    return patterns;
  }

  private static final class Wanted {
    int count;
    final LinkedHashSet<String> what = new LinkedHashSet<>();
  }

  /** Longest first. */
  private static TreeMap<Integer, Wanted> wanted(List<Line> lines, int bar) {
    var wanted = new TreeMap<Integer, Wanted>(Comparator.reverseOrder());
    for (var line : lines) {
      for (var piece : line.pieces()) {
        int count = piece.count().in(Unit.EACH).setScale(0, RoundingMode.HALF_UP).intValueExact();
        int length = tenths(piece.length().in(Unit.M), RoundingMode.CEILING);
        if (count <= 0 || length <= 0) continue;
        boolean run = length > bar;
        if (run) add(wanted, bar, count * (length / bar), piece, true);
        if (length % bar > 0) add(wanted, length % bar, count, piece, run);
        else if (!run) add(wanted, length, count, piece, false);
      }
    }
    return wanted;
  }

  private static void add(
      Map<Integer, Wanted> wanted, int length, int count, Piece piece, boolean joined) {
    var w = wanted.computeIfAbsent(length, k -> new Wanted());
    w.count += count;
    w.what.add(piece.what() + (joined ? " (part of a longer run)" : ""));
  }

  private static BigDecimal unplanned(List<Line> lines) {
    return lines.stream()
        .filter(l -> l.pieces().isEmpty())
        .map(l -> l.quantity().in(Unit.M))
        .reduce(BigDecimal.ZERO, BigDecimal::add);
  }

  private BigDecimal bought(Item item, BigDecimal stock) {
    var sold = BigDecimal.ZERO;
    for (var l : billed.getOrDefault(item.code(), List.of())) {
      sold = sold.add(l.quantity().in(item.soldBy()));
    }
    var length = sold.multiply(item.contentUnit().toBase().applyTo(item.content()));
    return Days.plain(length.divide(stock, Ratio.PRECISION).setScale(15, RoundingMode.HALF_UP));
  }

  private static int tenths(BigDecimal metres, RoundingMode towards) {
    // a hundredth of a micrometre is noise of inches and feet, not length
    var exact = metres.multiply(TENTHS).setScale(4, RoundingMode.HALF_UP);
    return exact.setScale(0, towards).intValueExact();
  }

  private static BigDecimal metres(long tenths) {
    return BigDecimal.valueOf(tenths, 4);
  }

  /** A to Z, then AA, AB and so on. */
  private static String mark(int place) {
    var letter = String.valueOf((char) ('A' + place % 26));
    return place < 26 ? letter : mark(place / 26 - 1) + letter;
  }
}
