package holloway.survey;

import holloway.geometry.Polygon2;
import holloway.house.Direction;
import holloway.house.Fact;
import holloway.house.FloorSpec;
import holloway.units.Length;
import holloway.units.LengthText;
import java.util.List;

/** Rows of blocks that would stand beyond the floor they are stated for. */
final class FloorCheck {
  private FloorCheck() {}

  static void check(List<PlacedLevel> levels, List<PlacedRoom> rooms, Problems problems) {
    for (PlacedLevel l : levels) {
      check(l.level().floor(), l, problems);
      rooms.stream()
          .filter(r -> r.room().level().equals(l.name()))
          .forEach(r -> r.room().floor().ifPresent(f -> check(f, l, problems)));
    }
  }

  private static void check(FloorSpec floor, PlacedLevel level, Problems problems) {
    long longest = 0;
    for (Polygon2 part : level.footprint()) {
      boolean ew = floor.run() == Direction.EAST_WEST;
      longest = Math.max(longest, (ew ? part.xRange() : part.yRange()).length());
    }
    for (Fact<Length> at : floor.blocksAt()) {
      Length from = new Length(Math.abs(at.value().nm()));
      if (from.nm() > longest) {
        problems.add(
            at.where(),
            "a row of blocks at %s lies beyond the floor of level %s, which is %s along its joists",
            LengthText.metric(from),
            level.name(),
            LengthText.metric(new Length(longest)));
      }
    }
  }
}
