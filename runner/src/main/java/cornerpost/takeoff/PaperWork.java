package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.BOOK_CRANE;
import static cornerpost.takeoff.BuildTask.CHOOSE_BOXES;
import static cornerpost.takeoff.BuildTask.DRAWINGS;
import static cornerpost.takeoff.BuildTask.ENGINEERING;
import static cornerpost.takeoff.BuildTask.INSURANCE;
import static cornerpost.takeoff.BuildTask.LOAN_CLOSING;
import static cornerpost.takeoff.BuildTask.PERMIT_APPLY;
import static cornerpost.takeoff.BuildTask.SURVEY;
import static cornerpost.takeoff.BuildTask.UTILITY_APPLY;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.Joint;
import cornerpost.scope.LoanQuestions;
import cornerpost.scope.PermitClass;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.SiteAccess;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * What is done and paid at the desk before the box comes: survey, drawings, engineer, permit,
 * applications, insurance, loan, choosing boxes, booking crane and truck. Fees are what is paid
 * whoever does the work; hours are those of the trade Design and permits. Common practice, no
 * source.
 */
final class PaperWork implements TakeoffRule {
  private static final Unit EACH = Unit.EACH;

  @Override
  public List<Line> measure(Job job) {
    var scope = job.scope();
    var floor = job.measured("shell/floor-area");
    var lines = new ArrayList<Line>();
    lines.add(
        one(
            "preparation/survey",
            "Soil and site survey",
            "one for the plot",
            Buy.of("site-survey", SURVEY),
            Labour.of("attend-survey", SURVEY)));
    lines.add(
        one(
            "preparation/drawings",
            "Site plan, cover sheet and schedules",
            "one set for the house",
            Buy.of("drawing-prints", DRAWINGS),
            Labour.of("draw-site-plan", DRAWINGS)));
    lines.add(
        of(
            "preparation/drawings-area",
            "Plans, elevations and details",
            floor,
            job.area(),
            "hours by the floor area drawn",
            Labour.of("draw-plans", DRAWINGS)));
    if (scope.project().yes(ProjectQuestions.ENGINEER)) lines.addAll(engineer(job));
    lines.addAll(permit(job, floor));
    lines.add(
        one(
            "preparation/utility-applications",
            "Applications for electricity, water and waste water",
            "one set; what the utilities charge stands with the connections",
            Labour.of("apply-utilities", UTILITY_APPLY)));
    lines.add(
        one(
            "preparation/insurance",
            "Builder's insurance arranged",
            "one policy; its premium goes by time",
            Labour.of("arrange-insurance", INSURANCE)));
    lines.addAll(loan(job));
    lines.add(
        of(
            "preparation/choose-boxes",
            "Boxes inspected before they are paid for",
            Figure.count(scope.boxes().size()),
            EACH,
            "each box looked over: doors, seals, roof, underside, plate, floor",
            Labour.of("inspect-box", CHOOSE_BOXES)));
    var crane = scope.site().option(SiteQuestions.ACCESS, SiteAccess.class) == SiteAccess.CRANE;
    lines.add(
        one(
            "preparation/book-crane",
            crane ? "Crane and trucks booked together" : "Tilt-bed truck booked",
            "one booking; access, wires and ground looked at when it is made",
            Labour.of("book-transport", BOOK_CRANE)));
    return lines;
  }

  private static List<Line> engineer(Job job) {
    var scope = job.scope();
    var structural =
        scope.openings().stream().filter(o -> Shape.takesUnit(o) || Shape.sheets(o) > 1).count();
    var joints = scope.boxes().stream().filter(b -> b.joint() != Joint.NONE).count();
    return List.of(
        one(
            "preparation/engineer",
            "Engineer's design: footings and general checks",
            "one commission",
            Buy.of("engineer-base", ENGINEERING),
            Labour.of("brief-engineer", ENGINEERING)),
        of(
            "preparation/engineer-openings",
            "Engineer's design of openings",
            Figure.count(structural),
            EACH,
            "each window, door and pass-through",
            Buy.of("engineer-opening", ENGINEERING)),
        of(
            "preparation/engineer-joints",
            "Engineer's design of joints between boxes",
            Figure.count(joints),
            EACH,
            "each joint",
            Buy.of("engineer-joint", ENGINEERING)));
  }

  private static List<Line> permit(Job job, Figure floor) {
    return switch (job.scope().project().option(ProjectQuestions.PERMIT, PermitClass.class)) {
      case FULL ->
          List.of(
              one(
                  "preparation/permit",
                  "Full building permit: application and plan review",
                  "one permit",
                  Buy.of("permit-full", PERMIT_APPLY),
                  Labour.of("apply-permit-full", PERMIT_APPLY)),
              of(
                  "preparation/permit-area",
                  "Full building permit: fee by floor area",
                  floor,
                  job.area(),
                  "inside floor area",
                  Buy.of("permit-full-area", PERMIT_APPLY)));
      case MINOR ->
          List.of(
              one(
                  "preparation/permit",
                  "Minor works permit",
                  "one permit",
                  Buy.of("permit-minor", PERMIT_APPLY),
                  Labour.of("apply-permit-minor", PERMIT_APPLY)));
      case NONE -> List.of();
    };
  }

  /** Without a loan the counts are nothing; they follow the amount in the sheet. */
  private static List<Line> loan(Job job) {
    var amount = job.scope().loan().findFigure(LoanQuestions.AMOUNT);
    if (amount.isEmpty()) return List.of();
    var one = Figure.constant("1", Unit.base(Dimension.MONEY));
    return List.of(
        of(
            "preparation/loan-closing",
            "Loan closing: appraisal, title, legal fees",
            amount.get().ifAtLeast(one, Figure.count(1), Figure.count(0)),
            EACH,
            "one where there is a loan",
            Buy.of("loan-closing", LOAN_CLOSING)),
        of(
            "preparation/loan-fee",
            "Lender's fee, for each thousand of the loan",
            amount.get().over(one).over(1000),
            EACH,
            "loan / 1 000",
            Buy.of("loan-fee-thousand", LOAN_CLOSING)));
  }

  private static Line one(String id, String what, String because, Resource... resources) {
    return of(id, what, Figure.count(1), EACH, because, resources);
  }

  private static Line of(
      String id, String what, Figure quantity, Unit unit, String because, Resource... resources) {
    return Line.of(id, Stage.PREPARATION, what, quantity, unit, because, resources);
  }
}
