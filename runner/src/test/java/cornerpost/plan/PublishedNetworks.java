package cornerpost.plan;

import cornerpost.scope.DurationUnit;
import cornerpost.scope.LinkRelation;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The networks of the schedule engine's tests as an owner would enter them: rows of Own tasks, Own
 * links and Crews. Their sources stand in the files, and in SOURCES.md beside them.
 */
final class PublishedNetworks {
  private PublishedNetworks() {}

  /** What must come out for a task, in days from the start. */
  record Row(String id, List<Integer> dates, int totalFloat, int freeFloat, boolean critical) {}

  static List<Row> rows(String name) {
    return table(name).stream()
        .map(
            c ->
                new Row(
                    c[0],
                    List.of(number(c[4]), number(c[5]), number(c[6]), number(c[7])),
                    number(c[8]),
                    number(c[9]),
                    c[10].equals("yes")))
        .toList();
  }

  static int duration(String name) {
    return lines("networks/" + name + ".csv").stream()
        .filter(l -> l.startsWith("# duration "))
        .map(l -> number(l.substring("# duration ".length())))
        .findFirst()
        .orElseThrow();
  }

  static OwnScope worked(String name) {
    var scope = new OwnScope();
    for (var c : table(name)) scope.task(c[0], c[1], c[2], DurationUnit.DAYS);
    for (var c : table(name)) {
      for (var p : c[3].split(" ")) {
        if (!p.isEmpty()) link(scope, p.split(":"), c[0]);
      }
    }
    return scope;
  }

  private static void link(OwnScope scope, String[] part, String after) {
    if (part.length == 1) {
      scope.link(part[0], after);
    } else {
      var relation =
          switch (part[1]) {
            case "SS" -> LinkRelation.START_TO_START;
            case "FF" -> LinkRelation.FINISH_TO_FINISH;
            case "SF" -> LinkRelation.START_TO_FINISH;
            default -> LinkRelation.FINISH_TO_START;
          };
      scope.link(part[0], after, relation, part[2], DurationUnit.DAYS);
    }
  }

  private static List<String[]> table(String name) {
    return lines("networks/" + name + ".csv").stream()
        .filter(l -> !l.startsWith("#") && !l.startsWith("id;"))
        .map(l -> l.split(";", -1))
        .toList();
  }

  // ---- PSPLIB -------------------------------------------------------------------------------

  /** An instance, with the length of its critical path. */
  record Instance(String name, int criticalPath, OwnScope scope) {}

  /** Names of a set, such as {@code j30}: the files of its known.csv. */
  static List<String> names(String set) {
    return lines("psplib/" + set + "/known.csv").stream()
        .skip(1)
        .map(l -> set + "/" + l.split(",")[0])
        .toList();
  }

  static Instance psplib(String name) {
    var lines = lines("psplib/" + name);
    var scope = new OwnScope();
    int mpm = 0;
    var successors = new ArrayList<int[]>();
    var requests = new ArrayList<int[]>();
    int[] capacity = {};
    for (int k = 0; k < lines.size(); k++) {
      var line = lines.get(k);
      if (line.startsWith("pronr.")) mpm = numbers(lines.get(k + 1))[5];
      if (line.startsWith("jobnr.") && line.contains("successors")) {
        for (int i = k + 1; !lines.get(i).startsWith("*"); i++) {
          successors.add(numbers(lines.get(i)));
        }
      }
      if (line.startsWith("jobnr. mode")) {
        for (int i = k + 2; !lines.get(i).startsWith("*"); i++) requests.add(numbers(lines.get(i)));
      }
      if (line.startsWith("RESOURCEAVAILABILITIES")) capacity = numbers(lines.get(k + 2));
    }
    for (int r = 0; r < capacity.length; r++) scope.crew("R" + (r + 1), capacity[r]);
    for (var n : requests) {
      scope.task("" + n[0], n[2]);
      for (int r = 0; r < capacity.length; r++) {
        if (n[3 + r] > 0) scope.needs("" + n[0], "R" + (r + 1), n[3 + r]);
      }
    }
    for (var n : successors) {
      for (int s = 3; s < n.length; s++) scope.link("" + n[0], "" + n[s]);
    }
    return new Instance(name, mpm, scope);
  }

  private static int[] numbers(String line) {
    return Arrays.stream(line.trim().split("\\s+")).mapToInt(Integer::parseInt).toArray();
  }

  private static int number(String text) {
    return Integer.parseInt(text);
  }

  static List<String> lines(String resource) {
    try (var in = PublishedNetworks.class.getResourceAsStream("/schedule/" + resource)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
