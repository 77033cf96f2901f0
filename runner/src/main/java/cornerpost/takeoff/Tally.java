package cornerpost.takeoff;

import cornerpost.measure.Unit;
import cornerpost.scope.Stage;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/** Gathers the lines of one rule; what is added comes back as a row that later lines point at. */
final class Tally {
  private final Stage stage;
  private final List<Line> lines = new ArrayList<>();

  Tally(Stage stage) {
    this.stage = stage;
  }

  Figure add(
      String id,
      String description,
      Figure quantity,
      Unit shownIn,
      String because,
      Resource... resources) {
    var line = Line.of(id, stage, description, quantity, shownIn, because, resources);
    lines.add(line);
    return line.named();
  }

  /** The same for a length that is cut from bars as these pieces. */
  Figure addCut(
      String id,
      String description,
      Figure quantity,
      Unit shownIn,
      String because,
      List<Piece> pieces,
      Resource... resources) {
    var line = Line.of(id, stage, description, quantity, shownIn, because, resources);
    lines.add(line.cutAs(pieces));
    return line.named();
  }

  List<Line> lines() {
    return List.copyOf(lines);
  }
}
