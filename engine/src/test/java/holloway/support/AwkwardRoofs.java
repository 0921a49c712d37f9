package holloway.support;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;

/** One roof or several over an awkward house, with their hatches, openings and skylights. */
final class AwkwardRoofs {
  private final AwkwardDraw d;
  private final AwkwardPlan plan;
  private final List<String> roofs = new ArrayList<>();

  AwkwardRoofs(AwkwardDraw d, AwkwardPlan plan) {
    this.d = d;
    this.plan = plan;
  }

  void draw() {
    if (plan.storeyAndAHalf) {
      halfStorey();
    } else if (plan.upper.isEmpty() && plan.ground.size() > 2 && d.maybe(40, "several roofs")) {
      several();
    } else if (d.chance(92) || plan.top().stream().anyMatch(r -> r.vaulted)) {
      List<AwkwardRoom> over = plan.top();
      roofs.add("{ name: main roof, over: %s, %s }".formatted(over.get(0).level, roof(over, "")));
    } else {
      d.has("no roof stated");
    }
    back();
    d.list("roof", roofs);
  }

  /** Part of a house one storey high behind one of two. */
  private void back() {
    List<AwkwardRoom> low =
        plan.ground.stream().filter(r -> r.name.startsWith("b")).collect(Collectors.toList());
    if (!plan.upper.isEmpty() && !low.isEmpty() && d.maybe(70, "lower roof behind")) {
      roofs.add("{ name: back roof, over: %s, %s }".formatted(names(low), roof(low, "")));
    }
  }

  private void several() {
    List<AwkwardRoom> row = new ArrayList<>(plan.front);
    AwkwardRoom first = row.remove(0);
    plan.ground.stream().filter(r -> r.name.startsWith("b")).forEach(row::add);
    String join =
        d.maybe(60, "joined attics") ? ", joins: [{ to: wing, size: 600 mm x 500 mm }]" : "";
    roofs.add(
        "{ name: main roof, over: [%s], %s }".formatted(first.name, pitched(List.of(first), join)));
    roofs.add("{ name: wing, over: %s, %s }".formatted(names(row), pitched(row, "")));
  }

  private void halfStorey() {
    String walls =
        plan.upper.stream()
            .map(
                r ->
                    "{ side: %s north, height: 1200 mm%s }, { side: %s south, height: 1200 mm }"
                        .formatted(r.name, d.chance(50) ? ", behind: bare" : "", r.name))
            .collect(Collectors.joining(", "));
    d.has("knee walls");
    roofs.add(
        "{ name: top roof, over: upper, shape: gable, ridge: east-west, pitch: %s, frame: rafters, chord: 2x6, every: 24 in, knee-walls: [%s]%s }"
            .formatted(d.pick("7/12", "8/12", "9/12"), walls, kneeDormers()));
  }

  /** Out of some of its rooms; some cannot stand. Chance of its own: it shifts no other draw. */
  private String kneeDormers() {
    List<String> out = new ArrayList<>();
    for (AwkwardRoom r : plan.upper) {
      Random own = new Random(r.width * 31L + r.depth);
      String side = own.nextBoolean() ? "north" : "south";
      int wide = 300 * (2 + own.nextInt(4));
      int at = own.nextInt(3) == 0 ? -1 : r.take(own, side, wide, 300);
      if (at >= 0) {
        d.has("dormer of a room");
        out.add(
            "{ side: %s, in: %s, shape: %s, from: west %d mm, width: %d mm, out: %d mm, height: %d mm }"
                .formatted(
                    side,
                    r.name,
                    own.nextBoolean() ? "gable" : "shed",
                    at,
                    wide,
                    200 + 100 * own.nextInt(8),
                    1700 + 100 * own.nextInt(6)));
      }
    }
    return out.isEmpty() ? "" : out.stream().collect(Collectors.joining(", ", ", dormers: [", "]"));
  }

  private static String names(List<AwkwardRoom> rooms) {
    return rooms.stream().map(r -> r.name).collect(Collectors.joining(", ", "[", "]"));
  }

  private String roof(List<AwkwardRoom> over, String more) {
    if (over.stream().noneMatch(r -> r.vaulted) && d.maybe(15, "flat roof")) {
      return "shape: flat, run: %s, frame: rafters, chord: 2x8, every: 16 in, insulation: %s"
          .formatted(d.pick("east-west", "north-south"), insulation());
    }
    return pitched(over, more);
  }

  private String pitched(List<AwkwardRoom> over, String more) {
    boolean vaulted = over.stream().anyMatch(r -> r.vaulted);
    String shape = vaulted ? d.pick("gable", "shed") : d.pick("gable", "gable", "hip", "shed");
    d.has(shape + " roof");
    String way =
        shape.equals("shed")
            ? "low-side: " + d.pick("north", "south", "east", "west")
            : "ridge: " + d.pick("east-west", "north-south");
    String pitch = d.pick("3/12", "5/12", "8/12", "35 deg");
    int eaves = 100 * d.upTo(7);
    String frame = vaulted ? "rafters" : d.pick("trusses", "rafters");
    return "shape: %s, %s, pitch: %s, eaves: %d mm, frame: %s, every: %s, insulation: %s%s%s%s%s"
        .formatted(
            shape,
            way,
            pitch,
            eaves,
            frame,
            d.pick("24 in", "16 in", "600 mm"),
            insulation(),
            hatch(over),
            skylight(over),
            more,
            frame.equals("rafters") && !shape.equals("hip") ? dormer(way) : "");
  }

  /** Over one eave; some of them cannot stand there. */
  private String dormer(String way) {
    if (!d.maybe(30, "dormer")) {
      return "";
    }
    String word = way.substring(way.indexOf(' ') + 1);
    String side = way.startsWith("low") ? word : word.equals("east-west") ? "south" : "west";
    boolean ew = side.equals("south") || side.equals("north");
    return ", dormers: [{ side: %s, shape: %s, from: %s 900 mm, width: %d mm, back: %d mm, height: %d mm }]"
        .formatted(
            side,
            d.pick("gable", "shed"),
            ew ? d.pick("west", "east") : d.pick("south", "north"),
            300 * (2 + d.upTo(5)),
            200 * d.upTo(6),
            300 * (2 + d.upTo(4)));
  }

  private String insulation() {
    return d.pick("none", "200 mm loose", "150 mm unfaced-batt", "90 mm unknown");
  }

  private String hatch(List<AwkwardRoom> over) {
    AwkwardRoom in = over.get(0);
    return !in.bare && in.plainCeiling && d.maybe(75, "hatch")
        ? ", boarded: %s, hatch: { in: %s, at: [west 1000 mm, south 1000 mm], size: 600 mm x 700 mm }"
            .formatted(d.pick("yes", "no"), in.name)
        : "";
  }

  private String skylight(List<AwkwardRoom> over) {
    AwkwardRoom in = over.get(over.size() - 1);
    if (in.bare || !in.plainCeiling || over.size() == 1 || !d.maybe(15, "skylight")) {
      return "";
    }
    in.plainCeiling = false;
    return ", skylights: [{ in: %s, at: [west 1150 mm, south 900 mm], size: 500 mm x 500 mm }]"
        .formatted(in.name);
  }
}
