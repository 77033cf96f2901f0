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
    return found;
  }
}
