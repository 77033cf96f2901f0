package cornerpost.report;

import cornerpost.plan.LeftOut;
import cornerpost.plan.Plan;
import cornerpost.price.CostLine;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Line;
import cornerpost.trace.Leaf;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Where each figure comes from, what is assumed, and what is left out. */
final class SourcesSection {
  /** A measured quantity. */
  public record QuantityRow(
      String anchor,
      String id,
      String description,
      String value,
      String derivation,
      String because,
      List<Source> sources) {}

  /** A cost line. */
  public record CostRow(
      String anchor,
      String id,
      String quantityLink,
      String description,
      String quantity,
      String rate,
      String amount,
      String basis,
      String party,
      String derivation) {}

  /** Rows of a stage. */
  public record StageRows(String stage, List<QuantityRow> quantities, List<CostRow> lines) {}

  /** A leaf, with a link where it stands further down. */
  public record Source(String text, String link) {}

  /** A price, a fact, an assumption. */
  public record LeafRow(String anchor, String key, String name, String amount, String source) {}

  private final Plan plan;
  private final Set<String> rows = new HashSet<>();

  SourcesSection(Plan plan) {
    this.plan = plan;
    plan.lines().forEach(l -> rows.add(l.id()));
  }

  void into(Map<String, Object> model) {
    var stages = new ArrayList<StageRows>();
    for (var s : Stage.values()) {
      var quantities =
          plan.lines().stream().filter(l -> l.stage() == s).map(this::quantity).toList();
      var lines =
          plan.estimate().lines().stream().filter(l -> l.stage() == s).map(this::line).toList();
      if (!quantities.isEmpty() || !lines.isEmpty()) {
        stages.add(new StageRows(s.label(), quantities, lines));
      }
    }
    model.put("sources", stages);
    model.put("hasQuantities", !plan.lines().isEmpty());
    var traced = Traced.of(plan);
    model.put("prices", leaves(traced.prices(), "price"));
    model.put("facts", leaves(traced.facts(), "fact"));
    model.put("workedOut", leaves(traced.workedOut(), "worked"));
    model.put(
        "assumed",
        leaves(
            traced.choices().stream().filter(l -> l.kind() == Leaf.Kind.ASSUMED).toList(),
            "choice"));
    model.put("leftOut", LeftOut.of(plan));
    model.put("problems", plan.problems().stream().map(p -> p.message()).toList());
  }

  private QuantityRow quantity(Line l) {
    var sources = new ArrayList<Source>();
    for (var id : l.quantity().names()) {
      sources.add(new Source(id, rows.contains(id) ? "#" + Anchors.quantity(id) : ""));
    }
    for (var leaf : l.quantity().leaves()) {
      sources.add(new Source(leaf.key(), link(leaf)));
    }
    return new QuantityRow(
        Anchors.quantity(l.id()),
        l.id(),
        l.description(),
        Words.measured(l.quantity().in(l.shownIn()), l.shownIn()),
        l.quantity().inWords(plan.scope().units()),
        l.because(),
        sources);
  }

  private static String link(Leaf leaf) {
    return switch (leaf.kind()) {
      case PRICE -> "#" + Anchors.of("price", leaf.key());
      case FACT -> "#" + Anchors.of("fact", leaf.key());
      case WORKED -> "#" + Anchors.of("worked", leaf.key());
      case ASSUMED -> "#" + Anchors.of("choice", leaf.key());
      case CHOICE -> "";
    };
  }

  private CostRow line(CostLine l) {
    var quantity = l.quantityId().filter(rows::contains);
    return new CostRow(
        Anchors.line(l.id()),
        l.id(),
        quantity.map(q -> "#" + Anchors.quantity(q)).orElse(""),
        l.description(),
        MoneySection.quantity(l),
        MoneySection.rate(l),
        Words.number(l.money(), 2),
        l.quote().map(q -> "quote, " + q.supplier()).orElse(l.basis().label()),
        l.partyWord(),
        l.amount().inWords(plan.scope().units()));
  }

  private static List<LeafRow> leaves(List<Leaf> leaves, String kind) {
    var met = new HashSet<String>();
    var all = new ArrayList<LeafRow>();
    for (var l : leaves) {
      all.add(
          new LeafRow(
              met.add(l.key()) ? Anchors.of(kind, l.key()) : "",
              l.key(),
              l.name(),
              (l.amount().toPlainString() + "\u00a0" + Words.unit(l.unit())).strip(),
              l.source()));
    }
    return all;
  }
}
