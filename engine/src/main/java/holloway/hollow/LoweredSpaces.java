package holloway.hollow;

import holloway.framing.Lowered;
import holloway.geometry.Point3;
import holloway.house.Fill;
import holloway.house.Soffit;
import java.util.Optional;

/**
 * Voids over lowered ceilings and in boxes under ceilings. Where tiles or a panel come out, cable
 * is laid by hand from the room; behind board it is fished.
 */
final class LoweredSpaces {
  private LoweredSpaces() {}

  static void find(Draft draft) {
    for (Lowered l : Lowered.of(draft.framed.placed())) {
      boolean open = l.soffit().cover().comesOut();
      if (!open && l.area().isPresent() && l.area().get().corners().size() != 4) {
        refuse(draft, l.soffit(), l, "a boarded ceiling over a room with more than four corners");
        continue;
      }
      draft.hollow(
          new Hollow(
              l.id(),
              open ? HollowKind.LOWERED_CEILING : HollowKind.SOFFIT,
              l.frame(),
              l.clear(),
              l.area(),
              Fill.EMPTY,
              l.soffit().room(),
              open ? Optional.of("room/" + l.soffit().room()) : Optional.empty()));
    }
  }

  private static void refuse(Draft draft, Soffit s, Lowered l, String why) {
    Point3 at = l.frame().toWorld(l.clear().centre());
    draft.refuse("lowered ceiling " + s.name(), at, why + " is not fished", "from experience");
  }
}
