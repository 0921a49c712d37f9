package holloway.takeoff;

import holloway.catalog.ShopItem;
import holloway.geometry.Point3;
import holloway.hollow.HollowKind;
import holloway.plan.Plan;
import holloway.survey.Placed;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What holds cable along its way, and the string left behind in the ways nobody sees into. */
final class PathParts {
  /** Supports at most this far apart: 1.2 m (4 ft), trade-facts A2-15. */
  static final double SUPPORT_M = 1.2;

  /** Clips on a wall, from experience. */
  private static final double CLIP_M = 0.5;

  /** String past each end of a blind stretch, to tie off (from experience). */
  private static final double TAIL_M = 0.5;

  private static final Set<String> SUPPORTED =
      Set.of(
          HollowKind.ATTIC.word(), HollowKind.CRAWLSPACE.word(), HollowKind.LOWERED_CEILING.word());

  private static final Set<String> ON_SURFACES =
      Set.of(HollowKind.ROOM_SURFACE.word(), HollowKind.OUTSIDE_FACE.word());

  private final Plan plan;
  private final Set<String> livedIn;

  PathParts(Plan plan, Placed placed) {
    this.plan = plan;
    this.livedIn =
        placed.rooms().stream()
            .filter(r -> !r.room().plain())
            .map(r -> r.name() + "/surface")
            .collect(Collectors.toSet());
  }

  void count(Shopping list) {
    Map<String, Double> ways = handLaid();
    double supports = 0;
    double clips = 0;
    double trunking = 0;
    for (Map.Entry<String, Double> way : ways.entrySet()) {
      String kind = way.getKey().substring(0, way.getKey().indexOf('\n'));
      String id = way.getKey().substring(kind.length() + 1);
      boolean shown = kind.equals(HollowKind.ROOM_SURFACE.word()) && livedIn.contains(id);
      supports += SUPPORTED.contains(kind) ? spaced(way.getValue(), SUPPORT_M) : 0;
      trunking += shown ? way.getValue() : 0;
      clips += !shown && ON_SURFACES.contains(kind) ? spaced(way.getValue(), CLIP_M) : 0;
    }
    list.add(ShopItem.SUPPORT, supports);
    list.add(ShopItem.CLIP, clips);
    list.add(ShopItem.TRUNKING_METRE, Math.ceil(trunking - 1e-9));
    // One at every support and two at each end of a run.
    list.add(ShopItem.TIE, supports + 4.0 * plan.runs().size());
    list.add(ShopItem.STRING_METRE, Math.ceil(stringM() - 1e-9));
  }

  /** One at the start and one at the end of each length, none further from the next. */
  static double spaced(double metres, double apart) {
    return metres <= 0 ? 0 : Math.ceil(metres / apart - 1e-9) + 1;
  }

  /** Metres of each hollow along which cable is laid by hand; what runs share counts once. */
  private Map<String, Double> handLaid() {
    Map<String, Set<String>> seen = new TreeMap<>();
    Map<String, Double> out = new TreeMap<>();
    for (Plan.PlannedRun r : plan.runs()) {
      for (Plan.PlanStep s : r.steps()) {
        if (s.hollow().isEmpty() || s.feed().orElse("").equals("blind")) {
          continue;
        }
        String way = s.hollow().get() + "\n" + s.id();
        for (int i = 1; i < s.path().size(); i++) {
          Point3 a = s.path().get(i - 1);
          Point3 b = s.path().get(i);
          if (seen.computeIfAbsent(way, k -> new TreeSet<>()).add(ends(a, b))) {
            out.merge(way, a.distanceTo(b) / 1e9, Double::sum);
          }
        }
      }
    }
    return out;
  }

  private static String ends(Point3 a, Point3 b) {
    return List.of(a, b).stream()
        .map(Point3::toString)
        .sorted(Comparator.naturalOrder())
        .toList()
        .toString();
  }

  /** Each blind stretch once, with two tails. */
  private double stringM() {
    Map<String, Double> out = new TreeMap<>();
    for (Plan.PlannedRun r : plan.runs()) {
      Map<Integer, String> name = new TreeMap<>();
      Map<Integer, Double> metres = new TreeMap<>();
      for (Plan.PlanStep s : r.steps()) {
        s.fish()
            .ifPresent(
                f -> {
                  name.merge(f, s.id(), (x, y) -> x + "\n" + y);
                  metres.merge(f, s.m(), Double::sum);
                });
      }
      name.forEach((f, key) -> out.merge(key, metres.get(f) + 2 * TAIL_M, Math::max));
    }
    return out.values().stream().mapToDouble(Double::doubleValue).sum();
  }
}
