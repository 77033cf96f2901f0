package cornerpost.check;

import static cornerpost.check.Check.Severity.NOTE;
import static cornerpost.check.Check.Severity.PROFESSIONAL;

import cornerpost.check.Check.Topic;
import cornerpost.measure.Unit;
import cornerpost.scope.Box;
import cornerpost.scope.BoxQuestions;
import cornerpost.scope.CargoDoors;
import cornerpost.scope.ContainerFloor;
import cornerpost.scope.DeckAndRoofQuestions;
import cornerpost.scope.EnvelopeQuestions;
import cornerpost.scope.FloorTreatment;
import cornerpost.scope.InsulationMaterial;
import cornerpost.scope.RoofBuild;
import cornerpost.scope.SiteQuestions;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * What can hurt somebody, said where the work is done; local codes and licensed practice decide.
 */
final class Cautions implements CheckRule {
  @Override
  public List<Check> look(CheckInput in) {
    var found = new ArrayList<Check>();
    if (!in.scope().generatesTasks() || in.scope().boxes().isEmpty()) return found;
    hotWork(in, found);
    lifting(in, found);
    electricity(in, found);
    foam(in, found);
    floors(in, found);
    heightsAndDust(in, found);
    closedBox(in, found);
    return found;
  }

  private static Check caution(
      String id, String text, String source, List<String> cells, List<String> tasks) {
    return new Check("caution/" + id, Topic.SAFETY, NOTE, text, source, cells, tasks);
  }

  private static void hotWork(CheckInput in, List<Check> found) {
    var tasks =
        in.tasks(
            "yard-steelwork",
            "make-frames",
            "fit-frames",
            "cut-openings",
            "weld-frames",
            "join-boxes",
            "cargo-doors",
            "rust-repair",
            "fix-down");
    if (tasks.isEmpty()) return;
    found.add(
        caution(
            "hot-work",
            "Cutting, grinding and welding throw sparks some 11 m (35 ft): the plywood floor, studs and"
                + " foam burn. Clear or cover them, keep an extinguisher at hand and a fire watch for at"
                + " least 30 minutes after (60 by newer standards). Grind coatings off before heating"
                + " them; ventilate: zinc, chromate and lead fumes harm. All hot work before insulation"
                + " and cables. Local hot-work rules decide",
            "29 CFR 1926.352 to 1926.354; NFPA 51B",
            List.of(),
            tasks));
    found.add(
        caution(
            "frame-before-cut",
            "The corrugated wall carries load: fit and weld the frame, or prop the top rail, before the"
                + " sheet is cut out; leave corner posts and rails whole",
            "ISO 1496-1 test loads hold for an uncut box; common practice",
            List.of(),
            in.tasks("fit-frames", "cut-openings")));
  }

  private static void lifting(CheckInput in, List<Check> found) {
    var say = new Say(in);
    var site = in.scope().site();
    for (Box box : in.scope().boxes()) {
      var hook = in.measured("mass/box/" + box.id() + "/hook-load");
      if (hook.isEmpty()) continue;
      boolean spreader = !Say.less(box.fact(in.facts(), "length"), in.limit("spread-lift"));
      found.add(
          caution(
              "lifting/" + box.id(),
              "Box "
                  + box.id()
                  + ": plan the lift for at least "
                  + say.mass(hook.get())
                  + " (box as it is delivered, rigging and a margin; data plate and weighing decide) at a"
                  + " reach of "
                  + say.length(site.figure(SiteQuestions.CRANE_REACH))
                  + "; the crane's chart at that reach counts, not its nameplate."
                  + (spreader
                      ? " A box of this length hangs from a spreader with vertical slings."
                      : "")
                  + " Firm ground under the outriggers, 3 m (10 ft) and more from power lines, no lift in"
                  + " wind, nobody under a hung or jacked box. A qualified lift crew decides",
              "ISO 3874; 29 CFR 1926.1400 ff.; tare from the table of facts",
              List.of(site.cell(SiteQuestions.CRANE_REACH), box.row().cell(BoxQuestions.SIZE)),
              in.tasks("set-boxes", "level-boxes")));
    }
  }

  private static void electricity(CheckInput in, List<Check> found) {
    var tasks =
        in.tasks(
            "temporary-power",
            "bond-shell",
            "electrical-first-fix",
            "panel",
            "connect-power",
            "electrical-second-fix",
            "test-electrics",
            "solar");
    found.add(
        caution(
            "electricity",
            "A steel house conducts: earth and bond the shell, and every joined box, before anything is"
                + " energised; bush every cable where it passes steel; residual-current (ground-fault)"
                + " protection on temporary power. Electrical work by a licensed electrician, inspected"
                + " before it is covered",
            "NEC 250.104(C), 300.4, 590.6; 29 CFR 1926.404(b)(1)",
            List.of(),
            tasks));
  }

  /** Where spray foam is chosen. */
  static List<String> foamCells(CheckInput in) {
    var envelope = in.scope().envelope();
    var cells = new ArrayList<String>();
    for (var q :
        List.of(
            EnvelopeQuestions.INSIDE, EnvelopeQuestions.CEILING, EnvelopeQuestions.UNDERFLOOR)) {
      var m = envelope.option(q, InsulationMaterial.class);
      if (m == InsulationMaterial.CLOSED_CELL || m == InsulationMaterial.OPEN_CELL) {
        cells.add(envelope.cell(q));
      }
    }
    return cells;
  }

  private static void foam(CheckInput in, List<Check> found) {
    var cells = foamCells(in);
    if (cells.isEmpty()) return;
    found.add(
        caution(
            "foam",
            "Spray foam gives off isocyanates, which can make a person allergic for life: trained"
                + " sprayers with supplied air, everybody else out until the maker's re-entry time has"
                + " passed and the box is aired. At most 50 mm (2 in) a pass. Foam burns: no hot work"
                + " afterwards, and cover it with at least 12.7 mm (1/2 in) plasterboard or another"
                + " thermal barrier",
            "US EPA guidance on spray polyurethane foam; 29 CFR 1910.1000; IRC 2021 R316.4",
            cells,
            in.tasks(
                "wall-insulation", "ceiling-insulation", "underfloor-insulation", "foam-wait")));
  }

  private static void floors(CheckInput in, List<Check> found) {
    for (Box box : in.scope().boxes()) {
      if (box.treatment() == FloorTreatment.UNTREATED) continue;
      boolean kept = box.floor() != ContainerFloor.REPLACE;
      found.add(
          new Check(
              "treated-floor/" + box.id(),
              Topic.SAFETY,
              kept ? PROFESSIONAL : NOTE,
              "The plywood of box "
                  + box.id()
                  + " "
                  + (box.treatment() == FloorTreatment.TREATED ? "is" : "may be")
                  + " treated with insecticide (the timber line of the data plate names it; old boxes may"
                  + " hold aldrin, dieldrin or lindane). "
                  + (kept
                      ? "Seal it with two coats of epoxy before covering it, or take it out;"
                      : "When taking it out,")
                  + " no sanding, burning or sleeping on it bare; bag the dust and waste",
              "CSC data plate; Australian timber component treatment scheme; common practice",
              List.of(box.row().cell(BoxQuestions.TREATMENT), box.row().cell(BoxQuestions.FLOOR)),
              in.tasks("strip-floor", "floor-prepare")));
    }
  }

  private static void heightsAndDust(CheckInput in, List<Check> found) {
    var roof = in.scope().deckAndRoof().option(DeckAndRoofQuestions.ROOF, RoofBuild.class);
    if (roof != RoofBuild.BARE) {
      found.add(
          caution(
              "roof",
              "The roof of a box is a 2 mm sheet, tested for 300 kg on 600 x 300 mm (660 lb on 24 x 12 in): walk on the rails,"
                  + " carry roof loads down to the rails and posts, and work with fall protection from"
                  + " 1.8 m (6 ft) up",
              "ISO 1496-1 test 7; 29 CFR 1926.501",
              List.of(in.scope().deckAndRoof().cell(DeckAndRoofQuestions.ROOF)),
              in.tasks(
                  "roof-prepare", "roof-frame", "roof-sheets", "roof-coat", "roof-insulation")));
    }
    found.add(
        caution(
            "dust-and-noise",
            "Grinders are loud enough to harm hearing; cutting board and fibre cement makes silica dust:"
                + " ear and eye protection, extraction or wet cutting, masks. Two people for any sheet",
            "29 CFR 1926.52, 1926.1153",
            List.of(),
            in.tasks("cut-openings", "wall-board", "ceiling-board", "cladding")));
    var depth =
        in.scope()
            .site()
            .figure(SiteQuestions.FROST_DEPTH)
            .in(Unit.M)
            .setScale(1, RoundingMode.HALF_UP);
    if (depth.compareTo(new BigDecimal("1.2")) >= 0) {
      found.add(
          caution(
              "trench",
              "Pits and trenches this deep can bury somebody: slope or shore them",
              "29 CFR 1926.652 (protection from 1.5 m, 5 ft)",
              List.of(in.scope().site().cell(SiteQuestions.FROST_DEPTH)),
              in.tasks("excavate", "trenches")));
    }
  }

  private static void closedBox(CheckInput in, List<Check> found) {
    boolean doors = in.scope().boxes().stream().anyMatch(b -> b.cargoDoors() == CargoDoors.KEEP);
    if (!doors) return;
    found.add(
        caution(
            "closed-box",
            "A box with its doors shut holds welding gas and solvent fumes: keep a way out open, tie the"
                + " cargo doors back, never shut them with somebody inside",
            "29 CFR 1926 subpart AA (confined spaces)",
            in.scope().boxes().stream().map(b -> b.row().cell(BoxQuestions.CARGO_DOORS)).toList(),
            in.tasks("cut-openings", "weld-frames", "wall-insulation", "floor-prepare")));
  }
}
