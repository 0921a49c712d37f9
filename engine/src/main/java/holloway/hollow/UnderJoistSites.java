package holloway.hollow;

import holloway.geometry.Overlay;
import holloway.geometry.Point3;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Polygon;

/**
 * Two floors that meet over one room with an open ceiling, as where joists change direction at a
 * beam: below their joists cable is led on from one to the other, where no beam hangs between.
 */
final class UnderJoistSites {
  /** Half the width of the strip in which two floors meet, millimetres. */
  private static final double NEAR_MM = 30;

  private static final double LEAST_MM = 200;

  /** From the joint into either space, and below the joists, where cable is laid. */
  private static final long IN = 60_000_000;

  private static final long BELOW = 25_000_000;
  private static final double[] ALONG = {0.5, 0.25, 0.75};

  private final Draft draft;

  UnderJoistSites(Draft draft) {
    this.draft = draft;
  }

  void find() {
    List<Hollow> all = draft.hollows.values().stream().filter(h -> UnderJoists.is(h.id())).toList();
    for (Hollow a : all) {
      for (Hollow b : all) {
        boolean same = UnderJoists.room(a.id()).equals(UnderJoists.room(b.id()));
        if (same && a.id().compareTo(b.id()) < 0) {
          meet(a, b);
        }
      }
    }
  }

  private void meet(Hollow a, Hollow b) {
    var strip =
        Overlay.intersection(
            Spaces.grow(a.area().orElseThrow().toJts(), NEAR_MM),
            Spaces.grow(b.area().orElseThrow().toJts(), NEAR_MM));
    for (Polygon p : Spaces.polygons(strip)) {
      Envelope e = p.getEnvelopeInternal();
      boolean northSouth = e.getHeight() > e.getWidth();
      double length = Math.max(e.getHeight(), e.getWidth());
      for (double f : length < LEAST_MM ? new double[0] : ALONG) {
        double x = e.getMinX() + (northSouth ? 0.5 : f) * e.getWidth();
        double y = e.getMinY() + (northSouth ? f : 0.5) * e.getHeight();
        Point3 at = new Point3(Math.round(x * 1e6), Math.round(y * 1e6), lay(a, b));
        opening(a, b, at, northSouth);
      }
    }
  }

  /** Below the lower joists of the two. */
  private long lay(Hollow a, Hollow b) {
    return draft.framed.decks().stream()
            .filter(d -> d.id().equals(a.owner()) || d.id().equals(b.owner()))
            .mapToLong(d -> d.frame().origin().z() + d.joistZ().lo())
            .min()
            .orElseThrow()
        - BELOW;
  }

  private void opening(Hollow a, Hollow b, Point3 at, boolean northSouth) {
    long dx = northSouth ? IN : 0;
    long dy = northSouth ? 0 : IN;
    Point3 low = new Point3(at.x() - dx, at.y() - dy, at.z());
    Point3 high = new Point3(at.x() + dx, at.y() + dy, at.z());
    boolean lowIsA = a.area().orElseThrow().contains(low.plan());
    Point3 inA = lowIsA ? low : high;
    Point3 inB = lowIsA ? high : low;
    if (a.area().orElseThrow().contains(inA.plan())
        && b.area().orElseThrow().contains(inB.plan())
        && draft.solids.free(inA, inB, 12_000_000)) {
      draft.keep(
          new Site(
              a.id()
                  + UnderJoists.ON_TO
                  + UnderJoists.part(b.id())
                  + "-"
                  + Tags.of(at.x())
                  + "-"
                  + Tags.of(at.y()),
              SiteKind.OPENING,
              inA,
              inB,
              a.id(),
              b.id(),
              List.of(),
              List.of(new Site.Layer("opening", inA.distanceTo(inB))),
              51,
              51,
              true,
              false));
    }
  }
}
