package holloway.plan;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;

/** The certificate as JSON; a share is a list: work, place, at, group, units. */
final class CertificateJson {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private CertificateJson() {}

  static ObjectNode write(Certificate c) {
    ObjectNode out = NODES.objectNode().put("profile", c.profile());
    out.put("bound", c.bound()).put("grain", c.grain());
    out.set("paid-by-all", numbers(c.paidByAll()));
    out.set("zones", numbers(c.zones()));
    ArrayNode runs = out.putArray("runs");
    c.runs()
        .forEach(
            group -> {
              ArrayNode list = runs.addArray();
              group.forEach(list::add);
            });
    out.put("directed", c.directed());
    ArrayNode parts = out.putArray("parts");
    c.parts().forEach(p -> parts.add(part(p)));
    return out;
  }

  private static ObjectNode part(Certificate.Part p) {
    ObjectNode out = NODES.objectNode();
    out.set("prepaid", numbers(p.prepaid()));
    out.set("shut", numbers(p.shut()));
    out.put("bound", p.bound()).put("impossible", p.impossible());
    ArrayNode shares = out.putArray("shares");
    for (Certificate.Share s : p.shares()) {
      shares.addArray().add(s.work()).add(s.place()).add(s.at()).add(s.group()).add(s.units());
    }
    return out;
  }

  private static JsonNode numbers(List<Integer> values) {
    ArrayNode out = NODES.arrayNode();
    values.forEach(out::add);
    return out;
  }

  static Certificate read(JsonCursor c) {
    return new Certificate(
        c.requireObject().text("profile"),
        c.whole("bound"),
        c.whole("grain"),
        c.list("paid-by-all", JsonCursor::asCount),
        c.list("zones", JsonCursor::asCount),
        c.list("runs", g -> g.items(JsonCursor::asText)),
        c.flag("directed"),
        c.list("parts", CertificateJson::readPart));
  }

  private static Certificate.Part readPart(JsonCursor p) {
    return new Certificate.Part(
        p.list("prepaid", JsonCursor::asCount),
        p.list("shut", JsonCursor::asCount),
        p.whole("bound"),
        p.flag("impossible"),
        p.list("shares", CertificateJson::readShare));
  }

  private static Certificate.Share readShare(JsonCursor s) {
    List<JsonCursor> f = s.items(x -> x);
    if (f.size() != 5) {
      return s.wrong("a share: work, place, at, group, units");
    }
    return new Certificate.Share(
        f.get(0).asCount(),
        f.get(1).asText(),
        f.get(2).asCount(),
        f.get(3).asCount(),
        f.get(4).asWhole());
  }
}
