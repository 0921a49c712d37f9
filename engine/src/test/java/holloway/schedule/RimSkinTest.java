package holloway.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.hollow.HollowHouse;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A card says that a bit goes on through the skin once it is through the rim. */
class RimSkinTest {
  /** 11 mm of sheathing and 19 mm of cladding, both taken by the year and the place. */
  @Test
  void sheathingAndCladdingCoverTheRim() {
    String gate =
        "{ name: gate, outside: garage south, from: east 1 ft, height: 1 ft, cables: [outdoor-cat6] }";
    String text =
        Chain.sample("plumb-corner").replace("outlets:\n", "outlets:\n  - " + gate + "\n");
    Chain chain = Chain.of(text);
    HollowHouse house = chain.house();
    List<Site> rims =
        house.sites().stream()
            .filter(s -> s.kind() == SiteKind.RIM && RimSkin.of(s, house).isPresent())
            .toList();
    assertEquals(1, rims.size());
    assertEquals(Optional.of(30_000_000L), RimSkin.of(rims.get(0), house));
    house.sites().stream()
        .filter(s -> s.kind() != SiteKind.RIM)
        .forEach(s -> assertEquals(Optional.empty(), RimSkin.of(s, house), s.id()));
    Plan plan = chain.plan(Profile.LEAST_WORK, Set.of(), r -> r.startsWith("gate/"));
    Plan.PlannedHole rim =
        plan.holes().stream().filter(h -> h.kind().contains("rim")).findFirst().orElseThrow();
    String says = HoleCards.of(plan, house, UnitSystem.METRIC).get(rim.id()).breakthrough();
    assertTrue(
        says.endsWith("; outside go on through sheathing and cladding, 30 mm on the wall above it"),
        says);
  }
}
