package cornerpost.report;

import cornerpost.plan.Plan;
import cornerpost.price.CostLine;
import cornerpost.trace.Figure;
import cornerpost.trace.Leaf;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The leaves that a plan's numbers rest on, each once, sorted by key. */
record Traced(List<Leaf> choices, List<Leaf> prices, List<Leaf> facts, List<Leaf> workedOut) {
  static Traced of(Plan plan) {
    var rows = new HashSet<String>();
    plan.lines().forEach(l -> rows.add(l.id()));
    plan.estimate().lines().forEach(l -> rows.add(l.id()));
    var all = new LinkedHashSet<Leaf>();
    plan.lines().forEach(l -> add(l.quantity(), rows, all));
    for (var l : plan.estimate().lines()) {
      for (var f : figures(l)) add(f, rows, all);
    }
    return new Traced(
        of(all, Set.of(Leaf.Kind.CHOICE, Leaf.Kind.ASSUMED)),
        of(all, Set.of(Leaf.Kind.PRICE)),
        of(all, Set.of(Leaf.Kind.FACT)),
        of(all, Set.of(Leaf.Kind.WORKED)));
  }

  private static List<Figure> figures(CostLine line) {
    return List.of(line.quantity(), line.bookRate(), line.rate(), line.amount());
  }

  /** A name that is a row of its own brings its leaves with that row; others bring them here. */
  private static void add(Figure figure, Set<String> rows, Set<Leaf> all) {
    all.addAll(rows.containsAll(figure.names()) ? figure.leaves() : figure.allLeaves());
  }

  private static List<Leaf> of(Set<Leaf> all, Set<Leaf.Kind> kinds) {
    var sorted =
        new TreeSet<Leaf>(
            Comparator.comparing(Leaf::key)
                .thenComparing(Leaf::name)
                .thenComparing(Leaf::amount)
                .thenComparing(l -> l.unit().symbol()));
    all.stream().filter(l -> kinds.contains(l.kind())).forEach(sorted::add);
    return List.copyOf(new ArrayList<>(sorted));
  }
}
