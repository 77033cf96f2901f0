package cornerpost.work;

import cornerpost.fact.Facts;
import cornerpost.measure.Unit;
import cornerpost.price.Estimate;
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

/**
 * One order for each kind of supplier whose goods take time to come: as long as the slowest of
 * them, and done before the first tasks that need any. It waits for the drawings, or for the choice
 * of the boxes; not for the permit, since who orders late waits: what is committed before the
 * permit is for the checks to say.
 */
final class OrderTasks {
  private final Facts facts;
  private final PriceBook book;
  private final BuildSequence sequence;
  private final Set<BuildTask> present;
  private final Map<SupplierGroup, Set<BuildTask>> needs = new EnumMap<>(SupplierGroup.class);
  private final Map<SupplierGroup, Item> slowest = new EnumMap<>(SupplierGroup.class);

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
      Set<BuildTask> present) {
    this.facts = facts;
    this.book = book;
    this.sequence = sequence;
    this.present = present;
    var least = facts.figure("time.order.least").in(Unit.ONE);
    for (var line : estimate.lines()) {
      var item = line.item().flatMap(book::findItem).filter(i -> isOrdered(i, least));
      if (item.isEmpty() || Presence.isNothing(line)) continue;
      var task = line.task().flatMap(BuildTask::find).filter(present::contains);
      if (task.isEmpty()) continue;
      var group = item.get().group();
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
   * What is in stock round the corner needs no order of its own; the wait behind a connection fee
   * is a task already.
   */
  private static boolean isOrdered(Item item, BigDecimal leastDays) {
    boolean connection = item.group() == SupplierGroup.UTILITIES && item.kind() == Item.Kind.FEE;
    return !connection && BigDecimal.valueOf(item.leadDays()).compareTo(leastDays) >= 0;
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
    return "order/" + group.label().toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
  }

  private List<BuildTask> before(SupplierGroup group, List<BuildTask> first) {
    var settled =
        switch (group) {
          case BOXES -> List.of(BuildTask.CHOOSE_BOXES);
          case STEEL -> List.of(BuildTask.ENGINEERING, BuildTask.DRAWINGS);
          default -> List.of(BuildTask.DRAWINGS, BuildTask.ENGINEERING);
        };
    return settled.stream()
        .filter(present::contains)
        .filter(b -> first.stream().noneMatch(f -> f == b || sequence.reaches(f, b)))
        .limit(1)
        .toList();
  }

  private WorkTask task(SupplierGroup group) {
    var item = slowest.get(group);
    long lead = item.leadDays() * 24L * 60;
    return new WorkTask(
        id(group),
        "Order: " + group.label().toLowerCase(Locale.ROOT),
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
