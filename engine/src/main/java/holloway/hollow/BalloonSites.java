package holloway.hollow;

import holloway.framing.Deck;
import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.geometry.Point3;
import holloway.survey.Wall;
import java.util.List;

/**
 * In a balloon frame the joist bays that run into a wall stand open to its tall bays: no hole is
 * needed there.
 */
final class BalloonSites {
  private static final long INTO = 30_000_000;

  private final Draft draft;

  BalloonSites(Draft draft) {
    this.draft = draft;
  }

  void find() {
    // a flat roof's bays end under its plate: no stud runs past them
    List<Hollow> joistBays =
        draft.ofKind(HollowKind.JOIST_BAY).stream()
            .filter(h -> draft.framed.decks().stream().anyMatch(d -> d.id().equals(h.owner())))
            .toList();
    for (Wall w : draft.framed.placed().walls()) {
      if (w.balloon() && w.isFramed()) {
        for (Hollow bay : draft.ofKind(HollowKind.STUD_BAY)) {
          if (bay.owner().equals(w.id())) {
            joistBays.forEach(j -> opening(w, bay, j));
          }
        }
      }
    }
  }

  private void opening(Wall w, Hollow bay, Hollow joistBay) {
    Deck deck =
        draft.framed.decks().stream()
            .filter(d -> d.id().equals(joistBay.owner()))
            .findFirst()
            .orElseThrow();
    long worldZ = deck.frame().origin().z() + deck.joistZ().mid();
    long z = worldZ - bay.frame().origin().z();
    boolean crosses =
        Math.abs(
                w.frame().u().x() * deck.frame().u().x() + w.frame().u().y() * deck.frame().u().y())
            < 1e-6;
    if (!crosses || z <= bay.clear().z0() || z >= bay.clear().z1()) {
      return;
    }
    Box b = bay.clear();
    long inner = w.outside() == 0 ? b.y1() + INTO : b.y0() - INTO;
    Point3 low = joistBay.frame().toLocal(bay.frame().toWorld(b.x0(), inner, z));
    Point3 high = joistBay.frame().toLocal(bay.frame().toWorld(b.x1(), inner, z));
    Interval across = new Interval(Math.min(low.y(), high.y()), Math.max(low.y(), high.y()));
    boolean meets =
        low.x() >= joistBay.clear().x0() - 1_000_000
            && low.x() <= joistBay.clear().x1() + 1_000_000;
    across
        .cut(joistBay.clear().y())
        .filter(i -> meets && i.length() >= 60_000_000)
        .ifPresent(
            i -> {
              Point3 in = joistBay.frame().toWorld(low.x(), i.mid(), joistBay.clear().z().mid());
              Point3 local = bay.frame().toLocal(in);
              Point3 out = bay.frame().toWorld(local.x(), (b.y0() + b.y1()) / 2, local.z());
              if (draft.solids.free(out, in, 10_000_000)) {
                String id =
                    w.id() + "/open-to-joists/" + Tags.of(local.x()) + "-z" + Tags.of(local.z());
                draft.keep(
                    new Site(
                        id,
                        SiteKind.OPENING,
                        out,
                        in,
                        bay.id(),
                        joistBay.id(),
                        List.of(),
                        List.of(new Site.Layer("opening", out.distanceTo(in))),
                        51,
                        51,
                        true,
                        deck.layoutAssumed()));
              }
            });
  }
}
