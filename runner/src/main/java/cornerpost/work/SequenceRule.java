package cornerpost.work;

import cornerpost.fact.Facts;
import java.util.List;

/**
 * The order of work in one part of the build. A rule speaks of all tasks that its part may have;
 * where one is not in the plan, what came before it comes before what came after it.
 */
interface SequenceRule {
  List<Tie> ties(Facts facts);
}
