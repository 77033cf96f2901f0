package cornerpost.app;

import cornerpost.fact.Facts;
import cornerpost.plan.Plan;
import cornerpost.plan.Planner;
import cornerpost.plan.RunOptions;
import cornerpost.price.PriceBook;
import cornerpost.price.PriceBookReader;
import cornerpost.report.PlanCalendar;
import cornerpost.report.PlanJson;
import cornerpost.report.PlanPage;
import cornerpost.scope.Problem;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Scope;
import cornerpost.workbook.ResultWorkbook;
import cornerpost.workbook.WorkbookReader;
import cornerpost.workbook.parts.DamagedFileException;
import cornerpost.workbook.parts.StoredBook;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;

/** One run: read, plan, write; all problems at once, all files or none. */
final class PlanRun {
  private final Path home;
  private final PrintStream progress;

  PlanRun(Path home, PrintStream progress) {
    this.home = home;
    this.progress = progress;
  }

  /** What was asked for on the command line. */
  record Request(
      Path workbook,
      Optional<Path> prices,
      Optional<Path> out,
      Optional<LocalDate> asOf,
      List<RunOptions.DelayOption> delays,
      OptionalLong seed,
      OptionalInt trials,
      Optional<String> baseline,
      RunOptions.PathOption path,
      boolean crewCalendars) {}

  /** What was done. */
  record Result(List<String> summary, List<Path> files, List<Problem> remarks) {}

  private record Planned(
      Optional<StoredBook> workbook, CompletableFuture<PlanPage> page, Plan plan) {}

  List<Problem> check(Request request) throws RefusedException {
    return planned(request, false).plan.problems();
  }

  Result plan(Request request) throws RefusedException, IOException {
    var planned = planned(request, true);
    var plan = planned.plan;
    var folder =
        request.out.orElseGet(
            () -> Optional.ofNullable(request.workbook.getParent()).orElse(Path.of("")));
    var names = OutputNames.of(request.workbook, folder);
    for (var target : names.all()) InputFile.refuseIfOpenElsewhere(target);
    progress.println("cornerpost: writing");
    var files = new FileSet();
    // The page and the workbook take longest; the rest goes where there is room.
    var page = CompletableFuture.supplyAsync(() -> planned.page.join().page(plan));
    var data =
        CompletableFuture.supplyAsync(
            () -> List.of(PlanJson.write(plan), PlanCalendar.write(plan)));
    files.put(names.workbook(), workbook(request, planned));
    files.put(names.page(), page.join());
    files.put(names.json(), data.join().get(0));
    files.put(names.calendar(), data.join().get(1));
    var written = new ArrayList<>(names.all());
    if (request.crewCalendars) {
      for (var crew : PlanCalendar.ofCrews(plan).entrySet()) {
        var target = names.calendarOf(crew.getKey());
        if (written.contains(target)) continue; // two names that differ in signs alone
        InputFile.refuseIfOpenElsewhere(target);
        files.put(target, crew.getValue());
        written.add(target);
      }
    }
    var remarks = new ArrayList<>(plan.problems());
    if (isSame(request.workbook, names.workbook())) {
      files.setAside(names.workbook(), freeName(names, plan.statusDate()));
    } else if (Files.exists(names.workbook()) && !ResultWorkbook.isAsWritten(names.workbook())) {
      var kept = freeName(names, plan.statusDate());
      files.setAside(names.workbook(), kept);
      remarks.add(setAside(request, names, kept));
    }
    files.write();
    return new Result(Headline.of(plan), written, remarks);
  }

  /** What was entered in an earlier result is not in the workbook that was planned. */
  private static Problem setAside(Request request, OutputNames names, Path kept) {
    return Problem.remark(
        names.workbook().getFileName().toString(),
        "",
        "was changed since it was written, and what was entered there is not in "
            + request.workbook.getFileName(),
        "it is kept as '" + kept.getFileName() + "'; to go on from it, plan that file");
  }

  /** A part that only writing looks into, a drawing of an earlier run, may be damaged too. */
  private static byte[] workbook(Request request, Planned planned) throws RefusedException {
    try {
      return ResultWorkbook.write(planned.workbook.orElseThrow(), planned.plan);
    } catch (DamagedFileException e) {
      throw new RefusedException(
          request.workbook.getFileName().toString(),
          "a workbook that is damaged (" + e.getMessage() + ")",
          "expected a workbook saved as .xlsx");
    }
  }

  private static boolean isSame(Path a, Path b) throws IOException {
    return Files.exists(b) && Files.isSameFile(a, b);
  }

  /** The first dated name that is not taken: house-plan 2027-03-01.xlsx, then with a number. */
  private static Path freeName(OutputNames names, LocalDate date) {
    for (int n = 1; ; n++) {
      var name = names.stem() + " " + date + (n == 1 ? "" : " (" + n + ")") + ".xlsx";
      var file = names.folder().resolve(name);
      if (!Files.exists(file)) return file;
    }
  }

  private Planned planned(Request request, boolean writes) throws RefusedException {
    var name = request.workbook.getFileName().toString();
    var content = InputFile.read(request.workbook);
    var problems = new ArrayList<Problem>();
    var page =
        writes
            ? CompletableFuture.supplyAsync(PlanPage::opened)
            : new CompletableFuture<PlanPage>();
    // The facts are read while the workbook is opened, the price book while the choices are read.
    var supplied = CompletableFuture.supplyAsync(Facts::supplied);
    var opened = WorkbookReader.open(content, name);
    var early = opened.peek(ProjectQuestions.PRICE_BOOK).filter(n -> !n.isBlank());
    var cell = opened.cell(ProjectQuestions.PRICE_BOOK);
    var fetched = CompletableFuture.supplyAsync(() -> Fetched.of(this, request, early, cell));
    var facts = supplied.join();
    var read = opened.read(facts);
    problems.addAll(read.problems());
    var scope = read.scope();
    var bookMark = "";
    var prices = Optional.<PriceBook>empty();
    if (needsBook(request, opened, scope, problems)) {
      var named = bookName(scope);
      var found =
          named.equals(early) || scope.isEmpty()
              ? fetched.join()
              : Fetched.of(this, request, named, cell);
      problems.addAll(found.problems);
      bookMark = found.mark;
      prices = found.book;
    }
    if (scope.isEmpty() && prices.isPresent()) {
      if (read.sketch().isPresent()) {
        addOthers(problems, Planner.asFarAsPriced(read.sketch().get(), facts, prices));
      }
    }
    if (scope.isEmpty() || hasFaults(problems)) throw new RefusedException(problems);
    var options =
        new RunOptions(
            request.asOf,
            request.delays,
            request.seed,
            request.trials,
            request.baseline,
            request.path,
            Fingerprint.of(scope.get(), bookMark, request));
    progress.println("cornerpost: planning");
    var result = Planner.plan(scope.get(), facts, prices, options);
    problems.addAll(result.problems());
    if (result.plan().isEmpty() || hasFaults(problems)) throw new RefusedException(problems);
    return new Planned(read.book(), page, result.plan().get().withProblems(problems));
  }

  /** A price book as it was found and read. */
  private record Fetched(String mark, Optional<PriceBook> book, List<Problem> problems) {

    static Fetched of(PlanRun run, Request request, Optional<String> named, Optional<String> cell) {
      try {
        var contents =
            PriceBookFolder.find(request.prices, named, cell, request.workbook, run.home);
        if (contents.isEmpty()) return new Fetched("", Optional.empty(), List.of());
        var read = PriceBookReader.read(contents.get().name(), contents.get().files());
        return new Fetched(Fingerprint.of(contents.get()), read.book(), read.problems());
      } catch (RefusedException e) {
        return new Fetched("", Optional.empty(), e.problems());
      }
    }
  }

  private static Optional<String> bookName(Optional<Scope> scope) {
    return scope
        .flatMap(s -> s.project().findText(ProjectQuestions.PRICE_BOOK))
        .filter(n -> !n.isBlank());
  }

  /**
   * Whether a price book was asked for; that none is where one is needed is a problem, said
   * together with whatever else is wrong.
   */
  private boolean needsBook(
      Request request,
      WorkbookReader.Opened opened,
      Optional<Scope> scope,
      List<Problem> problems) {
    if (request.prices.isPresent() || bookName(scope).isPresent()) return true;
    var named = opened.peek(ProjectQuestions.PRICE_BOOK).filter(n -> !n.isBlank());
    if (scope.isEmpty() && named.isPresent()) return true;
    boolean house = scope.map(Scope::generatesTasks).orElseGet(opened::asksForHouse);
    if (house) {
      var place = opened.cell(ProjectQuestions.PRICE_BOOK).orElse("Project").split("!", 2);
      problems.add(
          Problem.fault(
              place[0],
              place.length > 1 ? place[1] : "",
              "Price book is empty",
              PriceBookFolder.expected(home)));
    }
    return false;
  }

  /** What is said of a cell already is not said again in other words. */
  private static void addOthers(List<Problem> problems, List<Problem> more) {
    for (var p : more) {
      boolean said =
          problems.stream().anyMatch(q -> q.sheet().equals(p.sheet()) && q.cell().equals(p.cell()));
      if (!said) problems.add(p);
    }
  }

  private static boolean hasFaults(List<Problem> problems) {
    return problems.stream().anyMatch(p -> p.severity() == Problem.Severity.FAULT);
  }
}
