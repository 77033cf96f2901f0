package cornerpost.check;

import java.util.List;

/** Looks at one thing; says nothing where it does not apply. */
interface CheckRule {
  List<Check> look(CheckInput in);
}
