package holloway.hollow;

import holloway.framing.Attic;
import holloway.framing.Deck;
import holloway.geometry.Box;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * Bores through plates: from a bay up into an attic or a joist bay, down into what lies under the
 * floor, and straight on into the bay above.
 */
final class PlateSites {
  /** Of the middle: across the wall and along it, best first. */
  private static final List<long[]> OFFSETS =
      steps(6, 4).flatMap(a -> steps(50, 4).map(b -> new long[] {a, b})).toList();

  /** None, a step on, a step back, two on and so on, nanometres. */
  private static Stream<Long> steps(long stepMm, int most) {
    long step = stepMm * 1_000_000;
    Stream<Long> out = Stream.of(0L);
    for (int i = 1; i <= most; i++) {
      out = Stream.concat(out, Stream.of(i * step, -i * step));
    }
    return out;
  }

  private static final long EDGE = 24_000_000;
  private static final long LEVEL = 80_000_000;

  /** From the top of a bay to the foot of the one above it, over plates and floor. */
  private static final long LEAST_RISE = 150_000_000;

  private static final long MOST_RISE = 700_000_000;

  private final Draft draft;
  private final Map<String, Wall> walls = new TreeMap<>();
  private final List<Hollow> joistBays;
  private final List<Hollow> unders;
  private final Map<String, Deck> decks = new TreeMap<>();

  PlateSites(Draft draft) {
    this.draft = draft;
    draft.framed.placed().walls().forEach(w -> walls.put(w.id(), w));
    joistBays = draft.ofKind(HollowKind.JOIST_BAY);
    unders =
        draft.hollows.values().stream()
            .filter(h -> h.id().startsWith("crawlspace/") || UnderJoists.is(h.id()))
            .toList();
    draft.framed.decks().forEach(d -> decks.put(d.id(), d));
  }

  void find() {
    List<Hollow> bays = draft.ofKind(HollowKind.STUD_BAY);
    for (Hollow bay : bays) {
      Wall w = walls.get(bay.owner());
      above(bay, w);
      below(bay, w);
    }
    TreeMap<Long, List<Integer>> byFoot = new TreeMap<>();
    for (int i = 0; i < bays.size(); i++) {
      byFoot.computeIfAbsent(foot(bays.get(i)).z(), k -> new ArrayList<>()).add(i);
    }
    for (Hollow bay : bays) {
      if (walls.get(bay.owner()).isLow()) {
        continue;
      }
      long top = StudBays.middle(bay, bay.clear().z1()).z();
      byFoot.subMap(top + LEAST_RISE, true, top + MOST_RISE, true).values().stream()
          .flatMap(List::stream)
          .sorted()
          .forEach(i -> stack(bay, bays.get(i)));
    }
  }

  private static Point3 foot(Hollow bay) {
    return StudBays.middle(bay, bay.clear().z0());
  }

  /**
   * Axes from z0 to z1 of a bay's own frame, best first: the middle of the bay and of its depth.
   */
  private List<Point3[]> axes(Hollow bay, long z0, long z1, long shift) {
    List<Point3[]> out = new ArrayList<>();
    Box b = bay.clear();
    Away away = Away.of(draft);
    int u = away.alongU(bay.frame());
    int v = away.alongV(bay.frame());
    long s = (b.x0() + b.x1()) / 2 + u * shift;
    long t = (b.y0() + b.y1()) / 2;
    for (long[] off : OFFSETS) {
      long across = v * off[0];
      long along = u * off[1];
      boolean within =
          s + along >= b.x0() + EDGE
              && s + along <= b.x1() - EDGE
              && t + across >= b.y0() + EDGE
              && t + across <= b.y1() - EDGE;
      Point3 a = bay.frame().toWorld(s + along, t + across, z0);
      if (within && draft.roomFor(a)) {
        out.add(new Point3[] {a, bay.frame().toWorld(s + along, t + across, z1)});
      }
    }
    return out;
  }

  private String id(Hollow bay, String what, Point3 at) {
    long s = bay.frame().toLocal(at).x();
    return bay.owner() + "/" + what + "/" + Tags.of(s) + StudBays.row(bay);
  }

  private static String tail(Hollow bay) {
    return bay.id().substring(bay.owner().length());
  }

  private void above(Hollow bay, Wall w) {
    if (w.isLow()) {
      return; // over its cap is the air of the rooms
    }
    long z0 = bay.clear().z1();
    Point3 top = StudBays.middle(bay, z0);
    Optional<String> vault = Vaults.beside(w, bay.clear().x(), draft.framed.placed());
    vault.ifPresent(
        room -> draft.refuse("top plate over " + bay.id(), top, Vaults.noAttic(room), "framing"));
    for (Attic a : vault.isPresent() ? List.<Attic>of() : draft.framed.attics()) {
      if (a.outline().contains(top.plan())
          && Math.abs(a.plateZ() - top.z() - 57_000_000) < 140_000_000) {
        intoAttic(bay, a, z0);
        return;
      }
    }
    for (Hollow jb : joistBays) {
      long joistBottom = jb.frame().origin().z() + jb.clear().z0();
      if (Math.abs(joistBottom - top.z() - 57_000_000) < 140_000_000 && near(jb, top.plan())) {
        long z1 = bay.frame().toLocal(top.withZ(joistBottom)).z();
        List<Point3[]> axes =
            axes(bay, z0, z1, 0).stream().filter(x -> inside(jb, x[1].plan(), 15_000_000)).toList();
        keep(bay, "top-plate", SiteKind.TOP_PLATE, axes, jb.id());
      }
    }
  }

  private void intoAttic(Hollow bay, Attic a, long z0) {
    Optional<Hollow> attic = draft.find("attic/" + a.id());
    Point3 top = StudBays.middle(bay, z0);
    long z1 = bay.frame().toLocal(top.withZ(a.plateZ())).z();
    String what = "top plate over " + bay.id();
    if (attic.isEmpty()) {
      draft.refuse(
          what, top, "nobody can stand in the attic " + a.id(), "see the attic's own refusal");
      return;
    }
    List<Point3[]> axes = new ArrayList<>();
    long best = Long.MIN_VALUE;
    boolean reached = false;
    for (Point3[] axis : axes(bay, z0, z1, 0)) {
      Point2 p = axis[1].plan();
      long room = a.roofUnderside(p) - a.plateZ();
      best = Math.max(best, room);
      boolean within = attic.get().area().orElseThrow().contains(p);
      reached |= within;
      Point3 drill = axis[1].withZ(a.plateZ() + AtticSpace.DRILL);
      if (within && room >= AtticSpace.DRILL && draft.solids.free(axis[1], drill, 25_000_000)) {
        axes.add(axis);
      }
    }
    if (best < AtticSpace.DRILL) {
      draft.refuse(
          what,
          top,
          "only "
              + Math.max(0, best / 1_000_000)
              + " mm between plate and roof here: bit, drill and hand need 330 mm",
          "pitch and heel of the roof; tool room from experience");
    } else if (!reached) {
      draft.refuse(
          what,
          top,
          "out of arm's reach from where a body gets to in the attic",
          "from experience");
    } else {
      keep(bay, "top-plate", SiteKind.TOP_PLATE, axes, attic.get().id());
    }
  }

  private void below(Hollow bay, Wall w) {
    long z0 = bay.clear().z0();
    Point3 foot = StudBays.middle(bay, z0);
    Optional<Deck> deck =
        draft.framed.decks().stream()
            .filter(
                d ->
                    d.level().equals(w.level())
                        && Math.abs(d.frame().origin().z() - foot.z() + 38_000_000) < LEVEL
                        && d.outline().contains(foot.plan()))
            .findFirst();
    if (deck.isEmpty()) {
      return;
    }
    Deck d = deck.get();
    long z1 = bay.frame().toLocal(foot.withZ(d.frame().origin().z() + d.subfloorZ().lo())).z();
    for (Hollow under : unders) {
      if (under.owner().equals(d.id()) && under.area().orElseThrow().contains(foot.plan())) {
        List<Point3[]> axes =
            axes(bay, z0, z1, 0).stream()
                .filter(
                    x ->
                        under.area().orElseThrow().contains(x[1].plan())
                            && draft.solids.free(
                                x[1], x[1].withZ(x[1].z() - 150_000_000), 20_000_000))
                .toList();
        keep(bay, "bottom-plate", SiteKind.BOTTOM_PLATE, axes, under.id());
      }
    }
    for (Hollow jb : joistBays) {
      if (jb.owner().equals(d.id()) && near(jb, foot.plan())) {
        List<Point3[]> axes =
            axes(bay, z0, z1, 0).stream().filter(x -> inside(jb, x[1].plan(), 15_000_000)).toList();
        keep(bay, "bottom-plate", SiteKind.BOTTOM_PLATE, axes, jb.id());
      }
    }
  }

  private void keep(Hollow bay, String what, SiteKind kind, List<Point3[]> axes, String to) {
    Optional<Site> site = draft.bores.best("?", kind, axes, bay.id(), to);
    if (site.isPresent()) {
      Site s = site.get();
      String id = id(bay, what, s.a());
      draft.keep(s.named(id));
    } else if (!axes.isEmpty()) {
      draft.refuse(
          what.replace('-', ' ') + " at " + bay.id(),
          axes.get(0)[0],
          draft.bores.lastReason(),
          "framing");
    }
  }

  /**
   * One straight bore from a bay into the bay above it, where both and the floor between line up.
   */
  private void stack(Hollow low, Hollow high) {
    long z0 = low.clear().z1();
    Point3 top = StudBays.middle(low, z0);
    Point3 foot = foot(high);
    if (Math.abs(foot.x() - top.x()) > 600_000_000 || Math.abs(foot.y() - top.y()) > 600_000_000) {
      return;
    }
    long z1 = low.frame().toLocal(foot).z();
    List<Point3[]> axes = new ArrayList<>();
    for (long shift : new long[] {60_000_000, -60_000_000}) {
      for (Point3[] axis : axes(low, z0, z1, shift)) {
        Point3 p = high.frame().toLocal(axis[1]);
        Box b = high.clear();
        if (p.x() >= b.x0() + EDGE
            && p.x() <= b.x1() - EDGE
            && p.y() >= b.y0() + EDGE
            && p.y() <= b.y1() - EDGE) {
          axes.add(axis);
        }
      }
    }
    draft
        .bores
        .best("?", SiteKind.PLATE_STACK, axes, low.id(), high.id())
        .ifPresent(s -> draft.keep(s.named(id(low, "plates", s.a()))));
  }

  /** True when the plan point lies in the bay or within a hand's breadth of it. */
  private static boolean near(Hollow bay, Point2 p) {
    return inside(bay, p, -200_000_000);
  }

  static boolean inside(Hollow bay, Point2 p, long margin) {
    Point3 q = bay.frame().toLocal(p.at(bay.frame().origin().z()));
    Box b = bay.clear();
    return q.x() >= b.x0() + margin
        && q.x() <= b.x1() - margin
        && q.y() >= b.y0() + margin
        && q.y() <= b.y1() - margin;
  }
}
