package holloway.plan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holloway.geometry.Point3;
import holloway.geometry.SiteFrame;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** From the records of a plan to a JSON tree, keys in the order of the contract. */
final class PlanWriter {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final SiteFrame site;

  PlanWriter(SiteFrame site) {
    this.site = site;
  }

  ObjectNode plan(Plan p) {
    ObjectNode out = NODES.objectNode();
    out.put("format", p.format());
    out.put("house", p.house());
    out.put("profile", p.profile());
    out.put("per-minute", p.perMinute());
    out.set("inputs", list(p.inputs(), this::input));
    out.set("totals", totals(p.totals()));
    out.set("runs", list(p.runs(), this::run));
    out.set("holes", list(p.holes(), this::hole));
    out.set("unrouted", list(p.unrouted(), this::unrouted));
    out.set("works", list(p.works(), this::work));
    out.set("findings", list(p.findings(), this::finding));
    out.set("materials", list(p.materials(), this::material));
    out.set("survey", survey(p.survey()));
    PlanJson.addFrame(out, site);
    return out;
  }

  private JsonNode input(Plan.Input i) {
    return NODES.objectNode().put("file", i.file()).put("sha256", i.sha256());
  }

  private JsonNode totals(Plan.Totals t) {
    ObjectNode out = NODES.objectNode();
    out.put("objective", t.objective());
    out.put("bound", t.bound());
    out.set("gap", JsonText.real(t.gap(), 6));
    out.set("minutes", minutes(t.minutes()));
    out.put("holes", t.holes());
    out.put("patches", t.patches());
    out.set("route-m", metres(t.routeM()));
    out.set("cable-m", metres(t.cableM()));
    out.set("visible-m", metres(t.visibleM()));
    out.set("money", money(t.money()));
    out.put("currency", t.currency());
    out.set("zones", words(t.zones()));
    if (t.cutByTime()) {
      out.put("cut-by-time", true);
    }
    return out;
  }

  private JsonNode run(Plan.PlannedRun r) {
    ObjectNode out = NODES.objectNode();
    out.put("id", r.id()).put("from", r.from()).put("to", r.to()).put("cable", r.cable());
    out.set("route-m", metres(r.routeM()));
    out.set("cable-m", metres(r.cableM()));
    out.set("steps", list(r.steps(), this::step));
    return out;
  }

  private JsonNode step(Plan.PlanStep s) {
    ObjectNode out = NODES.objectNode();
    out.put("kind", s.kind());
    s.hollow().ifPresent(h -> out.put("hollow", h));
    out.put("id", s.id());
    s.label().ifPresent(l -> out.put("label", l));
    out.set("path", list(s.path(), this::point));
    out.set("m", metres(s.m()));
    s.feed().ifPresent(f -> out.put("feed", f));
    s.fish().ifPresent(f -> out.put("fish", f));
    s.minutes().ifPresent(m -> out.set("minutes", minutes(m)));
    return out;
  }

  private JsonNode hole(Plan.PlannedHole h) {
    ObjectNode out = NODES.objectNode();
    out.put("id", h.id()).put("label", h.label()).put("kind", h.kind());
    out.put("diameter-mm", h.diameterMm());
    out.set("depth-mm", JsonText.real(h.depthMm(), 1));
    out.set("at", point(h.at()));
    out.set("between", words(h.between()));
    out.put("method", h.method()).put("stand", h.stand());
    out.set("works", words(h.works()));
    out.set("minutes", minutes(h.minutes()));
    out.set("runs", words(h.runs()));
    out.put("assumed", h.assumed());
    out.set("other-methods", words(h.otherMethods()));
    out.put("bores", h.bores());
    out.set("axis", list(h.axis(), this::point));
    out.set("through", words(h.through()));
    return out;
  }

  private JsonNode unrouted(Plan.Unrouted u) {
    ObjectNode out = NODES.objectNode().put("id", u.id());
    out.set("why-not", words(u.whyNot()));
    return out;
  }

  private JsonNode work(Plan.PlannedWork w) {
    ObjectNode out = NODES.objectNode().put("id", w.id()).put("kind", w.kind());
    out.set("minutes", minutes(w.minutes()));
    return out.put("holes", w.holes()).put("patches", w.patches()).put("zone", w.zone());
  }

  private JsonNode finding(Plan.FindingLine f) {
    ObjectNode out = NODES.objectNode().put("rule", f.rule()).put("severity", f.severity());
    out.set("at", f.at().map(this::point).orElse(NullNode.instance));
    out.put("source", f.source()).put("text", f.text()).put("broken", f.broken());
    return out.put("place", f.place())
        .put("measured", f.measured())
        .put("limit", f.limit())
        .put("do", f.remedy());
  }

  private JsonNode material(Plan.Material m) {
    ObjectNode out = NODES.objectNode().put("item", m.item());
    out.set("quantity", JsonText.real(m.quantity(), 3));
    out.put("unit", m.unit());
    out.set("price", money(m.price()));
    return out.put("group", m.group());
  }

  private JsonNode survey(Plan.SurveyNotes s) {
    ObjectNode out = NODES.objectNode();
    out.set("misclosures", words(s.misclosures()));
    out.set("unaccounted", words(s.unaccounted()));
    out.set("assumed", words(s.assumed()));
    out.set("spread", words(s.spread()));
    ArrayNode first = out.putArray("check-first");
    for (Plan.OpenShaft o : s.checkFirst()) {
      ObjectNode each = first.addObject().put("space", o.space());
      each.set("minutes-less", minutes(o.minutesLess()));
      each.put("more-runs", o.moreRuns()).put("say", o.say());
    }
    return out;
  }

  private JsonNode point(Point3 own) {
    Point3 p = site.toSite(own);
    return NODES.arrayNode().add(mm(p.x())).add(mm(p.y())).add(mm(p.z()));
  }

  private static JsonNode mm(long nm) {
    return JsonText.real(Math.round(nm / 1e5) / 10.0, 1);
  }

  private static JsonNode metres(double m) {
    return JsonText.real(m, 3);
  }

  private static JsonNode minutes(double m) {
    return JsonText.real(m, 4);
  }

  private static JsonNode money(Optional<Double> amount) {
    return amount.map(a -> JsonText.real(a, 2)).orElse(NullNode.instance);
  }

  private static ArrayNode words(List<String> words) {
    ArrayNode out = NODES.arrayNode();
    words.forEach(out::add);
    return out;
  }

  private static <T> ArrayNode list(List<T> items, Function<T, JsonNode> each) {
    ArrayNode out = NODES.arrayNode();
    items.forEach(i -> out.add(each.apply(i)));
    return out;
  }
}
