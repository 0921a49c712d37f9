package holloway.hollow;

import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Point3;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Makes crossings by looking along an axis: what it pierces, in which order, and the largest lawful
 * bit through all of it.
 */
final class Bores {
  /**
   * Half the bits that are tried for room, widest first, nanometres: a spot that takes a wide bit
   * is better.
   */
  private static final long[] RADII = {16_000_000, 11_000_000, 8_000_000, 6_500_000};

  /** What may stand on the axis of each kind of crossing. */
  private static final Set<MemberKind> FINISH = EnumSet.of(MemberKind.LINING, MemberKind.SUBFLOOR);

  /**
   * What is told as a void: a bit looks out by two millimetres behind many a member, which rounding
   * must not make a void of or none.
   */
  private static final long GAP = 2_100_000;

  private final Solids solids;
  private final Lawful lawful;
  private final KeepOffs keepOffs;
  private final Tried tried;

  /** What does not hang on the ends is looked for once, and need not be remembered. */
  private final boolean remembers;

  private String lastReason = "";

  Bores(Solids solids, Lawful lawful, KeepOffs keepOffs) {
    this(solids, lawful, keepOffs, new Tried(), false);
  }

  private Bores(Solids solids, Lawful lawful, KeepOffs keepOffs, Tried tried, boolean remembers) {
    this.keepOffs = keepOffs;
    this.solids = solids;
    this.lawful = lawful;
    this.tried = tried;
    this.remembers = remembers;
  }

  /** The same of no attempt yet; what others tried in this house it need not look at again. */
  Bores anew() {
    return new Bores(solids, lawful, keepOffs, tried, true);
  }

  /** Why the last attempt failed, for a {@link Refused}. */
  String lastReason() {
    return lastReason;
  }

  static Set<MemberKind> allowed(SiteKind kind) {
    return switch (kind) {
      case TOP_PLATE -> EnumSet.of(MemberKind.TOP_PLATE);
      case BOTTOM_PLATE -> EnumSet.of(MemberKind.BOTTOM_PLATE, MemberKind.SUBFLOOR);
      case PLATE_STACK ->
          EnumSet.of(MemberKind.TOP_PLATE, MemberKind.BOTTOM_PLATE, MemberKind.SUBFLOOR);
      case STUD ->
          EnumSet.of(
              MemberKind.STUD,
              MemberKind.KING_STUD,
              MemberKind.JACK_STUD,
              MemberKind.POST,
              MemberKind.CRIPPLE);
      case BLOCK -> EnumSet.of(MemberKind.FIRE_BLOCK);
      case JOIST -> EnumSet.of(MemberKind.JOIST);
      case BLOCKING -> EnumSet.of(MemberKind.BLOCKING);
      case RIM -> EnumSet.of(MemberKind.RIM, MemberKind.CLADDING, MemberKind.LEDGER);
      case OUTER_SKIN -> EnumSet.of(MemberKind.CLADDING, MemberKind.LEDGER);
      case OUTER_THROUGH -> EnumSet.of(MemberKind.CLADDING, MemberKind.LINING, MemberKind.LEDGER);
      case MASONRY ->
          EnumSet.of(MemberKind.MASONRY, MemberKind.LINING, MemberKind.CLADDING, MemberKind.LEDGER);
      case OPENING -> EnumSet.of(MemberKind.LINING, MemberKind.SUBFLOOR, MemberKind.SLAB);
      case WALL_BOARD, WALL_THROUGH -> EnumSet.of(MemberKind.LINING);
      default -> FINISH;
    };
  }

  /** The first of the candidate axes that can be bored, with the widest room first. */
  Optional<Site> best(
      String id, SiteKind kind, List<Point3[]> axes, String hollowA, String hollowB) {
    for (long radius : RADII) {
      for (Point3[] axis : axes) {
        Optional<Site> site = along(id, kind, axis[0], axis[1], hollowA, hollowB, radius);
        if (site.isPresent()) {
          return site;
        }
      }
    }
    return Optional.empty();
  }

  Optional<Site> along(
      String id, SiteKind kind, Point3 a, Point3 b, String hollowA, String hollowB, long radius) {
    Tried.Axis axis = new Tried.Axis(id, kind, a, b, hollowA, hollowB, radius);
    Tried.Answer answer = remembers ? tried.of(axis, () -> look(axis)) : look(axis);
    lastReason = answer.site().isPresent() ? lastReason : answer.why();
    return answer.site();
  }

  private Tried.Answer look(Tried.Axis axis) {
    Point3 a = axis.a();
    Point3 b = axis.b();
    List<Solids.Hit> hits = solids.hits(a, b, axis.radius());
    Set<MemberKind> may = allowed(axis.kind());
    for (Solids.Hit h : hits) {
      if (lawful.isShared(h.member())) {
        return Tried.Answer.no(ShutWalls.bored(lawful.wallOf(h.member())));
      }
      if (!may.contains(h.member().kind())) {
        return Tried.Answer.no(
            "a " + h.member().kind().word() + " stands in the way (" + h.member().id() + ")");
      }
    }
    if (hits.isEmpty()) {
      return Tried.Answer.no("nothing to bore through");
    }
    Optional<String> near = keepOffs.against(a, b);
    if (near.isPresent()) {
      return Tried.Answer.no(near.get());
    }
    int most = (int) (2 * axis.radius() / 1_000_000);
    int plain = 51;
    int plated = 51;
    boolean assumed = false;
    for (Solids.Hit h : hits) {
      Lawful.Bits bits = lawful.at(h.member(), middle(a, b, h));
      plain = Math.min(plain, bits.plain());
      plated = Math.min(plated, bits.plated());
      assumed |= h.member().assumed();
      if (bits.plated() == 0) {
        return Tried.Answer.no(
            "no lawful hole in the " + h.member().kind().word() + " (" + bits.source() + ")");
      }
    }
    plated = Math.min(plated, most);
    if (plated < 13) {
      return Tried.Answer.no("no bit of 13 mm or more fits");
    }
    List<String> ids = hits.stream().map(h -> h.member().id()).toList();
    return Tried.Answer.yes(
        new Site(
            axis.id(),
            axis.kind(),
            a,
            b,
            axis.hollowA(),
            axis.hollowB(),
            ids,
            layers(a, b, hits),
            Math.min(plain, plated),
            plated,
            false,
            assumed));
  }

  private static Point3 middle(Point3 a, Point3 b, Solids.Hit h) {
    double f = (h.from() + h.to()) / 2.0 / a.distanceTo(b);
    return new Point3(
        a.x() + Math.round(f * (b.x() - a.x())),
        a.y() + Math.round(f * (b.y() - a.y())),
        a.z() + Math.round(f * (b.z() - a.z())));
  }

  private static List<Site.Layer> layers(Point3 a, Point3 b, List<Solids.Hit> hits) {
    List<Site.Layer> out = new ArrayList<>();
    long at = 0;
    MemberKind last = MemberKind.OBSTACLE;
    for (Solids.Hit h : hits) {
      if (h.member().kind() == last && at - h.from() > 1_000_000) {
        continue; // beside the piece before it: on the joint of two sheets one is bored through
      }
      last = h.member().kind();
      if (h.from() - at > GAP) {
        out.add(new Site.Layer("void", h.from() - at));
      }
      out.add(new Site.Layer(h.member().kind().word(), h.to() - h.from()));
      at = Math.max(at, h.to());
    }
    if (a.distanceTo(b) - at > GAP) {
      out.add(new Site.Layer("void", a.distanceTo(b) - at));
    }
    return out;
  }

  /** Finishes and skins only: used by surfaces, where no timber may be met. */
  static boolean isFinish(Member m) {
    return FINISH.contains(m.kind());
  }
}
