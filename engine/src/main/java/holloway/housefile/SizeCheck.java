package holloway.housefile;

import holloway.geometry.Point2;
import holloway.geometry.Polygon2;
import holloway.house.House;
import holloway.house.Room;
import holloway.request.Request;
import java.util.List;
import java.util.Locale;

/**
 * How large a house may be. A plan of the largest must still fit a heap of one gigabyte; what is
 * larger is told so at once, and is most often a slip of a unit.
 */
final class SizeCheck {
  static final int MOST_LEVELS = 10;
  static final int MOST_ROOMS = 150;
  static final int MOST_RUNS = 200;

  /** Of all floors together. */
  static final int MOST_M2 = 2_000;

  private static final double MM2_PER_M2 = 1e6;

  private SizeCheck() {}

  static void check(Entry file, House house, Request request) {
    count(file, "levels", house.levels().size(), MOST_LEVELS, "levels");
    count(file, "rooms", house.rooms().size(), MOST_ROOMS, "rooms");
    count(file, "outlets", request.runs().size(), MOST_RUNS, "cables");
    double area = house.rooms().stream().mapToDouble(SizeCheck::areaMm2).sum() / MM2_PER_M2;
    if (area > MOST_M2) {
      file.desk()
          .problems()
          .add(
              file.where("rooms"),
              String.format(Locale.ROOT, "%.0f m2 of floor", area),
              "at most " + MOST_M2 + " m2",
              "",
              "the rooms together are larger than what is planned for; is a unit wrong?");
    }
  }

  private static void count(Entry file, String key, int there, int most, String what) {
    if (there > most) {
      file.desk()
          .problems()
          .add(
              file.where(key),
              there + " " + what,
              "at most " + most,
              "",
              "this house has more " + what + " than what is planned for");
    }
  }

  private static double areaMm2(Room room) {
    if (room.size().isPresent()) {
      Room.Size s = room.size().get();
      return s.eastWest().value().toMm() * s.northSouth().value().toMm();
    }
    List<Point2> corners =
        room.outline().stream()
            .map(c -> new Point2(c.x().value().nm(), c.y().value().nm()))
            .toList();
    return corners.size() < 3 ? 0 : Math.abs(new Polygon2(corners).signedAreaMm2());
  }
}
