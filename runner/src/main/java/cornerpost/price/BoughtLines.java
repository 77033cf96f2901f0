package cornerpost.price;

import cornerpost.measure.Unit;
import cornerpost.scope.Stage;
import cornerpost.takeoff.BuildTask;
import cornerpost.takeoff.Line;
import cornerpost.takeoff.Resource;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is bought: net quantity with waste, in the unit it is sold by. An item sold whole is rounded
 * up in its line if one line alone uses it; where several share it, each keeps its part and one
 * line {@code packs:<item>} adds the rest up to whole ones.
 */
final class BoughtLines {
  private final Costing costing;
  private final PriceBook book;
  private final Map<String, List<Use>> uses = new LinkedHashMap<>();

  private record Use(Line line, Resource.Buy buy, String id) {}

  BoughtLines(Costing costing, PriceBook book, List<Line> lines) {
    this.costing = costing;
    this.book = book;
    for (var line : lines) {
      for (var r : line.resources()) {
        if (r instanceof Resource.Buy buy) {
          var use = new Use(line, buy, line.id() + ":" + buy.item());
          uses.computeIfAbsent(buy.item(), k -> new ArrayList<>()).add(use);
        }
      }
    }
  }

  /** The line of one thing bought; if it is the last of those that share packs, theirs too. */
  void add(Line line, Resource.Buy buy) {
    var item = book.findItem(buy.item()).orElseThrow();
    var sharing = uses.get(item.code());
    var quantity = item.needed(line.named(), buy.waste());
    if (item.wholeOnly() && sharing.size() == 1) quantity = quantity.roundedUpTo(item.soldBy());
    addPriced(
        line.id() + ":" + item.code(),
        Optional.of(line.id()),
        line.stage(),
        line.description() + ": " + item.description(),
        quantity,
        item,
        buy.task());
    if (item.wholeOnly() && sharing.size() > 1 && sharing.get(sharing.size() - 1).line == line) {
      addPacks(item, sharing);
    }
  }

  private static String plain(Item item) {
    return item.content().toPlainString();
  }

  private static Figure withWaste(Figure net, Resource.Buy buy) {
    return buy.waste().map(w -> net.times(Figure.count(1).plus(w))).orElse(net);
  }

  /** Lines quoted as a whole bring their own packs; they take no part. */
  private void addPacks(Item item, List<Use> sharing) {
    var open = sharing.stream().filter(u -> !costing.quotedWhole(u.id)).toList();
    if (open.isEmpty()) return;
    // Lines of equal waste are added first: the formula stays short where many share a pack.
    var byWaste = new LinkedHashMap<String, List<Use>>();
    for (var u : open) {
      var key = u.buy.waste().map(Figure::inWords).orElse("");
      byWaste.computeIfAbsent(key, k -> new ArrayList<>()).add(u);
    }
    var parts = new ArrayList<Figure>();
    for (var group : byWaste.values()) {
      var net =
          Figure.sum(
              group.get(0).line.quantity().dimension(),
              group.stream().map(u -> u.line.named()).toList());
      parts.add(withWaste(net, group.get(0).buy));
    }
    var all =
        Figure.sum(item.contentUnit().dimension(), parts)
            .over(Figure.constant(plain(item), item.contentUnit()))
            .times(Figure.constant("1", item.soldBy()));
    var rest = all.roundedUpTo(item.soldBy()).minus(all);
    var first = open.get(0);
    addPriced(
        "packs:" + item.code(),
        Optional.empty(),
        first.line.stage(),
        "Up to whole ones: " + item.description(),
        rest,
        item,
        first.buy.task());
  }

  private void addPriced(
      String id,
      Optional<String> quantityId,
      Stage stage,
      String description,
      Figure quantity,
      Item item,
      BuildTask task) {
    var price = book.price(item, costing.point);
    Unit unit = item.soldBy();
    costing.add(
        new Costing.Draft(
            id,
            quantityId,
            stage,
            kind(item.kind()),
            description,
            quantity,
            unit,
            price,
            price,
            CostLine.Basis.PRICE_BOOK,
            costing.partyOf(task.trade()),
            Optional.of(task.id()),
            Optional.of(item.code()),
            item.taxed(),
            quantity.in(unit).multiply(item.low()),
            quantity.in(unit).multiply(item.high())));
  }

  private static CostLine.Kind kind(Item.Kind kind) {
    return switch (kind) {
      case MATERIAL -> CostLine.Kind.MATERIAL;
      case PLANT -> CostLine.Kind.PLANT;
      case SERVICE -> CostLine.Kind.SERVICE;
      case FEE -> CostLine.Kind.FEE;
      case TIME -> CostLine.Kind.TIME;
    };
  }
}
