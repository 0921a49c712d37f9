package holloway.survey;

import holloway.geometry.Interval;
import holloway.geometry.Overlay;
import holloway.geometry.Polygon2;
import holloway.house.Opening;
import holloway.house.Porch;
import java.util.List;
import java.util.Locale;

/** Whether stated porches stand against an outer wall, in the open, and over its openings. */
final class PorchCheck {
  /** How far a porch's roof may reach past the end of the wall it is fixed to; from experience. */
  private static final long PAST_END = 600_000_000;

  private static final double SHARED_MM2 = 10_000;

  private PorchCheck() {}

  static void check(Placed placed, Texts texts, Problems problems) {
    for (Porch p : placed.house().porches()) {
      var near = placed.findSpot(p.face(), p.from(), p.height().value().nm());
      if (near.isEmpty()) {
        problems.add(
            p.where(),
            "porch %s begins %s from the %s end of '%s', past the end of that wall",
            p.name(),
            texts.length(p.from().distance().value().nm()),
            p.from().from().word(),
            p.face());
      } else if (!near.get().wall().isOuter() || near.get().wall().isOpen()) {
        problems.add(
            p.where(),
            "porch %s cannot stand at '%s': no outer wall is there, another room lies behind it",
            p.name(),
            p.face());
      } else {
        against(placed, p, near.get(), texts, problems);
      }
    }
  }

  private static void against(Placed placed, Porch p, OnWall near, Texts texts, Problems problems) {
    Interval s = PlacedPorch.stretch(p, near.s());
    long past = Math.max(-s.lo(), s.hi() - near.wall().length());
    if (past > PAST_END) {
      problems.add(
          p.where(),
          "porch %s reaches %s past the end of its wall: one that goes round a corner is stated as"
              + " two, one at each wall",
          p.name(),
          texts.length(past));
    }
    PlacedPorch placedPorch = PlacedPorch.of(placed, p).orElseThrow();
    for (PlacedRoom r : placed.rooms()) {
      boolean sameHeight =
          r.floorZ() < placedPorch.frame().origin().z()
              && r.ceilingZ() > placedPorch.frame().origin().z();
      if (sameHeight && shares(placedPorch, r)) {
        problems.add(p.where(), "porch %s would stand in the %s", p.name(), r.name());
      }
    }
    for (Wall.WallOpening o : near.wall().openings()) {
      Opening stated = o.opening();
      if (o.s().overlaps(s) && stated.head().value().compareTo(p.height().value()) > 0) {
        problems.add(
            p.where(),
            "the ceiling of porch %s, %s over the floor inside, would cut the %s of line %d, whose"
                + " head is at %s: tape one of them again",
            p.name(),
            texts.length(p.height().value().nm()),
            stated.kind().name().toLowerCase(Locale.ROOT).replace('_', ' '),
            stated.where().line(),
            texts.length(stated.head().value().nm()));
      }
    }
  }

  private static boolean shares(PlacedPorch p, PlacedRoom r) {
    Polygon2 under =
        new Polygon2(
            List.of(
                p.frame().toWorld(0, 0, 0).plan(),
                p.frame().toWorld(p.length(), 0, 0).plan(),
                p.frame().toWorld(p.length(), p.out(), 0).plan(),
                p.frame().toWorld(0, p.out(), 0).plan()));
    return Overlay.intersection(under.toJts(), r.outline().toJts()).getArea() > SHARED_MM2;
  }
}
