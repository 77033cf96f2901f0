package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import cornerpost.plan.Plan;
import cornerpost.plan.Planner;
import cornerpost.plan.RunOptions;
import cornerpost.plan.UnchangedWork;
import cornerpost.price.PriceBook;
import cornerpost.price.PriceBookReader;
import cornerpost.scope.Foundation;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Scope;
import cornerpost.scope.SiteQuestions;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * A house half built, its result workbook edited again and again as its owner would, and run again:
 * an opening goes, one comes back under another id, the foundation changes. Whatever the owner had
 * entered stays, what has no row any more is named, and unchanged work keeps its ids.
 */
class ScopeChangesTest {
  /** Written, edited, read and run; the rest of two hundred is planned without a file. */
  private static final int CHANGES = 40;

  /** Every so many a run with the late box, whose other orders and curve take long. */
  private static final int LATE = 20;

  /** One trial of risk instead of two thousand. */
  private static final RunOptions QUICK =
      new RunOptions(
          Optional.empty(), List.of(), OptionalLong.empty(), OptionalInt.of(1), "000000000000");

  private static final Facts FACTS = Facts.supplied();
  private static final Path BOOK = Path.of("..", "price-books", "quarrow-plains-2026");

  private final Optional<PriceBook> book = book();
  private final Random random = new Random(20_270_531);
  private final List<Object[]> removed = new ArrayList<>();
  private int added;

  private static Optional<PriceBook> book() {
    var files = new TreeMap<String, byte[]>();
    try (var all = Files.walk(BOOK)) {
      for (var file : all.filter(Files::isRegularFile).toList()) {
        files.put(BOOK.relativize(file).toString().replace('\\', '/'), Files.readAllBytes(file));
      }
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    return PriceBookReader.read("quarrow-plains-2026", files).book();
  }

  /** The example of the late box with entries of every other kind. */
  private static WorkbookEntries entries() {
    return MidBuildExample.entries()
        .row(OwnerSheet.PROGRESS, "set-windows", "", "", "", "", "2027-06-21")
        .row(OwnerSheet.DELAYS, "cure", "3", "a cold week", "nobody")
        .row(OwnerSheet.DELAYS, "strip-forms", "0", "", "")
        .row(
            OwnerSheet.QUOTES,
            "opening/W1/unit:window-opening-piece",
            "Prairie Glass",
            "the whole line",
            "300",
            "",
            "",
            "yes")
        .row(
            OwnerSheet.COST_LEDGER,
            "box/A/purchase:box-40hc-one-trip",
            "4450",
            "",
            "",
            "4450",
            "4450",
            "4450")
        .row(
            OwnerSheet.COST_LEDGER,
            "footing/pads/concrete:concrete-ready-mix",
            "900",
            "",
            "",
            "900",
            "450");
  }

  private Plan planned(Scope scope, RunOptions options) {
    var result = Planner.plan(scope, FACTS, book, options);
    assertThat(result.faults()).isEmpty();
    return result.plan().orElseThrow();
  }

  private static Scope read(byte[] workbook) {
    var reading = WorkbookReader.read(workbook, "house.xlsx");
    assertThat(reading.problems()).isEmpty();
    return reading.scope().orElseThrow();
  }

  @Test
  void entries_survive_in_the_workbook_and_unchanged_work_keeps_its_ids() {
    var template = TemplateWriter.write(TemplateWriter.withUsualRows(entries()), FACTS);
    var start = read(template);
    assertThat(start.progress()).isNotEmpty();
    var before = planned(start, QUICK.keeping("Contract"));
    var workbook = ResultWorkbook.write(template, before);
    var first = read(workbook);
    assertThat(first.baselines()).isNotEmpty();
    for (int k = 1; k <= CHANGES; k++) {
      var file = Edited.of(workbook);
      change(file, read(workbook));
      boolean late = k % LATE == 0;
      file.number("Delays!B" + row(first.delays().get(0).cell()), late ? 12 : 0);
      workbook = file.bytes();
      var scope = read(workbook);
      assertThat(entered(scope)).as("change %s", k).isEqualTo(entered(first));
      var after = planned(scope, QUICK);
      workbook = ResultWorkbook.write(workbook, after);
      sameIds(before, after, k);
      namesWhatHasNoRow(after, k);
      before = after;
    }
    assertThat(entered(read(workbook))).isEqualTo(entered(first));
  }

  /** All that is not a choice, with its cells; the days of the one delay are changed on purpose. */
  private static List<Object> entered(Scope s) {
    return List.of(
        s.progress(),
        s.quotes(),
        s.delays().stream().map(d -> d.event() + d.cause() + d.borneBy() + d.cell()).toList(),
        s.ownItems().stream().map(i -> i.id() + i.description() + i.cell()).toList(),
        s.ownTasks(),
        s.ownLinks(),
        s.crews(),
        s.calendars(),
        s.holidays(),
        s.ledger(),
        s.baselines());
  }

  // ---- changes ------------------------------------------------------------------------------

  private void change(Edited file, Scope scope) {
    int what = random.nextInt(3);
    if (what == 0) {
      var kinds = Foundation.values();
      var cell = scope.site().cell(SiteQuestions.FOUNDATION);
      file.text(cell, kinds[random.nextInt(kinds.length)].label());
    }
    if (what == 1 || removed.isEmpty()) takeOut(file, scope);
    if (what == 2 && !removed.isEmpty()) putBack(file);
  }

  private void takeOut(Edited file, Scope scope) {
    var openings = scope.openings();
    if (openings.size() < 4) return;
    var out = openings.get(1 + random.nextInt(openings.size() - 1)); // the entrance door stays
    int row = row(out.row().cell(OpeningQuestions.ID));
    removed.add(file.takeRow("Openings", row));
  }

  private void putBack(Edited file) {
    var cells = removed.remove(random.nextInt(removed.size()));
    int row = (int) cells[cells.length - 1];
    var again = java.util.Arrays.copyOf(cells, cells.length - 1);
    again[0] = "X" + ++added;
    file.row("Openings", row, again);
  }

  private static int row(String cell) {
    return Integer.parseInt(cell.replaceAll("[^0-9]", ""));
  }

  // ---- ids ----------------------------------------------------------------------------------

  private static void sameIds(Plan before, Plan after, int k) {
    var change = "change " + k;
    UnchangedWork.keepsItsIds(
        UnchangedWork.of(before.lines(), before.estimate(), before.work()),
        UnchangedWork.of(after.lines(), after.estimate(), after.work()),
        change);
  }

  // ---- what has no row any more -------------------------------------------------------------

  private static void namesWhatHasNoRow(Plan plan, int k) {
    var scope = plan.scope();
    var tasks = new HashSet<String>();
    plan.work().tasks().forEach(t -> tasks.add(t.id()));
    var lines = new HashSet<String>();
    plan.estimate().lines().forEach(l -> lines.add(l.id()));
    for (var e : scope.progress()) {
      named(plan, OwnerSheet.PROGRESS, e.cell(), "no single task", !tasks.contains(e.task()), k);
    }
    for (var e : scope.delays()) {
      named(plan, OwnerSheet.DELAYS, e.cell(), "no task", !tasks.contains(e.event()), k);
    }
    for (var e : scope.quotes()) {
      named(plan, OwnerSheet.QUOTES, e.cell(), "no line", !lines.contains(e.line()), k);
    }
    for (var e : scope.ledger()) {
      named(plan, OwnerSheet.COST_LEDGER, e.cell(), "no line", !lines.contains(e.line()), k);
    }
    var against = plan.replanning().baseline().orElseThrow();
    for (var b : scope.baselines()) {
      if (b.id().startsWith("stage/") || b.id().equals("total")) continue;
      assertThat(against.rows())
          .as("%s, change %s", b.id(), k)
          .anyMatch(r -> r.id().equals(b.id()) && r.now().isPresent() == tasks.contains(b.id()));
    }
  }

  private static void named(
      Plan plan, OwnerSheet sheet, String cell, String words, boolean gone, int k) {
    assertThat(
            plan.problems().stream()
                .anyMatch(
                    p ->
                        p.sheet().equals(sheet.title())
                            && p.cell().equals(cell.substring(cell.lastIndexOf('!') + 1))
                            && p.found().contains(words)))
        .as("%s!%s, change %s", sheet.title(), cell, k)
        .isEqualTo(gone);
  }
}
