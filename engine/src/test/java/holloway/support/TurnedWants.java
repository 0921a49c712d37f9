package holloway.support;

import holloway.request.Outlet;
import holloway.request.Request;
import holloway.request.Spot;
import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/** Cabinet and outlets of a house that is seen in a mirror. */
final class TurnedWants {
  private final Mirror turned;

  TurnedWants(Mirror turned) {
    this.turned = turned;
  }

  Request of(Request r) {
    return new Request(
        new Request.Cabinet(
            turned.of(r.cabinet().at()),
            r.cabinet().where(),
            r.cabinet().others().stream().map(turned::of).toList()),
        r.outlets().stream().map(this::of).toList(),
        r.runs(),
        r.wishes(),
        r.effort());
  }

  private Outlet of(Outlet o) {
    List<Spot> spots = o.spots().stream().map(this::of).toList();
    return new Outlet(
        o.name(), spots, o.cables(), o.spare(), o.feed(), o.power(), o.boxDepth(), o.where());
  }

  private Spot of(Spot.Outside o) {
    return new Spot.Outside(
        turned.of(o.at()),
        o.under().map(u -> new Spot.Under(u.porch(), turned.of(u.from()), u.out())));
  }

  private Spot of(Spot s) {
    if (s instanceof Spot.OnWall w) {
      Optional<Length> to = w.upTo();
      return new Spot.OnWall(turned.of(w.at()), to);
    }
    return s instanceof Spot.OnCeiling c
        ? new Spot.OnCeiling(turned.of(c.at()))
        : of((Spot.Outside) s);
  }
}
