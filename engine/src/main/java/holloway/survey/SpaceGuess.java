package holloway.survey;

import holloway.geometry.Interval;
import holloway.geometry.Polygon2;
import holloway.house.Along;
import holloway.house.Chase;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.Side;
import holloway.house.Thing;
import holloway.house.Where;
import holloway.units.Length;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What a space probably is and how it might serve. The words are from experience; no published
 * source says what unaccounted space in a house is.
 */
final class SpaceGuess {
  private static final double ROOM_M2 = 1;
  private static final long WALKABLE = 700_000_000L;
  private static final long FLUE = 400_000_000L;
  private static final long PIPE = 250_000_000L;

  private static final long SAME_EDGE = 5_000_000L;

  /** A box stands for a space if it is as large as the space but for so much. */
  private static final double BOXED = 0.98;

  private final Placed placed;
  private final List<String> levels;
  private final boolean underRoof;
  private final Polygon2 foot;
  private final Polygon2 outline;
  private final List<UnaccountedSpace.Touch> touches;
  private final long narrow;

  /** What a tape of the house's units shows, so that the shaft can be written down as it is. */
  private final long step;

  SpaceGuess(
      Placed placed,
      List<String> levels,
      boolean underRoof,
      Polygon2 foot,
      Polygon2 outline,
      List<UnaccountedSpace.Touch> touches) {
    this.placed = placed;
    this.levels = levels;
    this.underRoof = underRoof;
    this.foot = foot;
    this.outline = outline;
    this.touches = touches;
    this.narrow = Math.min(outline.xRange().length(), outline.yRange().length());
    boolean metric = Texts.of(placed.house()).units() == UnitSystem.METRIC;
    this.step = metric ? Length.NM_PER_MM : Length.NM_PER_INCH / 16;
  }

  UnaccountedSpace space() {
    String[] words = words();
    boolean shaft = through() && !words[0].equals("room not surveyed");
    return new UnaccountedSpace(
        name(),
        levels,
        underRoof,
        outline,
        areaM2(),
        touches,
        words[0],
        words[1],
        shaft ? chase() : Optional.empty());
  }

  private String name() {
    return "space behind "
        + touches.stream().findFirst().map(t -> t.face().toString()).orElse(levels.get(0));
  }

  private double areaM2() {
    return Math.abs(outline.signedAreaMm2()) / 1e6;
  }

  /** Does it lead anywhere: to another storey, or from the lowest into an attic? */
  private boolean through() {
    return levels.size() > 1 || underRoof;
  }

  private String[] words() {
    if (areaM2() >= ROOM_M2 && narrow >= WALKABLE) {
      return said("room not surveyed", "measure it and state it as a room");
    }
    boolean storeys = levels.size() > 1;
    if (storeys && besideWater()) {
      return said(
          "the plumbing chase",
          "probably open from floor to floor beside its pipes; half of it may be free");
    }
    if (storeys && narrow >= FLUE) {
      return said(
          "chimney, or a shaft for ducts",
          "of use only if there is no flue in it: look from the attic and from below");
    }
    if (storeys) {
      return said("chase", "if it is open, cable drops through it from floor to floor");
    }
    if (narrow < PIPE) {
      return said("boxed-in pipe", "a box round a pipe: open at the top if the pipe goes on");
    }
    return narrow >= FLUE
        ? said("dead corner or chimney", "look for a flue before anything else")
        : said("dead corner", "serves within its level only, or from the attic over it");
  }

  private static String[] said(String likely, String serves) {
    return new String[] {likely, serves};
  }

  private boolean besideWater() {
    return placed.house().things().stream()
        .filter(t -> t.kind() == Thing.Kind.TAP || t.kind() == Thing.Kind.TOILET)
        .anyMatch(
            t -> touches.stream().anyMatch(x -> x.face().room().equals(t.at().face().room())));
  }

  /** As an open shaft behind the face it touches longest on its lowest level. */
  private Optional<Chase> chase() {
    double box = outline.xRange().length() / 1e6 * (outline.yRange().length() / 1e6);
    if (areaM2() * 1e6 < BOXED * box) {
      return Optional.empty();
    }
    return touches.stream()
        .filter(t -> t.level().equals(levels.get(0)))
        .findFirst()
        .filter(this::beginsAtItsWall)
        .map(this::behind);
  }

  /** A shaft stands against the back of its wall; higher up it must not begin further away. */
  private boolean beginsAtItsWall(UnaccountedSpace.Touch t) {
    Side side = t.face().side();
    Interval low = side.runsEastWest() ? foot.yRange() : foot.xRange();
    Interval all = side.runsEastWest() ? outline.yRange() : outline.xRange();
    boolean far = side == Side.NORTH || side == Side.EAST;
    return Math.abs(far ? low.lo() - all.lo() : low.hi() - all.hi()) <= SAME_EDGE;
  }

  private Chase behind(UnaccountedSpace.Touch t) {
    FaceRef face = t.face();
    boolean ew = face.side().runsEastWest();
    Interval across = ew ? outline.yRange() : outline.xRange();
    Along along =
        new Along(
            ew ? Side.WEST : Side.SOUTH,
            Fact.assumed(new Length(-Math.floorDiv(-t.along().lo(), step) * step)));
    return new Chase(
        name(),
        face,
        Optional.of(along),
        false,
        levels.get(0),
        underRoof ? "attic" : levels.get(levels.size() - 1),
        whole(t.along().length() - step),
        whole(across.length()),
        List.of(),
        open(),
        false,
        Where.NOWHERE);
  }

  /** The floors it passes, and its top: a look decides which of them really are open. */
  private Map<String, Fact<Chase.FloorPass>> open() {
    Map<String, Fact<Chase.FloorPass>> out = new TreeMap<>();
    levels.stream().skip(1).forEach(l -> out.put(l, Fact.assumed(Chase.FloorPass.OPEN)));
    if (underRoof) {
      out.put("attic", Fact.assumed(Chase.FloorPass.OPEN));
    }
    return out;
  }

  private Fact<Length> whole(long nm) {
    return Fact.assumed(new Length(nm / step * step));
  }
}
