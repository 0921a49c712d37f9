package holloway.survey;

import holloway.geometry.Overlay;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/** Rooms of one level must not share space, and every room must have some height. */
final class Overlaps {
  /** Shared space narrower than this is rounding, millimetres. */
  private static final double ROUNDING = 0.01;

  private final Gaps gaps;
  private final Columns columns;
  private final Texts texts;
  private final Problems problems;

  Overlaps(Gaps gaps, Columns columns, Texts texts, Problems problems) {
    this.gaps = gaps;
    this.columns = columns;
    this.texts = texts;
    this.problems = problems;
  }

  void check(List<PlacedRoom> rooms) {
    for (int i = 0; i < rooms.size(); i++) {
      PlacedRoom a = rooms.get(i);
      if (a.ceilingZ() <= a.floorZ()) {
        problems.add(a.room().where(), "room %s has its ceiling below its floor", a.name());
      }
      for (PlacedRoom b : rooms.subList(i + 1, rooms.size())) {
        if (a.room().level().equals(b.room().level())) {
          check(a, b);
        } else if (columns.apart(a.room(), b.room())) {
          beside(a, b);
        }
      }
    }
  }

  /** Parts of a split-level house stand beside each other with room for a wall between them. */
  private void beside(PlacedRoom a, PlacedRoom b) {
    Geometry here = a.outline().toJts();
    Geometry there = b.outline().toJts();
    if (here.distance(there) < Makeup.THINNEST_WALL / 1e6) {
      problems.add(
          b.room().where(),
          "rooms %s and %s belong to parts of the house that stand beside each other (split levels), but lie over each other or closer than a wall. One part that reaches over another is not known; maybe a size, a side or a shift is wrong",
          a.name(),
          b.name());
    }
  }

  private void check(PlacedRoom a, PlacedRoom b) {
    Geometry shared = Overlay.shared(a.outline().toJts(), b.outline().toJts());
    var box = shared.getEnvelopeInternal();
    if (shared.getArea() > 0 && Math.min(box.getWidth(), box.getHeight()) > ROUNDING) {
      problems.add(
          b.room().where(),
          "rooms %s and %s overlap by %s by %s. Maybe a size, a side or a shift is wrong. %s",
          a.name(),
          b.name(),
          texts.length(Math.round(box.getWidth() * 1e6)),
          texts.length(Math.round(box.getHeight() * 1e6)),
          gaps.between(a, b, box.getWidth() < box.getHeight()));
    }
  }
}
