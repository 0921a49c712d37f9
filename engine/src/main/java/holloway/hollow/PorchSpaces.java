package holloway.hollow;

import holloway.framing.PorchLayout;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Polygon2;
import holloway.house.Fill;
import holloway.survey.PlacedPorch;
import java.util.List;
import java.util.Optional;

/**
 * Where cable lies at the roof over a porch: between its joists where boards close them below, else
 * under and among them, in sight and in the open, laid from outside.
 */
final class PorchSpaces {
  /** Cable under bare joists hangs no lower than this; an upright stretch to the wall's line. */
  private static final long UNDER = 120_000_000;

  /** Cable that comes from the wall to the joists begins so far in front of it. */
  private static final long OFF_WALL = 12_000_000;

  private PorchSpaces() {}

  static void find(Draft draft) {
    for (PorchLayout l : PorchLayout.of(draft.framed.placed())) {
      if (l.porch().porch().boarded()) {
        l.bays().stream()
            .filter(b -> b.y().length() >= JoistBays.NARROWEST)
            .forEach(b -> draft.hollow(bay(l, b)));
      } else {
        draft.hollow(underside(l.porch()));
      }
    }
  }

  private static Hollow bay(PorchLayout l, Box clear) {
    return new Hollow(
        l.bay(clear),
        HollowKind.PORCH_VOID,
        l.frame(),
        clear,
        Optional.empty(),
        Fill.EMPTY,
        l.porch().id(),
        Optional.empty());
  }

  private static Hollow underside(PlacedPorch p) {
    Frame f = p.frame();
    Polygon2 area =
        new Polygon2(
            List.of(
                f.toWorld(0, OFF_WALL, 0).plan(),
                f.toWorld(p.length(), OFF_WALL, 0).plan(),
                f.toWorld(p.length(), p.out(), 0).plan(),
                f.toWorld(0, p.out(), 0).plan()));
    Box box = new Box(0, p.length(), OFF_WALL, p.out(), -UNDER, p.joists().hi());
    return new Hollow(
        p.space(),
        HollowKind.OUTSIDE_FACE,
        f,
        box,
        Optional.of(area),
        Fill.EMPTY,
        p.id(),
        Optional.of("outside"));
  }
}
