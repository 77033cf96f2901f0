package cornerpost.takeoff;

import cornerpost.scope.Opening;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/** The pieces that the wall frames of one box are cut as. */
final class WallPieces {
  private final Job job;
  private final List<Piece> cripples = new ArrayList<>();
  private final List<Piece> heads = new ArrayList<>();
  private final List<Piece> plates = new ArrayList<>();

  WallPieces(Job job) {
    this.job = job;
  }

  /**
   * Head, sill and cripples. Together the cripples of one displaced stud are as long as a stud less
   * the opening's height; the lower stands under the sill.
   */
  void opening(Opening o, String box, Figure face, Figure displaced, Figure studLength) {
    var of = box + ", opening " + o.id() + ", ";
    var both = studLength.minus(o.height()).atLeastZero();
    var below = o.sill().min(both);
    cripples.add(new Piece(below, displaced, of + "cripples below"));
    cripples.add(new Piece(both.minus(below), displaced, of + "cripples above"));
    var member = o.width().plus(face.times(2));
    heads.add(new Piece(member, WallFrames.headMembers(job, o), of + "head and sill"));
  }

  void plates(Figure length, String wall) {
    plates.add(new Piece(length, job.fact("framing.plates"), wall + ", plates"));
  }

  List<Piece> studs(Figure length, Figure count, String box) {
    var all = new ArrayList<Piece>();
    all.add(new Piece(length, count, box + ", studs"));
    all.addAll(cripples);
    return all;
  }

  List<Piece> plates() {
    return plates;
  }

  List<Piece> heads() {
    return heads;
  }
}
