package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.CEILING_BATTENS;

import cornerpost.measure.Unit;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.Stage;
import cornerpost.scope.StudSection;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/**
 * Ceiling battens across the box at their spacing, hung from the roof steel by bonded hangers so
 * that nothing pierces the roof. Count as for studs: ceil(L / s) + 1.
 */
final class CeilingFrames implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var in = new Inside(job);
    var shape = new Shape(job);
    var out = new Tally(Stage.FRAMING);
    var spacing = job.scope().envelope().figure(EnvelopeQuestions.BATTEN_SPACING);
    boolean timber = Inside.isTimber(in.stud());
    boolean treated = job.scope().envelope().yes(EnvelopeQuestions.TREATED);
    var item = timber ? Materials.stud(StudSection.TIMBER_38_38, treated) : "ceiling-channel";
    var metres = new ArrayList<Figure>();
    var pieces = new ArrayList<Piece>();
    var hangers = new ArrayList<Figure>();
    for (var box : job.scope().boxes()) {
      var count =
          out.add(
              "ceiling-battens/" + box.id() + "/count",
              "Box " + box.id() + ", ceiling battens",
              StudLayout.studs(shape.insideLength(box), spacing),
              Unit.EACH,
              "inside length / spacing rounded up + 1");
      metres.add(count.times(shape.insideWidth(box)));
      pieces.add(new Piece(shape.insideWidth(box), count, "box " + box.id() + ", ceiling battens"));
      var hung = shape.insideWidth(box).over(job.fact("framing.hanger-spacing")).roundedUp();
      hangers.add(count.times(hung));
    }
    out.addCut(
        "ceiling-battens/house/length",
        "Ceiling battens",
        Inside.lengths(metres),
        job.length(),
        "battens x inside width",
        pieces,
        Buy.of(item, job.fact("waste.studs"), CEILING_BATTENS),
        Labour.of("ceiling-battens", CEILING_BATTENS));
    var hung =
        out.add(
            "ceiling-battens/house/hangers",
            "Hangers bonded to the roof steel",
            Inside.counts(hangers),
            Unit.EACH,
            "battens x (inside width / hanger spacing rounded up)",
            Buy.of("bracket-bonded", job.fact("waste.fixings"), CEILING_BATTENS));
    out.add(
        "ceiling-battens/house/adhesive",
        "Structural adhesive for hangers",
        hung.times(job.fact("framing.adhesive-a-bracket")),
        job.liquid(),
        "hangers x adhesive for each",
        Buy.of("adhesive-structural", job.fact("waste.fixings"), CEILING_BATTENS));
    out.add(
        "ceiling-battens/house/screws",
        "Screws for ceiling battens",
        hung.times(job.fact("framing.screws-a-nogging")),
        Unit.EACH,
        "at each hanger",
        Buy.of("screw-framing", job.fact("waste.fixings"), CEILING_BATTENS));
    return out.lines();
  }
}
