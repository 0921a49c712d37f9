package holloway.hollow;

import holloway.framing.Deck;
import holloway.framing.Framed;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.CeilingSpot;
import holloway.house.FloorSpec;
import holloway.house.Side;
import holloway.survey.PlacedRoom;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/**
 * How far a body crawls between the piers of a crawlspace and under what hangs there, and what its
 * arm still reaches. Figures are from experience.
 */
final class CrawlReach {
  /** Half of the width a body needs between two piers, and an arm, millimetres. */
  private static final double HALF_BODY = 230;

  private static final double ARM = 600;

  /** A body's place begins within this of the way in. */
  private static final double NEAR = 600;

  private final Framed framed;
  private final Deck deck;
  private final FloorSpec.Crawlspace crawl;

  CrawlReach(Framed framed, Deck deck, FloorSpec.Crawlspace crawl) {
    this.framed = framed;
    this.deck = deck;
    this.crawl = crawl;
  }

  /** The part of the space that a hand gets to; empty when nobody gets in. */
  Optional<Polygon2> of(Polygon2 whole) {
    Geometry area = whole.toJts();
    Geometry body = area;
    boolean free = true;
    for (Member m : framed.members()) {
      if (m.kind() == MemberKind.OBSTACLE && inTheWay(m.box())) {
        Geometry solid = rectangle(m.box());
        if (solid.intersects(area)) {
          free = false;
          body = Overlay.without(body, Spaces.grow(solid, HALF_BODY));
        }
      }
    }
    if (free) {
      return Optional.of(whole);
    }
    return start(body)
        .flatMap(b -> Spaces.largest(Overlay.shared(Spaces.grow(b, HALF_BODY + ARM), area)));
  }

  /** True when it leaves no height to crawl under. */
  private boolean inTheWay(Box b) {
    long top = deck.frame().origin().z() + deck.joistZ().lo();
    long ground = top - crawl.clearance().value().nm();
    return b.z1() > ground && b.z0() < top && b.z0() - ground < UnderFloors.BODY;
  }

  private Optional<Polygon> start(Geometry body) {
    return crawl
        .access()
        .flatMap(this::wayIn)
        .flatMap(p -> Spaces.partAt(body, Spaces.point(p.x() / 1e6, p.y() / 1e6), NEAR));
  }

  private Optional<Point2> wayIn(FloorSpec.WayIn way) {
    return way.floorHatch()
        .map(h -> spot(framed.placed().getRoom(h.room()), h))
        .or(
            () ->
                way.outsideDoor()
                    .flatMap(
                        d -> framed.placed().findSpot(d.face(), d.along(), d.height().value().nm()))
                    .map(s -> s.wall().world(s.s(), s.wall().core().mid(), 0).plan()));
  }

  private static Point2 spot(PlacedRoom room, CeilingSpot at) {
    Interval x = room.outline().xRange();
    Interval y = room.outline().yRange();
    long dx = at.eastWest().distance().value().nm();
    long dy = at.northSouth().distance().value().nm();
    return new Point2(
        at.eastWest().from() == Side.WEST ? x.lo() + dx : x.hi() - dx,
        at.northSouth().from() == Side.SOUTH ? y.lo() + dy : y.hi() - dy);
  }

  private static Geometry rectangle(Box b) {
    return Spaces.rectangle(b.x0() / 1e6, b.y0() / 1e6, b.x1() / 1e6, b.y1() / 1e6);
  }
}
