package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Polygon2;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A room over the south half of a garage: joists over that half, a low attic over the other. */
@Feature("room over part of a garage")
class RoomOverPartOfAGarageTest {
  private static final String HOUSE =
      """
      house: Half Over
      place: us
      built: 1994
      levels:
        ground: { floor: slab, ceiling-height: 8 ft 1 in }
        upper: { above: ground, floor: { joists: 2x10, every: 16 in, run: east-west }, ceiling-height: 8 ft }
      rooms:
        garage: { level: ground, size: 12 ft x 24 ft, garage: yes }
        office: { level: upper, size: 12 ft x 12 ft, above: garage, align: south-west }
      roof:
        - { over: upper, shape: gable, ridge: north-south, pitch: 6/12, eaves: 16 in, frame: trusses, every: 24 in }
        - { name: low roof, over: [garage], shape: gable, ridge: north-south, pitch: 8/12, eaves: 16 in, frame: trusses, every: 24 in,
            hatch: { in: garage, at: [west 6 ft, north 6 ft], size: 22 in x 30 in } }
      cabinet: { in: garage, wall: east, from: north 4 ft, height: 5 ft }
      outlets:
        - { name: point, in: garage, ceiling: [west 7 ft, POINT], cables: [cat6], power: class 4 }
      """;

  private static WrittenHouse point(String at) {
    return WrittenHouse.of(HOUSE.replace("POINT", at));
  }

  @Test
  void theAtticEndsWhereTheRoomBegins() {
    WrittenHouse house = point("north 9 ft");
    long office = house.placed().getRoom("office").outline().yRange().hi();
    Hollow attic =
        house.hollows().hollows().stream()
            .filter(h -> h.kind() == HollowKind.ATTIC && h.id().contains("low roof"))
            .findFirst()
            .orElseThrow();
    Polygon2 area = attic.area().orElseThrow();
    assertTrue(area.yRange().lo() > office, () -> area.yRange() + " and " + office);
    List<Hollow> bays =
        house.hollows().hollows().stream().filter(h -> h.kind() == HollowKind.JOIST_BAY).toList();
    assertTrue(!bays.isEmpty());
    for (Hollow bay : bays) {
      long y = bay.frame().toWorld(bay.clear().centre()).y();
      assertTrue(y < area.yRange().lo(), bay::id);
    }
  }

  /** Over the north half hands lay the cable; over the south half none gets in from the attic. */
  @Test
  void theWayToTheCeilingIsTheAtticOrTheJoists() {
    Plan north = point("north 9 ft").plan("surface", "outside");
    assertEquals(List.of(), north.unrouted());
    assertTrue(
        way(north).stream().anyMatch(s -> s.startsWith("attic/low roof")), way(north)::toString);
    Plan south = point("south 6 ft").plan("surface", "outside");
    assertEquals(List.of(), south.unrouted());
    List<String> joists = way(south);
    assertTrue(joists.stream().anyMatch(s -> s.startsWith("upper/floor/bay-")), joists::toString);
    assertTrue(joists.get(joists.size() - 1).startsWith("upper/floor/bay-"), joists::toString);
  }

  private static List<String> way(Plan p) {
    return WrittenHouse.way(p, "point/cat6-1");
  }
}
