package cornerpost.plan;

import cornerpost.work.WorkTask;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;

/**
 * A task with its dates.
 *
 * @param start planned: crew-limited where crews are limited
 * @param finish exclusive: the moment work ends
 * @param firstDay as people say it: the first working day; {@code lastDay} the last one
 * @param earlyStart of the network alone, as the other early and late times
 * @param totalFloatDays working days of its calendar by which it may slip before the finish moves
 * @param freeFloatDays working days by which it may slip before any other task moves
 * @param drivesMoveIn on the longest path from now to move-in, in the planned sequence
 * @param critical no total float in the network alone
 * @param waitsFor in words: the task or crew that sets its start
 */
public record DatedTask(
    WorkTask task,
    LocalDateTime start,
    LocalDateTime finish,
    LocalDate firstDay,
    LocalDate lastDay,
    BigDecimal durationDays,
    LocalDateTime earlyStart,
    LocalDateTime earlyFinish,
    LocalDateTime lateStart,
    LocalDateTime lateFinish,
    LocalDate earlyFirstDay,
    LocalDate earlyLastDay,
    LocalDate lateFirstDay,
    LocalDate lateLastDay,
    BigDecimal totalFloatDays,
    BigDecimal freeFloatDays,
    boolean drivesMoveIn,
    boolean critical,
    boolean done,
    boolean started,
    String waitsFor,
    List<String> waitsForIds) {
  public String id() {
    return task.id();
  }
}
