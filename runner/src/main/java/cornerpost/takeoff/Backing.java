package cornerpost.takeoff;

import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.FinishesQuestions;
import cornerpost.scope.HeatingCooling;
import cornerpost.scope.ServicesQuestions;
import cornerpost.scope.Stage;
import cornerpost.scope.StudSection;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Timber between the studs behind what hangs on them: kitchen units, basin and rails, wardrobes,
 * indoor units. Common practice, no source.
 */
final class Backing implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var in = new Inside(job);
    var finishes = job.scope().finishes();
    var services = job.scope().services();
    var terms = new ArrayList<Figure>();
    int kitchens = in.kitchens().size();
    if (kitchens > 0) {
      terms.add(
          finishes
              .figure(FinishesQuestions.KITCHEN_RUN)
              .times(Figure.count(1).plus(finishes.figure(FinishesQuestions.WALL_UNITS)))
              .times(kitchens));
    }
    int bathrooms = in.bathrooms().size();
    if (bathrooms > 0) terms.add(job.fact("framing.backing-bathroom").times(bathrooms));
    if (!in.sleeping().isEmpty()) terms.add(finishes.figure(FinishesQuestions.WARDROBE));
    if (services.option(ServicesQuestions.HEATING, HeatingCooling.class) != HeatingCooling.STOVE) {
      terms.add(services.figure(ServicesQuestions.HEADS).times(job.fact("framing.backing-unit")));
    }
    var out = new Tally(Stage.FRAMING);
    if (terms.isEmpty()) return out.lines();
    boolean treated = job.scope().envelope().yes(EnvelopeQuestions.TREATED);
    out.add(
        "framing/house/backing",
        "Backing timber for units, basin and rails",
        Inside.lengths(terms),
        job.length(),
        "kitchen run once for base and once for wall units, each bathroom, wardrobe, indoor units",
        Buy.of(
            Materials.stud(StudSection.TIMBER_38_89, treated),
            job.fact("waste.studs"),
            BuildTask.BACKING),
        Labour.of("backing", BuildTask.BACKING));
    return out.lines();
  }
}
