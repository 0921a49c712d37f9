package holloway.session;

import holloway.house.Along;
import holloway.house.Fact;
import holloway.house.WallSpot;
import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Run;
import holloway.request.Spot;
import holloway.request.Wishes;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What the files want, with the changes of a session laid over it. */
public final class Wanted {
  private Wanted() {}

  public static Request of(Request files, Changes changes) {
    Request now = files;
    for (Change c : changes.done()) {
      now = with(now, c);
    }
    return now;
  }

  private static Request with(Request r, Change c) {
    if (c instanceof Change.Forbid f) {
      List<String> bans = new ArrayList<>(r.wishes().bans());
      if (!bans.contains(f.word())) {
        bans.add(f.word());
      }
      return r.with(banning(r.wishes(), bans));
    }
    if (c instanceof Change.Allow a) {
      List<String> bans = new ArrayList<>(r.wishes().bans());
      bans.remove(a.word());
      return r.with(banning(r.wishes(), bans));
    }
    if (c instanceof Change.Pin p) {
      return through(r, p.run(), Optional.of(p.hollow()));
    }
    if (c instanceof Change.Unpin u) {
      return through(r, u.run(), Optional.empty());
    }
    return slid(r, (Change.Slide) c);
  }

  private static Wishes banning(Wishes w, List<String> bans) {
    return new Wishes(
        w.hourIsWorth(), w.visibleMetre(), w.attic(), w.avoid(), bans, w.profile(), w.crew());
  }

  private static Request through(Request r, String id, Optional<String> hollow) {
    List<Run> runs =
        r.runs().stream()
            .map(
                x ->
                    x.id().equals(id)
                        ? new Run(x.id(), x.from(), x.to(), x.cable(), x.spare(), hollow)
                        : x)
            .toList();
    return new Request(
        r.cabinet(), r.outlets(), runs, r.wishes(), r.effort(), r.prices(), r.shop());
  }

  private static Request slid(Request r, Change.Slide s) {
    List<Outlet> outlets =
        r.outlets().stream().map(o -> o.name().equals(s.outlet()) ? slid(o, s.by()) : o).toList();
    return new Request(
        r.cabinet(), outlets, r.runs(), r.wishes(), r.effort(), r.prices(), r.shop());
  }

  private static Outlet slid(Outlet o, long by) {
    List<Spot> spots = new ArrayList<>(o.spots());
    spots.set(0, slid(spots.get(0), by));
    return new Outlet(
        o.name(), spots, o.cables(), o.spare(), o.feed(), o.power(), o.boxDepth(), o.where());
  }

  private static Spot slid(Spot s, long by) {
    if (s instanceof Spot.OnWall w) {
      return new Spot.OnWall(slid(w.at(), by), w.upTo());
    }
    return s instanceof Spot.Outside x ? new Spot.Outside(slid(x.at(), by)) : s;
  }

  private static WallSpot slid(WallSpot w, long by) {
    Fact<Length> d = w.along().distance();
    Length next = new Length(Math.max(0, d.value().nm() + by));
    Fact<Length> moved = new Fact<>(next, d.spread(), d.origin(), d.where());
    return new WallSpot(w.face(), new Along(w.along().from(), moved), w.height());
  }

  /** Whether an outlet can be slid: it is on a wall. */
  public static boolean slides(Outlet o) {
    return o.spots().get(0).slides();
  }
}
