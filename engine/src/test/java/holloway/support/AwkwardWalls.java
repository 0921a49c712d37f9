package holloway.support;

import holloway.support.AwkwardPlan.Between;
import java.util.ArrayList;
import java.util.List;

/** Walls unlike the default, and the doors and windows of an awkward house. */
final class AwkwardWalls {
  private final AwkwardDraw d;
  private final AwkwardPlan plan;
  private final List<String> walls = new ArrayList<>();
  private final List<String> openings = new ArrayList<>();

  AwkwardWalls(AwkwardDraw d, AwkwardPlan plan) {
    this.d = d;
    this.plan = plan;
  }

  void draw() {
    plan.walls.forEach(this::between);
    plan.closets.forEach(this::closet);
    for (AwkwardRoom r : plan.all()) {
      r.outer.forEach(side -> outer(r, side));
    }
    if (plan.storeyAndAHalf) {
      plan.upper.forEach(
          r ->
              openings.add(
                  "{ opening, side: %s north, from: west 600 mm, width: 600 mm, sill: 50 mm, head: 450 mm }"
                      .formatted(r.name)));
      plan.upper.forEach(r -> r.takeAt("north", 600, 1200));
    }
    d.list("walls", walls);
    d.list("openings", openings);
  }

  private void between(Between b) {
    String pair = "between: [%s, %s]".formatted(b.west().name, b.east().name);
    boolean garage = plan.garage && b.east().keys.indexOf("garage: yes") >= 0;
    if (b.west().bare || b.east().bare) {
      return;
    }
    if (garage) {
      walls.add("{ %s, separation: garage, bearing: yes }".formatted(pair));
      door(b, pair);
      return;
    }
    switch (d.upTo(14)) {
      case 0 -> noWall(b, pair, "half-height wall", "height: 1100 mm");
      case 1 -> noWall(b, pair, "open side", "kind: open");
      case 2 -> noWall(b, pair, "open side with a header", "kind: open, header: 200 mm");
      case 3 -> noWall(b, pair, "glazed wall", "kind: glazed, thickness: 60 mm");
      case 4 -> special(pair, "masonry inside", "kind: masonry, thickness: 140 mm");
      case 5 -> special(pair, "double wall", "rows: 2, thickness: 320 mm");
      case 6 -> special(pair, "dabbed board", "kind: dabbed, thickness: 160 mm");
      case 7 -> {
        special(pair, "foam in a wall", "fill: foam");
        door(b, pair);
      }
      case 8 -> {
        special(pair, "bearing wall", "bearing: yes, studs-from: south 210 mm");
        door(b, pair);
      }
      default -> door(b, pair);
    }
  }

  /** Nothing is fixed to it. */
  private void noWall(Between b, String pair, String feature, String keys) {
    special(pair, feature, keys);
    b.west().takeAt("east", 0, b.west().depth);
    b.east().takeAt("west", 0, b.east().depth);
  }

  private void special(String pair, String feature, String keys) {
    walls.add("{ %s, %s }".formatted(pair, keys));
    d.has(feature);
  }

  private void door(Between b, String pair) {
    int shared = Math.min(Math.min(b.shared(), b.west().eastFace()), b.east().westFace());
    int wide = 700 + 10 * d.upTo(12);
    int room = shared - wide - 500;
    if (room > 0 && d.chance(75)) {
      int at = 200 + d.upTo(room);
      openings.add(
          "{ %s, %s, from: south %d mm, width: %d mm }"
              .formatted(d.pick("door", "door", "opening"), pair, at, wide));
      b.west().takeAt("east", at, at + wide);
      b.east().takeAt("west", at, at + wide);
    }
  }

  private void closet(AwkwardRoom c) {
    String in = c.name.substring(0, c.name.indexOf(' '));
    if (c.width > 1000 && d.chance(70)) {
      openings.add(
          "{ door, between: [%s, %s], from: south 120 mm, width: 600 mm }".formatted(c.name, in));
    }
  }

  private void outer(AwkwardRoom r, String side) {
    String face = "side: %s %s".formatted(r.name, side);
    boolean knee = plan.storeyAndAHalf && r.level.equals("upper");
    if (r.bare || knee && !side.equals("west") && !side.equals("east")) {
      return;
    }
    switch (d.upTo(18)) {
      case 0 -> special(face, "party wall", "party: yes");
      case 1 -> special(face, "thick masonry", "kind: masonry, thickness: 450 mm");
      case 2 -> special(face, "furred masonry", "kind: furred, thickness: 260 mm, void: 40 mm");
      case 3 -> special(face, "dabbed board", "kind: dabbed, thickness: 240 mm");
      case 4 -> special(face, "deep studs", "studs: 2x8");
      default -> {
        if (d.chance(45)) {
          window(r, side, face);
        }
      }
    }
  }

  private void window(AwkwardRoom r, String side, String face) {
    int wide = 500 + 10 * d.upTo(80);
    int at = r.take(d.r, side, wide, 300);
    if (at < 0) {
      return;
    }
    boolean round = d.maybe(12, "round window");
    openings.add(
        "{ window, %s, from: %s %d mm, width: %d mm, sill: %s }"
            .formatted(
                face,
                AwkwardRoom.begin(side),
                at,
                round ? 700 : wide,
                round ? "1100 mm, shape: round" : "900 mm, head: 2000 mm"));
  }
}
