package holloway.hollow;

import holloway.framing.Framed;
import holloway.framing.Lowered;
import holloway.framing.Skylights;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.survey.PlacedBeam;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What the makers of crossings share while the hollow house is put together. */
final class Draft {
  private static final long APART = 50_000_000;

  final Framed framed;
  final Solids solids;
  final Bores bores;
  final Looked looked;
  final Map<String, Hollow> hollows = new LinkedHashMap<>();
  final List<Site> sites = new ArrayList<>();
  final List<AccessPlace> accesses = new ArrayList<>();
  final List<Refused> refused = new ArrayList<>();
  private final Set<String> siteIds = new HashSet<>();
  private final List<Lowered> lowered;
  private final List<PlacedBeam> beams;
  private final Map<Long, List<Point3>> upright = new HashMap<>();

  Draft(Framed framed) {
    this.framed = framed;
    this.lowered = Lowered.of(framed.placed());
    this.beams = PlacedBeam.of(framed.placed());
    this.solids = new Solids(framed.members());
    this.bores = new Bores(solids, new Lawful(framed), new KeepOffs(framed));
    this.looked = new Looked(false);
  }

  /**
   * As far as another has come; what is kept here does not show there.
   *
   * @param looked what was looked up of that one since it has come so far
   */
  Draft(Draft other, Looked looked) {
    this.looked = looked;
    framed = other.framed;
    lowered = other.lowered;
    beams = other.beams;
    solids = other.solids;
    bores = other.bores.anew();
    hollows.putAll(other.hollows);
    sites.addAll(other.sites);
    accesses.addAll(other.accesses);
    refused.addAll(other.refused);
    siteIds.addAll(other.siteIds);
    other.upright.forEach((cell, axes) -> upright.put(cell, new ArrayList<>(axes)));
  }

  /** Keeps a space, unless it lies in a shared wall or in a room that nobody works in. */
  void hollow(Hollow h) {
    boolean shut =
        framed.placed().walls().stream().anyMatch(w -> w.isParty() && w.id().equals(h.owner()))
            || framed.placed().rooms().stream()
                .anyMatch(r -> r.name().equals(h.owner()) && !r.room().standing().isOpen());
    if (!shut) {
      hollows.put(h.id(), h);
    }
  }

  /** May a person work in this room? */
  boolean isOpen(String room) {
    return framed.placed().getRoom(room).room().standing().isOpen();
  }

  List<Hollow> ofKind(HollowKind kind) {
    return hollows.values().stream().filter(h -> h.kind() == kind).toList();
  }

  Optional<Hollow> find(String id) {
    return Optional.ofNullable(hollows.get(id));
  }

  /**
   * Keeps a crossing and remembers an upright axis, so that no other hole is put where it would run
   * into this one.
   */
  void keep(Site s) {
    if (!hollows.containsKey(s.hollowA()) || !hollows.containsKey(s.hollowB())) {
      return; // it opens into a room that nobody works in
    }
    sites.add(s);
    siteIds.add(s.id());
    if (s.a().plan().equals(s.b().plan())) {
      upright.computeIfAbsent(cell(s.a().x(), s.a().y()), k -> new ArrayList<>()).add(s.a());
    }
  }

  /**
   * Keeps the best bore along one of these axes that no kept hole stands in the way of, if any can
   * be made; its id is the prefix and where it is in plan.
   */
  void keepBest(String prefix, SiteKind kind, List<Point3[]> axes, String a, String b) {
    List<Point3[]> free = axes.stream().filter(x -> roomFor(x[0])).toList();
    bores
        .best("?", kind, free, a, b)
        .ifPresent(s -> keep(s.named(prefix + Tags.of(s.a().x()) + "-" + Tags.of(s.a().y()))));
  }

  /** True when something hangs between a point of a room's ceiling and the room. */
  boolean covered(PlacedRoom r, Point2 p) {
    return lowered.stream().anyMatch(l -> l.soffit().room().equals(r.name()) && l.covers(p))
        || isUnderBeam(r, p)
        || Skylights.isOver(framed.placed(), r, p);
  }

  /** True when a beam hangs below a point of a room's ceiling. */
  boolean isUnderBeam(PlacedRoom r, Point2 p) {
    return beams.stream()
        .anyMatch(b -> b.hangs() && b.room().name().equals(r.name()) && b.covers(p));
  }

  List<Lowered> lowered() {
    return lowered;
  }

  /** True when a crossing of this id is kept already. */
  boolean has(String site) {
    return siteIds.contains(site);
  }

  /** True when no kept upright axis of any storey stands within 50 mm of this one. */
  boolean roomFor(Point3 axis) {
    for (long dx = -1; dx <= 1; dx++) {
      for (long dy = -1; dy <= 1; dy++) {
        for (Point3 o :
            upright.getOrDefault(cell(axis.x() + dx * APART, axis.y() + dy * APART), List.of())) {
          boolean sameStorey = Math.abs(o.z() - axis.z()) < 1_500_000_000;
          if (sameStorey && o.withZ(0).distanceTo(axis.withZ(0)) < APART) {
            return false;
          }
        }
      }
    }
    return true;
  }

  private static long cell(long x, long y) {
    return Math.floorDiv(x, APART) * 1_000_003L + Math.floorDiv(y, APART);
  }

  void refuse(String what, Point3 at, String why, String source) {
    refused.add(new Refused(what, at, why, source));
  }
}
