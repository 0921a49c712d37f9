package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.geometry.Point3;
import holloway.hollow.AccessPlace;
import holloway.hollow.Stand;
import holloway.plan.Drilling;
import holloway.plan.Plan;
import holloway.schedule.HoleCard;
import holloway.schedule.HoleCards;
import holloway.support.Chain;
import holloway.takeoff.HoleNeeds;
import holloway.takeoff.TakeOff;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** A hole's card, what is brought up and what is bought name one tool. */
class DrillingTest {
  /** A level may be called as a space is: what counts is where the person stands. */
  @Test
  void aPatchOnALevelCalledRoomIsAnOpening() {
    WrittenHouse house = WrittenHouse.of(TwoStoreys.TEXT.replace("ground", "room"));
    int called = 0;
    for (AccessPlace a : house.hollows().accesses()) {
      assertTrue(Drilling.isThroughOpening(from(a.id()), house.hollows()), a.id());
      called += a.id().startsWith("room/") ? 1 : 0;
    }
    assertTrue(called > 3, called + " openings");
    for (Stand s : house.hollows().stands()) {
      assertFalse(Drilling.isThroughOpening(from(s.id()), house.hollows()), s.id());
    }
  }

  private static Plan.PlannedHole from(String stand) {
    return new Plan.PlannedHole(
        "hole",
        "H1",
        "top plate",
        13,
        38,
        new Point3(0, 0, 0),
        List.of(),
        "",
        stand,
        List.of(),
        0,
        List.of(),
        false,
        List.of(),
        1,
        List.of(),
        List.of("top plate 38 mm"));
  }

  @Test
  void cardAndListAgreeOnEveryHole() {
    WrittenHouse house = WrittenHouse.of(Chain.sample("tin-street"));
    Plan plan = house.plan();
    Map<String, Drilling> drilling = Drilling.of(plan, house.hollows());
    Map<String, HoleCard> cards = HoleCards.of(plan, house.hollows(), UnitSystem.METRIC);
    HoleNeeds needs = new HoleNeeds(Set.of(), drilling, false);
    List<String> bought =
        TakeOff.of(plan, house.request(), house.placed(), needs).materials().stream()
            .map(Plan.Material::item)
            .toList();
    Set<Drilling> met = new TreeSet<>();
    for (Plan.PlannedHole h : plan.holes()) {
      if (h.diameterMm() > 0 && !h.kind().contains("patch")) {
        Drilling how = drilling.get(h.id());
        met.add(how);
        String card = cards.get(h.id()).extension();
        String sold =
            switch (how) {
              case FLEXIBLE -> "flexible-shaft bit, 1.83 m (72 in), " + h.diameterMm() + " mm";
              case LONG -> "long bit, 455 mm (18 in), or an extension, " + h.diameterMm() + " mm";
              case ANGLED -> "right-angle drill";
              case MASONRY -> "masonry bit, " + h.diameterMm() + " mm";
              case SHORT -> "wood bit, " + h.diameterMm() + " mm";
            };
        assertTrue(
            bought.stream().anyMatch(b -> b.startsWith(sold)),
            h.id() + ": " + sold + " in " + bought);
        assertEquals(how == Drilling.FLEXIBLE, card.startsWith("flexible-shaft"), h.id() + card);
        assertEquals(how == Drilling.ANGLED, card.startsWith("right-angle"), h.id() + card);
      }
    }
    assertTrue(
        met.containsAll(Set.of(Drilling.SHORT, Drilling.FLEXIBLE, Drilling.MASONRY)),
        met::toString);
  }
}
