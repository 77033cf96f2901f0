package cornerpost.work;

import static cornerpost.takeoff.BuildTask.*;

import cornerpost.fact.Facts;
import cornerpost.scope.DurationUnit;
import cornerpost.scope.LinkRelation;
import java.util.List;

/**
 * Services: first fix in open walls, looked at before the frame is, and before anything is covered
 * (International Residential Code R109.1.2 and R109.1.4); second fix after the paint.
 */
final class ServicesSequence implements SequenceRule {
  @Override
  public List<Tie> ties(Facts facts) {
    return new Ties()
        .then(List.of(WALL_STUDS, PARTITIONS), PLUMBING_WASTE, "pipes run through the studs")
        .then(List.of(WALL_STUDS, PARTITIONS), PLUMBING_SUPPLY, "pipes run through the studs")
        .then(
            List.of(WALL_STUDS, PARTITIONS, CEILING_BATTENS),
            ELECTRICAL_FIRST,
            "cables run through studs and battens")
        .then(
            List.of(WALL_STUDS, PARTITIONS, CEILING_BATTENS), DUCTS, "ducts hang from the battens")
        .then(List.of(WALL_STUDS, PARTITIONS), SPLIT_LINES, "the lines leave through the wall")
        .then(WATERTIGHT, PANEL, "the panel hangs inside a tight shell")
        .then(PLUMBING_WASTE, PLUMBING_SUPPLY, "the pipe that must fall chooses its way first")
        .tie(
            PLUMBING_WASTE,
            ELECTRICAL_FIRST,
            LinkRelation.START_TO_START,
            "4",
            DurationUnit.HOURS,
            "the wide pipes are seen before cables are drawn")
        .then(ELECTRICAL_FIRST, PANEL, "the circuits end in it")
        .then(
            List.of(PLUMBING_WASTE, PLUMBING_SUPPLY), PRESSURE_TEST, "pipes are tested while open")
        .then(
            List.of(ELECTRICAL_FIRST, PANEL, PRESSURE_TEST, DUCTS, SPLIT_LINES),
            ROUGH_IN_INSPECTION,
            "first fix is seen before anything is covered")
        .then(ROUGH_IN_INSPECTION, FRAMING_INSPECTION, "services are passed before the frame is")
        .then(FRAMING_INSPECTION, PHOTOGRAPH, "what was passed is what is photographed")
        .then(
            List.of(UTILITY_WAIT, PANEL, CLOSE_TRENCHES, ROUGH_IN_INSPECTION),
            CONNECT_POWER,
            "there is a cable outside and a passed panel inside")
        .then(
            List.of(UTILITY_WAIT, PRESSURE_TEST, CLOSE_TRENCHES, WELL, FIX_DOWN),
            CONNECT_WATER,
            "there is a pipe outside and a tested one inside")
        .then(
            List.of(UTILITY_WAIT, PLUMBING_WASTE, CLOSE_TRENCHES, SEPTIC, FIX_DOWN),
            CONNECT_WASTE,
            "there is a drain outside and a waste inside")
        .then(PANEL, SOLAR, "it feeds the panel")
        .then(
            List.of(PAINT_DRY, WALL_TILES, ELECTRICAL_FIRST),
            ELECTRICAL_SECOND,
            "covers go on finished walls")
        .then(
            List.of(FLOORING, TILES_DRY, WORKTOP, PAINT_DRY, PRESSURE_TEST),
            PLUMBING_SECOND,
            "fittings go on finished floors, tiles and tops")
        .then(List.of(PAINT_DRY, PRESSURE_TEST), WATER_HEATER, "it hangs on a finished wall")
        .then(List.of(PAINT_DRY, SPLIT_LINES), SPLIT_UNITS, "it hangs on a finished wall")
        .all();
  }
}
