package holloway.framing;

import holloway.geometry.Interval;
import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.Direction;
import holloway.house.Opening;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;

/** The triangular spaces behind knee walls, each on the joists of the rooms' own floor. */
final class SideAttics {
  /** A body that came through a door in a knee wall is this far behind the studs. */
  private static final long BEHIND = 150_000_000;

  private SideAttics() {}

  static List<Attic> of(KneeRoof roof) {
    List<Attic> out = new ArrayList<>();
    for (KneeRoof.Strip strip : roof.strips()) {
      long before =
          roof.strips().stream()
              .filter(s -> s.side() == strip.side())
              .takeWhile(s -> s != strip)
              .count();
      String id =
          roof.roof().name()
              + " "
              + strip.side().word()
              + " side"
              + (before == 0 ? "" : "-" + (before + 1));
      Deck deck = roof.deck().orElseThrow();
      out.add(
          new Attic(
              id,
              roof.roof(),
              strip.outline(),
              roof.plateZ(),
              roof.joistTopZ(),
              joists(deck, strip.outline()),
              deck.spec().run(),
              roof.heelMm(),
              roof.roofline(),
              doors(strip),
              List.of()));
    }
    return out;
  }

  /** The floor's joists go on at their spacing. */
  private static List<Interval> joists(Deck deck, Polygon2 outline) {
    boolean ew = deck.spec().run() == Direction.EAST_WEST;
    Interval over = ew ? outline.yRange() : outline.xRange();
    long thick = deck.timber().value().thickness().nm();
    long every = deck.every().value();
    Interval known = deck.joists().get(Math.min(1, deck.joists().size() - 1));
    Point2 at = deck.frame().toWorld(0, known.mid(), 0).plan();
    long first = ew ? at.y() : at.x();
    List<Interval> out = new ArrayList<>();
    long c = first - Math.floorDiv(first - over.lo(), every) * every;
    for (; c - thick / 2 + thick <= over.hi(); c += every) {
      if (c - thick / 2 >= over.lo()) {
        out.add(new Interval(c - thick / 2, c - thick / 2 + thick));
      }
    }
    return out;
  }

  private static List<Attic.Door> doors(KneeRoof.Strip strip) {
    List<Attic.Door> out = new ArrayList<>();
    for (Wall w : strip.walls()) {
      boolean low = w.faces().get(0).side() == 0;
      long t = low ? w.core().hi() + BEHIND : w.core().lo() - BEHIND;
      for (Wall.WallOpening o : w.openings()) {
        Point2 at = w.world(o.s().mid(), t, 0).plan();
        boolean leads = o.opening().kind() != Opening.Kind.WINDOW && strip.outline().contains(at);
        w.findFace(low ? 0 : 1, o.s().mid())
            .filter(f -> leads)
            .ifPresent(
                f ->
                    out.add(
                        new Attic.Door(
                            f.room(),
                            at,
                            o.opening().width().value(),
                            o.opening().head().value().minus(o.opening().sill().value()))));
      }
    }
    return out;
  }
}
