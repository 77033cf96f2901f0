package cornerpost.scope;

import cornerpost.fact.Facts;
import cornerpost.trace.Figure;
import java.util.Optional;

/** A container, as chosen. */
public record Box(Answers row) {
  public String id() {
    return row.text(BoxQuestions.ID);
  }

  public BoxSize size() {
    return row.option(BoxQuestions.SIZE, BoxSize.class);
  }

  public BoxCondition condition() {
    return row.option(BoxQuestions.CONDITION, BoxCondition.class);
  }

  public ModifiedWhere modified() {
    return row.option(BoxQuestions.MODIFIED, ModifiedWhere.class);
  }

  /** The box it is joined to. */
  public Optional<String> joinedTo() {
    return row.findText(BoxQuestions.JOINED_TO);
  }

  public Joint joint() {
    return row.option(BoxQuestions.JOINT, Joint.class);
  }

  public Figure jointLength() {
    return row.figure(BoxQuestions.JOINT_LENGTH);
  }

  public ContainerFloor floor() {
    return row.option(BoxQuestions.FLOOR, ContainerFloor.class);
  }

  public FloorTreatment treatment() {
    return row.option(BoxQuestions.TREATMENT, FloorTreatment.class);
  }

  public CargoDoors cargoDoors() {
    return row.option(BoxQuestions.CARGO_DOORS, CargoDoors.class);
  }

  public Figure along() {
    return row.figure(BoxQuestions.ALONG);
  }

  public Figure across() {
    return row.figure(BoxQuestions.ACROSS);
  }

  /** Degrees anticlockwise, seen from above. */
  public Figure rotation() {
    return row.figure(BoxQuestions.ROTATION);
  }

  /**
   * A dimension of this size of box from the table of facts: {@code length}, {@code inside-width}.
   */
  public Figure fact(Facts facts, String dimension) {
    return facts.figure(size().factId() + "." + dimension);
  }
}
