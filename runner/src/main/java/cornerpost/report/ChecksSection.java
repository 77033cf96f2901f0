package cornerpost.report;

import cornerpost.check.Check;
import cornerpost.plan.Plan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** Checks and cautions by topic, the gravest first. */
final class ChecksSection {
  /** A check with its sign: a word, always. */
  public record Row(
      String anchor,
      String severity,
      String sign,
      String message,
      String source,
      String cells,
      List<Link> tasks) {}

  /** The checks of a topic. */
  public record Topic(String name, List<Row> rows) {}

  /** A link down the page. */
  public record Link(String text, String link) {}

  private final Plan plan;

  ChecksSection(Plan plan) {
    this.plan = plan;
  }

  void into(Map<String, Object> model) {
    var topics = new ArrayList<Topic>();
    for (var t : Check.Topic.values()) {
      var rows =
          plan.checks().stream()
              .filter(c -> c.topic() == t)
              .sorted(Comparator.comparing(Check::severity).reversed())
              .map(this::row)
              .toList();
      if (!rows.isEmpty()) topics.add(new Topic(t.label(), rows));
    }
    model.put("topics", topics);
  }

  private Row row(Check c) {
    var links = new ArrayList<Link>();
    for (var id : c.tasks()) {
      plan.programme()
          .task(id)
          .ifPresent(t -> links.add(new Link(t.task().name(), "#" + Anchors.task(id))));
    }
    return new Row(
        Anchors.of("check", c.id()),
        c.severity().label(),
        switch (c.severity()) {
          case NOTE -> "note";
          case PROFESSIONAL -> "ask";
          case STOP -> "stop";
        },
        Words.ended(c.message()),
        c.source(),
        String.join(", ", c.cells()),
        links);
  }
}
