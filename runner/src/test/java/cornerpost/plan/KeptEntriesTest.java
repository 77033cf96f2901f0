package cornerpost.plan;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.fact.Facts;
import cornerpost.price.Estimator;
import cornerpost.scope.Answer;
import cornerpost.scope.Answers;
import cornerpost.scope.Foundation;
import cornerpost.scope.Opening;
import cornerpost.scope.OpeningQuestions;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.Question;
import cornerpost.scope.Scope;
import cornerpost.scope.ScopeEdit;
import cornerpost.scope.SiteQuestions;
import cornerpost.takeoff.Takeoff;
import cornerpost.work.WorkPlanner;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Entries stay where they are, whatever becomes of the house. */
class KeptEntriesTest {
  private static final int CHANGES = 200;

  @Test
  void entries_survive_two_hundred_changes_of_scope_and_ids_of_unchanged_work_stay() {
    var before = Houses.scope("mid-build-late-delivery");
    var facts = Facts.supplied();
    var book = Optional.of(Houses.book(before));
    var measured = Takeoff.measure(before, facts);
    var subjects = new HashMap<String, String>();
    for (var l : measured) subjects.put(l.id(), l.stage().label());
    var status = LocalDate.of(2027, 5, 31);
    var priced = Estimator.estimate(before, measured, book, facts).estimate().orElseThrow();
    var workBefore = WorkPlanner.plan(before, priced, book, facts).plan().orElseThrow();
    var unchanged = UnchangedWork.of(measured, priced, workBefore);
    for (int k = 0; k < CHANGES; k++) {
      var random = new Random(k);
      var gone = new HashSet<String>();
      var after = changed(before, random, gone);
      assertThat(after.progress()).isEqualTo(before.progress());
      assertThat(after.quotes()).isEqualTo(before.quotes());
      assertThat(after.delays()).isEqualTo(before.delays());
      var lines = Takeoff.measure(after, facts);
      var ids = new HashSet<String>();
      for (var l : lines) assertThat(ids.add(l.id())).as("%s twice, change %s", l.id(), k).isTrue();
      // What belongs to an opening that stayed keeps its ids; nothing of one that went is left.
      for (var id : subjects.keySet()) {
        if (!id.startsWith("opening/")) continue;
        boolean stays =
            after.openings().stream().anyMatch(o -> id.startsWith("opening/" + o.id() + "/"));
        if (gone.stream().anyMatch(o -> id.startsWith("opening/" + o + "/"))) {
          assertThat(ids).as("change %s", k).doesNotContain(id);
        } else if (stays) {
          assertThat(ids).as("change %s", k).contains(id);
        }
      }
      var estimate = Estimator.estimate(after, lines, book, facts).estimate().orElseThrow();
      var work = WorkPlanner.plan(after, estimate, book, facts).plan().orElseThrow();
      UnchangedWork.keepsItsIds(unchanged, UnchangedWork.of(lines, estimate, work), "change " + k);
      var problems = new Problems();
      assertThat(WorkNetwork.of(work, after, status, problems)).as("change %s", k).isPresent();
      // Each entry is used, or said to have no row any more; none is both, none is lost.
      var used = ProgressMap.entries(after, work, status).keySet();
      var said = new HashSet<String>();
      for (var p : problems.all()) {
        if (p.sheet().equals(OwnerSheet.PROGRESS.title())
            && p.found().startsWith("no single task")) {
          said.add(p.found());
        }
      }
      for (var e : after.progress()) {
        boolean there = work.task(e.task()).isPresent();
        assertThat(used.contains(e.task())).as(e.task()).isEqualTo(there);
        assertThat(said.stream().anyMatch(t -> t.endsWith("'" + e.task() + "'")))
            .as("%s, change %s", e.task(), k)
            .isEqualTo(!there);
      }
    }
  }

  private static Scope changed(Scope s, Random random, HashSet<String> gone) {
    var openings = new ArrayList<>(s.openings());
    if (random.nextBoolean()) {
      var out = openings.remove(random.nextInt(openings.size()));
      gone.add(out.id());
    }
    if (random.nextBoolean()) {
      var like = openings.get(random.nextInt(openings.size()));
      openings.add(copy(like, "X" + random.nextInt(100)));
    }
    var site = s.site();
    if (random.nextInt(3) == 0) {
      var kinds = List.of(Foundation.values());
      site = with(site, SiteQuestions.FOUNDATION, kinds.get(random.nextInt(kinds.size())));
    }
    return ScopeEdit.of(s).openings(openings).site(site).scope();
  }

  private static Opening copy(Opening o, String id) {
    return new Opening(with(o.row(), OpeningQuestions.ID, id));
  }

  private static Answers with(Answers answers, Question question, Object value) {
    var all = new HashMap<>(answers.all());
    all.put(question, new Answer(answers.cell(question), value, false));
    return new Answers(answers.place(), all);
  }
}
