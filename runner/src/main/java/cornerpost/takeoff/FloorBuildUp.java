package cornerpost.takeoff;

import cornerpost.scope.ContainerFloor;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.FloorFinish;
import cornerpost.scope.Room;
import cornerpost.scope.RoomUse;
import cornerpost.scope.WetFloor;
import cornerpost.trace.Figure;

/** How high the floor of a room rises above the container floor. */
final class FloorBuildUp {
  private final Job job;

  FloorBuildUp(Job job) {
    this.job = job;
  }

  Figure of(Room room) {
    var covering =
        room.use() == RoomUse.BATHROOM
            ? switch (wet()) {
              case TILE -> job.fact("floor.tile.thickness");
              case VINYL -> job.fact("floor.sheet-vinyl.thickness");
            }
            : switch (dry()) {
              case SEALED -> job.fact("floor.sealed.thickness");
              case VINYL -> job.fact("floor.vinyl.thickness");
              case LAMINATE -> job.fact("floor.laminate.thickness");
              case WOOD -> job.fact("floor.wood.thickness");
              case TILE -> job.fact("floor.tile.thickness");
            };
    var box = job.scope().box(room.box()).orElseThrow();
    return box.floor() == ContainerFloor.OVERLAY
        ? covering.plus(job.fact("floor.overlay.thickness"))
        : covering;
  }

  FloorFinish dry() {
    return job.scope().finishes().option(FinishesQuestions.FLOOR, FloorFinish.class);
  }

  WetFloor wet() {
    return job.scope().finishes().option(FinishesQuestions.WET_FLOOR, WetFloor.class);
  }
}
