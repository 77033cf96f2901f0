package cornerpost.schedule;

import java.util.Arrays;

/**
 * Orders of work of which at least one must hold, as learned from dead ends; each is a clause of
 * literals of {@link OrderLiterals}. Two literals of each are watched, so that a clause is looked
 * at only when one of them becomes false. Method: M. W. Moskewicz et al., "Chaff: engineering an
 * efficient SAT solver", DAC 2001, 530-535.
 */
final class Nogoods {
  /** In place of a clause: the literal is a fact. */
  static final int NONE = -1;

  private int[][] clauses = new int[256][];
  private int count;
  private int[][] watched = new int[0][]; // by literal that became false: clauses
  private int[] watchers = new int[0];

  void literals(int literals) {
    watched = new int[literals][];
    watchers = new int[literals];
  }

  /** Adds a clause of two or more literals, of which the first two are watched. */
  int add(int[] clause) {
    if (count == clauses.length) clauses = Arrays.copyOf(clauses, 2 * count);
    clauses[count] = clause;
    watch(clause[0] ^ 1, count);
    watch(clause[1] ^ 1, count);
    return count++;
  }

  private void watch(int falseWhenTrue, int clause) {
    int[] list = watched[falseWhenTrue];
    int used = watchers[falseWhenTrue];
    if (list == null) list = new int[4];
    if (used == list.length) list = Arrays.copyOf(list, 2 * used);
    list[used] = clause;
    watched[falseWhenTrue] = list;
    watchers[falseWhenTrue]++;
  }

  /** Draws what follows from a literal that has become true; false at a dead end. */
  boolean follow(byte[] value, Deductions deductions, int l) {
    int[] list = watched[l];
    int kept = 0;
    int used = watchers[l];
    for (int k = 0; k < used; k++) {
      int c = list[k];
      int[] clause = clauses[c];
      if (clause[0] == (l ^ 1)) {
        clause[0] = clause[1];
        clause[1] = l ^ 1;
      }
      if (value[clause[0]] > 0) {
        list[kept++] = c;
        continue;
      }
      boolean moved = false;
      for (int s = 2; s < clause.length && !moved; s++) {
        if (value[clause[s]] >= 0) {
          int other = clause[s];
          clause[s] = clause[1];
          clause[1] = other;
          watch(other ^ 1, c);
          moved = true;
        }
      }
      if (moved) continue;
      list[kept++] = c;
      if (!deductions.follow(clause[0], c)) {
        while (++k < used) {
          list[kept++] = list[k];
        }
        watchers[l] = kept;
        return false;
      }
    }
    watchers[l] = kept;
    return true;
  }

  /** Asks why all other literals of a clause are false. */
  void askOthers(Reasons reasons, int clause, int except, int until) {
    for (int l : clauses[clause]) {
      if (l != except) reasons.askFor(l ^ 1, until);
    }
  }
}
