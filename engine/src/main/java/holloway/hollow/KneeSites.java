package holloway.hollow;

import holloway.framing.Attic;
import holloway.framing.KneeRoof;
import holloway.geometry.Box;
import holloway.geometry.Point2;
import holloway.geometry.Point3;
import holloway.house.Roof;
import holloway.survey.KneeWalls;
import holloway.survey.Wall;
import java.util.List;
import java.util.Optional;

/**
 * From a side attic between the bare studs of the knee wall before it, just over its bottom plate.
 * A boarded back stays shut.
 */
final class KneeSites {
  /** Off the studs, so that cable is led there from the lines it is laid on. */
  private static final long OFF = 60_000_000;

  private static final long OVER_PLATE = 80_000_000;

  private KneeSites() {}

  static void find(Draft draft) {
    troubles(draft);
    for (Wall w : draft.framed.placed().walls()) {
      if (KneeWalls.find(draft.framed.placed().house(), w).isPresent()) {
        bays(draft, w);
      }
    }
  }

  private static void troubles(Draft draft) {
    for (Roof r : draft.framed.placed().house().roofs()) {
      KneeRoof.of(draft.framed.placed(), draft.framed.decks(), r)
          .flatMap(KneeRoof::trouble)
          .ifPresent(
              t ->
                  draft.refuse(
                      "side attics of " + r.name(),
                      new Point3(0, 0, 0),
                      t,
                      "as stated in the house file"));
    }
  }

  private static void bays(Draft draft, Wall w) {
    boolean low = w.faces().get(0).side() == 0;
    long t = low ? w.core().hi() + OFF : w.core().lo() - OFF;
    for (Hollow bay : draft.ofKind(HollowKind.STUD_BAY)) {
      if (bay.owner().equals(w.id())) {
        Box b = bay.clear();
        Point3 in = w.world(b.x().mid(), b.y().mid(), b.z0() + OVER_PLATE);
        Point3 out = w.world(b.x().mid(), t, b.z0() + OVER_PLATE);
        boolean bare = KneeWalls.isBare(draft.framed.placed().house(), w, b.x());
        findAttic(draft, out.plan()).ifPresent(a -> keep(draft, bay, a, out, in, bare));
      }
    }
  }

  private static Optional<Hollow> findAttic(Draft draft, Point2 p) {
    for (Attic a : draft.framed.attics()) {
      Optional<Hollow> h = draft.find("attic/" + a.id());
      if (!a.roof().knees().isEmpty()
          && h.isPresent()
          && h.get().area().orElseThrow().contains(p)) {
        return h;
      }
    }
    return Optional.empty();
  }

  private static void keep(
      Draft draft, Hollow bay, Hollow attic, Point3 out, Point3 in, boolean bare) {
    if (!bare) {
      draft.refuse(
          "from " + attic.id() + " into " + bay.id(),
          out,
          "the back of the knee wall is boarded, or nobody has said that it is bare",
          "as stated in the house file");
      return;
    }
    boolean room = bay.clear().z().length() > 2 * OVER_PLATE;
    if (room && draft.solids.free(out, in, 20_000_000)) {
      draft.keep(
          new Site(
              bay.id() + "/from-side-attic",
              SiteKind.OPENING,
              out,
              in,
              attic.id(),
              bay.id(),
              List.of(),
              List.of(),
              51,
              51,
              true,
              false));
    }
  }
}
