package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.WALL_STUDS;
import static cornerpost.takeoff.Inside.counts;
import static cornerpost.takeoff.Inside.lengths;

import cornerpost.measure.Unit;
import cornerpost.scope.Answers;
import cornerpost.scope.Box;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.Opening;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Studs, plates, noggings and heads that line the steel walls. The frames stand by themselves
 * between floor and roof and are held to the steel by bonded brackets: nothing pierces the shell.
 * Rule for studs along a run: ceil(L / s) + 1, two a corner, two at each jamb, less those displaced
 * (common practice of carpentry estimating).
 */
final class WallFrames implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var out = new Tally(Stage.FRAMING);
    for (var box : job.scope().boxes()) box(job, box, out);
    return out.lines();
  }

  private static void box(Job job, Box box, Tally out) {
    var in = new Inside(job);
    Answers envelope = job.scope().envelope();
    var spacing = envelope.figure(EnvelopeQuestions.STUD_SPACING);
    var face = in.of(in.stud(), "face");
    boolean treated = envelope.yes(EnvelopeQuestions.TREATED);
    var stud = Materials.stud(in.stud(), treated);
    var id = "framing/" + box.id();
    var name = "Box " + box.id();

    var studs = new ArrayList<Figure>();
    var pieces = new ArrayList<Figure>();
    var run = new ArrayList<Figure>();
    var heads = new ArrayList<Figure>();
    var cripples = new ArrayList<Figure>();
    var cut = new WallPieces(job);
    int framed = 0;
    var studLength =
        out.add(
            id + "/stud-length",
            name + ", length of a stud",
            new Shape(job)
                .insideHeight(box)
                .minus(in.of(in.stud(), "plate").times(job.fact("framing.plates"))),
            job.shortLength(),
            "inside height less the plates");
    for (var wall : Inside.WALLS) {
      var length = in.frameRun(box, wall);
      var grid = StudLayout.studs(length, spacing);
      var bays = StudLayout.bays(length, spacing);
      for (var o : in.openings(box, wall)) {
        if (!Inside.isFramed(o)) continue;
        framed++;
        var displaced =
            out.add(
                "framing-opening/" + box.id() + "-" + o.id() + "/displaced",
                name + ", studs that opening " + o.id() + " displaces",
                StudLayout.displaced(in.along(box, o, wall), o.width(), spacing),
                Unit.EACH,
                "studs of the grid between its edges: floor(far / spacing) - floor(near / spacing)");
        grid = grid.plus(job.fact("framing.jamb-studs").times(2)).minus(displaced);
        bays = bays.minus(displaced);
        cripples.add(displaced.times(studLength.minus(o.height()).atLeastZero()));
        heads.add(head(job, o, face));
        cut.opening(o, name, face, displaced, studLength);
      }
      var wallId = id + "-" + wall.name().toLowerCase(Locale.ROOT).replace('_', '-');
      var wallName = name + ", " + wall.label();
      studs.add(
          out.add(
              wallId + "/studs",
              wallName + ", studs",
              grid.atLeastZero(),
              Unit.EACH,
              "run / spacing rounded up + 1, two at each jamb, less those displaced"));
      pieces.add(
          out.add(
              wallId + "/noggings",
              wallName + ", noggings",
              bays.atLeastZero().times(envelope.figure(EnvelopeQuestions.NOGGING_ROWS)),
              Unit.EACH,
              "one a bay and row, none across openings"));
      run.add(length);
      cut.plates(length, wallName);
    }
    var corners =
        out.add(
            id + "/corner-studs",
            name + ", studs at corners and junctions",
            job.fact("framing.corner-studs")
                .times(4)
                .plus(job.fact("framing.junction-studs").times(2L * in.partitions(box).size())),
            Unit.EACH,
            "at four corners and at both ends of each partition");
    studs.add(corners);
    var count =
        out.add(
            id + "/stud-count",
            name + ", studs",
            counts(studs),
            Unit.EACH,
            "all walls and corners");
    var noggings =
        out.add(id + "/nogging-count", name + ", noggings", counts(pieces), Unit.EACH, "all walls");
    var perimeter =
        out.add(
            id + "/frame-run",
            name + ", run of wall frames",
            lengths(run),
            job.length(),
            "4 walls");
    out.addCut(
        id + "/studs",
        name + ", stud lengths",
        count.times(studLength).plus(lengths(cripples)),
        job.length(),
        "studs x length, and cripples above and below openings",
        cut.studs(studLength, count, name),
        Buy.of(stud, job.fact("waste.studs"), WALL_STUDS));
    out.addCut(
        id + "/plates",
        name + ", plates",
        perimeter.times(job.fact("framing.plates")),
        job.length(),
        "run x plates at floor and roof",
        cut.plates(),
        Buy.of(Materials.plate(in.stud(), treated), job.fact("waste.studs"), WALL_STUDS));
    out.addCut(
        id + "/noggings",
        name + ", nogging lengths",
        noggings.times(spacing.minus(face)),
        job.length(),
        "pieces x (spacing - stud face)",
        List.of(new Piece(spacing.minus(face), noggings, name + ", noggings")),
        Buy.of(stud, job.fact("waste.studs"), WALL_STUDS));
    if (framed > 0) {
      out.addCut(
          id + "/heads",
          name + ", heads and sills of openings",
          lengths(heads),
          job.length(),
          "head members x (width + 2 stud faces), and one sill where there is one",
          cut.heads(),
          Buy.of(stud, job.fact("waste.studs"), WALL_STUDS));
      out.add(
          id + "/openings",
          name + ", openings framed in the lining",
          Figure.count(framed),
          Unit.EACH,
          "windows, doors and pass-throughs",
          Labour.of("frame-lining-opening", WALL_STUDS));
    }
    out.add(
        id + "/frame-area",
        name + ", wall frames",
        perimeter.times(new Shape(job).insideHeight(box)),
        job.area(),
        "run x inside height",
        Labour.of(
            Inside.isTimber(in.stud()) ? "frame-lining-timber" : "frame-lining-steel", WALL_STUDS));
    fixings(job, in, out, id, name, count, noggings, perimeter);
  }

  /** Head members over the opening, and one sill member where the opening has a sill. */
  private static Figure head(Job job, Opening o, Figure face) {
    return o.width().plus(face.times(2)).times(headMembers(job, o));
  }

  static Figure headMembers(Job job, Opening o) {
    var least = Figure.constant("1", Unit.MM);
    var sills = o.sill().ifAtLeast(least, Figure.count(1), Figure.count(0));
    return job.fact("framing.header-members").plus(sills);
  }

  private static void fixings(
      Job job,
      Inside in,
      Tally out,
      String id,
      String name,
      Figure studs,
      Figure noggings,
      Figure run) {
    if (Inside.isTimber(in.stud())) {
      out.add(
          id + "/plate-strip",
          name + ", plastic strip under the bottom plates",
          run,
          job.length(),
          "keeps timber off steel and damp floor: run of the frames",
          Buy.of("plate-strip", job.fact("waste.membrane"), WALL_STUDS));
    }
    var brackets =
        out.add(
            id + "/brackets",
            name + ", brackets bonded to the steel",
            studs.times(job.fact("framing.brackets-a-stud")),
            Unit.EACH,
            "studs x brackets; bonded, so that nothing pierces the shell",
            Buy.of("bracket-bonded", job.fact("waste.fixings"), WALL_STUDS));
    out.add(
        id + "/adhesive",
        name + ", structural adhesive",
        brackets.times(job.fact("framing.adhesive-a-bracket")),
        job.liquid(),
        "brackets x adhesive for each",
        Buy.of("adhesive-structural", job.fact("waste.fixings"), WALL_STUDS));
    out.add(
        id + "/screws",
        name + ", framing screws",
        studs
            .times(job.fact("framing.screws-a-stud"))
            .plus(noggings.times(job.fact("framing.screws-a-nogging")))
            .plus(run.over(job.fact("framing.plate-screw-spacing")).roundedUp()),
        Unit.EACH,
        "for each stud and nogging, and along the bottom plates into the floor",
        Buy.of("screw-framing", job.fact("waste.fixings"), WALL_STUDS));
  }
}
