package cornerpost.check;

import static cornerpost.check.Check.Severity.PROFESSIONAL;

import cornerpost.check.Check.Topic;
import cornerpost.scope.Party;
import cornerpost.scope.Trade;
import java.util.ArrayList;
import java.util.List;

/** Trades that usually need a licence, done by the owner. */
final class LicensedWork implements CheckRule {
  private static final List<Trade> LICENSED =
      List.of(Trade.ELECTRICAL, Trade.PLUMBING, Trade.CLIMATE, Trade.UTILITIES, Trade.HAULAGE);

  @Override
  public List<Check> look(CheckInput in) {
    var found = new ArrayList<Check>();
    if (!in.scope().generatesTasks()) return found;
    for (var trade : LICENSED) {
      var assignment = in.scope().assignment(trade);
      if (assignment == null || assignment.party() == Party.HIRED) continue;
      var tasks =
          in.work().tasks().stream()
              .filter(t -> t.trade().filter(trade::equals).isPresent())
              .map(t -> t.id())
              .toList();
      found.add(
          new Check(
              "licence/" + trade.label(),
              Topic.SAFETY,
              PROFESSIONAL,
              trade.label()
                  + " is down as the owner's own work ("
                  + assignment.party().label()
                  + "): most places ask for a licensed trade, some lenders too; ask the building"
                  + " department before counting on it",
              "common practice; local licensing law",
              List.of(assignment.cell()),
              tasks));
    }
    var steel = in.scope().assignment(Trade.STEELWORK);
    if (steel != null && steel.party() != Party.HIRED) {
      found.add(
          new Check(
              "welding-by-owner",
              Topic.SAFETY,
              PROFESSIONAL,
              "Steelwork is down as the owner's own work: welded frames carry the cut walls; special"
                  + " inspection of site welds may be required",
              "IBC 2021 section 1705.2 (special inspection of welds)",
              List.of(steel.cell()),
              in.tasks("weld-frames", "fit-frames")));
    }
    foam(in, found);
    return found;
  }

  /** Of mixed work the sprayers do the foam; all of it by the owner leaves nobody trained. */
  private static void foam(CheckInput in, List<Check> found) {
    var insulation = in.scope().assignment(Trade.INSULATION);
    var foam = Cautions.foamCells(in);
    if (insulation == null || insulation.party() != Party.OWNER || foam.isEmpty()) return;
    var cells = new ArrayList<>(List.of(insulation.cell()));
    cells.addAll(foam);
    found.add(
        new Check(
            "foam-by-owner",
            Topic.SAFETY,
            PROFESSIONAL,
            "Insulation is down as the owner's own work, and spray foam is chosen: it is for trained"
                + " sprayers with supplied air. Have that part done (mixed, on sheet Who does what),"
                + " or choose batts or boards",
            "US EPA guidance on spray polyurethane foam; 29 CFR 1910.1000",
            cells,
            in.tasks("wall-insulation", "ceiling-insulation", "underfloor-insulation")));
  }
}
