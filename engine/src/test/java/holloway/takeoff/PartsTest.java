package holloway.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.catalog.PriceList;
import holloway.catalog.ShopItem;
import holloway.pipeline.Toy;
import holloway.plan.Plan;
import holloway.request.Request;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What is counted for outlets, cabinet, ways and holes, worked out by hand. */
class PartsTest {
  private static Map<String, Plan.Material> bought(Map<String, Long> prices) {
    Request request = Toy.request().with(new PriceList("mine", "EUR", Map.of(), Map.of(), prices));
    return TakeOff.of(Toy.bare(), request, Toy.placed()).materials().stream()
        .collect(Collectors.toMap(Plan.Material::item, m -> m));
  }

  /** The shop sells plates of six only: three cables, one of them spare, leave four blanks. */
  @Test
  void aShopWithPlatesOfSixOnly() {
    Map<String, Plan.Material> items = bought(Map.of("plate-6", 260L, "blank", 30L));
    assertEquals(1, items.get("keystone plate, single gang, 6 ports").quantity());
    assertNull(items.get("keystone plate, single gang, 3 ports"));
    // 6 ports less 2 jacks (one cat6, one om4): 3 empty ports and the spare's.
    Plan.Material blanks = items.get("blank insert for an empty port");
    assertEquals(4, blanks.quantity());
    assertEquals(1.20, blanks.price().orElseThrow(), 1e-9);
    assertEquals("boxes and plates", blanks.group());
  }

  /**
   * The line of the issue: an outlet with three live cables in a six-way plate has three blanks.
   */
  @Test
  void threeCablesInASixWayPlate() {
    Request toy = Toy.request();
    Request live =
        new Request(
                toy.cabinet(),
                toy.outlets(),
                toy.runs().stream()
                    .map(
                        r ->
                            new holloway.request.Run(
                                r.id(), r.from(), r.to(), r.cable(), false, r.through()))
                    .toList(),
                toy.wishes(),
                toy.effort())
            .with(new PriceList("mine", "EUR", Map.of(), Map.of(), Map.of("plate-6", 1L)));
    Plan plan = TakeOff.of(Toy.bare(), live, Toy.placed());
    double blanks =
        plan.materials().stream()
            .filter(m -> m.item().startsWith("blank"))
            .mapToDouble(Plan.Material::quantity)
            .sum();
    assertEquals(3, blanks);
  }

  /** What is cut from the drum gets its plugs, what ends in a coupler a cord to the gear. */
  @Test
  void cordsPlugsAndToolsAreNotForgotten() {
    Map<String, Plan.Material> items = bought(Map.of());
    assertEquals(1, items.get("fibre cord, multimode, 3 m (10 ft), at the outlets").quantity());
    assertEquals(1, items.get("cable tester that shows each wire").quantity());
    assertNull(items.get("F plug for coaxial cable"));
    Plan toy = Toy.bare();
    List<Plan.PlannedRun> coax =
        toy.runs().stream()
            .map(
                r ->
                    new Plan.PlannedRun(
                        r.id(), r.from(), r.to(), "rg6", r.routeM(), r.cableM(), r.steps()))
            .toList();
    Map<String, Plan.Material> drum =
        TakeOff.of(toy.withRuns(coax, toy.totals()), Toy.request(), Toy.placed())
            .materials()
            .stream()
            .collect(Collectors.toMap(Plan.Material::item, m -> m));
    assertEquals(2 * coax.size(), drum.get("F plug for coaxial cable").quantity());
    // the spare has a port and no cord
    assertEquals(2, drum.get("coaxial cord, 3 m (10 ft), at the outlets").quantity());
    assertNull(drum.get("cable tester that shows each wire"));
  }

  @Test
  void moneyIsTheSumOfWhatIsPriced() {
    PriceList list =
        new PriceList("mine", "EUR", Map.of(), Map.of(), Map.of("plate-6", 260L, "blank", 30L));
    Plan plan = TakeOff.of(Toy.bare(), Toy.request().with(list), Toy.placed());
    // 2.60 and 4 x 0.30; the objective stays what it was.
    assertEquals(3.80, plan.totals().money().orElseThrow(), 1e-9);
    assertEquals("EUR", plan.totals().currency());
    assertEquals(Toy.bare().totals().objective(), plan.totals().objective());
    Plan without = TakeOff.of(Toy.bare(), Toy.request(), Toy.placed());
    assertTrue(without.totals().money().isEmpty());
  }

  @Test
  void panelsKeepOnePortInFiveFree() {
    // 10 x 1.2 = 12; 11 x 1.2 = 13.2; 20 x 1.2 = 24; 40 x 1.2 = 48; 41 x 1.2 = 49.2.
    assertEquals(List.of(), CabinetParts.panels(0));
    assertEquals(List.of(12), CabinetParts.panels(10));
    assertEquals(List.of(24), CabinetParts.panels(11));
    assertEquals(List.of(24), CabinetParts.panels(20));
    assertEquals(List.of(48), CabinetParts.panels(40));
    assertEquals(List.of(48, 12), CabinetParts.panels(41));
  }

  @Test
  void cordsGrowWithTheRack() {
    // 254 + 44.45 + 150 = 448 mm; 482.6 + 5 x 44.45 + 150 = 855 mm; + 7 x 44.45 = 944 mm > 914.
    assertEquals(ShopItem.CORD_3FT, CabinetParts.cord(0, 12));
    assertEquals(ShopItem.CORD_3FT, CabinetParts.cord(2, 48));
    assertEquals(ShopItem.CORD_5FT, CabinetParts.cord(3, 48));
  }

  @Test
  void supportsAreNeverFurtherApart() {
    // A2-15, 1.2 m: 2.4 m takes three, a hair more four.
    assertEquals(0, PathParts.spaced(0, PathParts.SUPPORT_M));
    assertEquals(2, PathParts.spaced(1.2, PathParts.SUPPORT_M));
    assertEquals(3, PathParts.spaced(2.4, PathParts.SUPPORT_M));
    assertEquals(4, PathParts.spaced(2.401, PathParts.SUPPORT_M));
  }

  @Test
  void cartridges() {
    // 200 ml of each 300 ml end in holes.
    assertEquals(0, HoleParts.cartridges(0));
    assertEquals(1, HoleParts.cartridges(200));
    assertEquals(2, HoleParts.cartridges(200.1));
  }

  @Test
  void sealantOfOneHole() {
    Plan plan = Toy.bare();
    Plan.PlannedHole h = plan.holes().get(0);
    double jackets =
        h.runs().stream().mapToDouble(r -> r.contains("om4") ? 4.8 * 4.8 : 6.1 * 6.1).sum();
    double d = h.diameterMm();
    // pi/4 (d2 - jackets) x 25 mm, and two beads of a 6 mm triangle round the edge.
    double want = (Math.PI / 4 * (d * d - jackets) * 25 + 2 * Math.PI * d * 18) / 1000;
    assertEquals(want, new HoleParts(plan, Toy.placed()).sealantMl(h), 1e-6);
  }
}
