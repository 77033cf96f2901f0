package cornerpost.workbook;

import cornerpost.scope.OptionsQuestions;
import cornerpost.scope.OwnerSheet;
import cornerpost.scope.ProjectQuestions;
import java.util.List;

/** The one-bedroom house with the ground done, and its box twelve days late. */
final class MidBuildExample {
  /** Task, actual start, actual finish, remaining days, complete, booked for. */
  private static final List<String> PROGRESS =
      List.of(
          "start|2027-03-01|2027-03-01|||",
          "survey|2027-03-01|2027-03-01|||",
          "insurance|2027-03-01|2027-03-01|||",
          "choose-boxes|2027-03-02|2027-03-02|||",
          "book-crane|2027-03-02|2027-03-02|||",
          "drawings|2027-03-15|2027-03-17|||",
          "loan-closing|2027-03-17|2027-04-16|||",
          "engineering|2027-03-18|2027-03-18|||",
          "utility-application|2027-03-18|2027-03-18|||",
          "utility-wait|2027-03-18|2027-05-13|||",
          "permit-application|2027-03-25|2027-03-26|||",
          "permit-review|2027-03-26|2027-05-07|||",
          "permit-granted|2027-05-07|2027-05-07|||",
          "site-set-up|2027-05-07|2027-05-07|||",
          "order/site-and-plant-hire|2027-05-07|2027-05-21|||",
          "order/containers-and-haulage|2027-05-07|2027-05-28|||",
          "order/insulation-and-membranes|2027-05-07|2027-05-21|||",
          "order/electrical|2027-05-07|2027-05-21|||",
          "order/plumbing|2027-05-07|2027-05-21|||",
          "order/bathroom-fittings|2027-05-07|2027-05-28|||",
          "order/floors-and-tiles|2027-05-07|2027-05-21|||",
          "order/utility-connections|2027-05-07|2027-05-21|||",
          "order/outside-works|2027-05-07|2027-05-17|||",
          "clear|2027-05-10|2027-05-10|||",
          "access-track|2027-05-10|2027-05-10|||",
          "set-out|2027-05-11|2027-05-11|||",
          "excavate|2027-05-11|2027-05-11|||",
          "trenches|2027-05-11|2027-05-11|||",
          "lay-water|2027-05-12|2027-05-12|||",
          "deck-footings|2027-05-12|2027-05-13|||",
          "deck-inspection|2027-05-13|2027-05-17|||",
          "deck-concrete|2027-05-18|2027-05-19|||",
          "deck-cure|2027-05-19|2027-05-23|||",
          "temporary-power|2027-05-21|2027-05-21|||",
          "lay-cable|2027-05-21|2027-05-21|||",
          "formwork|2027-05-24|2027-05-25|||",
          "lay-waste|2027-05-24|2027-05-24|||",
          "make-frames|2027-05-24|2027-05-24|||",
          "underground-inspection|2027-05-24|2027-05-26|||",
          "reinforce|2027-05-26|2027-05-26|||",
          "footing-inspection|2027-05-26|2027-05-28|||",
          "close-trenches|2027-05-26|2027-05-27|||",
          "pour|2027-05-28|2027-05-28|||",
          "order/windows-and-doors|2027-05-07||11||",
          "order/heating-and-ventilation|2027-05-07||4||",
          "order/kitchen-and-appliances|2027-05-07||18||",
          "cure|2027-05-28||4||",
          "bearing-plates|||||2027-06-07");

  private MidBuildExample() {}

  static WorkbookEntries entries() {
    var e =
        OneBedroomExample.entries()
            .answer(ProjectQuestions.NAME, "Juniper Lane cabin, the box late")
            .answer(ProjectQuestions.STATUS, "2027-05-31")
            .answer(OptionsQuestions.CRANE_AGAIN, "350");
    for (var row : PROGRESS) e.row(OwnerSheet.PROGRESS, row.split("\\|", -1));
    e.row(OwnerSheet.DELAYS, "delivery", "12", "the haulier's truck broke down", "the haulier");
    return e;
  }
}
