package cornerpost.price;

import cornerpost.scope.OwnTask;
import cornerpost.scope.Scope;
import cornerpost.scope.Stage;
import cornerpost.takeoff.BuildTask;
import java.util.Arrays;
import java.util.Optional;

/** The stage in which a task of the owner's is shown and counted; the owner does not name one. */
public final class OwnTaskStage {
  private OwnTaskStage() {}

  /**
   * The stage of the first generated task it is linked to, in the order of Own links; stage 0 where
   * it is linked to none.
   */
  public static Stage of(Scope scope, OwnTask task) {
    return scope.ownLinks().stream()
        .flatMap(
            l -> {
              if (is(task, l.before())) return buildTask(l.after()).stream();
              if (is(task, l.after())) return buildTask(l.before()).stream();
              return Optional.<BuildTask>empty().stream();
            })
        .map(BuildTask::stage)
        .findFirst()
        .orElse(Stage.PREPARATION);
  }

  private static boolean is(OwnTask task, String idOrName) {
    return task.id().equals(idOrName) || task.name().equalsIgnoreCase(idOrName);
  }

  private static Optional<BuildTask> buildTask(String idOrName) {
    return BuildTask.find(idOrName)
        .or(
            () ->
                Arrays.stream(BuildTask.values())
                    .filter(b -> b.title().equalsIgnoreCase(idOrName))
                    .findFirst());
  }
}
