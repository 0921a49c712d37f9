package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.Direction;
import holloway.house.Straps;
import holloway.survey.Placed;
import holloway.survey.PlacedRoom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What lies between the joists of one floor and a ceiling that hangs on straps below them: straps
 * across the joists, one along each end wall, and the long flat bays that they leave.
 *
 * @param frame u along the straps, across the joists; w from the lowest floor
 * @param straps boxes in that frame; their places are assumed
 * @param bays what they leave open
 */
public record StrapVoid(PlacedRoom room, Deck deck, Frame frame, List<Box> straps, List<Box> bays) {
  /** A 1x3 on its flat, 2-1/2 in; common practice, no published source. */
  private static final long WIDE = 63_500_000;

  private static final long NARROWEST = 60_000_000;
  private static final long SHORTEST = 150_000_000;

  /** A ceiling that was taped lower than this under its joists hangs on something else. */
  private static final long LOOSE = 30_000_000;

  /** Every strapped ceiling under joists, by room and floor. */
  public static List<StrapVoid> of(Placed placed, List<Deck> decks) {
    List<StrapVoid> out = new ArrayList<>();
    for (PlacedRoom r : placed.rooms()) {
      Optional<Straps> straps = r.room().overhead().straps();
      for (Deck d : straps.isPresent() ? decks : List.<Deck>of()) {
        long joists = d.frame().origin().z() + d.joistZ().lo();
        boolean over = placed.getLevel(d.level()).isNextOver(placed.getLevel(r.room().level()));
        Interval z = depth(placed, r);
        if (over && Math.abs(joists - z.hi()) <= LOOSE) {
          out.add(of(placed, r, d, z, straps.get()));
        }
      }
    }
    return out;
  }

  /** From the back of the lining up to the joists, world z. */
  private static Interval depth(Placed placed, PlacedRoom r) {
    long top = r.ceilingZ() + Ceilings.lining(placed, r);
    return new Interval(top - r.room().overhead().strapsNm(), top);
  }

  private static StrapVoid of(Placed placed, PlacedRoom r, Deck d, Interval z, Straps straps) {
    boolean north = d.spec().run() == Direction.EAST_WEST;
    Interval x = r.outline().xRange();
    Interval y = r.outline().yRange();
    Frame frame =
        north
            ? Frame.northSouth(new Point2(x.hi(), y.lo()).at(0))
            : Frame.eastWest(new Point2(x.lo(), y.lo()).at(0));
    long width = north ? x.length() : y.length();
    Direction run = north ? Direction.NORTH_SOUTH : Direction.EAST_WEST;
    List<Interval> at =
        layout(straps.every().value().nm(), width, north != RoofFramer.isFromHigh(placed, run));
    Polygon2 inside = DeckFramer.toLocal(r.outline(), frame);
    Polygon2 under = DeckFramer.toLocal(d.outline(), frame);
    List<Box> wood = new ArrayList<>();
    List<Box> open = new ArrayList<>();
    List<Box> wells = Wells.toLocal(Wells.inCeiling(placed, r.room().level()), frame);
    for (Interval v : at) {
      stretches(inside, under, v, wells).forEach(u -> wood.add(box(u, v, z)));
    }
    for (Interval v : new Interval(0, width).without(at, NARROWEST)) {
      stretches(inside, under, v, wells).forEach(u -> open.add(box(u, v, z)));
    }
    return new StrapVoid(r, d, frame, List.copyOf(wood), List.copyOf(open));
  }

  /** One along each edge, and the layout between, counted up or down. */
  private static List<Interval> layout(long every, long width, boolean down) {
    List<Interval> out = new ArrayList<>();
    out.add(new Interval(0, WIDE));
    for (long c = every; c < width - WIDE; c += every) {
      long v = down ? width - c : c;
      if (v - WIDE / 2 >= WIDE && v + WIDE / 2 <= width - WIDE) {
        out.add(new Interval(v - WIDE / 2, v + WIDE / 2));
      }
    }
    out.add(new Interval(Math.max(WIDE, width - WIDE), width));
    return out;
  }

  /** Where a band lies within the room and under the floor, round the wells of stairs. */
  private static List<Interval> stretches(
      Polygon2 room, Polygon2 deck, Interval v, List<Box> wells) {
    List<Interval> shut = new ArrayList<>();
    wells.stream().filter(w -> w.y().overlaps(v)).forEach(w -> shut.add(w.x()));
    List<Interval> out = new ArrayList<>();
    for (Interval a : Sheets.insideAlong(room, v.lo(), v.hi())) {
      for (Interval b : Sheets.insideAlong(deck, v.lo(), v.hi())) {
        if (a.overlaps(b)) {
          out.addAll(a.cut(b).orElseThrow().without(shut, SHORTEST));
        }
      }
    }
    return out;
  }

  private static Box box(Interval u, Interval v, Interval z) {
    return new Box(u.lo(), u.hi(), v.lo(), v.hi(), z.lo(), z.hi());
  }

  /** Nanometres; 0 where the straps leave no bay. */
  public long depth() {
    return bays.isEmpty() ? 0 : bays.get(0).z().length();
  }

  /** The straps as solids. */
  List<Member> members() {
    List<Member> out = new ArrayList<>();
    for (Box b : straps) {
      String id =
          room.name()
              + "/strap-"
              + WallFramer.tag(b.y0())
              + "-"
              + WallFramer.tag(b.x0())
              + (deck.id().endsWith("/floor") ? "" : "-" + deck.id());
      out.add(new Member(id, MemberKind.BATTEN, frame, b, room.name(), true));
    }
    return out;
  }
}
