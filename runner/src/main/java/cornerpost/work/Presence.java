package cornerpost.work;

import static cornerpost.takeoff.BuildTask.*;

import cornerpost.price.CostLine;
import cornerpost.price.Estimate;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.InsulationMaterial;
import cornerpost.scope.InsulationSide;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.ModifiedWhere;
import cornerpost.scope.PermitClass;
import cornerpost.scope.PowerSupply;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Question;
import cornerpost.scope.Scope;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.SiteAccess;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.WasteWater;
import cornerpost.scope.WaterSupply;
import cornerpost.takeoff.BuildTask;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Which tasks are in the plan: those on which something that costs money or hours falls, and those
 * that what was chosen brings with it: permits, hold points, waits, milestones.
 */
final class Presence {
  private final Scope scope;
  private final Set<BuildTask> present = EnumSet.noneOf(BuildTask.class);

  private Presence(Scope scope) {
    this.scope = scope;
  }

  static Set<BuildTask> of(Scope scope, Estimate estimate) {
    var presence = new Presence(scope);
    for (var line : estimate.lines()) {
      if (!isNothing(line)) {
        line.task().flatMap(BuildTask::find).ifPresent(presence.present::add);
      }
    }
    presence.preparation();
    presence.groundAndShell();
    presence.inside();
    presence.closeOut();
    return presence.present;
  }

  /** Whether a line asks for no money and no hours: an allowance of 0, say. */
  static boolean isNothing(CostLine line) {
    if (line.quantity().isZero()) return true;
    return switch (line.kind()) {
      case LABOUR, OWN_LABOUR -> false;
      default -> line.money().signum() == 0;
    };
  }

  private boolean any(BuildTask... tasks) {
    return Arrays.stream(tasks).anyMatch(present::contains);
  }

  private void when(boolean condition, BuildTask... tasks) {
    if (condition) present.addAll(List.of(tasks));
  }

  private PermitClass permit() {
    return scope.project().option(ProjectQuestions.PERMIT, PermitClass.class);
  }

  private boolean inspected() {
    return permit() != PermitClass.NONE;
  }

  private void preparation() {
    when(inspected(), DRAWINGS, PERMIT_APPLY, PERMIT_REVIEW, PERMIT_GRANTED);
    when(scope.project().yes(ProjectQuestions.ENGINEER), ENGINEERING);
    var loan = scope.loan().findFigure(LoanQuestions.AMOUNT);
    when(loan.isPresent() && !loan.get().isZero(), LOAN_CLOSING);
    var services = scope.services();
    boolean utilities =
        services.option(ServicesQuestions.POWER, PowerSupply.class) != PowerSupply.SOLAR
            || services.option(ServicesQuestions.WATER, WaterSupply.class) == WaterSupply.MAINS
            || services.option(ServicesQuestions.WASTE, WasteWater.class) == WasteWater.SEWER;
    when(utilities, UTILITY_APPLY, UTILITY_WAIT);
    when(true, CHOOSE_BOXES, SITE_SET_UP);
    when(
        scope.site().option(SiteQuestions.ACCESS, SiteAccess.class) == SiteAccess.CRANE,
        BOOK_CRANE);
  }

  private void groundAndShell() {
    when(any(POUR), CURE);
    when(any(POUR) && inspected(), FOOTING_INSPECTION);
    when(any(FORMWORK), STRIP_FORMS);
    boolean underground = any(TRENCHES, LAY_WASTE, LAY_WATER, LAY_CABLE, SEPTIC);
    when(underground && inspected(), UNDERGROUND_INSPECTION);
    when(true, DELIVERY, SET_BOXES, LEVEL_BOXES, FIX_DOWN, WATERTIGHT);
    when(
        scope.boxes().stream()
            .anyMatch(b -> b.modified() == ModifiedWhere.IN_YARD && !scope.openingsOf(b).isEmpty()),
        YARD_STEELWORK);
    when(any(CUT_OPENINGS, FIT_FRAMES, WELD_FRAMES), MARK_OPENINGS);
    boolean welded = any(WELD_FRAMES, JOIN_BOXES);
    when(welded && inspected() && scope.project().yes(ProjectQuestions.ENGINEER), WELD_INSPECTION);
    when(any(SET_WINDOWS, SET_DOORS), HOSE_TEST);
    when(any(DECK_CONCRETE), DECK_CURE);
    when(any(DECK_CONCRETE) && inspected(), DECK_INSPECTION);
  }

  private void inside() {
    boolean firstFix = any(ELECTRICAL_FIRST, PLUMBING_WASTE, PLUMBING_SUPPLY, DUCTS, SPLIT_LINES);
    when(any(PLUMBING_WASTE, PLUMBING_SUPPLY), PRESSURE_TEST);
    when(firstFix && inspected(), ROUGH_IN_INSPECTION);
    when(any(WALL_STUDS, PARTITIONS, CEILING_BATTENS) && inspected(), FRAMING_INSPECTION);
    when(firstFix, PHOTOGRAPH);
    boolean insulated = any(WALL_INSULATION, CEILING_INSULATION, UNDERFLOOR_INSULATION);
    when(insulated && inspected(), INSULATION_INSPECTION);
    when(foam(), FOAM_WAIT);
    when(any(JOINTS), JOINTS_DRY);
    when(any(PAINT_WALLS), PAINT_DRY);
    when(any(FLOOR_PREPARE), FLOOR_DRY);
    when(any(WATERPROOF), WATERPROOF_DRY);
    when(any(WALL_TILES, FLOOR_TILES), TILES_DRY);
  }

  private boolean foam() {
    var side = scope.envelope().option(EnvelopeQuestions.SIDE, InsulationSide.class);
    return side != InsulationSide.OUTSIDE
            && any(WALL_INSULATION)
            && isFoam(EnvelopeQuestions.INSIDE)
        || any(CEILING_INSULATION) && isFoam(EnvelopeQuestions.CEILING)
        || any(UNDERFLOOR_INSULATION) && isFoam(EnvelopeQuestions.UNDERFLOOR);
  }

  private boolean isFoam(Question question) {
    return switch (scope.envelope().option(question, InsulationMaterial.class)) {
      case CLOSED_CELL, OPEN_CELL -> true;
      default -> false;
    };
  }

  private void closeOut() {
    when(any(ELECTRICAL_SECOND, PANEL), TEST_ELECTRICS);
    when(any(PLUMBING_SECOND), TEST_PLUMBING);
    when(any(SPLIT_UNITS, DUCTS), COMMISSION);
    when(inspected(), FINAL_INSPECTION);
    when(permit() == PermitClass.FULL, CERTIFICATE_WAIT, CERTIFICATE);
    when(true, SNAGS, FINAL_CLEAN, MOVE_IN);
  }
}
