package holloway.plan;

import com.fasterxml.jackson.databind.JsonNode;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.geometry.SiteFrame;
import holloway.geometry.Turn;
import java.util.List;
import java.util.Set;

/** From a JSON tree to the records of a plan; refuses what is missing or of the wrong kind. */
final class PlanReader {
  private static final Set<String> STEP_KINDS = Set.of("leg", "crossing");

  private SiteFrame site = SiteFrame.OWN;

  Plan plan(JsonNode root) {
    JsonCursor p = new JsonCursor(root, "").requireObject();
    site = p.optional("turned", PlanReader::site).orElse(SiteFrame.OWN);
    if (p.whole("format") != PlanJson.FORMAT) {
      p.field("format").wrong("format " + PlanJson.FORMAT + ", the only one this program reads");
    }
    return new Plan(
        PlanJson.FORMAT,
        p.text("house"),
        p.text("profile"),
        perMinute(p),
        p.list("inputs", i -> new Plan.Input(i.text("file"), i.text("sha256"))),
        totals(p.object("totals")),
        p.list("runs", this::run),
        p.list("holes", this::hole),
        p.list("unrouted", u -> new Plan.Unrouted(u.text("id"), u.words("why-not"))),
        p.list("works", this::work),
        p.list("findings", this::finding),
        p.list("materials", this::material),
        survey(p.object("survey")),
        site);
  }

  private static SiteFrame site(JsonCursor t) {
    double degrees = t.number("degrees");
    if (Math.abs(degrees) > 180) {
      t.field("degrees").wrong("degrees from -180 to 180");
    }
    Point2 origin = t.field("origin").asPlanPoint();
    return new SiteFrame(Turn.degrees(degrees), origin.x(), origin.y());
  }

  /** In the house's own frame. */
  private Point3 point(JsonCursor c) {
    return site.fromSite(c.asPoint());
  }

  private long perMinute(JsonCursor p) {
    long v = p.whole("per-minute");
    return v > 0 ? v : p.field("per-minute").<Long>wrong("a whole number above 0");
  }

  private Plan.Totals totals(JsonCursor t) {
    return new Plan.Totals(
        t.whole("objective"),
        t.whole("bound"),
        t.number("gap"),
        t.number("minutes"),
        t.count("holes"),
        t.count("patches"),
        t.number("route-m"),
        t.number("cable-m"),
        t.number("visible-m"),
        t.optional("money", JsonCursor::asNumber),
        t.text("currency"),
        t.words("zones"),
        t.optional("cut-by-time", JsonCursor::asTruth).orElse(false));
  }

  private Plan.PlannedRun run(JsonCursor r) {
    return new Plan.PlannedRun(
        r.text("id"),
        r.text("from"),
        r.text("to"),
        r.text("cable"),
        r.number("route-m"),
        r.number("cable-m"),
        r.list("steps", this::step));
  }

  private Plan.PlanStep step(JsonCursor s) {
    String kind = s.text("kind");
    if (!STEP_KINDS.contains(kind)) {
      s.field("kind").wrong("leg or crossing");
    }
    return new Plan.PlanStep(
        kind,
        s.text("id"),
        s.optional("hollow", JsonCursor::asText),
        s.optional("label", JsonCursor::asText),
        s.list("path", this::point),
        s.number("m"),
        s.optional("feed", JsonCursor::asText),
        s.optional("fish", f -> Math.toIntExact(Math.min(f.asWhole(), Integer.MAX_VALUE))),
        s.optional("minutes", JsonCursor::asNumber));
  }

  private Plan.PlannedHole hole(JsonCursor h) {
    return new Plan.PlannedHole(
        h.text("id"),
        h.text("label"),
        h.text("kind"),
        h.count("diameter-mm"),
        h.number("depth-mm"),
        point(h.field("at")),
        h.words("between"),
        h.text("method"),
        h.text("stand"),
        h.words("works"),
        h.number("minutes"),
        h.words("runs"),
        h.flag("assumed"),
        h.words("other-methods"),
        h.node().has("bores") ? h.count("bores") : 1,
        h.node().has("axis") ? h.list("axis", this::point) : List.of(),
        h.node().has("through") ? h.words("through") : List.of());
  }

  private Plan.PlannedWork work(JsonCursor w) {
    return new Plan.PlannedWork(
        w.text("id"),
        w.text("kind"),
        w.number("minutes"),
        w.node().has("holes") ? w.count("holes") : 0,
        w.node().has("patches") ? w.count("patches") : 0,
        w.optional("zone", JsonCursor::asText).orElse(""));
  }

  private Plan.FindingLine finding(JsonCursor f) {
    return new Plan.FindingLine(
        f.text("rule"),
        f.text("severity"),
        f.optional("at", this::point),
        f.text("source"),
        f.text("text"),
        f.node().has("broken") && f.flag("broken"),
        f.optional("place", JsonCursor::asText).orElse(""),
        f.optional("measured", JsonCursor::asText).orElse(""),
        f.optional("limit", JsonCursor::asText).orElse(""),
        f.optional("do", JsonCursor::asText).orElse(""));
  }

  private Plan.Material material(JsonCursor m) {
    return new Plan.Material(
        m.text("item"),
        m.number("quantity"),
        m.text("unit"),
        m.optional("price", JsonCursor::asNumber),
        m.optional("group", JsonCursor::asText).orElse(""));
  }

  private static Plan.OpenShaft openShaft(JsonCursor o) {
    return new Plan.OpenShaft(
        o.text("space"), o.number("minutes-less"), o.count("more-runs"), o.text("say"));
  }

  private Plan.SurveyNotes survey(JsonCursor s) {
    return new Plan.SurveyNotes(
        s.words("misclosures"),
        s.words("unaccounted"),
        s.words("assumed"),
        s.node().has("spread") ? s.words("spread") : List.of(),
        s.node().has("check-first") ? s.list("check-first", PlanReader::openShaft) : List.of());
  }
}
