package cornerpost.scope;

import cornerpost.trace.Figure;
import java.util.Optional;

/** A hole in the shell and what goes into it, as chosen. */
public record Opening(Answers row) {
  public String id() {
    return row.text(OpeningQuestions.ID);
  }

  public String box() {
    return row.text(OpeningQuestions.BOX);
  }

  public Wall wall() {
    return row.option(OpeningQuestions.WALL, Wall.class);
  }

  public OpeningKind kind() {
    return row.option(OpeningQuestions.KIND, OpeningKind.class);
  }

  public Figure width() {
    return row.figure(OpeningQuestions.WIDTH);
  }

  public Figure height() {
    return row.figure(OpeningQuestions.HEIGHT);
  }

  /** Above the container floor. */
  public Figure sill() {
    return row.figure(OpeningQuestions.SILL);
  }

  /** From the door-end corner of the wall to the near edge. */
  public Figure offset() {
    return row.figure(OpeningQuestions.OFFSET);
  }

  public Glazing glazing() {
    return row.option(OpeningQuestions.GLAZING, Glazing.class);
  }

  public boolean opens() {
    return row.yes(OpeningQuestions.OPENS);
  }

  public FrameSection frame() {
    return row.option(OpeningQuestions.FRAME, FrameSection.class);
  }

  /** The own item that is its landing, by id; empty where it has none of its own. */
  public Optional<String> landing() {
    return row.findText(OpeningQuestions.LANDING);
  }
}
