package cornerpost.work;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.price.Estimate;
import cornerpost.price.Goods;
import cornerpost.price.Item;
import cornerpost.price.PriceBook;
import cornerpost.price.SupplierGroup;
import cornerpost.scope.Stage;
import cornerpost.scope.SuppliedCalendars;
import cornerpost.takeoff.BuildTask;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * One order for each kind of supplier whose goods take time to come: named by those goods, as long
 * as the slowest of them, and done before the first tasks that need any. It waits for the drawings,
 * or for the choice of the boxes; and for the permit, unless the owner orders early: what is then
 * committed before the permit is for the checks to say.
 */
final class OrderTasks {
  private static final String NAME = "Order: ";

  private final Facts facts;
  private final PriceBook book;
  private final BuildSequence sequence;
  private final Set<BuildTask> present;
  private final boolean beforePermit;
  private final Map<SupplierGroup, Set<BuildTask>> needs = new EnumMap<>(SupplierGroup.class);
  private final Map<SupplierGroup, Item> slowest = new EnumMap<>(SupplierGroup.class);

  /** What the goods of an order cost, by their descriptions. */
  private final Map<SupplierGroup, Map<String, BigDecimal>> goods =
      new EnumMap<>(SupplierGroup.class);

  /** Kinds of supplier of which something is bought apart from the order. */
  private final Set<SupplierGroup> apart = EnumSet.noneOf(SupplierGroup.class);

  /**
   * @param before tasks that must be done before it is ordered; none for the start of the project
   * @param first tasks that wait for the goods
   */
  record Order(WorkTask task, List<BuildTask> before, List<BuildTask> first) {}

  OrderTasks(
      Estimate estimate,
      PriceBook book,
      Facts facts,
      BuildSequence sequence,
      Set<BuildTask> present,
      boolean beforePermit) {
    this.facts = facts;
    this.book = book;
    this.sequence = sequence;
    this.present = present;
    this.beforePermit = beforePermit;
    for (var line : estimate.lines()) {
      var item = line.item().flatMap(book::findItem).filter(i -> !i.kind().indirect());
      if (item.isEmpty() || Presence.isNothing(line)) continue;
      var group = item.get().group();
      var task = line.task().flatMap(BuildTask::find).filter(present::contains);
      if (task.isEmpty() || !isOrdered(item.get(), facts)) {
        apart.add(group);
        continue;
      }
      goods
          .computeIfAbsent(group, k -> new TreeMap<>())
          .merge(item.get().description(), line.money(), BigDecimal::add);
      needs.computeIfAbsent(group, k -> EnumSet.noneOf(BuildTask.class)).add(task.get());
      slowest.merge(group, item.get(), (a, b) -> b.leadDays() > a.leadDays() ? b : a);
    }
    // The boxes themselves, crane and truck come to the yard or to the site.
    needs.computeIfPresent(
        SupplierGroup.BOXES,
        (g, tasks) -> {
          tasks.add(
              present.contains(BuildTask.YARD_STEELWORK)
                  ? BuildTask.YARD_STEELWORK
                  : BuildTask.DELIVERY);
          return tasks;
        });
  }

  /**
   * What is in stock round the corner needs no order of its own, nor do fees and hire by the month;
   * the wait behind a connection fee is a task already.
   */
  static boolean isOrdered(Item item, Facts facts) {
    var leastDays = facts.figure("time.order.least").in(Unit.ONE);
    return !item.kind().indirect() && BigDecimal.valueOf(item.leadDays()).compareTo(leastDays) >= 0;
  }

  List<Order> make() {
    var orders = new ArrayList<Order>();
    needs.forEach(
        (group, tasks) -> {
          var first = sequence.first(tasks);
          orders.add(new Order(task(group), before(group, first), first));
        });
    return orders;
  }

  /** {@code order/windows-and-doors}. */
  static String id(SupplierGroup group) {
    return idOfGroup(group.label());
  }

  private static String idOfGroup(String label) {
    return "order/" + label.strip().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
  }

  /**
   * The id of an order that goes by the name of its kind of supplier, {@code Order: windows and
   * doors}: the goods in its own name change with the house. Any other text as it is.
   */
  static String idOf(String idOrName) {
    var text = idOrName.strip();
    return text.regionMatches(true, 0, NAME, 0, NAME.length())
        ? idOfGroup(text.substring(NAME.length()))
        : text;
  }

  /** What is ordered, dearest first. */
  private String name(SupplierGroup group) {
    var dearest =
        goods.get(group).entrySet().stream()
            .sorted(Map.Entry.<String, BigDecimal>comparingByValue().reversed())
            .map(Map.Entry::getKey)
            .toList();
    return NAME + Goods.of(group, dearest, !apart.contains(group));
  }

  private List<BuildTask> before(SupplierGroup group, List<BuildTask> first) {
    var settled =
        switch (group) {
          case BOXES -> List.of(BuildTask.CHOOSE_BOXES);
          case STEEL -> List.of(BuildTask.ENGINEERING, BuildTask.DRAWINGS);
          default -> List.of(BuildTask.DRAWINGS, BuildTask.ENGINEERING);
        };
    var possible = settled.stream().filter(b -> canComeBefore(b, first)).limit(1);
    var permit =
        Stream.of(BuildTask.PERMIT_GRANTED).filter(b -> !beforePermit && canComeBefore(b, first));
    return Stream.concat(possible, permit).toList();
  }

  private boolean canComeBefore(BuildTask b, List<BuildTask> first) {
    return present.contains(b) && first.stream().noneMatch(f -> f == b || sequence.reaches(f, b));
  }

  /** Why an order waits for a task. */
  static String reason(BuildTask before) {
    return before == BuildTask.PERMIT_GRANTED
        ? "no money is committed before the permit"
        : "what to order is settled there";
  }

  private WorkTask task(SupplierGroup group) {
    var item = slowest.get(group);
    long lead = item.leadDays() * 24L * 60;
    return new WorkTask(
        id(group),
        name(group),
        Stage.PREPARATION,
        WorkTask.Kind.ORDER,
        Optional.empty(),
        Optional.empty(),
        lead,
        true,
        SuppliedCalendars.ROUND_THE_CLOCK,
        Map.of(),
        Optional.empty(),
        Optional.empty(),
        part(lead, "time.order.low"),
        part(lead, "time.order.high"),
        0,
        false,
        item.leadDays()
            + " calendar days from order to site, the longest: "
            + item.description()
            + " (price book "
            + book.name()
            + ")",
        List.of());
  }

  private long part(long minutes, String fact) {
    return BigDecimal.valueOf(minutes).multiply(facts.figure(fact).in(Unit.ONE)).longValue();
  }
}
