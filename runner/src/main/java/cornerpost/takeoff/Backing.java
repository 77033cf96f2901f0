package cornerpost.takeoff;

import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.HeatingCooling;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.Stage;
import cornerpost.scope.StudSection;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import java.util.ArrayList;
import java.util.List;

/**
 * Timber between the studs behind what hangs on them: kitchen units, basin and rails, wardrobes,
 * indoor units. Each is a run, sawn to the bays on site. Common practice, no source.
 */
final class Backing implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var in = new Inside(job);
    var finishes = job.scope().finishes();
    var services = job.scope().services();
    var cut = new ArrayList<Piece>();
    int kitchens = in.kitchens().size();
    if (kitchens > 0) {
      var run = finishes.figure(FinishesQuestions.KITCHEN_RUN);
      var wall = run.times(finishes.figure(FinishesQuestions.WALL_UNITS));
      cut.add(Piece.of(run, kitchens, "backing of the kitchen's base units"));
      cut.add(Piece.of(wall, kitchens, "backing of the kitchen's wall units"));
    }
    int bathrooms = in.bathrooms().size();
    if (bathrooms > 0) {
      cut.add(Piece.of(job.fact("framing.backing-bathroom"), bathrooms, "backing in bathrooms"));
    }
    if (!in.sleeping().isEmpty()) {
      cut.add(Piece.of(finishes.figure(FinishesQuestions.WARDROBE), 1, "backing of the wardrobe"));
    }
    if (services.option(ServicesQuestions.HEATING, HeatingCooling.class) != HeatingCooling.STOVE) {
      var heads = services.figure(ServicesQuestions.HEADS);
      cut.add(new Piece(job.fact("framing.backing-unit"), heads, "backing of indoor units"));
    }
    var out = new Tally(Stage.FRAMING);
    if (cut.isEmpty()) return out.lines();
    boolean treated = job.scope().envelope().yes(EnvelopeQuestions.TREATED);
    out.addCut(
        "framing/house/backing",
        "Backing timber for units, basin and rails",
        Inside.lengths(cut.stream().map(p -> p.length().times(p.count())).toList()),
        job.length(),
        "kitchen run once for base and once for wall units, each bathroom, wardrobe, indoor units",
        cut,
        Buy.of(
            Materials.stud(StudSection.TIMBER_38_89, treated),
            job.fact("waste.studs"),
            BuildTask.BACKING),
        Labour.of("backing", BuildTask.BACKING));
    return out.lines();
  }
}
