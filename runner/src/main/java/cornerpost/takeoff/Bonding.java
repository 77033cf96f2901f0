package cornerpost.takeoff;

import static cornerpost.takeoff.BuildTask.BOND_SHELL;

import cornerpost.measure.Unit;
import cornerpost.scope.Box;
import cornerpost.scope.SiteQuestions;
import cornerpost.takeoff.Resource.Buy;
import cornerpost.takeoff.Resource.Labour;
import cornerpost.trace.Figure;
import java.util.ArrayList;

/**
 * Earth rods and the bonds that tie the steel to them (NEC 250.50, 250.53, 250.104). The conductor
 * runs from the panel, at the service end of the first box: out and down to the rods; to the shell
 * of each box, by a run of its own so that none hangs on another's clamp, and across that box to
 * its second bond; to the gas pipe where there is one. Water and waste pipes are plastic and are
 * not bonded.
 */
final class Bonding {
  private Bonding() {}

  static void rows(Job job, Inside in, Tally out) {
    var boxes = job.scope().boxes();
    out.add(
        "electrical/bonding/bonds",
        "Bonds to the steel shell",
        job.fact("bonding.bonds-a-box").times(boxes.size()),
        Unit.EACH,
        "NEC 250.104(C): exposed structural metal is bonded; each box at two places",
        Buy.of("bond-clamp", BOND_SHELL),
        Labour.of("bond-shell", BOND_SHELL));
    out.add(
        "electrical/bonding/rods",
        "Earth rods",
        job.fact("bonding.rods"),
        Unit.EACH,
        "NEC 250.53: a second rod 6 ft from the first",
        Buy.of("earth-rod", BOND_SHELL),
        Labour.of("drive-earth-rod", BOND_SHELL));
    var runs = new ArrayList<Figure>();
    runs.add(
        out.add(
            "electrical/bonding/to-rods",
            "Conductor from the panel to the earth rods",
            toRods(job, in),
            job.length(),
            "down from the panel to the ground, through the wall, off it and from rod to rod,"
                + " an end at the panel and at each rod"));
    for (var box : boxes) {
      runs.add(
          out.add(
              "bonding/" + box.id() + "/conductor",
              "Conductor from the panel to the shell of box " + box.id(),
              toShell(job, in, box),
              job.length(),
              "down from the panel, through the boxes before it and across it, an end at the panel"
                  + " and at each bond"));
    }
    if (!Plumbing.gasUsers(job, in).isEmpty()) {
      out.add(
          "electrical/bonding/gas-bond",
          "Bond to the gas pipe",
          Figure.count(1),
          Unit.EACH,
          "NEC 250.104(B): metal gas pipe is bonded where it enters",
          Buy.of("bond-clamp", BOND_SHELL),
          Labour.of("bond-shell", BOND_SHELL));
      runs.add(
          out.add(
              "electrical/bonding/to-gas",
              "Conductor from the panel to the gas pipe",
              job.fact("panel.height")
                  .plus(new Shape(job).width(boxes.get(0)))
                  .plus(job.fact("bonding.slack").times(2)),
              job.length(),
              "down from the panel and across the box at its service end, an end at both"));
    }
    out.add(
        "electrical/bonding/conductor",
        "Bonding conductor",
        Inside.lengths(runs),
        job.length(),
        "from the panel to the rods, to each box, and to metal pipes that enter",
        Buy.of("bonding-conductor", job.fact("waste.cable"), BOND_SHELL));
  }

  private static Figure toRods(Job job, Inside in) {
    var rods = job.fact("bonding.rods");
    return job.fact("panel.height")
        .plus(job.scope().site().figure(SiteQuestions.FLOOR_HEIGHT))
        .plus(in.wallBuildUp())
        .plus(job.fact("bonding.rod-off-wall"))
        .plus(rods.minus(Figure.count(1)).atLeastZero().times(job.fact("bonding.rod-spacing")))
        .plus(rods.plus(Figure.count(1)).times(job.fact("bonding.slack")));
  }

  private static Figure toShell(Job job, Inside in, Box box) {
    return job.fact("panel.height")
        .plus(in.fromFirstBox(box))
        .plus(new Shape(job).width(box))
        .plus(
            job.fact("bonding.bonds-a-box").plus(Figure.count(1)).times(job.fact("bonding.slack")));
  }
}
