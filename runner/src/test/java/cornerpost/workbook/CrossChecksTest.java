package cornerpost.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import cornerpost.scope.Problem;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Sheets held against each other. The two-box example: box A has openings SD1 (1.2 to 3.6 m), V1
 * (4.2 m), D1 (5.4 to 6.35 m), S4 and W1 (9.6 to 11.1 m) on its left side. Sizes of the box as in
 * {@link Edited}.
 */
class CrossChecksTest {

  @ParameterizedTest(name = "{0} holding {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Containers!A6 | a | Containers!A6: a second box 'a'; expected each name once; the first is in A5
          Rooms!A6 | Living | Rooms!A6: a second room 'Living'; expected each name once; the first is in A5
          Openings!A6 | sd1 | Openings!A6: a second opening 'sd1'; expected each name once; the first is in A5
          Calendars!A6 | Weekdays | Calendars!A6: a second calendar 'Weekdays'; expected each name once; the first is in A5
          Who does what!A6 | Design and permits | Who does what!A6: a second row for 'Design and permits'; expected one row for each package of work
          Openings!A5 | W/1 | Openings!A5: the name 'W/1'; expected a name without '/' and without ':'
          Rooms!B5 | C | Rooms!B5: the name 'C' (Box), which is not there; expected one of 'A', 'B'; maybe 'A'
          Openings!B5 | Barn | Openings!B5: the name 'Barn' (Box), which is not there; expected one of 'A', 'B'
          Deck and roof!B6 | Barn | Deck and roof!B6: the name 'Barn' (Deck along box), which is not there; expected one of 'A', 'B'
          Deck and roof!B7 | roof | Deck and roof!B7: a deck on the roof; expected a side or an end of the box
          Project!B8 | Weekday | Project!B8: the name 'Weekday' (Calendar), which is not there; expected one of 'Weekdays', 'Six days', 'Every day', 'Weekends'; maybe 'Weekdays'
          Options!B10 | Nights | Options!B10: the name 'Nights' (Owner's calendar), which is not there; expected one of 'Weekdays', 'Six days', 'Every day', 'Weekends'
          Containers!E6 | B | Containers!E6: box 'B' is joined to itself; expected another box, or an empty cell
          Containers!F6 | stands alone | Containers!F6: box 'B' is joined to 'A', yet 'stands alone'; expected how they meet, or an empty cell under Joined to
          Containers!F5 | end to end | Containers!F5: 'end to end' with no box under Joined to; expected the box that 'A' is joined to, or 'stands alone'
          """)
  void a_name_that_does_not_fit_is_a_fault_of_its_cell(String cell, String text, String message) {
    assertThat(Edited.twoBox().text(cell, text).messages())
        .filteredOn(m -> m.startsWith(cell + ":"))
        .containsExactly(message);
  }

  @ParameterizedTest(name = "{0} holding {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Containers!G6 | 0 | Containers!G6: a joint of no length; expected the length over which the two boxes touch
          Containers!G6 | 13 | Containers!G6: a joint of 13 m; expected the length over which the two boxes touch, at most 12.192 m
          Rooms!D6 | 3.6 | Rooms!D6: the rooms of box 'A' up to this one are 12.1 m long; expected at most its inside length of 12.032 m
          Openings!E5 | 12200 | Openings!E5: opening 'SD1' is 12200 mm wide; expected at most 12192 mm, the length of the left side of box 'A'
          Openings!E8 | 2500 | Openings!E8: opening 'W2' is 2500 mm wide; expected at most 2438 mm, the length of the door end of box 'A'
          Openings!H7 | 11 | Openings!H7: opening 'W1' ends at 12.5 m; expected it to end by 12.192 m, the length of the left side of box 'A'
          Openings!F5 | 2700 | Openings!F5: opening 'SD1' is 2700 mm high; expected at most 2698 mm, the clear height at the left side of box 'A'
          Openings!G7 | 1600 | Openings!G7: opening 'W1' reaches up to 2700 mm; expected at most 2698 mm, the clear height at the left side of box 'A'
          Openings!H6 | 3 | Openings!H6: opening 'D1' lies over opening 'SD1'; expected openings of one wall beside each other; 'SD1' takes 1.2 m to 3.6 m
          """)
  void a_size_that_does_not_fit_is_a_fault_of_its_cell(String cell, double number, String message) {
    assertThat(Edited.twoBox().number(cell, number).messages())
        .filteredOn(m -> m.startsWith(cell + ":"))
        .containsExactly(message);
  }

  // By hand: 12.032 m = 39.4751 ft = 39 ft 5 11/16 in and a bit, 2438 mm = 95 15/16 in and a bit;
  // what is allowed is rounded down, so that nobody is told to enter what is refused again.
  @ParameterizedTest(name = "{0} holding {1}")
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          Rooms!D5 | 30 | the rooms of box 'A' up to this one are 49' 11 3/4" (49.98 ft) long; expected at most its inside length of 39' 5 11/16" (39.47 ft)
          Openings!E5 | 500 | opening 'D1' is 500 in wide; expected at most 480 in, the length of the right side of box 'A'
          Openings!H5 | 38 | opening 'D1' ends at 41' 0" (41 ft); expected it to end by 40' 0" (40 ft), the length of the right side of box 'A'
          Openings!F5 | 107.2 | opening 'D1' is 107 1/4 in high; expected at most 106 3/16 in, the clear height at the right side of box 'A'
          """)
  void lengths_are_said_as_a_tape_reads(String cell, double number, String message) {
    assertThat(Edited.cabin().number(cell, number).messages())
        .anyMatch(m -> m.replace('\u2032', '\'').replace('\u2033', '"').endsWith(message));
  }

  @Test
  void openings_may_touch_lie_above_each_other_or_on_other_walls() {
    // D1 beside SD1, without a gap; V1 above D1: its sill of 2250 mm is over the head of 2100 mm
    var touching = Edited.twoBox().number("Openings!H6", 3.6).number("Openings!H14", 3.7);

    assertThat(touching.messages()).isEmpty();
  }

  @Test
  void a_passage_needs_a_box_to_lead_to() {
    assertThat(
            Edited.twoBox()
                .blank("Containers!E6")
                .text("Containers!F6", "stands alone")
                .number("Containers!G6", 0)
                .messages())
        .containsExactly(
            "Openings!D9: 'pass-through to next box' in box 'A', which is joined to none; expected"
                + " another kind, or a joint on sheet Containers",
            "Openings!D10: 'pass-through to next box' in box 'A', which is joined to none; expected"
                + " another kind, or a joint on sheet Containers");
  }

  // L is the column Landing; row 5 is a door, row 11 a window.
  @Test
  void a_landing_is_a_row_of_own_items_and_belongs_to_an_outside_door() {
    var none = Edited.twoBox().text("Openings!L5", "steps").messages();
    assertThat(none)
        .singleElement()
        .asString()
        .startsWith("Openings!L5: the name 'steps' (Landing), which is not there; expected");
    var item =
        Edited.twoBox()
            .text("Own items!A5", "Steps")
            .text("Own items!B5", "8 Outside")
            .text("Own items!C5", "Landing and steps")
            .number("Own items!D5", 1)
            .text("Own items!E5", "lot")
            .number("Own items!F5", 900);
    assertThat(item.text("Openings!L5", "steps").messages()).isEmpty();
    assertThat(item.text("Openings!L11", "steps").messages())
        .containsExactly(
            "Openings!L11: a landing for opening 'W3', a window; expected one for outside doors"
                + " only");
  }

  /** P1 is 4.25 to 5.25 m along the right side of A, up to 2.1 m; W4 is 600 x 600 mm from 1.5 m. */
  @Test
  void a_passage_may_not_come_out_at_another_opening() {
    assertThat(
            Edited.twoBox()
                .text("Openings!C12", "left side")
                .number("Openings!H12", 4.5)
                .messages())
        .containsExactly(
            "Openings!H9: passage 'P1' comes out at opening 'W4' of box 'B'; expected a passage,"
                + " entered once, with nothing facing it; there 'W4' takes 4.5 m to 5.1 m");
    var beside = Edited.twoBox().text("Openings!C12", "left side").number("Openings!H12", 5.25);
    assertThat(beside.messages()).isEmpty();
    var above = Edited.twoBox().text("Openings!C12", "left side").number("Openings!H12", 4.5);
    assertThat(above.number("Openings!G12", 2100).messages())
        .noneMatch(m -> m.contains("comes out"));
  }

  /** With B 6 m further along it stands before 6 m to 12.192 m of A; P1 is 4.25 to 5.25 m along. */
  @Test
  void a_passage_leads_into_the_box_where_that_stands() {
    assertThat(Edited.twoBox().number("Containers!K6", 6).messages())
        .filteredOn(m -> m.startsWith("Openings!H9:"))
        .containsExactly(
            "Openings!H9: passage 'P1' takes 4.25 m to 5.25 m, not all of it before box 'B';"
                + " expected it within the length of the next box, which stands from 6 m to"
                + " 18.192 m along this one by the positions on sheet Containers");
    // 4 m further along, P1 comes out 0.25 m along B: a window 0.5 m along meets it, one 5 m does
    // not
    var meets =
        Edited.twoBox()
            .number("Containers!K6", 4)
            .text("Openings!C12", "left side")
            .number("Openings!H12", 0.5);
    assertThat(meets.messages()).anyMatch(m -> m.startsWith("Openings!H9: passage 'P1' comes out"));
    assertThat(meets.number("Openings!H12", 5).messages())
        .noneMatch(m -> m.startsWith("Openings!H9"));
  }

  /** Boxes of 12.192 x 2.438 m: B at 2.438 m across stands beside A, at 2.3 m it is in it. */
  @ParameterizedTest(name = "{0} m across, turned by {1}: {2}")
  @CsvSource({
    "2.438, 0, false",
    "2.4, 0, false",
    "2.3, 0, true",
    "0, 0, true",
    "-2.438, 0, false",
    // turned a quarter anticlockwise about its corner it goes towards the left hand, across A
    "2.438, 90, true",
    "0, 90, false"
  })
  void a_box_has_a_place_of_its_own(double across, double turned, boolean said) {
    var messages =
        Edited.twoBox().number("Containers!L6", across).number("Containers!M6", turned).messages();
    assertThat(messages.stream().anyMatch(m -> m.contains("box 'B' stands where box 'A' stands")))
        .isEqualTo(said);
  }

  /** 1 January 2026 was a Thursday, 1 March 2027 is a Monday. */
  @Test
  void a_status_date_before_the_start_is_told() {
    var early =
        Edited.twoBox()
            .date("Project!B6", LocalDate.of(2027, 3, 1))
            .date("Project!B7", LocalDate.of(2026, 1, 1));
    assertThat(early.messages())
        .containsExactly(
            "Project!B7: the status date, Thu 1 Jan 2026, is before the start date, Mon 1 Mar 2027;"
                + " what is paid by time counts from it; leave it empty to plan from the start date");
    assertThat(early.date("Project!B7", LocalDate.of(2027, 3, 1)).messages()).isEmpty();
  }

  /** P2 is entered in A at 10.4 m; the same way entered again in B is the later row's fault. */
  @Test
  void a_passage_is_entered_once() {
    assertThat(
            Edited.twoBox()
                .text("Openings!C12", "left side")
                .text("Openings!D12", "pass-through to next box")
                .number("Openings!G12", 0)
                .number("Openings!H12", 10.5)
                .messages())
        .filteredOn(m -> m.contains("comes out"))
        .containsExactly(
            "Openings!H12: passage 'W4' comes out at opening 'P2' of box 'A'; expected a passage,"
                + " entered once, with nothing facing it; there 'P2' takes 10.4 m to 11.3 m");
  }

  /** C stands to the left of A: a window in its left side does not face what leads from A to B. */
  @Test
  void of_two_boxes_joined_to_one_the_passage_leads_to_that_on_its_side() {
    var row =
        Edited.twoBox()
            .row("Containers", 7, "C", "40 ft high cube", "", "", "A", "side by side", 12.192)
            .number("Containers!L7", -2.438)
            .text("Openings!C12", "left side")
            .number("Openings!H12", 4.5);
    assertThat(row.messages()).anyMatch(m -> m.startsWith("Openings!H9: passage 'P1' comes out"));
    row.text("Openings!B12", "C");
    assertThat(row.messages()).noneMatch(m -> m.contains("comes out"));
  }

  /**
   * In line, 2.438 m wide: 0.5 to 1.4 m from the right corner is 1.038 to 1.938 m from the left.
   */
  @Test
  void ends_that_meet_are_counted_from_the_other_corner() {
    var line =
        Edited.twoBox()
            .text("Containers!F6", "end to end")
            .number("Containers!G6", 2.438)
            .text("Openings!C9", "blind end")
            .number("Openings!H9", 0.5)
            .number("Openings!E9", 900)
            .text("Openings!C12", "door end");
    assertThat(line.number("Openings!H12", 1.8).messages())
        .filteredOn(m -> m.contains("comes out"))
        .containsExactly(
            "Openings!H9: passage 'P1' comes out at opening 'W4' of box 'B'; expected a passage,"
                + " entered once, with nothing facing it; there 'W4' takes 0.038 m to 0.638 m");
    assertThat(line.number("Openings!H12", 0.4).messages()).noneMatch(m -> m.contains("comes out"));
  }

  @Test
  void a_joint_entered_on_both_rows_is_a_fault_of_the_later_one() {
    assertThat(
            Edited.twoBox()
                .text("Containers!E5", "B")
                .text("Containers!F5", "side by side")
                .number("Containers!G5", 12.192)
                .messages())
        .containsExactly(
            "Containers!E6: boxes joined in a ring: B to A to B; expected each joint once, on the"
                + " row of the later box");
  }

  @Test
  void length_in_no_room_is_a_remark() {
    var reading = Edited.twoBox().number("Rooms!D6", 3).read();

    assertThat(reading.scope()).isPresent();
    assertThat(reading.problems())
        .containsExactly(
            Problem.remark(
                "Rooms",
                "D6",
                "0.532 m of box 'A' is in no room",
                "expected rooms that add up to its inside length of 12.032 m"));
  }

  @Test
  void own_rows_are_checked_for_contradictions() {
    var edited =
        Edited.twoBox()
            .row("Quotes", 5, "x", "One", "each unit", 100, "", "", "yes")
            .row("Quotes", 6, "x", "Two", "each unit", 90, "", "", true)
            .row("Quotes", 7, "x", "Three", "each unit", 80, "", "", "no")
            .row("Quotes", 8, "y", "", "each unit", 1, day(5), day(4), "yes")
            .row("Crews", 5, "Painters", 2, "Nights")
            .row("Crews", 6, "painters", 1)
            .row("Own tasks", 5, "t1", "One", 3, "d", 4, 5)
            .row("Own tasks", 6, "t2", "Two", 3, "d", 2)
            .row("Own tasks", 7, "t1", "Three", 3, "week")
            .row("Own items", 5, "shed", "8 Outside", "Shed", 1, "each", 5)
            .row("Own items", 6, "Shed", "8 Outside", "Shed", 1, "each", 5)
            .row("Calendars", 9, "Never", 0, 0, 0, 0, 0, 0, 0, "yes");

    assertThat(edited.messages())
        .containsExactly(
            "Own tasks!D7: text 'week' (Duration unit); expected one of 'h', 'd', 'elapsed d'",
            "Own items!A6: a second item 'Shed'; expected each name once; the first is in A5",
            "Crews!A6: a second crew 'painters'; expected each name once; the first is in A5",
            "Crews!A5: the name 'Nights' (Calendar), which is not there; expected one of"
                + " 'Weekdays', 'Six days', 'Every day', 'Weekends', 'Never'",
            "Quotes!D6: a second quote in use for line 'x'; expected one with Use it = yes; the"
                + " first is in D5",
            "Quotes!D8: a quote of 2027-03-05 valid until 2027-03-04; expected the last day it is"
                + " valid not before its date",
            "Own tasks!A5: task 't1' lasts 4, 3, 5 (Optimistic, Duration, Pessimistic); expected"
                + " none of them less than the one before",
            "Own tasks!A6: task 't2' has only one of Optimistic and Pessimistic; expected both or"
                + " neither",
            "Calendars!A9: calendar 'Never' has no working hours; expected hours on at least one"
                + " day of the week");
  }

  @Test
  void two_own_tasks_of_one_id_are_a_fault() {
    var edited =
        Edited.twoBox()
            .row("Own tasks", 5, "t1", "One", 3, "d")
            .row("Own tasks", 6, "T1", "Other", 3, "d")
            .row("Own tasks", 7, "t1", "Same", 3, "d");

    assertThat(edited.messages())
        .containsExactly(
            "Own tasks!A7: a second task 't1'; expected each name once; the first is in A5");
  }

  @Test
  void a_number_under_the_name_of_no_crew_names_the_crew_to_add() {
    var edited =
        Edited.twoBox()
            .row("Own tasks", 4, "Id", "Name", "Duration", "Duration unit", "Optimistic")
            .text("Own tasks!J4", "Divers")
            .text("Own tasks!K4", "Remarks")
            .row("Own tasks", 5, "t1", "Weld under water", 3, "d")
            .number("Own tasks!J5", 2)
            .text("Own tasks!K5", "cold");

    assertThat(edited.messages())
        .containsExactly(
            "Own tasks!J5: a number in column 'Divers', which is no crew; expected a row for crew"
                + " 'Divers' on sheet 'Crews'");
  }

  @Test
  void a_demand_for_a_crew_is_a_whole_number() {
    var edited =
        Edited.twoBox()
            .row("Crews", 5, "Divers", 2)
            .text("Own tasks!J4", "divers")
            .row("Own tasks", 5, "t1", "Weld under water", 3, "d")
            .number("Own tasks!J5", 1.5)
            .row("Own tasks", 6, "t2", "Again", 3, "d")
            .text("Own tasks!J6", "two");

    assertThat(edited.messages())
        .containsExactly(
            "Own tasks!J5: the number 1.5 (Divers); expected a whole number from 0 to 10000, how"
                + " many of the crew the task needs",
            "Own tasks!J6: text 'two' (Divers); expected a whole number from 0 to 10000, how many"
                + " of the crew the task needs");
  }

  private static LocalDate day(int ofMarch) {
    return LocalDate.of(2027, 3, ofMarch);
  }
}
