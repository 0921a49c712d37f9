package holloway.hollow;

import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.house.Fact;
import holloway.house.Timber;
import holloway.limits.SteelPractice;
import holloway.survey.Wall;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Bores sideways through studs from bay to bay, and upright ones through blocks within a bay. */
final class StudSites {
  /**
   * Height of a stud bore over the foot of the bay: about an outlet's, where a patch is least seen;
   * from experience.
   */
  private static final long HEIGHT = 320_000_000;

  /** Backing posts stand this far beside a wall that ends there; from experience. */
  private static final long POSTS = 60_000_000;

  /** A bay of a balloon frame is as deep as the shallower of two walls. */
  private static final long SHARED = 30_000_000;

  private static final long THICKEST = 130_000_000;

  private final Draft draft;

  StudSites(Draft draft) {
    this.draft = draft;
  }

  void find() {
    Map<String, List<Hollow>> perWall = new TreeMap<>();
    for (Hollow h : draft.ofKind(HollowKind.STUD_BAY)) {
      perWall.computeIfAbsent(h.owner(), k -> new ArrayList<>()).add(h);
    }
    for (List<Hollow> bays : perWall.values()) {
      bays.sort(
          Comparator.comparingLong((Hollow h) -> h.clear().x0())
              .thenComparingLong(h -> h.clear().z0()));
      for (Hollow one : bays) {
        for (Hollow other : bays) {
          studs(one, other);
          blocks(one, other);
        }
      }
    }
  }

  private void studs(Hollow one, Hollow other) {
    Box a = one.clear();
    Box b = other.clear();
    long gap = b.x0() - a.x1();
    long z = Math.max(a.z0(), b.z0()) + HEIGHT;
    Optional<Interval> depth = depth(a, b);
    if (depth.isEmpty()
        || gap <= 1_000_000
        || gap > THICKEST
        || z > Math.min(a.z1(), b.z1()) - 60_000_000) {
      return;
    }
    Optional<Wall> shut = passesShared(one.owner(), new Interval(a.x1(), b.x0()));
    if (shut.isPresent()) {
      draft.refuse(
          "studs at " + one.id(),
          one.frame().toWorld(a.x1(), (a.y0() + a.y1()) / 2, z),
          ShutWalls.crossed(shut.get()),
          ShutWalls.source(shut.get()));
      return;
    }
    Optional<Wall> steel = steel(one.owner());
    if (steel.isPresent()) {
      knockouts(steel.get(), one, other);
      return;
    }
    long t = depth.get().mid();
    List<Point3[]> axes = new ArrayList<>();
    for (long up : new long[] {0, 80_000_000, 160_000_000}) {
      if (z + up < Math.min(a.z1(), b.z1()) - 40_000_000) {
        axes.add(
            new Point3[] {
              one.frame().toWorld(a.x1(), t, z + up), one.frame().toWorld(b.x0(), t, z + up)
            });
      }
    }
    String id =
        one.owner() + "/stud/" + Tags.of(a.x1()) + (a.z0() > 100_000_000 ? "-z" + Tags.of(z) : "");
    id += StudBays.row(one);
    id = past(id, b.x0());
    id += draft.has(id) ? "-z" + Tags.of(z) : "";
    draft.bores.best(id, SiteKind.STUD, axes, one.id(), other.id()).ifPresent(draft::keep);
  }

  /** From one bay to the next and past it, where that is narrow, are two. */
  private String past(String id, long end) {
    return draft.has(id) ? id + "-to-" + Tags.of(end) : id;
  }

  /** Of the wall, as far as both bays have it; empty for bays of two rows. */
  private static Optional<Interval> depth(Box a, Box b) {
    return a.y().cut(b.y()).filter(t -> t.length() >= SHARED);
  }

  /** Does a shared wall end against this stretch of a wall? Its posts stand beside it. */
  private Optional<Wall> passesShared(String wall, Interval gap) {
    return draft.framed.placed().walls().stream()
        .filter(w -> w.id().equals(wall))
        .flatMap(w -> w.junctions().stream())
        .filter(j -> new Interval(j.s().lo() - POSTS, j.s().hi() + POSTS).overlaps(gap))
        .flatMap(
            j ->
                draft.framed.placed().walls().stream()
                    .filter(o -> o.id().equals(j.other()) && o.isParty()))
        .findFirst();
  }

  private Optional<Wall> steel(String wall) {
    return draft.framed.placed().walls().stream()
        .filter(w -> w.id().equals(wall) && w.studs().value().kind() == Timber.Kind.STEEL)
        .findFirst();
  }

  /** A single steel stud between two bays is passed where it is punched; nothing is bored. */
  private void knockouts(Wall w, Hollow one, Hollow other) {
    Box a = one.clear();
    Box b = other.clear();
    for (Fact<Length> height : w.traits().knockouts()) {
      long z = height.value().nm();
      Point3 from = one.frame().toWorld(a.x1(), (a.y0() + a.y1()) / 2, z);
      Point3 to = one.frame().toWorld(b.x0(), (a.y0() + a.y1()) / 2, z);
      List<Solids.Hit> hits = draft.solids.hits(from, to, SteelPractice.KNOCKOUT_MM * 500_000L);
      boolean single = hits.size() == 1 && hits.get(0).member().kind() == MemberKind.STUD;
      if (single && a.z().contains(z) && b.z().contains(z)) {
        Member stud = hits.get(0).member();
        draft.keep(
            new Site(
                past(
                    w.id() + "/knockout/" + Tags.of(a.x1()) + "-z" + Tags.of(z) + StudBays.row(one),
                    b.x0()),
                SiteKind.OPENING,
                from,
                to,
                one.id(),
                other.id(),
                List.of(stud.id()),
                List.of(new Site.Layer("opening", b.x0() - a.x1())),
                SteelPractice.KNOCKOUT_MM,
                SteelPractice.KNOCKOUT_MM,
                true,
                stud.assumed() || height.isAssumed()));
      }
    }
  }

  private void blocks(Hollow low, Hollow high) {
    Box a = low.clear();
    Box b = high.clear();
    long gap = b.z0() - a.z1();
    Optional<Interval> depth = depth(a, b);
    if (depth.isEmpty() || gap <= 1_000_000 || gap > THICKEST) {
      return;
    }
    new Interval(a.x0(), a.x1())
        .cut(b.x())
        .filter(i -> i.length() >= 60_000_000)
        .ifPresent(
            s -> {
              long t = depth.get().mid();
              List<Point3[]> axes =
                  List.<Point3[]>of(
                      new Point3[] {
                        low.frame().toWorld(s.mid(), t, a.z1()),
                        low.frame().toWorld(s.mid(), t, b.z0())
                      });
              String id = low.owner() + "/block/" + Tags.of(s.mid()) + "-z" + Tags.of(a.z1());
              id += StudBays.row(low);
              draft
                  .bores
                  .best(id, SiteKind.BLOCK, axes, low.id(), high.id())
                  .ifPresent(draft::keep);
            });
  }
}
