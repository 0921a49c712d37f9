package holloway.report;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holloway.geometry.SiteFrame;
import holloway.plan.Certificate;
import holloway.plan.JsonText;
import holloway.plan.Plan;
import holloway.plan.PlanJson;
import holloway.request.Request;
import holloway.schedule.HoleCard;
import holloway.schedule.OutletPlace;
import holloway.schedule.OutletPlaces;
import holloway.survey.Placed;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The answers as JSON documents. */
public final class Documents {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private Documents() {}

  /** The plan of the contract; holes also carry {@code bit} and {@code tape}. */
  public static String plan(Plan plan, Map<String, HoleCard> cards) {
    return JsonText.of(tree(plan, cards));
  }

  private static ObjectNode tree(Plan plan, Map<String, HoleCard> cards) {
    ObjectNode root = PlanJson.toTree(plan);
    UnitWords units = new UnitWords(UnitSystem.METRIC);
    for (int i = 0; i < plan.holes().size(); i++) {
      Plan.PlannedHole hole = plan.holes().get(i);
      ObjectNode node = (ObjectNode) root.get("holes").get(i);
      HoleCard card = cards.get(hole.id());
      boolean told = card != null && !card.bit().isEmpty();
      node.put("bit", told ? card.bit() : units.bit(hole.diameterMm()));
      node.set("tape", tape(card));
    }
    return root;
  }

  /** As {@link #plan(Plan, Map)} with {@code outlets}: where each sits, in words and as a point. */
  public static String plan(
      Plan plan, Map<String, HoleCard> cards, Placed placed, Request request) {
    return plan(plan, cards, placed, request, Optional.empty());
  }

  /** With the certificate of the bound as the last key, if there is one. */
  public static String plan(
      Plan plan,
      Map<String, HoleCard> cards,
      Placed placed,
      Request request,
      Optional<Certificate> certificate) {
    ObjectNode root = tree(plan, cards);
    OutletWords words = new OutletWords(plan, request, placed, new UnitWords(UnitSystem.METRIC));
    ArrayNode list = root.putArray("outlets");
    OutletPlaces.of(plan, request, placed).forEach(o -> list.add(outlet(o, words, plan.site())));
    TakeOffDocument.into(root, plan, placed, request);
    certificate.ifPresent(c -> PlanJson.addCertificate(root, c));
    return JsonText.of(root);
  }

  private static ObjectNode outlet(OutletPlace o, OutletWords words, SiteFrame site) {
    ObjectNode n = NODES.objectNode().put("name", o.name()).put("where", words.where(o));
    ArrayNode point = n.putArray("at");
    o.at()
        .map(site::toSite)
        .ifPresent(p -> List.of(p.x(), p.y(), p.z()).forEach(nm -> point.add(mm(nm))));
    boolean ceiling = o.kind() == OutletPlace.Kind.CEILING;
    boolean eastWest = o.side().runsEastWest();
    n.put("on", o.kind().name().toLowerCase(Locale.ROOT)).put("room", o.room());
    if (!ceiling) {
      n.put("side", o.side().word()).put("face", o.face());
    }
    n.set(ceiling || eastWest ? "from-west-mm" : "from-south-mm", mm(o.fromLow()));
    String other = ceiling ? "from-south-mm" : eastWest ? "from-east-mm" : "from-north-mm";
    n.set(other, mm(o.fromHigh()));
    n.set("height-mm", mm(o.height()));
    o.spot().ifPresent(k -> n.put("choice", k));
    n.put("range", o.ranged());
    n.set("moved-mm", mm(o.moved()));
    n.set("cables", words(o.cables()));
    n.put("spare", o.spares()).put("routed", o.routed());
    return n;
  }

  private static JsonNode mm(long nm) {
    return JsonText.real(nm / 1e6, 1);
  }

  private static JsonNode tape(HoleCard card) {
    if (card == null) {
      return NODES.nullNode();
    }
    ObjectNode out = NODES.objectNode();
    out.set("side-a", words(card.sideA()));
    out.set("side-b", words(card.sideB()));
    out.put("angle", card.angle()).put("check-first", card.checkFirst());
    out.put("extension", card.extension()).put("breakthrough", card.breakthrough());
    out.set("tolerance-mm", JsonText.real(card.toleranceMm(), 1));
    return out;
  }

  /** A list of ways of working with their totals; wins and losses against the first. */
  public static String compare(List<Way> ways) {
    Plan first = ways.get(0).plan();
    ArrayNode list = NODES.arrayNode();
    for (Way way : ways) {
      WinsAndLosses w = WinsAndLosses.of(way.plan(), first, new UnitWords(UnitSystem.METRIC));
      ObjectNode node = list.addObject().put("name", way.name());
      node.set("bans", words(way.bans()));
      node.set("same-as", words(way.sameAs()));
      node.set("totals", PlanJson.toTree(way.plan()).get("totals"));
      node.set("unrouted", words(way.plan().unrouted().stream().map(Plan.Unrouted::id).toList()));
      node.set("wins", words(w.wins()));
      node.set("loses", words(w.loses()));
    }
    return JsonText.of(list);
  }

  /** Routes of one run, cheapest first. */
  public static String routes(String house, String run, List<Plan> routes) {
    ObjectNode root =
        NODES.objectNode().put("format", PlanJson.FORMAT).put("house", house).put("run", run);
    ArrayNode list = root.putArray("routes");
    for (Plan plan : routes) {
      ObjectNode tree = PlanJson.toTree(plan);
      ObjectNode node = list.addObject();
      node.set("totals", tree.get("totals"));
      node.set("steps", tree.get("runs").path(0).path("steps"));
      node.set("holes", tree.get("holes"));
      node.set("works", tree.get("works"));
    }
    routes.stream().findFirst().ifPresent(p -> PlanJson.addFrame(root, p.site()));
    return JsonText.of(root);
  }

  /** The referee's answer; {@code certified}: the bound was recomputed from a certificate. */
  public static String referee(
      Plan plan, List<String> refusals, List<Plan.FindingLine> findings, boolean certified) {
    ObjectNode root = NODES.objectNode().put("format", PlanJson.FORMAT).put("house", plan.house());
    root.put("accepted", refusals.isEmpty()).put("certified", certified);
    root.set("refusals", words(refusals));
    root.set("findings", PlanJson.toTree(plan.withFindings(findings)).get("findings"));
    PlanJson.addFrame(root, plan.site());
    return JsonText.of(root);
  }

  static ArrayNode words(List<String> words) {
    ArrayNode out = NODES.arrayNode();
    words.forEach(out::add);
    return out;
  }
}
