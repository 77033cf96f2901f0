package cornerpost.takeoff;

import cornerpost.scope.LoanQuestions;
import cornerpost.scope.OpeningKind;
import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.Party;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.RoomUse;
import cornerpost.scope.Scope;
import cornerpost.scope.Trade;
import cornerpost.scope.Wall;
import java.time.LocalDate;

/** A small house for tests of other packages: one box, two rooms, a window and a door. */
public final class HouseScopes {
  private HouseScopes() {}

  public static Scope metric(String name) {
    return small(TestScopes.metric(), name, "1200", "1100", "900", "2050");
  }

  /** The same with another width of its window. */
  public static Scope metric(String name, String windowWidth) {
    return small(TestScopes.metric(), name, windowWidth, "1100", "900", "2050");
  }

  public static Scope us(String name) {
    return small(TestScopes.us(), name, "48", "42", "36", "80");
  }

  private static Scope small(
      TestScopes scopes, String name, String width, String height, String doorWidth, String door) {
    return scopes
        .with(ProjectQuestions.NAME, name)
        .with(ProjectQuestions.START, LocalDate.of(2027, 3, 1))
        .with(ProjectQuestions.STATUS, LocalDate.of(2027, 3, 8))
        .with(OptionsQuestions.RENT, "650")
        .with(LoanQuestions.AMOUNT, "40000")
        .box("A")
        .room("Living", "A", RoomUse.LIVING, "6")
        .room("Bedroom", "A", RoomUse.BEDROOM, "4")
        .opening("W1", "A", Wall.LEFT, OpeningKind.WINDOW, width, height)
        .opening("D1", "A", Wall.LEFT, OpeningKind.DOOR, doorWidth, door)
        .doneBy(Trade.STEELWORK, Party.MIXED)
        .doneBy(Trade.PAINTING, Party.OWNER)
        .scope();
  }
}
