package cornerpost.takeoff;

import cornerpost.measure.Unit;
import cornerpost.scope.PermitClass;
import cornerpost.scope.ProjectQuestions;
import cornerpost.scope.Stage;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;
import java.util.List;

/** Waste carried away, snags put right, the house cleaned, the certificate paid for. */
final class CloseOut implements TakeoffRule {
  @Override
  public List<Line> measure(Job job) {
    var floor = job.measured("shell/floor-area");
    var lines = new ArrayList<Line>();
    lines.add(
        Line.of(
            "close-out/waste",
            Stage.CLOSE_OUT,
            "Building waste carried away in skips",
            floor.times(job.fact("site.waste")),
            job.volume(),
            "inside floor x waste to the area; whole skips",
            Buy.of("skip", BuildTask.FINAL_CLEAN)));
    lines.add(
        Line.of(
            "close-out/snags",
            Stage.CLOSE_OUT,
            "Snag list gone through and put right",
            floor,
            job.area(),
            "inside floor",
            Labour.of("put-right-snags", BuildTask.SNAGS)));
    lines.add(
        Line.of(
            "close-out/clean",
            Stage.CLOSE_OUT,
            "Final clean, site cleared",
            floor,
            job.area(),
            "inside floor",
            Buy.of("cleaning-materials", BuildTask.FINAL_CLEAN),
            Labour.of("final-clean", BuildTask.FINAL_CLEAN)));
    var permit = job.scope().project().option(ProjectQuestions.PERMIT, PermitClass.class);
    if (permit != PermitClass.NONE) {
      lines.add(
          Line.of(
              "close-out/certificate",
              Stage.CLOSE_OUT,
              "Certificate of occupancy",
              Figure.count(1),
              Unit.EACH,
              "one for the house",
              Buy.of("certificate-fee", BuildTask.CERTIFICATE)));
    }
    return lines;
  }
}
