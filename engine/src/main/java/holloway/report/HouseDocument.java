package holloway.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holloway.drawing.Tags;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.geometry.SiteFrame;
import holloway.plan.JsonText;
import holloway.plan.Plan;
import holloway.plan.PlanJson;
import holloway.survey.Misclosure;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.PlacedRoom;
import holloway.survey.SharedOut;
import holloway.survey.Step;
import holloway.survey.Unaccounted;
import holloway.survey.Wall;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

/** What was understood of a house, as JSON: millimetres to 0.1, square metres to three decimals. */
public final class HouseDocument {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private HouseDocument() {}

  /** Findings are those of the survey, as lines. */
  public static String of(Placed placed, List<String> runs, List<Plan.FindingLine> findings) {
    ObjectNode root = NODES.objectNode().put("format", PlanJson.FORMAT);
    root.put("house", placed.house().name());
    ArrayNode levels = root.putArray("levels");
    placed.levels().forEach(l -> level(l, levels.addObject()));
    ArrayNode rooms = root.putArray("rooms");
    placed.rooms().forEach(r -> room(r, placed.site(), rooms.addObject()));
    ArrayNode walls = root.putArray("walls");
    placed.walls().forEach(w -> wall(w, walls.addObject()));
    ArrayNode openings = root.putArray("openings");
    placed
        .levels()
        .forEach(l -> Tags.of(placed, l.name()).forEach(t -> opening(t, l, openings.addObject())));
    root.set("runs", Documents.words(runs));
    ArrayNode loops = root.putArray("misclosures");
    placed.misclosures().forEach(m -> misclosure(m, loops.addObject()));
    ArrayNode spaces = root.putArray("unaccounted");
    placed.unaccounted().forEach(u -> unaccounted(u, placed.site(), spaces.addObject()));
    root.set("assumed", Documents.words(List.copyOf(new TreeSet<>(placed.assumed()))));
    ArrayNode spread = root.putArray("spread");
    placed.shared().forEach(s -> shared(s, spread.addObject()));
    ArrayNode lines = root.putArray("findings");
    findings.forEach(
        f ->
            lines
                .addObject()
                .put("rule", f.rule())
                .put("severity", f.severity())
                .put("source", f.source())
                .put("text", f.text()));
    PlanJson.addFrame(root, placed.site());
    return JsonText.of(root);
  }

  private static void level(PlacedLevel l, ObjectNode out) {
    out.put("name", l.name());
    mm(out, "floor-mm", l.floorZ());
    mm(out, "ceiling-mm", l.ceilingZ());
  }

  private static void room(PlacedRoom r, SiteFrame site, ObjectNode out) {
    out.put("name", r.name()).put("level", r.room().level());
    out.set("outline-mm", outline(r.outline(), site));
    mm(out, "floor-mm", r.floorZ());
    mm(out, "ceiling-mm", r.ceilingZ());
    out.set("area-m2", JsonText.real(Math.abs(r.outline().signedAreaMm2()) / 1e6, 3));
  }

  private static void wall(Wall w, ObjectNode out) {
    out.put("id", w.id()).put("level", w.level());
    out.put("kind", w.kind().name().toLowerCase(Locale.ROOT));
    mm(out, "length-mm", w.length());
    mm(out, "thickness-mm", w.thickness());
    out.put("studs", w.studs().value().name());
    mm(out, "every-mm", w.every().value().nm());
    out.put("studs-assumed", w.studs().isAssumed() || w.studOrigin().isAssumed());
    mm(out, "stud-at-mm", w.studOrigin().value());
    mm(out, "lining-low-mm", w.core().lo());
    mm(out, "lining-high-mm", w.thickness() - w.core().hi());
    out.put("bearing", w.bearing().value()).put("outer", w.isOuter());
    out.put("garage-separation", w.garageSeparation());
    out.set(
        "rooms",
        Documents.words(
            List.copyOf(new TreeSet<>(w.faces().stream().map(Wall.WallFace::room).toList()))));
    out.put("openings", w.openings().size());
  }

  private static void opening(Tags.Tag t, PlacedLevel l, ObjectNode out) {
    var o = t.opening().opening();
    out.put("tag", t.name()).put("kind", t.kind()).put("level", l.name());
    out.put("wall", t.wall().id()).put("from", o.along().from().word());
    mm(out, "distance-mm", o.along().distance().value().nm());
    mm(out, "width-mm", o.width().value().nm());
    mm(out, "sill-mm", o.sill().value().nm());
    mm(out, "head-mm", o.head().value().nm());
    mm(out, "rough-from-mm", t.opening().s().lo());
    mm(out, "rough-to-mm", t.opening().s().hi());
  }

  private static void misclosure(Misclosure m, ObjectNode out) {
    out.put("where", m.where());
    mm(out, "size-mm", m.size().nm());
    mm(out, "tolerance-mm", m.tolerance().nm());
    out.set("measurements", Documents.words(m.measurements()));
    out.put("severity", m.severity());
    ArrayNode steps = out.putArray("steps");
    m.steps().forEach(s -> step(s, steps.addObject()));
    ArrayNode suspects = out.putArray("suspects");
    m.suspects().forEach(s -> suspect(s, suspects.addObject()));
    out.set("verdict", Documents.words(m.verdict()));
  }

  private static void step(Step s, ObjectNode out) {
    out.put("what", s.what()).put("line", s.where().line());
    mm(out, "value-mm", s.value().nm());
    mm(out, "spread-mm", s.spread().nm());
    mm(out, "sum-mm", s.sum().nm());
  }

  private static void suspect(Misclosure.Suspect s, ObjectNode out) {
    out.put("group", s.group()).put("measurement", s.measurement());
    mm(out, "too-large-by-mm", s.error().nm());
    out.set("w", JsonText.real(s.w(), 2));
    out.set("redundancy", JsonText.real(s.redundancy(), 3));
  }

  private static void shared(SharedOut s, ObjectNode out) {
    out.put("where", s.where());
    mm(out, "size-mm", s.size().nm());
    mm(out, "tolerance-mm", s.tolerance().nm());
    out.put("measurements", s.count());
    mm(out, "moved-at-most-mm", s.moved().nm());
    out.put("moved-most", s.most());
  }

  private static void unaccounted(Unaccounted u, SiteFrame site, ObjectNode out) {
    out.put("level", u.level());
    out.set("outline-mm", outline(u.outline(), site));
    out.set("area-m2", JsonText.real(u.areaM2(), 3));
    out.put("likely", u.likely());
  }

  private static ArrayNode outline(Polygon2 outline, SiteFrame site) {
    ArrayNode out = NODES.arrayNode();
    for (Point2 own : outline.corners()) {
      Point2 p = site.toSite(own.at(0)).plan();
      out.addArray().add(JsonText.real(p.x() / 1e6, 1)).add(JsonText.real(p.y() / 1e6, 1));
    }
    return out;
  }

  private static void mm(ObjectNode out, String key, long nm) {
    out.set(key, JsonText.real(nm / 1e6, 1));
  }
}
