package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.house.Dormer;
import holloway.house.Roof;
import holloway.house.Side;
import holloway.survey.DormerGaps;
import holloway.survey.KneeWalls;
import holloway.survey.Makeup;
import holloway.survey.Placed;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;

/**
 * Dormers that rooms with knee walls go out into. The side attic is shut over a dormer's whole
 * width, also outside a front that stands in from the outer wall: nobody has seen what is there.
 */
public final class KneeDormers {
  /** A cheek with what is on it; nobody taped it, from experience. */
  private static final long CHEEK = 150_000_000;

  private static final double FAR_MM = 50_000;

  /** A front may stand on the outer wall, whose face lies this far out of the studs. */
  private static final double SLACK_MM = 50;

  /** Less room before a knee wall is no dormer: somebody taped another thing. */
  private static final double LEAST_MM = 100;

  /** A gap in a knee wall. */
  private record Gap(KneeLine line, Wall.WallOpening opening, Dormer dormer) {
    /** World range between the cheeks. */
    Interval along() {
      Wall w = line.wall();
      Point2 p = w.world(opening.s().lo() + Makeup.BOARD, 0, 0).plan();
      Point2 q = w.world(opening.s().hi() - Makeup.BOARD, 0, 0).plan();
      boolean ew = line.side().runsEastWest();
      return ew
          ? new Interval(Math.min(p.x(), q.x()), Math.max(p.x(), q.x()))
          : new Interval(Math.min(p.y(), q.y()), Math.max(p.y(), q.y()));
    }
  }

  private KneeDormers() {}

  private static List<Gap> gaps(Placed placed, List<KneeLine> lines) {
    List<Gap> out = new ArrayList<>();
    for (KneeLine l : lines) {
      for (Wall.WallOpening o : l.wall().openings()) {
        DormerGaps.find(placed.house(), l.wall(), o).ifPresent(d -> out.add(new Gap(l, o, d)));
      }
    }
    return out;
  }

  /** What no side attic lies in: from cheek to cheek and from the knee wall outwards. */
  static List<Geometry> shut(Placed placed, List<KneeLine> lines) {
    return gaps(placed, lines).stream()
        .map(
            g -> {
              Interval wide = new Interval(g.along().lo() - CHEEK, g.along().hi() + CHEEK);
              return KneeLine.band(g.line().side(), wide, g.line().face(), FAR_MM);
            })
        .toList();
  }

  /** The slopes with those dormers that can stand in them, to be framed. */
  static Attic in(Placed placed, KneeRoof roof) {
    Attic shell = roof.shell();
    List<PlacedDormer> out = new ArrayList<>();
    for (Gap g : gaps(placed, lines(placed, roof))) {
      if (trouble(placed, shell, g).isEmpty()) {
        out.add(new PlacedDormer(g.dormer(), box(placed, shell, g)));
      }
    }
    return shell.with(out);
  }

  private static List<KneeLine> lines(Placed placed, KneeRoof roof) {
    Geometry below = roof.roofline().toJts();
    return placed.walls().stream()
        .filter(w -> w.isFramed() && KneeWalls.isWhole(roof.roof(), w))
        .map(w -> KneeLine.of(placed, roof.roof(), w, below))
        .toList();
  }

  /** Why a stated one cannot stand; its width is shut behind the knee wall all the same. */
  public static Optional<String> trouble(Placed placed, List<Deck> decks, Roof roof, Dormer d) {
    Optional<KneeRoof> kneed = KneeRoof.of(placed, decks, roof).filter(k -> k.trouble().isEmpty());
    if (kneed.isEmpty()) {
      return Optional.of("there are no side attics under this roof");
    }
    return gaps(placed, lines(placed, kneed.get())).stream()
        .filter(g -> g.dormer().equals(d))
        .findFirst()
        .map(g -> trouble(placed, kneed.get().shell(), g))
        .orElse(Optional.of("the knee wall before it is not framed"));
  }

  private static Optional<String> trouble(Placed placed, Attic shell, Gap g) {
    double out = g.dormer().back().value().toMm();
    double deep = g.line().distance();
    if (out > deep + SLACK_MM) {
      return Optional.of(
          String.format(
              Locale.ROOT,
              "its front would stand %.0f mm out of the outer wall below, which is %.0f mm from the"
                  + " knee wall's face",
              out - deep,
              deep));
    }
    double meets = meetsMm(placed, shell, g);
    if (meets - deep < LEAST_MM) {
      return Optional.of(
          "at the knee wall the rafters are already as high as its front, so that nothing opens"
              + " there");
    }
    Interval across = across(shell, g.line().side());
    boolean shed = shell.roof().shape() == Roof.Shape.SHED;
    if (meets > across.length() / 1e6 / (shed ? 1 : 2)) {
      return Optional.of("its front is higher than the ridge");
    }
    return Optional.empty();
  }

  private static Interval across(Attic shell, Side side) {
    return side.runsEastWest() ? shell.roofline().yRange() : shell.roofline().xRange();
  }

  private static long top(Placed placed, Gap g) {
    long floor = placed.getRoom(g.dormer().room().orElseThrow()).floorZ();
    return floor + g.dormer().height().value().nm();
  }

  /** Level from the eave to where the rafters' underside is as high as the dormer's front. */
  private static double meetsMm(Placed placed, Attic shell, Gap g) {
    long mid = across(shell, g.line().side().runsEastWest() ? Side.WEST : Side.SOUTH).mid();
    long eave = Dormers.eave(shell, g.line().side());
    Point2 p = g.line().side().runsEastWest() ? new Point2(mid, eave) : new Point2(eave, mid);
    double slope = shell.roof().pitchRise() / (double) shell.roof().pitchRun();
    return (top(placed, g) - shell.slopeUnderside(p)) / 1e6 / slope;
  }

  private static Box box(Placed placed, Attic shell, Gap g) {
    double inset = Math.max(0, g.line().distance() - g.dormer().back().value().toMm());
    long near = Math.round(inset * 1e6);
    long far = Math.round(meetsMm(placed, shell, g) * 1e6);
    long eave = Dormers.eave(shell, g.line().side());
    boolean up = RafterFramer.isUp(g.line().side());
    Interval in =
        up ? new Interval(eave + near, eave + far) : new Interval(eave - far, eave - near);
    Interval along = g.along();
    long z0 = shell.chordTopZ();
    long z1 = top(placed, g);
    return g.line().side().runsEastWest()
        ? new Box(along.lo(), along.hi(), in.lo(), in.hi(), z0, z1)
        : new Box(in.lo(), in.hi(), along.lo(), along.hi(), z0, z1);
  }
}
