package cornerpost.takeoff;

import static cornerpost.takeoff.TestScopes.si;
import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.measure.Unit;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.BoxSize;
import cornerpost.scope.SiteQuestions;
import org.junit.jupiter.api.Test;

class TestScopesTest {
  @Test
  void every_form_question_with_a_standard_value_has_it() {
    var site = TestScopes.metric().scope().site();
    for (var q : SiteQuestions.ALL) assertThat(site.has(q)).as(q.label()).isTrue();
    assertThat(site.figure(SiteQuestions.FROST_DEPTH).asDouble(Unit.MM)).isEqualTo(600);
    assertThat(TestScopes.us().scope().site().figure(SiteQuestions.FROST_DEPTH).asDouble(Unit.IN))
        .isEqualTo(24);
  }

  @Test
  void text_is_in_the_workbooks_unit_and_metric_amounts_are_converted() {
    var us = TestScopes.us().with(SiteQuestions.FROST_DEPTH, "36").scope().site();
    assertThat(us.figure(SiteQuestions.FROST_DEPTH).asDouble(Unit.IN)).isEqualTo(36);
    var same = TestScopes.us().with(SiteQuestions.FROST_DEPTH, si("914.4")).scope().site();
    assertThat(same.figure(SiteQuestions.FROST_DEPTH).asDouble(Unit.IN)).isEqualTo(36);
  }

  @Test
  void a_box_of_ones_own_replaces_the_standard_one() {
    var scope = TestScopes.metric().box("B", BoxQuestions.SIZE, BoxSize.TWENTY).scope();
    assertThat(scope.boxes()).hasSize(1);
    assertThat(scope.boxes().get(0).size()).isEqualTo(BoxSize.TWENTY);
  }
}
