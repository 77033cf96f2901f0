package cornerpost.workbook;

import cornerpost.measure.UnitSystem;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Question;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Writes docs/workbook.md, the part of it that lists the entries, from the questions themselves.
 */
final class WorkbookPage {
  static final String MARK = "<!-- entries: made from the questions, do not edit below -->";

  private WorkbookPage() {}

  /** What stands below the mark. */
  static String entries() {
    var page = new StringBuilder();
    for (var sheet : OwnerSheet.values()) {
      if (sheet.shape() == OwnerSheet.Shape.TEXT) continue;
      page.append("\n### ").append(sheet.title()).append("\n\n");
      page.append(sheet.shape() == OwnerSheet.Shape.FORM ? "A form. " : "A table. ");
      page.append(
          switch (sheet.need()) {
            case ALWAYS -> "Always needed.";
            case HOUSE -> "Needed where the plan of a house is made.";
            case NEVER -> "May be missing or empty.";
          });
      page.append("\n\n| ")
          .append(sheet.shape() == OwnerSheet.Shape.FORM ? "Label" : "Column")
          .append(" | Holds | If empty | Meaning |\n|---|---|---|---|\n");
      for (var question : TemplateWriter.questions(sheet)) page.append(line(question));
    }
    return page.toString();
  }

  private static String line(Question q) {
    return "| " + q.label() + " | " + holds(q) + " | " + empty(q) + " | " + q.help() + " |\n";
  }

  private static String holds(Question q) {
    return switch (q.kind()) {
      case NUMBER -> "number" + unit(q) + range(q, unitOf(q));
      case WHOLE -> "whole number" + range(q, "");
      case MONEY -> "money";
      case SHARE -> "share" + range(q, "%");
      case DATE -> "date";
      case YES_NO -> "yes or no";
      case ONE_OF -> "one of: " + String.join("; ", q.choices());
      case TEXT ->
          q.list()
              .map(l -> "a name from the list of " + l.name().toLowerCase(Locale.ROOT))
              .orElse("text");
    };
  }

  private static String unit(Question q) {
    if (q.metric().symbol().isEmpty()) return "";
    return q.metric().equals(q.us()) ? " in " + q.metric() : " in " + q.metric() + " or " + q.us();
  }

  private static String unitOf(Question q) {
    return q.metric().symbol();
  }

  private static String range(Question q, String unit) {
    var metric = range(q, UnitSystem.METRIC, unit);
    if (q.metric().equals(q.us()) || metric.isEmpty()) return metric;
    return metric + " (" + range(q, UnitSystem.US, q.us().symbol()).substring(2) + ")";
  }

  private static String range(Question q, UnitSystem system, String unit) {
    var parts = new ArrayList<String>();
    q.least(system).ifPresent(l -> parts.add("from " + shown(q, l, unit)));
    q.most(system).ifPresent(m -> parts.add("to " + shown(q, m, unit)));
    return parts.isEmpty() ? "" : ", " + String.join(" ", parts);
  }

  private static String shown(Question q, BigDecimal limit, String unit) {
    var value = q.kind() == Question.Kind.SHARE ? limit.movePointRight(2) : limit;
    return Plain.number(value) + (unit.isEmpty() ? "" : " " + unit);
  }

  private static String empty(Question q) {
    var metric = q.standard().in(UnitSystem.METRIC);
    var us = q.standard().in(UnitSystem.US);
    if (metric.isEmpty()) return q.required() ? "a fault" : "nothing is assumed";
    var both =
        List.of(shown(q, metric.get(), q.metric().symbol()), shown(q, us.get(), q.us().symbol()));
    return both.get(0).equals(both.get(1)) ? both.get(0) : both.get(0) + " or " + both.get(1);
  }

  private static String shown(Question q, String standard, String unit) {
    return switch (q.kind()) {
      case SHARE -> Plain.number(new BigDecimal(standard).movePointRight(2)) + " %";
      case NUMBER -> standard + (unit.isEmpty() ? "" : " " + unit);
      default -> standard;
    };
  }
}
