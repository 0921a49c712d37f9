package holloway.report;

import holloway.house.Porch;
import holloway.survey.Placed;
import holloway.survey.PlacedPorch;

/** One porch in words: what was taped of it, and what is assumed. */
final class PorchText {
  private final Placed placed;
  private final UnitWords units;
  private final Page page;

  PorchText(Placed placed, UnitWords units, Page page) {
    this.placed = placed;
    this.units = units;
    this.page = page;
  }

  void put(PlacedPorch placedPorch) {
    Porch p = placedPorch.porch();
    long floor = placed.getRoom(p.face().room()).floorZ();
    long meets = placedPorch.frame().origin().z() + placedPorch.joists().hi() - floor;
    page.put(
        "  ",
        6,
        "porch %s at the %s wall of the %s, %s along it from %s of the wall's %s end, %s out from its outside; ceiling %s over the floor inside, %s, %s joists%s every %s%s that run %s%s; its %s roof meets the wall %s over that floor. Where these joists, ledger, beam and posts are is assumed."
            .formatted(
                p.name(),
                p.face().side().word(),
                p.face().room(),
                units.tape(placedPorch.length()),
                units.tape(p.from().distance().value().nm()),
                p.from().from().word(),
                units.tape(placedPorch.out()),
                units.tape(p.height().value().nm()),
                p.boarded() ? "boarded" : "open",
                p.joists().value().name(),
                p.joists().isAssumed() ? " (assumed)" : "",
                units.tape(p.every().value().nm()),
                p.every().isAssumed() ? " (assumed)" : "",
                p.run().value() == Porch.Run.OUT ? "out from the wall" : "along the wall",
                p.run().isAssumed() ? " (assumed)" : "",
                p.cover().word(),
                units.tape(meets + (p.cover() == Porch.Cover.SHED ? placedPorch.rise() : 0))));
  }
}
