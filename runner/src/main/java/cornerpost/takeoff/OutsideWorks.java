package cornerpost.takeoff;

import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import java.util.List;

/** Awning, paths, and the ground graded and planted. */
final class OutsideWorks implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var deck = job.scope().deckAndRoof();
    var awning =
        deck.figure(DeckAndRoofQuestions.AWNING_LENGTH)
            .times(deck.figure(DeckAndRoofQuestions.AWNING_DEPTH));
    var path =
        Line.of(
            "paths/area",
            Stage.OUTSIDE,
            "Paths",
            deck.figure(DeckAndRoofQuestions.PATH_LENGTH).times(job.fact("path.width")),
            job.area(),
            "length x width",
            Buy.of("geotextile", job.fact("waste.membrane"), BuildTask.PATHS),
            Labour.of("lay-path", BuildTask.PATHS));
    var planted = deck.figure(DeckAndRoofQuestions.PLANTING);
    return List.of(
        Line.of(
            "awning/area",
            Stage.OUTSIDE,
            "Awning with posts, frame and sheet",
            awning,
            job.area(),
            "length x depth",
            Buy.of("awning", BuildTask.AWNING),
            Labour.of("build-awning", BuildTask.AWNING)),
        path,
        Line.of(
            "paths/stone",
            Stage.OUTSIDE,
            "Stone of the paths",
            path.named().times(job.fact("path.stone")),
            job.volume(),
            "area x thickness",
            Buy.of("gravel", job.fact("waste.stone"), BuildTask.PATHS)),
        Line.of(
            "paths/edging",
            Stage.OUTSIDE,
            "Edging of the paths",
            deck.figure(DeckAndRoofQuestions.PATH_LENGTH).times(2),
            job.length(),
            "both sides",
            Buy.of("path-edging", job.fact("waste.timber"), BuildTask.PATHS)),
        Line.of(
            "planting/area",
            Stage.OUTSIDE,
            "Ground graded away from the house, seeded and planted",
            planted,
            job.area(),
            "the area entered; fall 6 in in 10 ft (IRC R401.3)",
            Buy.of("seed-and-plants", BuildTask.PLANTING),
            Labour.of("grade-and-plant", BuildTask.PLANTING)),
        Line.of(
            "planting/topsoil",
            Stage.OUTSIDE,
            "Topsoil spread from the heap",
            planted.times(job.fact("planting.topsoil")),
            job.volume(),
            "area x thickness; what was stripped is used",
            Labour.of("spread-topsoil", BuildTask.PLANTING)));
  }
}
