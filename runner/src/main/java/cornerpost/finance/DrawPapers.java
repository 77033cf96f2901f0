package cornerpost.finance;

import java.util.ArrayList;
import java.util.List;

/**
 * What a draw waits for besides the work.
 *
 * <p>Sources: schedule of values, list of those who work and supply, and no money for the owner's
 * own hours: RD Instruction 1924-A, 1924.6(a)(12)(v)(C) and (b)(3). At the end: HUD KA-04937
 * (signed letter of completion, certificate of occupancy, local inspections, releases of liens or
 * receipts from all). A conditional waiver goes with the request, an unconditional one follows the
 * payment: common practice, statutory forms in several states. Photos: common practice, no source.
 */
final class DrawPapers {
  private static final String OF_THE_LENDER = "the lender's own, of the work in place";

  private DrawPapers() {}

  /**
   * The inspections it waits for.
   *
   * @param passed by name, since the draw before
   */
  static List<String> inspections(List<String> passed) {
    var all = new ArrayList<>(passed);
    all.add(OF_THE_LENDER);
    return all;
  }

  /**
   * The papers that go with it.
   *
   * @param first whether nothing was drawn before
   * @param completion whether the house is complete
   * @param signedOff whether inspections of the permit stand before it
   */
  static List<String> of(boolean first, boolean completion, boolean signedOff) {
    var papers = new ArrayList<String>();
    if (first) {
      papers.add("schedule of values and list of all who work and supply, as agreed");
      papers.add("building permit, and insurance of the works");
    }
    papers.add("request for payment on the schedule of values, with approved changes");
    papers.add("invoices and receipts (nothing is paid for the owner's own hours)");
    if (signedOff) papers.add("permit sign-off of each inspection named");
    papers.add("photos of the work in place");
    papers.add("for stored materials: invoice, place and insurance");
    if (!first) papers.add("unconditional lien waivers from all paid with the draw before");
    if (completion) {
      papers.add("final lien waivers or receipts from all who worked or supplied");
      papers.add("certificate of occupancy");
      papers.add("letter of completion, signed");
    } else {
      papers.add("conditional lien waivers from all to be paid with this draw");
    }
    return papers;
  }
}
