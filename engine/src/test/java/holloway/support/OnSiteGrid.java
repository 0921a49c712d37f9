package holloway.support;

import holloway.geometry.Turn;
import holloway.house.Fact;
import holloway.house.House;
import holloway.house.Room;
import holloway.house.Room.Placing;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A house as somebody surveys it who measures its corners on a site's grid, off which it stands
 * turned: each room by an outline, corners turned about its first one and moved somewhere. The
 * sines are taken here anew.
 */
public final class OnSiteGrid {
  private final double cos;
  private final double sin;
  private final long step;

  /**
   * @param degrees counter-clockwise
   * @param step what corners are rounded to, nanometres
   */
  public OnSiteGrid(double degrees, long step) {
    this.cos = Math.cos(degrees / 180 * Math.PI);
    this.sin = Math.sin(degrees / 180 * Math.PI);
    this.step = step;
  }

  public House of(House h, Turn stated) {
    Optional<Room> first =
        h.rooms().stream().filter(r -> r.placing() instanceof Placing.Free).findFirst();
    return new House(
        h.name(),
        h.place(),
        h.built(),
        h.balloon(),
        h.outerWalls(),
        h.innerWalls(),
        h.levels(),
        h.rooms().stream().map(r -> of(r, first.orElse(r))).toList(),
        h.walls(),
        h.openings(),
        h.roofs(),
        h.chases(),
        h.obstacles(),
        h.conduits(),
        h.soffits(),
        h.skirtings(),
        h.things(),
        h.tapes(),
        h.found(),
        h.inputs(),
        h.stairs(),
        h.assumed(),
        h.beams(),
        h.porches(),
        h.layout(),
        h.ownRules(),
        stated);
  }

  /** Its corners in its own frame, from its south-west corner. */
  private static List<Room.Corner> own(Room r) {
    if (r.size().isEmpty()) {
      return r.outline();
    }
    Fact<Length> w = r.size().get().eastWest();
    Fact<Length> d = r.size().get().northSouth();
    Fact<Length> nought = new Fact<>(Length.ZERO, Fact.TAPE, w.origin(), w.where());
    return List.of(
        new Room.Corner(nought, nought),
        new Room.Corner(w, nought),
        new Room.Corner(w, d),
        new Room.Corner(nought, d));
  }

  private Room of(Room r, Room first) {
    List<Room.Corner> turned = turned(r);
    return new Room(
        r.name(),
        r.level(),
        Optional.empty(),
        turned,
        r.placing() instanceof Placing.At at ? at(at, r, first) : r.placing(),
        r.floor(),
        r.elevation(),
        r.ceilingHeight(),
        r.walls(),
        r.ceiling(),
        r.overhead(),
        r.plain(),
        r.garage(),
        r.vaulted(),
        r.standing(),
        r.where());
  }

  private List<Room.Corner> turned(Room r) {
    List<Room.Corner> out = new ArrayList<>();
    for (Room.Corner c : own(r)) {
      long[] p = turned(c.x().value().nm(), c.y().value().nm());
      Length spread =
          c.x().spread().compareTo(c.y().spread()) > 0 ? c.x().spread() : c.y().spread();
      out.add(new Room.Corner(fact(p[0], spread, c.x()), fact(p[1], spread, c.y())));
    }
    return out;
  }

  private long[] turned(double x, double y) {
    return new long[] {
      Math.round((cos * x - sin * y) / step) * step, Math.round((sin * x + cos * y) / step) * step
    };
  }

  private static Fact<Length> fact(long nm, Length spread, Fact<Length> said) {
    return new Fact<>(new Length(nm), spread, said.origin(), said.where());
  }

  /** From box corner to box corner, in whichever frame the boxes lie. */
  private Placing at(Placing.At at, Room r, Room first) {
    double ownX = at.x().value().nm() - low(own(r), true) + low(own(first), true);
    double ownY = at.y().value().nm() - low(own(r), false) + low(own(first), false);
    long[] p = turned(ownX, ownY);
    long x = p[0] + low(turned(r), true) - low(turned(first), true);
    long y = p[1] + low(turned(r), false) - low(turned(first), false);
    return new Placing.At(
        fact(x, at.x().spread(), at.x()), fact(y, at.y().spread(), at.y()), at.where());
  }

  private static long low(List<Room.Corner> corners, boolean x) {
    return corners.stream().mapToLong(c -> (x ? c.x() : c.y()).value().nm()).min().orElse(0);
  }
}
