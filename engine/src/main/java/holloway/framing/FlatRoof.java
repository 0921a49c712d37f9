package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.Direction;
import holloway.house.Roof;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;

/**
 * A flat roof whose joists carry the ceiling below and the roof above: nobody gets in, and cable
 * runs between the joists alone. It is one if the way its joists run is stated. Its ends and every
 * bearing wall under it are taken to be blocked.
 *
 * @param frame u along the joists, z = 0 at their undersides
 * @param outline world outline to the outer bearing faces
 * @param z local range of the joists
 * @param joists local v range of each
 * @param blocks local boxes between the joists: at the ends, over bearing walls
 */
public record FlatRoof(
    String id,
    Roof roof,
    List<String> rooms,
    Frame frame,
    Polygon2 outline,
    Interval z,
    List<Interval> joists,
    List<Box> blocks) {
  private static final long BLOCK = 38_000_000;

  /** All of a house, in the order of their names. */
  public static List<FlatRoof> of(Placed placed, List<Deck> decks) {
    List<FlatRoof> out = new ArrayList<>();
    for (Roof roof : placed.house().roofs()) {
      if (isOne(roof)) {
        List<PlacedRoom> rooms =
            placed.rooms().stream().filter(r -> RoofFramer.covers(placed, roof, r)).toList();
        List<Polygon2> parts = RoofFramer.parts(placed, decks, roof, rooms);
        for (int i = 0; i < parts.size(); i++) {
          String id = roof.name() + (parts.size() == 1 ? "" : "-" + (i + 1));
          out.add(built(placed, roof, rooms, parts.get(i), id));
        }
      }
    }
    return out;
  }

  static boolean isOne(Roof roof) {
    return roof.shape() == Roof.Shape.FLAT && roof.run().isPresent();
  }

  private static FlatRoof built(
      Placed placed, Roof roof, List<PlacedRoom> rooms, Polygon2 outline, String id) {
    boolean ew = roof.run().orElseThrow() == Direction.EAST_WEST;
    long plate = RoofFramer.plate(placed, rooms);
    Interval x = outline.xRange();
    Interval y = outline.yRange();
    Frame frame =
        ew
            ? Frame.eastWest(new Point2(x.lo(), y.lo()).at(plate))
            : Frame.northSouth(new Point2(x.hi(), y.lo()).at(plate));
    Interval across = new Interval(0, ew ? y.length() : x.length());
    Interval z = new Interval(0, roof.chord().value().depth().nm());
    List<Interval> joists =
        RoofFramer.chords(
            roof, across, RoofFramer.isFromHigh(placed, roof.run().orElseThrow()) == ew);
    Polygon2 local = DeckFramer.toLocal(outline, frame);
    List<Interval> rows = rows(placed, rooms, frame);
    List<Box> blocks = new ArrayList<>();
    for (int i = 0; i + 1 < joists.size(); i++) {
      Interval v =
          new Interval(joists.get(i).hi(), Math.max(joists.get(i).hi(), joists.get(i + 1).lo()));
      for (Interval u :
          v.length() == 0 ? List.<Interval>of() : Sheets.insideAlong(local, v.lo(), v.hi())) {
        blocks.add(block(new Interval(u.lo(), u.lo() + BLOCK), v, z));
        blocks.add(block(new Interval(u.hi() - BLOCK, u.hi()), v, z));
        rows.stream()
            .filter(r -> r.lo() > u.lo() + BLOCK && r.hi() < u.hi() - BLOCK)
            .forEach(r -> blocks.add(block(r, v, z)));
      }
    }
    List<String> names = rooms.stream().map(PlacedRoom::name).toList();
    return new FlatRoof(id, roof, names, frame, outline, z, joists, blocks);
  }

  private static Box block(Interval u, Interval v, Interval z) {
    return new Box(u.lo(), u.hi(), v.lo(), v.hi(), z.lo(), z.hi());
  }

  /** Over bearing walls that cross the joists, for the whole width of the roof. */
  private static List<Interval> rows(Placed placed, List<PlacedRoom> rooms, Frame frame) {
    List<Interval> out = new ArrayList<>();
    for (Wall w : placed.walls()) {
      boolean under =
          w.faces().stream().anyMatch(f -> rooms.stream().anyMatch(r -> r.name().equals(f.room())));
      double along =
          Math.abs(w.frame().u().x() * frame.u().x() + w.frame().u().y() * frame.u().y());
      if (under && !w.isOuter() && w.bearing().value() && along < 0.99) {
        long u = frame.toLocal(w.world(w.length() / 2, w.core().mid(), 0)).x();
        out.add(new Interval(u - BLOCK / 2, u + BLOCK / 2));
      }
    }
    return out;
  }

  void frame(List<Member> members) {
    Polygon2 local = DeckFramer.toLocal(outline, frame);
    for (Interval v : joists) {
      for (Interval u : Sheets.insideAlong(local, v.lo(), v.hi())) {
        add("ceiling-joist", block(u, v, z), members);
      }
    }
    blocks.forEach(b -> add("block", b, members));
  }

  private void add(String name, Box box, List<Member> members) {
    String at = WallFramer.tag(box.y0()) + "-" + WallFramer.tag(box.x0());
    members.add(
        new Member(id + "/" + name + "-" + at, MemberKind.CEILING_JOIST, frame, box, id, true));
  }
}
