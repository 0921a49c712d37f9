package holloway.support;

import holloway.house.Along;
import holloway.house.CeilingSpot;
import holloway.house.Direction;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.House;
import holloway.house.Room;
import holloway.house.Side;
import holloway.house.WallRef;
import holloway.house.WallSpot;
import holloway.units.Length;
import java.util.List;

/** How places of a house are said once it is seen in a mirror. */
record Mirror(Turned way, House house) {
  Side of(Side s) {
    return way.of(s);
  }

  Direction of(Direction d) {
    return way.of(d);
  }

  boolean swaps() {
    return way.swaps();
  }

  Along of(Along a) {
    return new Along(of(a.from()), a.distance());
  }

  /** Faces of a side are counted from its west or south end. */
  FaceRef of(FaceRef f) {
    int ordinal = f.ordinal();
    if (way.turnsBack(f.side().runsEastWest())) {
      ordinal = faces(f.room(), f.side()) + 1 - ordinal;
    }
    return new FaceRef(f.room(), of(f.side()), ordinal, f.where());
  }

  private int faces(String room, Side side) {
    List<Room.Corner> c =
        house.rooms().stream()
            .filter(r -> r.name().equals(room))
            .findFirst()
            .orElseThrow()
            .outline();
    if (c.isEmpty()) {
      return 1;
    }
    long twice = 0;
    for (int i = 0; i < c.size(); i++) {
      Room.Corner a = c.get(i);
      Room.Corner b = c.get((i + 1) % c.size());
      twice += mm(a.x()) * mm(b.y()) - mm(b.x()) * mm(a.y());
    }
    int count = 0;
    for (int i = 0; i < c.size(); i++) {
      Room.Corner a = c.get(i);
      Room.Corner b = c.get((i + 1) % c.size());
      long dx = (mm(b.x()) - mm(a.x())) * Long.signum(twice);
      long dy = (mm(b.y()) - mm(a.y())) * Long.signum(twice);
      if (sideOf(dx, dy) == side) {
        count++;
      }
    }
    return count;
  }

  /** Where the edge of a counter-clockwise outline looks. */
  private Side sideOf(long dx, long dy) {
    if (Math.abs(dx) == Math.abs(dy) && swaps()) {
      throw new IllegalArgumentException("a face at 45 degrees in a diagonal mirror");
    }
    return Math.abs(dx) >= Math.abs(dy)
        ? dx > 0 ? Side.SOUTH : Side.NORTH
        : dy > 0 ? Side.EAST : Side.WEST;
  }

  private static long mm(Fact<Length> f) {
    return f.value().nm() / Length.NM_PER_MM;
  }

  WallSpot of(WallSpot s) {
    return new WallSpot(of(s.face()), of(s.along()), s.height());
  }

  CeilingSpot of(CeilingSpot s) {
    Along a = of(s.eastWest());
    Along b = of(s.northSouth());
    return new CeilingSpot(s.room(), swaps() ? b : a, swaps() ? a : b, s.where());
  }

  WallRef of(WallRef r) {
    if (r.between().filter(b -> b.ordinal() > 1).isPresent() && !swaps()) {
      throw new IllegalArgumentException("walls are counted from the south-west: " + r);
    }
    return new WallRef(r.between(), r.face().map(this::of), r.where());
  }

  Room.Size of(Room.Size s) {
    return swaps() ? new Room.Size(s.northSouth(), s.eastWest()) : s;
  }

  /** A signed distance northward or eastward. */
  Fact<Length> towards(Fact<Length> f, boolean eastWest) {
    return way.turnsBack(eastWest) ? negated(f) : f;
  }

  static Fact<Length> negated(Fact<Length> f) {
    return new Fact<>(new Length(-f.value().nm()), f.spread(), f.origin(), f.where());
  }
}
