package holloway.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.ToyHouse;
import holloway.check.ToyPlan;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.support.Chain;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A hole that can be missed says on its card how it is found from the other side. */
class PilotsTest {
  private static final String HOLE = "west/top/1000";

  private static HoleCard card(HollowHouse house) {
    return HoleCards.of(ToyPlan.good(), house, UnitSystem.METRIC).get(HOLE);
  }

  private static HollowHouse with(HollowKind kind, boolean attic) {
    HollowHouse toy = ToyHouse.build();
    List<Hollow> hollows =
        toy.hollows().stream()
            .map(
                h -> h.kind() == (attic ? HollowKind.ATTIC : HollowKind.STUD_BAY) ? as(h, kind) : h)
            .toList();
    return new HollowHouse(toy.framed(), hollows, toy.sites(), toy.stands(), List.of());
  }

  private static Hollow as(Hollow h, HollowKind kind) {
    return new Hollow(h.id(), kind, h.frame(), h.clear(), h.area(), h.fill(), "chase", h.stand());
  }

  @Test
  void aHoleTapedOnBothSidesNeedsNone() {
    assertEquals("", card(ToyHouse.build()).pilot());
    assertEquals("stud bay, empty as far as is known", card(ToyHouse.build()).behind());
  }

  /** The bay is a shaft nobody sees into: two times 10.7 mm, rounded up. */
  @Test
  void intoAShaftTheWireIsFeltFor() {
    String says = card(with(HollowKind.CHASE, false)).pilot();
    assertTrue(says.startsWith("drill 3 mm (1/8 in) first"), says);
    assertTrue(says.contains("feel for the wire through the opening on the far side, up to 22 mm"));
  }

  /** The same where it is read in feet: 22 mm are 0.866 in, 14/16 of an inch. */
  @Test
  void inFeetTheInchesComeFirst() {
    HollowHouse house = with(HollowKind.CHASE, false);
    String says = HoleCards.of(ToyPlan.good(), house, UnitSystem.FT_IN).get(HOLE).pilot();
    assertTrue(says.startsWith("drill 1/8 in (3 mm) first"), says);
    assertTrue(says.contains("on the far side, up to 7/8 in from"), says);
  }

  /** Where the drill's side shows nothing and the bay's face is closed, a magnet finds the wire. */
  @Test
  void behindAClosedFaceAMagnetFindsTheWire() {
    HollowHouse dark = with(HollowKind.CHASE, true);
    Map<String, Pilot> pilots = Pilots.of(ToyPlan.good(), dark);
    assertEquals(Pilot.Find.BY_MAGNET, pilots.get(HOLE).find());
    String says = card(dark).pilot();
    assertTrue(says.contains("with a magnet, within 22 mm of where the tapes"), says);
  }

  /** Outside nothing can be taped: the pilot comes from the room, 2 x the hole's own tolerance. */
  @Test
  void aHoleBoredFromOutsideIsFoundFromTheRoom() {
    Chain chain = Chain.of(OUTSIDE);
    Plan plan = chain.plan(Profile.LEAST_WORK, Set.of(), r -> true);
    Plan.PlannedHole hole =
        plan.holes().stream().filter(h -> h.stand().equals("outside")).findFirst().orElseThrow();
    Pilot pilot = Pilots.of(plan, chain.house()).get(hole.id());
    assertEquals(Pilot.Find.FROM_INSIDE, pilot.find());
    assertEquals(Optional.of(Pilot.From.room("den")), pilot.from());
    assertEquals(3, pilot.bitMm());
    String says = HoleCards.of(plan, chain.house(), UnitSystem.METRIC).get(hole.id()).pilot();
    assertTrue(says.startsWith("from the den drill 3 mm (1/8 in) straight out"), says);
    Places places = new Places(chain.house(), chain.request());
    List<Step> steps =
        new HoleSteps(plan, chain.house(), places, new Openings(plan, places)).list();
    Step step =
        steps.stream()
            .filter(s -> s.kind() == Step.Kind.PILOT && s.subject().equals(hole.id()))
            .findFirst()
            .orElseThrow();
    assertEquals(places.room("den"), step.at());
  }

  /**
   * The rim over a crawlspace: no bit goes from a room there, a person in the crawlspace has it.
   */
  @Test
  void aRimBoredFromOutsideIsFoundFromTheCrawlspace() {
    Chain chain = Chain.of(Chain.sample("quince-ranch"));
    Plan plan = chain.plan(Profile.LEAST_WORK, Set.of(), r -> r.startsWith("loudspeaker/"));
    Plan.PlannedHole rim =
        plan.holes().stream().filter(h -> h.kind().contains("rim")).findFirst().orElseThrow();
    assertEquals("outside", rim.stand());
    Pilot pilot = Pilots.of(plan, chain.house()).get(rim.id());
    assertEquals(Pilot.Find.FROM_INSIDE, pilot.find());
    assertEquals("crawlspace", pilot.from().orElseThrow().words());
    Places places = new Places(chain.house(), chain.request());
    Step step =
        new HoleSteps(plan, chain.house(), places, new Openings(plan, places))
            .list().stream()
                .filter(s -> s.kind() == Step.Kind.PILOT && s.subject().equals(rim.id()))
                .findFirst()
                .orElseThrow();
    assertEquals(WorkPlace.Kind.CRAWLSPACE, step.at().kind());
  }

  private static final String OUTSIDE =
      """
      house: Long Way Round
      place: us
      built: 1990
      inner-walls: { kind: masonry, thickness: 150 mm }
      levels:
        ground: { floor: slab, ceiling-height: 2.5 m }
      rooms:
        hall: { level: ground, size: 4 m x 3 m }
        den: { level: ground, size: 4 m x 3 m, east-of: hall, align: south }
      cabinet: { in: hall, wall: south, from: east 1 m, height: 400 mm }
      outlets:
        - { name: desk, in: den, wall: south, from: west 1.5 m, height: 400 mm, cables: [cat6] }
      wishes: { visible-metre: 60 min }
      """;
}
