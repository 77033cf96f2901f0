package cornerpost.schedule;

import java.util.Arrays;

/**
 * The links at each task: those of task i are {@code link[first[i]] .. link[first[i + 1] - 1]}, in
 * the order of the network.
 */
@SuppressWarnings("ArrayRecordComponent")
record Incidence(int[] first, int[] link) {
  /**
   * Sorted by counting; O(tasks + links). Where the links are listed task by task, as a table lists
   * them in which each task names what it waits for, they stay as they are.
   *
   * @param task of each link the task it is to stand at
   */
  static Incidence of(int[] task, int tasks) {
    int[] first = new int[tasks + 1];
    int[] link = new int[task.length];
    int descents = 0;
    int last = 0;
    for (int l = 0; l < task.length; l++) {
      int i = task[l];
      first[i + 1]++;
      link[l] = l;
      descents |= i - last;
      last = i;
    }
    for (int i = 0; i < tasks; i++) {
      first[i + 1] += first[i];
    }
    if (descents < 0) {
      int[] next = Arrays.copyOf(first, tasks);
      for (int l = 0; l < task.length; l++) {
        link[next[task[l]]++] = l;
      }
    }
    return new Incidence(first, link);
  }
}
