package holloway.hollow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.geometry.Point3;
import holloway.pipeline.WrittenHouse;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is led or tried the longer way of a room lies the same however the house is turned. */
class LongerWayTest {
  private static final String HEAD =
      """
      house: Longer Way
      place: us
      built: 1994
      """;

  private static List<String> patches(String size, String wall) {
    WrittenHouse h =
        WrittenHouse.of(
            HEAD
                + """
                levels: { ground: { floor: slab, ceiling-height: 2700 mm } }
                rooms: { hall: { level: ground, size: %1$s } }
                hollows: [ { dropped-ceiling: low, in: hall, drop: 250 mm, cover: board } ]
                cabinet: { in: hall, wall: %2$s, height: 1 m }
                outlets: [ { name: desk, in: hall, wall: %2$s, height: 300 mm, cables: [cat6] } ]
                """
                    .formatted(size, wall));
    return h.hollows().accesses().stream()
        .filter(a -> a.kind() == AccessPlace.Kind.CEILING_PATCH)
        .filter(a -> a.hollow().startsWith("soffit/"))
        .map(a -> at(a.at()))
        .sorted()
        .toList();
  }

  private static String at(Point3 p) {
    return p.x() / 1_000_000 + " " + p.y() / 1_000_000;
  }

  /** 160 mm from both ends of 5 m, half-way across 2 m; the outlet is before one of them. */
  @Test
  void aBoardedCeilingIsOpenedAtBothEndsOfItsLength() {
    assertEquals(List.of("160 1000", "4840 1000"), patches("5 m x 2 m", "east, from: south 1 m"));
    assertEquals(List.of("1000 160", "1000 4840"), patches("2 m x 5 m", "north, from: west 1 m"));
  }

  private static List<String> ways(String outline, String run) {
    WrittenHouse h =
        WrittenHouse.of(
            HEAD
                + """
                levels:
                  ground: { floor: slab, ceiling-height: 2500 mm }
                  upper: { floor: { joists: 2x10, every: 16 in, run: %2$s }, ceiling-height: 2500 mm }
                rooms:
                  low: { level: ground, outline: %1$s }
                  high: { level: upper, outline: %1$s, above: low, align: south-west }
                cabinet: { in: low, wall: east, from: south 1 m, height: 1 m }
                outlets:
                  - { name: desk, in: low, wall: east, from: south 1 m, height: 300 mm, cables: [cat6] }
                """
                    .formatted(outline, run));
    return h.sites(SiteKind.CEILING_AND_FLOOR).stream().map(s -> at(s.a())).toList();
  }

  /**
   * 4 m by 3 m without 1 m by 1 m in the corner where layouts begin: 70 mm off the walls, the two
   * corners beside the nook are 1.07 + 0.07 m from there. From the middle of the room the one at
   * the end of the longer way is 1.93 and 0.43 m, the other one 0.93 and 1.43 m. A joist lies over
   * the corner itself, so the way is 120 mm on.
   */
  @Test
  void ofTwoCornersAsNearTheOneFurtherFromTheMiddleIsTried() {
    assertEquals(
        List.of("70 1190"),
        ways(
            "[[1 m, 0 m], [4 m, 0 m], [4 m, 3 m], [0 m, 3 m], [0 m, 1 m], [1 m, 1 m]]",
            "east-west"));
    assertEquals(
        List.of("1190 70"),
        ways(
            "[[1 m, 0 m], [3 m, 0 m], [3 m, 4 m], [0 m, 4 m], [0 m, 1 m], [1 m, 1 m]]",
            "north-south"));
  }
}
