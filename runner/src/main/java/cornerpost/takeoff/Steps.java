package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.List;

/**
 * Flights of steps from the ground to the floor: as many risers as the height asks for (IRC
 * R311.7.5.1), treads, stringers, a landing slab, and a handrail from four risers on (R311.7.8).
 */
final class Steps implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var flights = job.scope().deckAndRoof().figure(DeckAndRoofQuestions.STEPS);
    var width = job.scope().deckAndRoof().figure(DeckAndRoofQuestions.STEP_WIDTH);
    var height = job.scope().site().figure(SiteQuestions.FLOOR_HEIGHT);
    var risers =
        Line.of(
            "steps/risers",
            Stage.OUTSIDE,
            "Risers in a flight",
            height.over(job.fact("stair.riser")).roundedUp(),
            Unit.EACH,
            "floor height / largest riser, rounded up");
    var treads = risers.named().minus(Figure.count(1)).atLeastZero();
    var going = treads.times(job.fact("stair.tread"));
    var slope = going.times(going).plus(height.times(height)).squareRoot();
    var stringers =
        width.over(job.fact("steps.stringer-spacing")).roundedUp().plus(Figure.count(1));
    var rail =
        risers
            .named()
            .ifAtLeast(job.fact("stair.handrail-risers"), slope, Figure.zero(Dimension.LENGTH));
    return List.of(
        risers,
        Line.of(
                "steps/treads",
                Stage.OUTSIDE,
                "Treads",
                flights.times(treads).times(width),
                job.length(),
                "flights x treads x width",
                Buy.of("step-tread", job.fact("waste.timber"), BuildTask.STEPS),
                Labour.of("build-tread", BuildTask.STEPS))
            .cutAs(List.of(new Piece(width, flights.times(treads), "treads"))),
        Line.of(
                "steps/stringers",
                Stage.OUTSIDE,
                "Stringers",
                flights.times(stringers).times(slope),
                job.length(),
                "flights x stringers x length up the slope",
                Buy.of("step-stringer", job.fact("waste.timber"), BuildTask.STEPS),
                Labour.of("cut-stringer", BuildTask.STEPS))
            .cutAs(List.of(new Piece(slope, flights.times(stringers), "stringers"))),
        Line.of(
            "steps/landing",
            Stage.OUTSIDE,
            "Landing slabs below the steps",
            flights.times(width).times(job.fact("path.width")),
            job.area(),
            "flights x width x a metre",
            Buy.of("paving-slab", job.fact("waste.tile"), BuildTask.STEPS),
            Labour.of("lay-paving", BuildTask.STEPS)),
        Line.of(
                "steps/handrail",
                Stage.OUTSIDE,
                "Handrail of the steps",
                rail.times(flights),
                job.length(),
                "up the slope of each flight, from four risers on (IRC R311.7.8)",
                Buy.of("handrail", job.fact("waste.timber"), BuildTask.STEPS),
                Labour.of("fix-handrail", BuildTask.STEPS))
            .cutAs(List.of(new Piece(rail, flights, "handrails"))));
  }
}
