package holloway.routing;

import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Refused;
import holloway.hollow.WorkKind;
import holloway.house.Lining;
import holloway.house.Porch;
import holloway.request.Spot;
import holloway.survey.OnWall;
import holloway.survey.Placed;
import holloway.survey.PlacedPorch;
import holloway.survey.Wall;
import holloway.units.Length;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;

/** Outlets under the roof of a porch: in the bay over its boards, or among its bare joists. */
final class PorchEnds {
  /** Half a box: it stands clear of joists and of what closes the bay. */
  private static final long HALF_BOX = 40_000_000;

  /** So far aside of where it was asked for, along the wall, a box still is where it was wanted. */
  private static final long ASIDE = 120_000_000;

  /** So far below a porch's ceiling cable comes out of the wall, if it goes along the outside. */
  private static final long BELOW = 150_000_000;

  private final HollowHouse house;
  private final GraphDraft draft;
  private final Prices prices;
  private final Accesses accesses;
  private final List<Refused> refused;
  private final BiConsumer<String, Entry> entry;

  PorchEnds(
      HollowHouse house,
      GraphDraft draft,
      Prices prices,
      Accesses accesses,
      List<Refused> refused,
      BiConsumer<String, Entry> entry) {
    this.house = house;
    this.draft = draft;
    this.prices = prices;
    this.accesses = accesses;
    this.refused = refused;
    this.entry = entry;
  }

  /**
   * Where such an outlet hangs, and the spot on the wall behind it. The survey has looked whether
   * the porch stands there, and the reader whether it reaches so far.
   */
  static Ends.EndSpot spot(Placed placed, Spot.Under u, Optional<Length> box) {
    PlacedPorch p = PlacedPorch.find(placed, u.porch()).orElseThrow();
    Point2 at = p.at(u.from().from(), u.from().distance().value().nm(), u.out().value().nm());
    Wall w = p.wall();
    long s = w.frame().toLocal(at.at(0)).x();
    long z = p.frame().origin().z() - BELOW - w.frame().origin().z();
    OnWall behind = new OnWall(w, 1 - w.outside(), s, z);
    String room =
        w.findFace(behind.side(), s).map(Wall.WallFace::room).orElse(p.porch().face().room());
    return new Ends.EndSpot(
        Optional.of(behind),
        Optional.empty(),
        true,
        room,
        box,
        Optional.of(new Ends.Under(u.porch(), at)));
  }

  int bind(String id, Ends.Under under) {
    int work =
        draft.work(
            id + "/cut-out", WorkKind.CUT_OUT, prices.cutOut(Lining.BOARD, false, true), 0, 0, "");
    PlacedPorch p = PlacedPorch.find(house.framed().placed(), under.porch()).orElseThrow();
    if (!p.porch().boarded()) {
      Point3 at = under.at().at(p.frame().origin().z());
      int node = draft.node(id, at, work);
      entry.accept(p.space(), new Entry(node, at, true));
      return node;
    }
    return over(p, under.at())
        .map(spot -> inBay(id, work, spot))
        .orElseGet(() -> refuse(id, work, p, under.at()));
  }

  private record InBay(Hollow bay, Point3 at) {}

  private int inBay(String id, int work, InBay spot) {
    int node = draft.node(id, spot.at(), work);
    String words = "the cut-out of " + id;
    accesses.add(
        new Accesses.Access(node, spot.bay().id(), spot.at(), "cut-out", words, new int[] {work}));
    return node;
  }

  /** Clear of the joists, moved across them as little as that takes. */
  private Optional<InBay> over(PlacedPorch p, Point2 at) {
    InBay best = null;
    long least = ASIDE + 1;
    boolean fromLow =
        p.porch().run().value() == Porch.Run.ALONG || !p.leadsAway(house.framed().placed().house());
    List<Hollow> bays =
        house.hollows().stream()
            .filter(h -> h.kind() == HollowKind.PORCH_VOID && h.owner().equals(p.id()))
            .sorted(
                java.util.Comparator.comparingLong(h -> fromLow ? h.clear().y0() : -h.clear().y0()))
            .toList();
    for (Hollow h : bays) {
      Point3 q = h.frame().toLocal(at.at(h.frame().origin().z()));
      Interval y = h.clear().y();
      if (y.length() < 2 * HALF_BOX) {
        continue;
      }
      long v = new Interval(y.lo() + HALF_BOX, y.hi() - HALF_BOX).clamp(q.y());
      Interval x = h.clear().x();
      long u =
          new Interval(x.lo() + HALF_BOX, Math.max(x.lo() + HALF_BOX, x.hi() - HALF_BOX))
              .clamp(q.x());
      long off = Math.abs(v - q.y()) + Math.abs(u - q.x());
      if (off < least) {
        least = off;
        best = new InBay(h, h.frame().toWorld(u, v, h.clear().z0()));
      }
    }
    return Optional.ofNullable(best);
  }

  private int refuse(String id, int work, PlacedPorch p, Point2 at) {
    Point3 here = at.at(p.frame().origin().z());
    refused.add(
        new Refused(
            id,
            here,
            "no bay over the ceiling of porch " + p.porch().name() + " within 120 mm of it",
            "framing"));
    return draft.node(id, here, work);
  }
}
