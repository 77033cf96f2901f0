package cornerpost.report;

import cornerpost.plan.Plan;
import cornerpost.plan.Replanning;
import cornerpost.plan.Replanning.Choice;
import cornerpost.plan.Replanning.Move;
import java.util.List;

/** The part of the JSON that steers the work once it goes on. */
final class ReplanJson {
  private final Replanning r;
  private final JsonOut out;

  ReplanJson(Plan plan, JsonOut out) {
    this.r = plan.replanning();
    this.out = out;
  }

  void write() {
    out.object("replanning", this::all);
  }

  private void all() {
    out.objects(
        "kept",
        r.kept(),
        b -> {
          out.text("baseline", b.baseline());
          out.date("keptOn", b.keptOn());
          out.text("id", b.id());
          out.text("name", b.name());
          out.text("start", b.start());
          out.text("finish", b.finish());
          out.number("amount", b.amount());
        });
    r.baseline().ifPresent(a -> out.object("baseline", () -> against(a)));
    moves("moved", r.moved());
    out.texts("deliveryToMoveInBefore", r.wayBefore());
    out.object(
        "dayCost",
        () -> {
          out.number("hire", r.dayCost().hire());
          out.number("interest", r.dayCost().interest());
          out.number("aDay", r.dayCost().aDay());
          out.number("crane", r.dayCost().crane());
        });
    r.slip().ifPresent(s -> out.object("slip", () -> slip(s)));
    r.resequencing().ifPresent(q -> out.object("resequencing", () -> resequencing(q)));
    r.recovery().ifPresent(x -> out.object("recovery", () -> recovery(x)));
    r.ahead().ifPresent(a -> out.object("lookAhead", () -> ahead(a)));
  }

  private void against(Replanning.Against a) {
    out.text("name", a.name());
    out.date("keptOn", a.keptOn());
    out.texts("names", a.names());
    out.number("moveInDays", a.moveInDays());
    out.objects(
        "rows",
        a.rows(),
        x -> {
          out.text("id", x.id());
          out.text("name", x.name());
          out.text("state", x.now().isEmpty() ? "gone" : x.then().isEmpty() ? "new" : "there");
          out.text("finishThen", x.then().flatMap(b -> b.finish()));
          out.text("finishNow", x.now().flatMap(b -> b.finish()));
          out.number("amountThen", x.then().map(b -> b.amount()));
          out.number("amountNow", x.now().map(b -> b.amount()));
          out.number("days", x.days());
          out.number("money", x.money());
        });
  }

  private void moves(String name, List<Move> moves) {
    out.objects(
        name,
        moves,
        m -> {
          out.text("id", m.id());
          out.text("name", m.name());
          out.text("crews", m.crews());
          out.date("from", m.from());
          out.date("to", m.to());
          out.number("days", m.days());
          out.number("floatUsedDays", m.floatUsed());
        });
  }

  private void slip(Replanning.SlipCurve s) {
    out.text("event", s.event());
    out.text("eventName", s.eventName());
    out.date("planned", s.planned());
    out.text("lastDay", s.lastDay());
    out.objects(
        "points",
        s.points(),
        p -> {
          out.number("days", p.days());
          out.date("moveIn", p.moveIn());
          out.number("moveInDays", p.moveInDays());
          out.number("cost", p.cost());
        });
    out.objects(
        "kinks",
        s.kinks(),
        k -> {
          out.number("days", k.days());
          out.text("words", k.words());
        });
  }

  private void resequencing(Replanning.Resequencing q) {
    out.date("present", q.present());
    moves("pullForward", q.pull());
    out.objects(
        "idle",
        q.idle(),
        i -> {
          out.text("crew", i.crew());
          out.date("from", i.from());
          out.date("to", i.to());
          out.number("workingDays", i.workingDays());
          out.text("was", i.was());
        });
    out.object("soonest", () -> choice(q.soonest()));
    out.object("fewest", () -> choice(q.fewest()));
  }

  private void choice(Choice c) {
    out.date("moveIn", c.moveIn());
    out.number("changed", c.changed());
    out.number("atLeast", c.atLeast());
    moves("moves", c.moves());
    out.objects(
        "tasks",
        c.days(),
        d -> {
          out.text("id", d.id());
          out.text("startAt", Words.iso(d.start()));
          out.text("finishAt", Words.iso(d.finish()));
        });
  }

  private void recovery(Replanning.Recovery x) {
    out.date("wanted", x.wanted());
    out.date("from", x.from());
    out.yes("reached", x.reached());
    out.number("cost", x.cost());
    out.objects(
        "steps",
        x.steps(),
        s -> {
          out.date("moveIn", s.moveIn());
          out.number("days", s.days());
          out.texts("measures", s.measures());
          out.number("cost", s.cost());
          out.number("total", s.total());
        });
    out.objects(
        "measures",
        x.measures(),
        m -> {
          out.text("id", m.id());
          out.text("name", m.name());
          out.text("what", m.what());
          out.number("days", m.days());
          out.number("cost", m.cost());
        });
  }

  private void ahead(Replanning.LookAhead a) {
    out.date("from", a.from());
    out.date("to", a.to());
    out.objects(
        "crews",
        a.crews(),
        c -> {
          out.text("crew", c.crew());
          out.objects(
              "items",
              c.items(),
              i -> {
                out.text("id", i.id());
                out.text("name", i.name());
                out.date("start", i.start());
                out.date("finish", i.finish());
                out.text("state", i.state());
                out.yes("drives", i.drives());
                out.text("booked", i.booked());
                out.texts("ready", i.ready());
              });
        });
  }
}
