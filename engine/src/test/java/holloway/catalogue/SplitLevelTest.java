package holloway.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.Referee;
import holloway.house.Side;
import holloway.pipeline.InputTrouble;
import holloway.pipeline.WrittenHouse;
import holloway.plan.Plan;
import holloway.survey.Placed;
import holloway.survey.PlacedLevel;
import holloway.survey.Wall;
import holloway.units.Length;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two rooms over one another stand beside a third, whose floor lies between theirs. */
@Feature("split level")
class SplitLevelTest {
  private static final String TUBE =
      """
      hollows:
        - conduit: tube
          from: { in: store, wall: north, from: west 6 ft, height: 16 in }
          to: { in: loft, wall: north, from: west 6 ft, height: 16 in }
          inside-diameter: 25 mm
          bends: 2
          length: 7 m
      """;
  private static final String SPLIT =
      """
      house: Step Toy
      place: us
      built: 1994
      levels:
        main: { floor: slab, ceiling-height: 8 ft }
        lower: { floor: slab, ceiling-height: 8 ft, beside: main, step: -4 ft 3 in }
        upper: { above: lower, floor: { joists: 2x10, every: 16 in, run: east-west }, ceiling-height: 8 ft }
      rooms:
        store: { level: main, size: 12 ft x 12 ft, plain: yes }
        den: { level: lower, size: 12 ft x 12 ft, east-of: store, align: south, plain: yes }
        loft: { level: upper, size: 12 ft x 12 ft, above: den, align: south-west, plain: yes }
      cabinet: { in: store, wall: north, from: west 4 ft, height: 5 ft }
      outlets:
        - { name: desk, in: loft, wall: north, from: west 7 ft, height: 16 in, cables: [cat6] }
      """;

  private static Placed placed(String text) {
    return WrittenHouse.of(text).placed();
  }

  private static List<String> refusals(Plan plan, WrittenHouse house) {
    return Referee.check(plan, house.hollows(), house.request()).refusals().stream()
        .map(Object::toString)
        .toList();
  }

  @Test
  void itsFloorsLieAtTheirOwnHeights() {
    Placed p = placed(SPLIT);
    // The den is the lowest; 96 in, board 1/2 in, joists 9-1/4 in, floor 18.3 mm.
    assertEquals(0, p.getRoom("den").floorZ());
    assertEquals(Length.inches(51, 1).nm(), p.getRoom("store").floorZ());
    assertEquals(Length.inches(423, 4).nm() + 18_300_000L, p.getRoom("loft").floorZ(), 200_000L);
    assertEquals(Length.inches(51 + 96, 1).nm(), p.getRoom("store").ceilingZ());
    // They stand 4-1/2 in apart.
    long east = p.getRoom("store").outline().xRange().hi();
    assertEquals(Length.inches(9, 2).nm(), p.getRoom("den").outline().xRange().lo() - east);
  }

  @Test
  void whatLiesOverWhatIsNotTheOrderOfTheList() {
    Placed p = placed(SPLIT);
    PlacedLevel main = p.getLevel("main");
    PlacedLevel lower = p.getLevel("lower");
    PlacedLevel upper = p.getLevel("upper");
    assertTrue(upper.isNextOver(lower));
    for (PlacedLevel l : List.of(lower, upper)) {
      assertFalse(l.isOver(main) || main.isOver(l), l::name);
    }
    assertEquals(List.of(main), p.levelsAt(p.getRoom("store").outline().corners().get(0)));
    assertEquals(List.of(lower, upper), p.levelsAt(p.getRoom("den").outline().corners().get(1)));
  }

  @Test
  void theWallBetweenIsShutAndNotOutdoors() {
    Placed p = placed(SPLIT);
    List<Wall> between = p.walls().stream().filter(w -> w.traits().isSplit()).toList();
    assertEquals(
        List.of("lower", "main", "upper"), between.stream().map(Wall::level).sorted().toList());
    between.forEach(w -> assertFalse(w.isOuter(), w::id));
    WrittenHouse house = WrittenHouse.of(SPLIT);
    for (Wall w : between) {
      assertTrue(house.hollows().hollows().stream().noneMatch(h -> h.owner().equals(w.id())));
      assertTrue(
          p.assumed().stream().anyMatch(a -> a.startsWith(w.id() + " stands between parts")),
          p.assumed()::toString);
    }
    for (Side side : List.of(Side.NORTH, Side.SOUTH, Side.EAST)) {
      assertTrue(
          p.walls().stream()
              .filter(w -> w.faces().stream().anyMatch(f -> f.room().equals("den")))
              .filter(w -> w.faces().stream().anyMatch(f -> f.roomSide() == side))
              .allMatch(Wall::isOuter));
    }
  }

  @Test
  void onlyAStatedTubeLeadsFromPartToPart() {
    Plan shut = WrittenHouse.of(SPLIT).plan("outside");
    assertEquals(List.of("desk/cat6-1"), shut.unrouted().stream().map(Plan.Unrouted::id).toList());
    WrittenHouse house = WrittenHouse.of(SPLIT + TUBE);
    Plan open = house.plan("outside");
    assertEquals(List.of(), open.unrouted());
    assertTrue(
        open.runs().get(0).steps().stream().anyMatch(s -> s.id().equals("conduit/tube")),
        open.runs()::toString);
    assertEquals(List.of(), refusals(open, house));
  }

  /** Where it runs is not known: it is drawn straight through the wall between. */
  @Test
  void aTubeIntoTheRoomBesideIsTakenAsStated() {
    String tube =
        TUBE.replace(
                "in: store, wall: north, from: west 6 ft",
                "in: store, wall: south, from: east 2 ft")
            .replace(
                "in: loft, wall: north, from: west 6 ft", "in: den, wall: north, from: west 1 ft")
            .replace("length: 7 m", "length: 6 m");
    WrittenHouse house = WrittenHouse.of(SPLIT.replace("desk, in: loft", "desk, in: den") + tube);
    Plan plan = house.plan("outside");
    assertEquals(List.of(), plan.unrouted());
    assertEquals(List.of(), refusals(plan, house));
  }

  /**
   * Whoever opens that wall and sleeves it states the sleeve: its boxes are in the wall itself. The
   * store's floor lies 51 in over the den's, so 16 in there are 67 in here; core to core of the two
   * walls, 4-1/2 in from face to face, it is shorter than 9 in.
   */
  @Test
  void aSleeveThroughTheWallBetweenIsOne() {
    String sleeve =
        """
        hollows:
          - conduit: sleeve
            from: { in: store, wall: east, from: south 6 ft, height: 16 in }
            to: { in: den, wall: west, from: south 6 ft, height: 67 in }
            inside-diameter: 25 mm
            bends: 0
            length: 9 in
        """;
    WrittenHouse house = WrittenHouse.of(SPLIT.replace("desk, in: loft", "desk, in: den") + sleeve);
    Plan plan = house.plan("outside");
    assertEquals(List.of(), plan.unrouted());
    assertTrue(
        plan.runs().get(0).steps().stream().anyMatch(s -> s.id().equals("conduit/sleeve")),
        plan.runs()::toString);
    assertEquals(List.of(), refusals(plan, house));
  }

  /** Its face is the room's own: a cabinet hangs on it, cable is clipped to it, nothing goes in. */
  @Test
  void cableIsClippedToItsFace() {
    WrittenHouse house =
        WrittenHouse.of(
            SPLIT
                .replace("in: store, wall: north, from: west", "in: store, wall: east, from: south")
                .replace("desk, in: loft", "desk, in: store"));
    Plan plan = house.plan("outside");
    assertEquals(List.of(), plan.unrouted());
    assertEquals(List.of(), refusals(plan, house));
    assertEquals(0, plan.totals().holes());
  }

  /**
   * The loft's west face stands 25 mm further east than the den's below it: cable clipped 12 mm off
   * the den's, 60 in up and so beside the store, lies within the den, not between loft and store.
   */
  @Test
  void cableInARoomIsNotBetweenThoseOverAndBesideIt() {
    WrittenHouse house =
        WrittenHouse.of(
            SPLIT
                .replace(
                    "size: 12 ft x 12 ft, above: den, align: south-west",
                    "size: 11 ft 11 in x 12 ft, above: den, align: south-east")
                .replace(
                    "cabinet: { in: store, wall: north, from: west 4 ft",
                    "cabinet: { in: den, wall: west, from: south 4 ft")
                .replace("desk, in: loft", "desk, in: den"));
    Plan plan = house.plan("outside");
    assertEquals(List.of(), plan.unrouted());
    assertEquals(List.of(), refusals(plan, house));
  }

  @Test
  void soIsAnOldCable() {
    String lead =
        """
        hollows:
          - old-cable: lead
            from: { in: store, wall: south, from: east 2 ft, height: 16 in }
            to: { in: den, wall: north, from: west 1 ft, height: 16 in }
            length: 6 m
            hole: 16 mm
            stapled: no
        """;
    WrittenHouse house = WrittenHouse.of(SPLIT.replace("desk, in: loft", "desk, in: den") + lead);
    Plan plan = house.plan("outside");
    assertEquals(List.of(), plan.unrouted());
    assertEquals(List.of(), refusals(plan, house));
  }

  @Test
  void theLineOutsideGoesNotBetweenThem() {
    String box =
        SPLIT
            .replace(
                "in: store, wall: north, from: west 4 ft",
                "in: store, wall: north, from: east 1 ft")
            .replace(
                "desk, in: loft, wall: north, from: west 7 ft",
                "desk, outside: store south, from: east 1 ft")
            .replace("cables: [cat6]", "cables: [outdoor-cat6], feed: yes");
    WrittenHouse house = WrittenHouse.of(box);
    Plan plan = house.plan();
    assertEquals(List.of(), plan.unrouted());
    assertEquals(List.of(), refusals(plan, house));
  }

  @Test
  void noBoxInTheWallBetween() {
    String text =
        SPLIT.replace("in: loft, wall: north, from: west", "in: den, wall: west, from: south");
    List<Plan.Unrouted> none = WrittenHouse.of(text).plan("outside").unrouted();
    assertTrue(none.toString().contains("floors at different heights"), none::toString);
  }

  /** Nobody else owns it, and what stands in it is not what plain walls are taken to be made of. */
  @Test
  void whatIsSaidOfItIsNotWhatIsSaidOfAPartyWall() {
    WrittenHouse house = WrittenHouse.of(SPLIT);
    List<String> whys = house.hollows().refused().stream().map(r -> r.why()).toList();
    assertTrue(
        whys.stream().noneMatch(w -> w.contains("party wall") || w.contains("somebody else")),
        whys::toString);
    assertTrue(whys.stream().anyMatch(w -> w.contains("different heights")), whys::toString);
    String shut = house.plan("outside").unrouted().toString();
    assertFalse(shut.contains("party wall") || shut.contains("somebody else"), shut);
    for (Wall w : house.placed().walls()) {
      long taken =
          house.placed().assumed().stream().filter(a -> a.startsWith(w.id() + ":")).count();
      assertEquals(w.traits().isSplit(), taken == 0, w.id());
    }
  }

  @Test
  void theRefereeLetsNothingBetweenThem() {
    // Of the same rooms on one level, where the wall may be bored.
    String flat =
        SPLIT
            .replace(" beside: main, step: -4 ft 3 in", " above: main")
            .replace("den: { level: lower", "den: { level: main")
            .replace(
                "loft: { level: upper, size: 12 ft x 12 ft, above: den",
                "loft: { level: lower, size: 12 ft x 12 ft, above: den")
            .replace(
                "  upper: { above: lower, floor: { joists: 2x10, every: 16 in, run: east-west }, ceiling-height: 8 ft }\n",
                "")
            .replace("desk, in: loft", "desk, in: den");
    Plan through = WrittenHouse.of(flat).plan("outside");
    assertEquals(List.of(), through.unrouted());
    List<String> says =
        refusals(through, WrittenHouse.of(SPLIT.replace("desk, in: loft", "desk, in: den")));
    assertTrue(
        says.stream().anyMatch(s -> s.contains("comes between store and den")), says::toString);
  }

  @Test
  void partsDoNotLieOverOneAnother() {
    String over =
        SPLIT
            .replace("loft: { level: upper, size: 12 ft", "loft: { level: upper, size: 14 ft")
            .replace("align: south-west", "align: south-east");
    InputTrouble e = assertThrows(InputTrouble.class, () -> placed(over));
    assertTrue(e.getMessage().contains("stand beside each other"), e::getMessage);
  }

  @Test
  void whatCannotBeIsSaid() {
    says("step: -4 ft 3 in", "", "say which level it stands beside and how much higher");
    says("beside: main, step", "beside: lower, step", "cannot stand beside itself");
    says("beside: main,", "beside: main, above: main,", "put one over the other");
    says(
        "main: { floor: slab,",
        "main: { beside: upper, step: 1 ft, floor: slab,",
        "beside each other in a circle");
  }

  /** One slip is one message: what is written there was only not read. */
  @Test
  void aStepThatCannotBeReadIsNotMissing() {
    String bad = SPLIT.replace("step: -4 ft 3 in", "step: -4 ft 3");
    InputTrouble e = assertThrows(InputTrouble.class, () -> placed(bad));
    assertFalse(e.getMessage().contains("say which level it stands beside"), e::getMessage);
    assertTrue(e.getMessage().contains("the inches have no unit"), e::getMessage);
  }

  /** Each part has a wall of its own there, said by the side it shows. */
  @Test
  void aWallBetweenPartsIsSaidByItsSide() {
    String bad = SPLIT + "walls:\n  - { between: [store, den], bearing: yes }\n";
    InputTrouble e = assertThrows(InputTrouble.class, () -> placed(bad));
    assertTrue(
        e.getMessage().contains("side: store SIDE for a wall between split levels"), e::getMessage);
  }

  private static void says(String text, String changed, String message) {
    String bad = SPLIT.replace(text, changed);
    InputTrouble e = assertThrows(InputTrouble.class, () -> placed(bad));
    assertTrue(e.getMessage().contains(message), e::getMessage);
  }
}
