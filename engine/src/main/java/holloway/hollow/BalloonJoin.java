package holloway.hollow;

import holloway.framing.Framed;
import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Balloon framing: a bay that reaches the top of its wall and one that starts at the foot of the
 * wall above are one tall bay.
 */
final class BalloonJoin {
  private static final long TOUCH = 60_000_000;
  private static final long SHARED = 50_000_000;

  private BalloonJoin() {}

  /** Joins from the lowest level up; the tall bay keeps the id and frame of its lowest part. */
  static void join(Framed framed, Map<String, List<Hollow>> perWall) {
    for (var level : framed.placed().levels()) {
      for (Wall lower : framed.placed().walls()) {
        if (lower.level().equals(level.name()) && lower.balloon() && lower.isFramed()) {
          joinWall(framed, lower, perWall);
        }
      }
    }
  }

  private static void joinWall(Framed framed, Wall lower, Map<String, List<Hollow>> perWall) {
    // A wall whose studs are not ours to open (shared, or low) has no bays.
    List<Hollow> bays = perWall.getOrDefault(lower.id(), List.of());
    List<Hollow> joined = new ArrayList<>();
    int away = new Away(framed.placed().house().layout()).alongU(lower.frame());
    List<Hollow> inOrder = bays.stream().sorted(order(away)).toList();
    for (Hollow bay : inOrder) {
      Hollow tall = bay;
      for (Wall upper : framed.placed().walls()) {
        if (upper.balloon()
            && upper.isFramed()
            && !upper.id().equals(lower.id())
            && !upper.level().equals(lower.level())) {
          Optional<Hollow> on = find(tall, perWall.getOrDefault(upper.id(), List.of()), away);
          if (on.isPresent()) {
            tall = merge(tall, on.get());
            perWall.get(upper.id()).remove(on.get());
          }
        }
      }
      joined.add(tall);
    }
    joined.sort(order(1));
    perWall.put(lower.id(), joined);
  }

  private static Comparator<Hollow> order(int away) {
    return Comparator.comparingLong((Hollow h) -> away * h.clear().x().mid())
        .thenComparingLong(h -> h.clear().z0());
  }

  /** Of several the first in the order that layouts go. */
  private static Optional<Hollow> find(Hollow low, List<Hollow> above, int away) {
    return above.stream().filter(h -> onTop(low, h)).min(order(away));
  }

  private static boolean onTop(Hollow low, Hollow high) {
    Box h = inFrame(low, high);
    return Math.abs(h.z0() - low.clear().z1()) <= TOUCH
        && low.clear().x().cut(h.x()).filter(i -> i.length() >= SHARED).isPresent()
        && low.clear().y().cut(h.y()).filter(i -> i.length() >= SHARED).isPresent();
  }

  private static Box inFrame(Hollow low, Hollow high) {
    Box b = high.clear();
    Point3 p = low.frame().toLocal(high.frame().toWorld(b.x0(), b.y0(), b.z0()));
    Point3 q = low.frame().toLocal(high.frame().toWorld(b.x1(), b.y1(), b.z1()));
    return new Box(
        Math.min(p.x(), q.x()),
        Math.max(p.x(), q.x()),
        Math.min(p.y(), q.y()),
        Math.max(p.y(), q.y()),
        p.z(),
        q.z());
  }

  private static Hollow merge(Hollow low, Hollow high) {
    Box h = inFrame(low, high);
    Interval s = low.clear().x().cut(h.x()).orElseThrow();
    Interval t = low.clear().y().cut(h.y()).orElseThrow();
    Box box = new Box(s.lo(), s.hi(), t.lo(), t.hi(), low.clear().z0(), h.z1());
    return new Hollow(
        low.id(),
        low.kind(),
        low.frame(),
        box,
        Optional.empty(),
        low.fill(),
        low.owner(),
        Optional.empty());
  }
}
