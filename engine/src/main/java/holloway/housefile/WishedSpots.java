package holloway.housefile;

import holloway.house.Along;
import holloway.house.Side;
import holloway.house.WallSpot;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Spot;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Outlets that the wishes file sets somewhere else along their walls; the first spot moves. */
final class WishedSpots {
  private final Desk desk;
  private final Map<String, Marked.Scalar> written = new TreeMap<>();
  private final Optional<Marked.Mapping> map;

  WishedSpots(Optional<Entry> file, Desk desk) {
    this.desk = desk;
    this.map =
        file.flatMap(f -> f.raw("spots"))
            .filter(Marked.Mapping.class::isInstance)
            .map(Marked.Mapping.class::cast);
    map.ifPresent(
        m ->
            m.values()
                .forEach(
                    (name, v) -> {
                      if (v instanceof Marked.Scalar s) {
                        written.put(name, s);
                      }
                    }));
  }

  Request over(Request r) {
    List<Outlet> out = new ArrayList<>();
    for (Outlet o : r.outlets()) {
      Marked.Scalar s = written.remove(o.name());
      out.add(s == null ? o : moved(o, s));
    }
    written.forEach((name, s) -> unknown(name));
    return new Request(r.cabinet(), out, r.runs(), r.wishes(), r.effort(), r.prices(), r.shop());
  }

  private void unknown(String name) {
    desk.problems()
        .add(
            map.orElseThrow().keys().get(name),
            name,
            "one of: " + Names.list(desk.names().outlets()),
            Nearest.of(name, desk.names().outlets()),
            "there is no outlet '" + name + "'");
  }

  private Outlet moved(Outlet o, Marked.Scalar s) {
    // A text that is no distance along a wall was reported with the shape of the file.
    Optional<Along> to = Entry.quietly(() -> Forms.along(s.text(), s.where()));
    Spot first = o.spots().get(0);
    if (to.isEmpty() || !fits(o, first, to.get(), s)) {
      return o;
    }
    List<Spot> spots = new ArrayList<>(o.spots());
    spots.set(0, at(first, to.get()));
    return new Outlet(
        o.name(), spots, o.cables(), o.spare(), o.feed(), o.power(), o.boxDepth(), o.where());
  }

  private boolean fits(Outlet o, Spot spot, Along to, Marked.Scalar s) {
    if (!spot.slides()) {
      desk.problems()
          .add(s.where(), s.text(), "", "", o.name() + " is on a ceiling, not along a wall");
      return false;
    }
    Side side = face(spot).face().side();
    if (side.runsEastWest() == to.from().runsEastWest()) {
      String ends = side.runsEastWest() ? "west or east" : "south or north";
      desk.problems()
          .add(
              s.where(),
              s.text(),
              "a distance from its " + ends + " end",
              "",
              o.name() + " is on a " + side.word() + " wall; tape from its " + ends + " end");
      return false;
    }
    return true;
  }

  private static WallSpot face(Spot s) {
    return s instanceof Spot.OnWall w ? w.at() : ((Spot.Outside) s).at();
  }

  private static Spot at(Spot s, Along to) {
    WallSpot old = face(s);
    WallSpot next = new WallSpot(old.face(), to, old.height());
    return s instanceof Spot.OnWall
        ? new Spot.OnWall(next, Optional.empty())
        : new Spot.Outside(next);
  }
}
