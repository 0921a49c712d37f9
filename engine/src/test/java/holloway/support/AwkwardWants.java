package holloway.support;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is seen in the rooms, what is wanted, preferred and was found in an awkward house. */
final class AwkwardWants {
  private final AwkwardDraw d;
  private final AwkwardPlan plan;
  private final List<AwkwardRoom> rooms;
  private final List<String> names = new ArrayList<>();
  private int runs;
  private String found = "";

  AwkwardWants(AwkwardDraw d, AwkwardPlan plan) {
    this.d = d;
    this.plan = plan;
    rooms = new ArrayList<>(plan.all().stream().filter(r -> !r.bare).toList());
    if (plan.hut != null) {
      rooms.add(plan.hut);
    }
  }

  int runs() {
    return runs;
  }

  Optional<String> found() {
    return found.isEmpty() ? Optional.empty() : Optional.of(found);
  }

  void draw() {
    things();
    cabinet();
    List<String> outlets = new ArrayList<>();
    for (int i = 1 + d.upTo(4); i >= 0; i--) {
      outlet(i, outlets);
    }
    AwkwardPorch.of(plan)
        .ifPresent(
            porch -> {
              outlets.add(porch.outlet());
              runs++;
            });
    d.list("outlets", outlets);
    links();
    wishes();
    d.line("crew: %d", 1 + d.upTo(2));
    if (d.maybe(30, "found file")) {
      foundFile();
    }
  }

  private void things() {
    List<String> all = new ArrayList<>();
    for (int i = d.upTo(6); i > 0; i--) {
      String kind =
          d.pick("socket", "switch", "tap", "toilet", "radiator", "register", "data-box", "light");
      String at = along(d.pick(rooms), 250);
      if (!at.isEmpty()) {
        all.add("{ %s, %s }".formatted(kind, at));
        d.has(kind);
      }
    }
    d.list("things", all);
  }

  /** A free place along a wall of a room, in words, or nothing. */
  private String along(AwkwardRoom r, int half) {
    for (int tries = 0; tries < 8; tries++) {
      String side = d.pick(r.wholeSides());
      int at = r.take(d.r, side, 2 * half, 80);
      if (at >= 0) {
        boolean first = d.chance(50);
        int from = first ? at + half : r.length(side) - at - half;
        String end = first ? AwkwardRoom.begin(side) : AwkwardRoom.end(side);
        return "in: %s, wall: %s, from: %s %d mm".formatted(r.name, side, end, from);
      }
    }
    return "";
  }

  private void cabinet() {
    String at = "";
    for (int tries = 0; at.isEmpty() && tries < 40; tries++) {
      at = along(d.pick(rooms), 300);
    }
    d.line("cabinet: { %s, height: 1300 mm }", at);
  }

  private void outlet(int number, List<String> outlets) {
    AwkwardRoom r = d.pick(rooms);
    String name = "name: outlet %d, ".formatted(number);
    if (d.maybe(15, "ceiling outlet") && r.plainCeiling && r != plan.hut) {
      outlets.add(
          "{ %sin: %s, ceiling: [west 700 mm, south 700 mm], cables: [cat6], power: class 4 }"
              .formatted(name, r.name));
      runs++;
      names.add("outlet " + number);
      return;
    }
    String at = along(r, 120);
    if (at.isEmpty()) {
      return;
    }
    names.add("outlet " + number);
    if (number == 0 && r.outer.contains(side(at)) && d.maybe(80, "provider entry")) {
      String outside = at.replaceFirst("in: (.*), wall: (\\w+),", "outside: $1 $2,");
      outlets.add(
          "{ %s%s, height: 500 mm, cables: [%s], feed: yes }"
              .formatted(name, outside, d.pick("outdoor-cat6", "outdoor-fibre")));
      runs++;
      return;
    }
    String more = d.maybe(20, "range") ? ", to: 0 mm" : "";
    outlets.add(
        "{ %s%s%s, height: %d mm, %s }"
            .formatted(name, at, range(at, more), 250 + 10 * d.upTo(90), cables()));
  }

  private static String side(String at) {
    return at.replaceFirst(".*wall: (\\w+),.*", "$1");
  }

  private static String range(String at, String more) {
    int from = Integer.parseInt(at.replaceFirst(".* (\\d+) mm$", "$1"));
    return more.isEmpty() ? "" : ", to: %d mm".formatted(from + 100);
  }

  private String cables() {
    List<String> kinds = new ArrayList<>();
    for (int i = d.upTo(3); i >= 0; i--) {
      kinds.add(d.pick("cat6", "cat6a", "om4", "os2", "rg6", "cat5e"));
    }
    if (kinds.size() > 1) {
      d.has("several cables");
    }
    if (kinds.contains("om4") || kinds.contains("os2")) {
      d.has("fibre");
    }
    runs += kinds.size();
    String spare = "";
    if (d.maybe(20, "spare")) {
      spare = ", spare: 1";
      runs++;
    }
    String box = d.maybe(15, "box depth") ? ", box-depth: 45 mm" : "";
    return "cables: %s%s%s".formatted(kinds, spare, box);
  }

  private void links() {
    if (names.size() > 1 && d.maybe(20, "point to point")) {
      d.list(
          "links",
          List.of("{ from: %s, to: %s, cable: cat6 }".formatted(names.get(0), names.get(1))));
      runs++;
    }
  }

  private void wishes() {
    String more = d.maybe(20, "ban") ? ", bans: [%s]".formatted(d.pick("outside", "surface")) : "";
    more += d.maybe(20, "worth of an hour") ? ", hour-is-worth: 40 USD" : "";
    d.line(
        "wishes: { attic: %s, visible-metre: %s min, profile: %s%s }",
        d.pick("mild", "summer", "never"),
        d.pick("10", "30", "60"),
        d.pick("least-work", "least-work", "fewest-holes", "shortest"),
        more);
  }

  private void foundFile() {
    AwkwardRoom r = plan.ground.get(0);
    found =
        """
        studs:
          - { side: %s south, from: west %d mm }
        blocks:
          - { side: %s west, from: south 300 mm, height: %d mm }
        clear-bays:
          - { side: %s west, from: south 1400 mm }
        """
            .formatted(r.name, 300 + d.upTo(500), r.name, 900 + d.upTo(600), r.name);
  }
}
