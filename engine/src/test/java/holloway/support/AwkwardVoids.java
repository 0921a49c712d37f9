package holloway.support;

import java.util.ArrayList;
import java.util.List;

/** Stairs, beams, chases, boxes along ceilings and whatever lies in the way. */
final class AwkwardVoids {
  private final AwkwardDraw d;
  private final AwkwardPlan plan;
  private final List<String> hollows = new ArrayList<>();

  AwkwardVoids(AwkwardDraw d, AwkwardPlan plan) {
    this.d = d;
    this.plan = plan;
  }

  void draw() {
    stairs();
    beams();
    AwkwardPorch.of(plan)
        .ifPresent(
            porch -> {
              d.list("porches", List.of(porch.text()));
              d.has("porch");
            });
    chase();
    ceilings();
    skirting();
    tubes();
    link();
    d.list("hollows", hollows);
    obstacles();
  }

  private AwkwardRoom any() {
    List<AwkwardRoom> seen = plan.all().stream().filter(r -> !r.bare).toList();
    return d.pick(seen);
  }

  private void stairs() {
    AwkwardRoom in = plan.ground.get(0);
    if (!plan.upper.isEmpty() && !plan.storeyAndAHalf && in.depth > 3400 && d.maybe(45, "stairs")) {
      d.list(
          "stairs",
          List.of(
              "{ stair: main stair, in: %s, from: [west 0 mm, south 500 mm], size: 850 mm x 2000 mm, climbs: north, under: %s }"
                  .formatted(in.name, d.pick("closed", "open", "cupboard"))));
      in.takeAt("west", 300, 2700);
    }
  }

  private void beams() {
    AwkwardRoom in = any();
    if (in.shape == AwkwardRoom.Shape.WHOLE && in.plainCeiling && d.maybe(20, "beam")) {
      boolean hidden = d.maybe(35, "steel within the joists");
      d.list(
          "beams",
          List.of(
              "{ beam: lintel, in: %s, run: %s, from: %s, width: 120 mm, %s }"
                  .formatted(
                      in.name,
                      "north-south",
                      "west %d mm".formatted(in.width / 2),
                      hidden
                          ? "depth: 200 mm, made: steel"
                          : "drop: 150 mm, depth: %d mm, made: timber"
                              .formatted(d.chance(50) ? 150 : 300))));
    }
  }

  private void chase() {
    AwkwardRoom in = plan.ground.get(0);
    if (in.bare || !d.maybe(25, "chase")) {
      return;
    }
    int at = in.take(d.r, "south", 500, 200);
    if (at >= 0) {
      hollows.add(
          "{ chase: shaft, beside: %s south, along: west %d mm, inside: yes, from: ground, to: %s, size: 400 mm x 250 mm, contents: [%s], known: yes }"
              .formatted(
                  in.name,
                  at,
                  plan.upper.isEmpty() ? "attic" : "upper",
                  d.pick("vent", "pipe", "flue")));
    }
  }

  private void ceilings() {
    AwkwardRoom in = any();
    if (in.plainCeiling && d.maybe(20, "dropped ceiling")) {
      hollows.add(
          "{ dropped-ceiling: low ceiling, in: %s, drop: %d mm, cover: %s }"
              .formatted(in.name, 120 + 10 * d.upTo(15), d.pick("tiles", "board", "panel")));
      in.plainCeiling = false;
    }
    AwkwardRoom other = any();
    if (other != in && other.plainCeiling && d.maybe(20, "soffit")) {
      hollows.add(
          "{ soffit: boxing, along: %s south, size: 300 mm x 200 mm, cover: %s }"
              .formatted(other.name, d.pick("panel", "board")));
    }
  }

  private void skirting() {
    if (d.maybe(30, "skirting")) {
      hollows.add("{ skirting: %s, height: 120 mm }".formatted(any().name));
    }
  }

  /** A place on a wall for one end of something, or nothing where no wall is free. */
  private String spot(AwkwardRoom r) {
    for (String side : r.wholeSides()) {
      int at = r.take(d.r, side, 60, 300);
      if (at >= 0) {
        return "{ in: %s, wall: %s, from: %s %d mm, height: %d mm }"
            .formatted(r.name, side, AwkwardRoom.begin(side), at + 30, 400 + d.upTo(800));
      }
    }
    return "";
  }

  private void tubes() {
    if (d.maybe(20, "conduit")) {
      ends("conduit: old tube", "inside-diameter: %d mm, bends: %d, length: 9 m", 16, 3);
    }
    if (d.maybe(20, "old cable")) {
      ends("old-cable: old lead", "hole: %d mm, stapled: no, length: 1%d m", 16, 3);
    }
  }

  private void ends(String name, String rest, int least, int more) {
    AwkwardRoom one = any();
    AwkwardRoom other = any();
    String from = spot(one);
    String to = one == other ? "" : spot(other);
    if (!from.isEmpty() && !to.isEmpty()) {
      String said = rest.formatted(least + d.upTo(12), d.upTo(more));
      hollows.add("{ %s, from: %s, to: %s, %s }".formatted(name, from, to, said));
    }
  }

  private void link() {
    AwkwardRoom g = plan.ground.get(0);
    if (plan.hut == null || g.bare) {
      return;
    }
    int at = g.outer.contains("south") ? g.take(d.r, "south", 100, 300) : -1;
    String to =
        at < 0
            ? "{ in: g1, wall: west, from: south 600 mm, height: 500 mm }"
            : "{ in: g1, wall: south, from: west %d mm, height: 500 mm }".formatted(at + 50);
    String kind = d.pick("duct", "buried", "overhead");
    String height = kind.equals("overhead") ? "3 m" : "500 mm";
    String from = "{ in: hut, wall: north, from: west 1100 mm, height: 500 mm }";
    d.has(kind + " link");
    String more = kind.equals("duct") ? ", depth: 300 mm, inside-diameter: 40 mm, bends: 1" : "";
    hollows.add(
        "{ outdoor-link: yard, kind: %s, from: %s, to: %s, length: 14 m%s }"
            .formatted(kind, from, to, more)
            .replace("500 mm", height));
  }

  private void obstacles() {
    List<String> all = new ArrayList<>();
    AwkwardRoom o = any();
    if (o.plainCeiling && d.maybe(35, "duct over a ceiling")) {
      all.add(
          "{ duct, above-ceiling-of: %s, at: [west 1100 mm, south 1000 mm], size: 800 mm x 250 mm, height: 120 mm }"
              .formatted(o.name));
    }
    if (d.maybe(30, "fire block")) {
      all.add(
          "{ fire-block, side: %s south, from: west 400 mm, width: 500 mm, bottom: 1200 mm, top: 1250 mm }"
              .formatted(o.name));
    }
    if (d.maybe(20, "header")) {
      all.add(
          "{ header, side: %s west, from: south 300 mm, width: 800 mm, bottom: 1900 mm, top: 2100 mm }"
              .formatted(o.name));
    }
    if (d.features().contains("crawlspace") && d.maybe(50, "pier")) {
      all.add(
          "{ pier, below-floor-of: g1, at: [west 1500 mm, south 1700 mm], size: 350 mm x 350 mm }");
    }
    d.list("obstacles", all);
  }
}
