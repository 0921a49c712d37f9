package holloway.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.check.ToyHouse;
import holloway.check.ToyPlan;
import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.framing.Framed;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.HollowHouse;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.house.Fill;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Each rule: applies, at its limit, just over it, does not apply. */
class PlanRulesTest {
  private static final long MM = ToyHouse.MM;

  @Test
  void holesThroughPlatesAreToBeSealed() {
    List<Finding> found = of("seal-at-plate", find(ToyPlan.good(), ToyHouse.build()));
    assertEquals(2, found.size());
    assertEquals(Severity.LAW, found.get(0).severity());
    assertFalse(found.get(0).broken(), "a duty, not a breach");
    assertTrue(found.get(0).source().contains("R302.11"));
    assertEquals(Optional.of(ToyPlan.p(-57, 1000, 2362)), found.get(0).place().at());
  }

  @Test
  void aPlateHoleInACommonHouseIsNoGarageMatter() {
    assertEquals(List.of(), of("garage-separation", find(ToyPlan.good(), ToyHouse.build())));
  }

  @Test
  void aHoleAndABoxThroughTheGarageSeparationAreToBeSealed() {
    Toy toy = new Toy(ToyHouse.build(Fill.EMPTY, true));
    toy.site(
        "east/board/2000",
        SiteKind.WALL_BOARD,
        p(4013, 1400, 300),
        p(4000, 1400, 300),
        "east/board-1");
    List<Finding> found = of("garage-separation", find(toy.plan(13), toy.house()));
    assertEquals(
        List.of("east/board/2000", "desk"), found.stream().map(f -> f.place().id()).toList());
    assertTrue(found.get(0).source().contains("R302.5.3"));
    assertTrue(found.get(1).text().contains("box for desk"));
  }

  @Test
  void aFireBlockThatIsBoredIsToBeClosed() {
    Toy toy = new Toy(ToyHouse.build());
    toy.member(
        "east/block",
        MemberKind.FIRE_BLOCK,
        new Box(4013 * MM, 4101 * MM, 1219 * MM, 1581 * MM, 1181 * MM, 1219 * MM));
    toy.site(
        "east/block/1400", SiteKind.BLOCK, p(4057, 1400, 1181), p(4057, 1400, 1219), "east/block");
    assertEquals(1, of("fire-block-crossed", find(toy.plan(13), toy.house())).size());
    assertEquals(0, of("fire-block-crossed", find(ToyPlan.good(), ToyHouse.build())).size());
  }

  @Test
  void aWideHoleInANarrowPlateWantsSteel() {
    // 88 mm core: (88 - d) / 2 >= 31.75 mm holds up to 24.5 mm
    assertEquals(0, of("nail-plate", find(withBit(22), ToyHouse.build())).size());
    assertEquals(1, of("nail-plate", find(withBit(25), ToyHouse.build())).size());
    assertEquals(
        Severity.PRACTICE, of("nail-plate", find(withBit(32), ToyHouse.build())).get(0).severity());
  }

  @Test
  void aJoistTakesAThirdOfItsDepthTwoInchesFromTheEdges() {
    assertEquals(List.of(), of("bored-member", joist(184, 92, 51)));
    // 184 / 3 = 61 mm, but 92 - 32 - 51 < 0 for an edge of 2 in off centre
    List<Finding> low = of("bored-member", joist(184, 60, 38));
    assertEquals(1, low.size());
    assertTrue(low.get(0).broken());
    assertEquals(Severity.LAW, low.get(0).severity());
    assertTrue(
        of("bored-member", joist(140, 70, 51))
            .get(0)
            .text()
            .contains("third of the joist's depth"));
  }

  private static List<Finding> joist(long depth, long height, int bit) {
    Toy toy = new Toy(ToyHouse.build());
    toy.member(
        "floor/joist",
        MemberKind.JOIST,
        new Box(0, 4000 * MM, 1000 * MM, 1038 * MM, -depth * MM, 0));
    toy.site(
        "floor/joist/2000",
        SiteKind.JOIST,
        p(2000, 1000, height - depth),
        p(2000, 1038, height - depth),
        "floor/joist");
    return find(toy.plan(bit), toy.house());
  }

  @Test
  void twoHolesInOnePlateStandThreeDiametersApart() {
    assertEquals(0, of("holes-apart", twoInOnePlate(39)).size());
    List<Finding> near = of("holes-apart", twoInOnePlate(38));
    assertEquals(1, near.size());
    assertEquals(Severity.PRACTICE, near.get(0).severity());
    assertTrue(near.get(0).broken());
  }

  private static List<Finding> twoInOnePlate(long apart) {
    Toy toy = new Toy(ToyHouse.build());
    toy.site(
        "west/top/other",
        SiteKind.TOP_PLATE,
        p(-57, 1000 + apart, 2324),
        p(-57, 1000 + apart, 2400),
        "west/top-1",
        "west/top-2");
    return find(toy.plan(13), toy.house());
  }

  @Test
  void aHoleToTheOutsideSlopesDown() {
    Toy toy = new Toy(ToyHouse.build());
    toy.outside("outside/east");
    toy.sites.add(
        new Site(
            "east/skin/1400",
            SiteKind.OUTER_SKIN,
            p(4101, 1400, 500),
            p(4114, 1400, 500),
            "east/bay-1200",
            "outside/east",
            List.of("east/board-0"),
            List.of(),
            25,
            32,
            false,
            false));
    List<Finding> found = of("outer-wall-hole", find(toy.plan(13), toy.house()));
    assertEquals(1, found.size());
    assertTrue(found.get(0).text().contains("sloping down to the outside"));
  }

  @Test
  void anAssumedLayoutSaysFindTheStudFirst() {
    Plan good = ToyPlan.good();
    Plan.PlannedHole h = good.holes().get(0);
    Plan.PlannedHole unsure =
        new Plan.PlannedHole(
            h.id(),
            h.label(),
            h.kind(),
            h.diameterMm(),
            h.depthMm(),
            h.at(),
            h.between(),
            h.method(),
            h.stand(),
            h.works(),
            h.minutes(),
            h.runs(),
            true,
            h.otherMethods(),
            h.bores(),
            h.axis(),
            h.through());
    Plan plan = ToyPlan.with(good, List.of(unsure, good.holes().get(1)), good.works());
    assertEquals(1, of("find-the-stud-first", find(plan, ToyHouse.build())).size());
    assertEquals(0, of("find-the-stud-first", find(good, ToyHouse.build())).size());
  }

  @Test
  void everyRuleHasItsOwnIdAndSaysWhatItIsAbout() {
    Set<String> ids = new HashSet<>();
    for (PlanRule rule : PlanRules.all()) {
      assertTrue(ids.add(rule.id()), rule.id());
      assertTrue(rule.id().matches("[a-z]+(-[a-z]+)*"), rule.id());
      assertTrue(rule.about().length() > 40 && rule.about().endsWith("."), rule.id());
    }
    assertEquals(ids, PlanRules.about().keySet());
  }

  @Test
  void everyFindingOfAPlanSaysWhereFromWhatAndWhatToDo() {
    for (Finding f : find(withBit(38), ToyHouse.build(Fill.EMPTY, true))) {
      assertFalse(f.source().isBlank());
      assertTrue(f.text().endsWith("."), f.text());
      assertTrue(f.place().at().isPresent(), f.rule());
    }
  }

  private static Plan withBit(int mm) {
    Plan good = ToyPlan.good();
    return ToyPlan.with(
        good,
        List.of(
            ToyPlan.hole(
                "west/top/1000",
                "H1",
                p(-57, 1000, 2362),
                "west/bay-800",
                List.of(ToyPlan.RUN),
                mm,
                1),
            good.holes().get(1)),
        good.works());
  }

  private static List<Finding> find(Plan plan, HollowHouse house) {
    return PlanRules.find(plan, house, ToyPlan.request());
  }

  private static List<Finding> of(String rule, List<Finding> findings) {
    return findings.stream().filter(f -> f.rule().equals(rule)).toList();
  }

  private static Point3 p(double x, double y, double z) {
    return ToyPlan.p(x, y, z);
  }

  /**
   * The toy house with members, hollows and crossings added; its plan passes all added crossings.
   */
  private static final class Toy {
    private final HollowHouse base;
    private final List<Member> members;
    private final List<Hollow> hollows;
    private final List<Site> sites = new ArrayList<>();

    Toy(HollowHouse base) {
      this.base = base;
      members = new ArrayList<>(base.framed().members());
      hollows = new ArrayList<>(base.hollows());
    }

    void member(String id, MemberKind kind, Box box) {
      members.add(new Member(id, kind, Frame.WORLD, box, id.split("/")[0], false));
    }

    void outside(String id) {
      hollows.add(
          new Hollow(
              id,
              HollowKind.OUTSIDE_FACE,
              Frame.WORLD,
              new Box(4114 * MM, 4200 * MM, 0, 3000 * MM, 0, 2400 * MM),
              Optional.empty(),
              Fill.EMPTY,
              "east",
              Optional.of("outside")));
    }

    void site(String id, SiteKind kind, Point3 a, Point3 b, String... pierces) {
      sites.add(
          new Site(
              id,
              kind,
              a,
              b,
              "east/bay-1200",
              "attic",
              List.of(pierces),
              List.of(),
              51,
              51,
              false,
              false));
    }

    HollowHouse house() {
      List<Site> all = new ArrayList<>(base.sites());
      all.addAll(sites);
      return new HollowHouse(
          new Framed(base.framed().placed(), members, List.of(), List.of()),
          hollows,
          all,
          base.stands(),
          List.of());
    }

    Plan plan(int bit) {
      Plan good = ToyPlan.good();
      List<Plan.PlannedHole> holes = new ArrayList<>(good.holes());
      for (Site s : sites) {
        holes.add(
            ToyPlan.hole(
                s.id(),
                "H" + (holes.size() + 1),
                s.middle(),
                s.hollowA(),
                List.of(ToyPlan.RUN),
                bit,
                1));
      }
      return ToyPlan.with(good, holes, good.works());
    }
  }
}
