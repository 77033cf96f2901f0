package cornerpost.work;

import static cornerpost.takeoff.BuildTask.*;

import cornerpost.fact.Facts;
import java.util.List;

/**
 * Tests, snags, final inspection, certificate, keys: nobody moves in before the certificate
 * (International Residential Code R109.1.6 and R110.1).
 */
final class CloseOutSequence implements SequenceRule {
  @Override
  public List<Tie> ties(Facts facts) {
    return new Ties()
        .then(
            List.of(ELECTRICAL_SECOND, PANEL, CONNECT_POWER, SOLAR),
            TEST_ELECTRICS,
            "all is fitted and there is power")
        .then(
            List.of(PLUMBING_SECOND, WATER_HEATER, CONNECT_WATER, CONNECT_WASTE, APPLIANCES),
            TEST_PLUMBING,
            "all is fitted and there is water")
        .then(List.of(SPLIT_UNITS, DUCTS, TEST_ELECTRICS), COMMISSION, "it runs on tested power")
        .then(
            List.of(TEST_ELECTRICS, TEST_PLUMBING, COMMISSION, TOUCH_UP, BLINDS),
            SNAGS,
            "the list is made when all works")
        .then(SNAGS, List.of(FINAL_CLEAN, FINAL_INSPECTION), "what was listed is put right first")
        .then(
            List.of(FINAL_INSPECTION, FINAL_CLEAN, FURNITURE),
            MOVE_IN,
            "the house is passed, clean and furnished")
        .inTurn(
            "nobody moves in before the certificate",
            FINAL_INSPECTION,
            CERTIFICATE_WAIT,
            CERTIFICATE,
            MOVE_IN)
        .all();
  }
}
