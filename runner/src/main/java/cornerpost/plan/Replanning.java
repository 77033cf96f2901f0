package cornerpost.plan;

import cornerpost.scope.BaselineRow;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * What steers the work once it goes on: against the kept plan, under delays, and in the weeks to
 * come. Days are calendar days, amounts in the plan's currency.
 *
 * @param kept every row of sheet Baseline: those read, and those of this plan if it is kept now
 * @param baseline this plan against the one kept last
 * @param moved what the delays move, by how much, against the plan without them
 * @param wayBefore ids of the longest path from delivery to move-in in the plan without delays
 * @param dayCost what a day of delay costs
 * @param slip move-in and cost against days of slip, where there is a delay
 * @param resequencing other orders of the work, where there is a delay
 * @param recovery what winning days back costs, where a day is asked for or lost
 * @param ahead the next three weeks
 */
public record Replanning(
    List<BaselineRow> kept,
    Optional<Against> baseline,
    List<Move> moved,
    List<String> wayBefore,
    DayCost dayCost,
    Optional<SlipCurve> slip,
    Optional<Resequencing> resequencing,
    Optional<Recovery> recovery,
    Optional<LookAhead> ahead) {

  /** No baseline, no delay, nothing ahead. */
  public static final Replanning NONE =
      new Replanning(
          List.of(),
          Optional.empty(),
          List.of(),
          List.of(),
          new DayCost(BigDecimal.ZERO, BigDecimal.ZERO, BigDecimal.ZERO),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /**
   * What a day of delay costs.
   *
   * @param hire what is paid by the month: hire, insurance and rent, for a day with its tax
   * @param interest on all that is drawn, for a day
   * @param crane once, where the crane must be booked again
   */
  public record DayCost(BigDecimal hire, BigDecimal interest, BigDecimal crane) {
    /** Of each day. */
    public BigDecimal aDay() {
      return hire.add(interest);
    }
  }

  /**
   * This plan against a kept one.
   *
   * @param names of all that were kept, the first one first
   * @param rows the total, then stages, then tasks in the order of this plan; what the kept plan
   *     has and this one has not comes last
   */
  public record Against(
      String name, LocalDate keptOn, List<String> names, List<AgainstRow> rows, int moveInDays) {
    public Against {
      names = List.copyOf(names);
      rows = List.copyOf(rows);
    }

    /** The row of the whole. */
    public Optional<AgainstRow> total() {
      return rows.stream().filter(r -> r.id().equals(BaselineRow.TOTAL)).findFirst();
    }
  }

  /**
   * A task, a stage or the whole, then and now.
   *
   * @param then in the kept plan; empty for what is new
   * @param now in this plan, as a row of its own baseline; empty for what is no longer there
   * @param days by which it finishes later; below nothing sooner
   */
  public record AgainstRow(
      String id,
      String name,
      Optional<BaselineRow> then,
      Optional<BaselineRow> now,
      int days,
      BigDecimal money) {}

  /**
   * A task that is done at another time.
   *
   * @param crews who does it
   * @param from first day before, {@code to} first day after
   * @param days later; below nothing sooner
   * @param floatUsed working days of its float that the change uses up
   */
  public record Move(
      String id,
      String name,
      String crews,
      LocalDate from,
      LocalDate to,
      int days,
      BigDecimal floatUsed) {}

  /**
   * Move-in and cost against days of slip of one event.
   *
   * @param planned the event's day without slip
   * @param points from no slip, a day at a time
   * @param lastDay the last day on which it may come without moving move-in; empty beyond the curve
   */
  public record SlipCurve(
      String event,
      String eventName,
      LocalDate planned,
      List<SlipPoint> points,
      List<Kink> kinks,
      Optional<LocalDate> lastDay) {
    public SlipCurve {
      points = List.copyOf(points);
      kinks = List.copyOf(kinks);
    }
  }

  /** A point of the curve. */
  public record SlipPoint(int days, LocalDate moveIn, int moveInDays, BigDecimal cost) {}

  /** Where the curve bends, and why. */
  public record Kink(int days, String words) {}

  /**
   * Other orders of the work.
   *
   * @param present the day of move-in if every crew keeps its order
   * @param pull what can be done sooner while waiting, each by itself
   */
  public record Resequencing(
      LocalDate present, List<Move> pull, List<Idle> idle, Choice soonest, Choice fewest) {
    public Resequencing {
      pull = List.copyOf(pull);
      idle = List.copyOf(idle);
    }
  }

  /** A crew without the work it was to have. */
  public record Idle(String crew, LocalDate from, LocalDate to, int workingDays, String was) {}

  /**
   * An order of the work as moves from the dates that hold without the delays.
   *
   * @param changed bookings of crews that get another day
   * @param atLeast no order whose move-in is no later than the present order's changes fewer
   */
  public record Choice(
      LocalDate moveIn, int changed, int atLeast, List<Move> moves, List<TaskDays> days) {
    public Choice {
      moves = List.copyOf(moves);
      days = List.copyOf(days);
    }

    Choice withAtLeast(int fewest) {
      return new Choice(moveIn, changed, fewest, moves, days);
    }

    /** How many bookings change, and what of the list comes with them. */
    public String changes() {
      int others = moves.size() - changed;
      return changed
          + (changed == 1 ? " booking changes" : " bookings change")
          + (others <= 0
              ? ""
              : ", and with them "
                  + others
                  + (others == 1 ? " milestone or wait" : " milestones and waits"));
    }

    /** What is known of orders that change fewer bookings. */
    public String proof() {
      if (changed == atLeast) return "no order of the work that ends no later changes fewer";
      return "no order of the work that ends no later changes fewer than " + atLeast;
    }
  }

  /** Planned moments of a task in a choice. */
  public record TaskDays(
      String id, java.time.LocalDateTime start, java.time.LocalDateTime finish) {}

  /**
   * Winning days back.
   *
   * @param wanted the day asked for: the owner's, else that of the plan without delays
   * @param from the planned day of move-in
   * @param steps each wins at least a day, at the least cost found
   * @param reached whether the day asked for is won back; if not, no measure known wins more
   */
  public record Recovery(
      LocalDate wanted, LocalDate from, List<Step> steps, List<Measure> measures, boolean reached) {
    public Recovery {
      steps = List.copyOf(steps);
      measures = List.copyOf(measures);
    }

    /** Of all that is done for the last step. */
    public BigDecimal cost() {
      return steps.isEmpty() ? BigDecimal.ZERO : steps.get(steps.size() - 1).total();
    }
  }

  /**
   * A day, or several at once, won back.
   *
   * @param days won with this step
   * @param cost of this step; {@code total} of all up to it
   */
  public record Step(
      LocalDate moveIn, int days, List<String> measures, BigDecimal cost, BigDecimal total) {
    public Step {
      measures = List.copyOf(measures);
    }
  }

  /**
   * All that is done about one task, for the last step.
   *
   * @param days working days of the task by which it is shorter or starts sooner
   */
  public record Measure(String id, String name, String what, BigDecimal days, BigDecimal cost) {}

  /** The weeks to come, by crew. */
  public record LookAhead(LocalDate from, LocalDate to, List<CrewAhead> crews) {
    public LookAhead {
      crews = List.copyOf(crews);
    }
  }

  /** What a crew, or deliveries and inspections, have in the weeks to come. */
  public record CrewAhead(String crew, List<Item> items) {
    public CrewAhead {
      items = List.copyOf(items);
    }
  }

  /**
   * A task in the weeks to come.
   *
   * @param state {@code under way} or {@code to start}
   * @param ready what must be there before: deliveries, inspections, tasks, with their days
   * @param booked the day for which it is firmly booked
   */
  public record Item(
      String id,
      String name,
      LocalDate start,
      LocalDate finish,
      String state,
      boolean drives,
      Optional<LocalDate> booked,
      List<String> ready) {
    public Item {
      ready = List.copyOf(ready);
    }
  }

  public Replanning {
    kept = List.copyOf(kept);
    moved = List.copyOf(moved);
    wayBefore = List.copyOf(wayBefore);
  }
}
