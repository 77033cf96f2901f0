package cornerpost.check;

import static cornerpost.check.Check.Severity.NOTE;
import static cornerpost.check.Check.Severity.PROFESSIONAL;

import cornerpost.check.Check.Topic;
import java.util.ArrayList;
import java.util.List;

/** The fit-out as it is summed against what the supports are sized for, and the boxes lifted. */
final class FitOutMass implements CheckRule {
  @Override
  public List<Check> look(CheckInput in) {
    var found = new ArrayList<Check>();
    var summed = in.measured("mass/fit-out");
    var allowed = in.measured("mass/fit-out-allowance");
    if (summed.isEmpty() || allowed.isEmpty()) return found;
    var say = new Say(in);
    boolean over = Say.less(allowed.get(), summed.get());
    found.add(
        new Check(
            "fit-out-mass",
            Topic.GROUND,
            over ? PROFESSIONAL : NOTE,
            "The fit-out adds up to "
                + say.mass(summed.get())
                + "; the supports are sized for an allowance of "
                + say.mass(allowed.get())
                + (over ? ": they would carry more than that" : "")
                + ". An engineer settles loads, footings and what the soil bears",
            in.facts().get("mass.fit-out").source(),
            List.of(),
            List.of()));
    return found;
  }
}
