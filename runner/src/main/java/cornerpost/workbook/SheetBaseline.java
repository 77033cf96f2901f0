package cornerpost.workbook;

import cornerpost.measure.Spoken;
import cornerpost.plan.Replanning;
import cornerpost.plan.Replanning.AgainstRow;
import cornerpost.scope.BaselineRow;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Optional;

/**
 * Sheet Baseline: every plan that was kept, row by row, and this plan beside the last of them. The
 * next run reads the kept rows back.
 */
final class SheetBaseline {
  private SheetBaseline() {}

  static void write(ResultRun run) {
    var page = run.page(ResultSheet.BASELINE);
    var names = new java.util.ArrayList<>(BaselineRows.COLUMNS);
    names.addAll(
        List.of("Start now", "Finish now", "Amount now", "Later by, days", "More by", "State"));
    page.header(Addresses.HEADER_ROW, names.toArray(String[]::new));
    page.headRight(Addresses.HEADER_ROW, 1, 4, 5, 6, 7, 8, 9, 10, 11);
    page.headIndented(Addresses.HEADER_ROW, 2, 12);
    page.widths(18, 16, 26, 40, 16, 16, 14, 16, 16, 14, 10, 14, 16);
    page.text(2, 0, "Amounts in " + run.currency(), page.plain().inInk(SheetStyle.QUIET));
    var replanning = run.plan.replanning();
    replanning.baseline().ifPresent(a -> page.text(2, 2, inShort(run, a), page.plain().strong()));
    var against = new HashMap<String, AgainstRow>();
    replanning.baseline().ifPresent(a -> a.rows().forEach(r -> against.put(r.id(), r)));
    var last = replanning.baseline().map(a -> a.name()).orElse("");
    int row = Addresses.FIRST_ROW;
    for (var kept : replanning.kept()) {
      boolean compared = kept.baseline().equals(last);
      then(run, page, row, kept);
      if (compared) now(run, page, row, Optional.ofNullable(against.get(kept.id())));
      row++;
    }
    for (var r : replanning.baseline().map(a -> a.rows()).orElse(List.of())) {
      if (r.then().isPresent()) continue;
      page.text(row, 2, r.id(), page.wrapped().indented());
      page.text(row, 3, r.name(), page.wrapped());
      now(run, page, row, Optional.of(r));
      row++;
    }
    if (row == Addresses.FIRST_ROW) {
      page.text(Addresses.FIRST_ROW, 2, "No plan is kept yet.");
    }
    SheetTables.finish(page, row - 1, names.size(), 4);
  }

  /** What a reader who compares two options looks for first. */
  private static String inShort(ResultRun run, Replanning.Against a) {
    var money = a.total().map(AgainstRow::money).orElse(BigDecimal.ZERO);
    int days = a.moveInDays();
    return "At this run, against '"
        + a.name()
        + "' of "
        + Spoken.day(a.keptOn())
        + ": the whole costs "
        + (money.signum() == 0
            ? "the same"
            : Spoken.money(money.abs(), run.plan.estimate().currency())
                + (money.signum() > 0 ? " more" : " less"))
        + ", and move-in is "
        + (days == 0
            ? "on the same day."
            : Spoken.days(BigDecimal.valueOf(Math.abs(days)))
                + (days > 0 ? " later." : " sooner."));
  }

  private static void then(ResultRun run, SheetPage page, int row, BaselineRow b) {
    boolean whole = b.id().equals(BaselineRow.TOTAL);
    var text = whole ? page.wrapped().strong() : page.wrapped();
    page.text(row, 0, b.baseline(), text);
    page.date(row, 1, b.keptOn(), page.dateLook());
    page.text(row, 2, b.id(), text.indented());
    run.addresses.taskRow(b.id()).ifPresent(r -> page.link(row, 2, ResultSheet.SCHEDULE, r));
    page.text(row, 3, b.name(), text);
    b.start().ifPresent(d -> page.date(row, 4, d, page.dateLook()));
    b.finish().ifPresent(d -> page.date(row, 5, d, page.dateLook()));
    page.number(row, 6, b.amount(), page.number(run.moneyFormat()));
  }

  private static void now(ResultRun run, SheetPage page, int row, Optional<AgainstRow> found) {
    var money = page.number(run.moneyFormat());
    if (found.isEmpty() || found.get().now().isEmpty()) {
      page.text(row, 12, "no longer there", page.plain().indented());
      return;
    }
    var r = found.get();
    var now = r.now().get();
    now.start().ifPresent(d -> page.date(row, 7, d, page.dateLook()));
    now.finish().ifPresent(d -> page.date(row, 8, d, page.dateLook()));
    page.number(row, 9, now.amount(), money);
    if (r.then().isEmpty()) {
      page.text(row, 12, "new", page.plain().indented());
      return;
    }
    if (now.finish().isPresent() && r.then().get().finish().isPresent()) {
      long days = days(r.then().get().finish().get(), now.finish().get());
      page.formula(row, 10, "I" + row + "-F" + row, days, page.number("0").strong());
    }
    page.formula(row, 11, "J" + row + "-G" + row, r.money(), money.strong());
    page.text(row, 12, state(r), page.plain().indented());
  }

  private static String state(AgainstRow r) {
    if (r.days() == 0 && r.money().signum() == 0) return "as kept";
    return r.days() > 0 ? "later" : r.days() < 0 ? "sooner" : "other money";
  }

  private static long days(LocalDate then, LocalDate now) {
    return ChronoUnit.DAYS.between(then, now);
  }
}
