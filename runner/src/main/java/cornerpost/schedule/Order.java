package cornerpost.schedule;

import java.util.PriorityQueue;

/** Makes a list wait: every task after those it waits for, otherwise in the order given. */
final class Order {
  private final int[][] before;
  private final int[][] after;
  private final int[] rank;
  private final int[] waiting;
  private final PriorityQueue<Integer> ready;

  Order(int[][] before, int[][] after) {
    this.before = before;
    this.after = after;
    rank = new int[before.length];
    waiting = new int[before.length];
    ready = new PriorityQueue<>((a, b) -> Integer.compare(rank[a], rank[b]));
  }

  void repair(int[] list) {
    for (int k = 0; k < list.length; k++) {
      rank[list[k]] = k;
    }
    boolean sound = true;
    for (int j = 0; j < list.length; j++) {
      for (int i : before[j]) {
        sound &= rank[i] < rank[j];
      }
    }
    if (sound) {
      return;
    }
    ready.clear();
    for (int j = 0; j < list.length; j++) {
      waiting[j] = before[j].length;
      if (waiting[j] == 0) {
        ready.add(j);
      }
    }
    int k = 0;
    while (!ready.isEmpty()) {
      int i = ready.remove();
      list[k++] = i;
      for (int j : after[i]) {
        if (--waiting[j] == 0) {
          ready.add(j);
        }
      }
    }
  }
}
