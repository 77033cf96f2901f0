package cornerpost.takeoff;

import cornerpost.measure.Dimension;
import cornerpost.measure.Unit;
import cornerpost.measure.UnitSystem;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.DeckBoard;
import cornerpost.scope.SiteQuestions;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * A deck that stands on its own feet beside the boxes, so that no ledger pierces the shell: boards
 * along its length, joists across, beams below them, posts on round footings down to frost depth,
 * and a guard on its three open sides where the floor stands 762 mm or more above the ground (IRC
 * R312.1).
 */
final class Deck implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var deck = job.scope().deckAndRoof();
    if (!deck.yes(DeckAndRoofQuestions.DECK)) return List.of();
    var length = deck.figure(DeckAndRoofQuestions.DECK_LENGTH);
    var depth = deck.figure(DeckAndRoofQuestions.DECK_DEPTH);
    var lines = new ArrayList<Line>();
    lines.addAll(boards(job, length, depth));
    lines.addAll(frame(job, length, depth));
    lines.addAll(guard(job, length, depth));
    return lines;
  }

  private static List<Line> boards(Job job, Figure length, Figure depth) {
    var deck = job.scope().deckAndRoof();
    var chosen = deck.option(DeckAndRoofQuestions.DECK_BOARD, DeckBoard.class);
    var kind =
        switch (chosen) {
          case SOFTWOOD -> "softwood";
          case HARDWOOD -> "hardwood";
          case COMPOSITE -> "composite";
        };
    // boards are sawn to another width on either side of the ocean
    var pitch = job.scope().units() == UnitSystem.METRIC ? "metric" : "us";
    var rows =
        Line.of(
            "deck/board-rows",
            Stage.OUTSIDE,
            "Deck boards side by side",
            depth.over(job.fact("deck.board-pitch." + pitch)).roundedUp(),
            Unit.EACH,
            "depth / board and gap, rounded up");
    var joists =
        Line.of(
            "deck/joist-count",
            Stage.OUTSIDE,
            "Joists of the deck",
            length
                .over(deck.figure(DeckAndRoofQuestions.JOIST_SPACING))
                .roundedUp()
                .plus(Figure.count(1)),
            Unit.EACH,
            "length / spacing, rounded up, and one");
    var area =
        Line.of(
            "deck/area",
            Stage.OUTSIDE,
            "Deck, area laid",
            length.times(depth),
            job.area(),
            "length x depth",
            Labour.of("lay-deck-" + kind, BuildTask.DECK_BOARDS));
    var lines = new ArrayList<Line>();
    lines.add(rows);
    lines.add(joists);
    lines.add(area);
    lines.add(
        Line.of(
                "deck/boards",
                Stage.OUTSIDE,
                "Deck boards: " + chosen.label(),
                rows.named().times(length),
                job.length(),
                "rows x length",
                Buy.of("deck-board-" + kind, job.fact("waste.deck-board"), BuildTask.DECK_BOARDS))
            .cutAs(List.of(new Piece(length, rows.named(), "deck boards"))));
    lines.add(
        Line.of(
            "deck/screws",
            Stage.OUTSIDE,
            "Deck screws, stainless",
            rows.named().times(joists.named()).times(job.fact("deck.screws-a-crossing")),
            Unit.EACH,
            "rows x joists x screws at a crossing",
            Buy.of("deck-screw", job.fact("waste.fixings"), BuildTask.DECK_BOARDS)));
    if (chosen != DeckBoard.COMPOSITE) {
      lines.add(
          Line.of(
              "deck/oil",
              Stage.OUTSIDE,
              "Deck oil",
              area.named().over(job.fact("deck.oil.coverage")),
              job.liquid(),
              "area / coverage",
              Buy.of("deck-oil", job.fact("waste.paint"), BuildTask.DECK_BOARDS),
              Labour.of("oil-deck", BuildTask.DECK_BOARDS)));
    }
    return lines;
  }

  private static List<Line> frame(Job job, Figure length, Figure depth) {
    var deck = job.scope().deckAndRoof();
    var joists =
        length
            .over(deck.figure(DeckAndRoofQuestions.JOIST_SPACING))
            .roundedUp()
            .plus(Figure.count(1));
    var beams =
        Line.of(
            "deck/beam-count",
            Stage.OUTSIDE,
            "Beams of the deck",
            some(
                depth, depth.over(job.fact("deck.beam-spacing")).roundedUp().plus(Figure.count(1))),
            Unit.EACH,
            "depth / longest joist span, rounded up, and one");
    var posts =
        Line.of(
            "deck/posts",
            Stage.OUTSIDE,
            "Posts of the deck, with bases",
            some(
                length,
                length
                    .over(job.fact("deck.post-spacing"))
                    .roundedUp()
                    .plus(Figure.count(1))
                    .times(beams.named())),
            Unit.EACH,
            "length / longest beam span, rounded up, and one, for each beam",
            Buy.of("post-base", BuildTask.DECK_FRAME),
            Labour.of("set-deck-post", BuildTask.DECK_FRAME));
    var height =
        job.scope()
            .site()
            .figure(SiteQuestions.FLOOR_HEIGHT)
            .minus(job.fact("deck.frame-depth"))
            .atLeastZero();
    var diameter = job.fact("deck.footing-diameter");
    var quarterPi = Figure.constant("0.785398163397448", Unit.ONE);
    var footing =
        posts
            .named()
            .times(quarterPi)
            .times(diameter)
            .times(diameter)
            .times(new FoundationShape(job).depth());
    return List.of(
        beams,
        posts,
        Line.of(
                "deck/joists",
                Stage.OUTSIDE,
                "Joists and rims of the deck",
                joists.times(depth).plus(length.times(2)),
                job.length(),
                "joists x depth, and a rim along both long sides",
                Buy.of("deck-joist", job.fact("waste.timber"), BuildTask.DECK_FRAME),
                Labour.of("fix-deck-joist", BuildTask.DECK_FRAME))
            .cutAs(
                List.of(new Piece(depth, joists, "deck joists"), Piece.of(length, 2, "deck rims"))),
        Line.of(
                "deck/beams",
                Stage.OUTSIDE,
                "Beams of the deck",
                beams.named().times(length),
                job.length(),
                "beams x length",
                Buy.of("deck-beam", job.fact("waste.timber"), BuildTask.DECK_FRAME),
                Labour.of("fix-deck-beam", BuildTask.DECK_FRAME))
            .cutAs(List.of(new Piece(length, beams.named(), "deck beams"))),
        Line.of(
                "deck/post-timber",
                Stage.OUTSIDE,
                "Posts of the deck",
                posts.named().times(height),
                job.length(),
                "posts x floor height less boards, joists and beam",
                Buy.of("deck-post", job.fact("waste.timber"), BuildTask.DECK_FRAME))
            .cutAs(List.of(new Piece(height, posts.named(), "deck posts"))),
        Line.of(
            "deck/ties",
            Stage.OUTSIDE,
            "Ties of joists to beams",
            joists.times(beams.named()),
            Unit.EACH,
            "joists x beams",
            Buy.of("joist-tie", job.fact("waste.fixings"), BuildTask.DECK_FRAME)),
        Line.of(
            "deck/ground-membrane",
            Stage.OUTSIDE,
            "Weed membrane below the deck",
            length.times(depth),
            job.area(),
            "length x depth",
            Buy.of("ground-membrane", job.fact("waste.membrane"), BuildTask.DECK_FOOTINGS),
            Labour.of("lay-membrane", BuildTask.DECK_FOOTINGS)),
        Line.of(
            "deck/holes",
            Stage.OUTSIDE,
            "Holes of the deck footings",
            footing,
            job.volume(),
            "posts x circle x depth below frost",
            Labour.of("bore-deck-hole", BuildTask.DECK_FOOTINGS)),
        Line.of(
            "deck/concrete",
            Stage.OUTSIDE,
            "Concrete in deck footings",
            footing,
            job.volume(),
            "posts x circle x depth below frost",
            Buy.of("concrete-bagged", job.fact("waste.concrete"), BuildTask.DECK_CONCRETE),
            Labour.of("mix-concrete-by-hand", BuildTask.DECK_CONCRETE)));
  }

  /** Nothing of a count where the deck has no length or depth. */
  private static Figure some(Figure size, Figure count) {
    return size.ifAtLeast(Figure.constant("1", Unit.MM), count, Figure.count(0));
  }

  private static List<Line> guard(Job job, Figure length, Figure depth) {
    var deck = job.scope().deckAndRoof();
    var gaps =
        deck.figure(DeckAndRoofQuestions.STEPS).times(deck.figure(DeckAndRoofQuestions.STEP_WIDTH));
    var open = length.plus(depth.times(2)).minus(gaps).atLeastZero();
    var rail =
        Line.of(
            "deck/guard",
            Stage.OUTSIDE,
            "Guard of the deck",
            job.scope()
                .site()
                .figure(SiteQuestions.FLOOR_HEIGHT)
                .ifAtLeast(job.fact("limit.guard-height"), open, Figure.zero(Dimension.LENGTH)),
            job.length(),
            "three open sides less the steps, where the drop is 762 mm or more (IRC R312.1)",
            Buy.of("deck-guard", job.fact("waste.timber"), BuildTask.GUARD),
            Labour.of("build-guard", BuildTask.GUARD));
    return List.of(
        rail,
        Line.of(
            "deck/guard-posts",
            Stage.OUTSIDE,
            "Posts of the guard",
            rail.named().over(job.fact("guard.post-spacing")).roundedUp(),
            Unit.EACH,
            "length / spacing, rounded up",
            Buy.of("guard-post", BuildTask.GUARD)));
  }
}
