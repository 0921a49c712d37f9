package holloway.check.rules;

import static holloway.check.ToySteps.p;
import static holloway.check.rules.Found.find;

import holloway.check.Spoiled;
import holloway.check.ToyHouse;
import holloway.check.ToyPlan;
import holloway.finding.Finding;
import holloway.framing.MemberKind;
import holloway.geometry.Box;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.house.Fill;
import holloway.plan.Plan;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** For each rule about a hole: a house over its limit, and one at it. */
final class HoleCases {
  private static final long MM = ToyHouse.MM;

  record Both(List<Finding> over, List<Finding> at) {}

  private HoleCases() {}

  static Map<String, Both> all() {
    Map<String, Both> out = new TreeMap<>();
    List<Finding> good = find(ToyPlan.good(), ToyHouse.build());
    Plan bare = Spoiled.with(ToyPlan.good(), List.of(), ToyPlan.good().works());
    out.put("seal-at-plate", new Both(good, find(bare, ToyHouse.build())));
    out.put("garage-separation", new Both(board(true), board(false)));
    out.put("fire-block-crossed", new Both(block(MemberKind.FIRE_BLOCK), block(MemberKind.BATTEN)));
    // a third of 153 mm is 51 mm; of 152 mm it is less
    out.put("bored-member", new Both(joist(160, 80, 57), joist(184, 92, 51)));
    out.put("holes-apart", new Both(twoInOnePlate(38), twoInOnePlate(39)));
    out.put("nail-plate", new Both(withBit(25), withBit(24)));
    // half of the toy's 88 mm plate
    out.put("plate-over-half", new Both(withBit(45), withBit(44)));
    out.put("outer-wall-hole", new Both(skin("outside/east"), skin("attic")));
    out.put("find-the-stud-first", new Both(assumed(true), assumed(false)));
    return out;
  }

  private static List<Finding> withBit(int mm) {
    return find(Spoiled.withBit(mm), ToyHouse.build());
  }

  private static List<Finding> board(boolean garage) {
    LargerToy toy = new LargerToy(ToyHouse.build(Fill.EMPTY, garage));
    toy.site(
        "east/board/2000",
        SiteKind.WALL_BOARD,
        p(4013, 1400, 300),
        p(4000, 1400, 300),
        "east/board-1");
    return find(toy.plan(13), toy.house());
  }

  private static List<Finding> block(MemberKind kind) {
    LargerToy toy = new LargerToy(ToyHouse.build());
    toy.member(
        "east/block",
        kind,
        new Box(4013 * MM, 4101 * MM, 1219 * MM, 1581 * MM, 1181 * MM, 1219 * MM));
    toy.site(
        "east/block/1400", SiteKind.BLOCK, p(4057, 1400, 1181), p(4057, 1400, 1219), "east/block");
    return find(toy.plan(13), toy.house());
  }

  private static List<Finding> joist(long depth, long height, int bit) {
    LargerToy toy = new LargerToy(ToyHouse.build());
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

  private static List<Finding> twoInOnePlate(long apart) {
    LargerToy toy = new LargerToy(ToyHouse.build());
    toy.site(
        "west/top/other",
        SiteKind.TOP_PLATE,
        p(-57, 1000 + apart, 2324),
        p(-57, 1000 + apart, 2400),
        "west/top-1",
        "west/top-2");
    return find(toy.plan(13), toy.house());
  }

  private static List<Finding> skin(String to) {
    LargerToy toy = new LargerToy(ToyHouse.build());
    toy.outside("outside/east");
    toy.site(
        new Site(
            "east/skin/1400",
            SiteKind.OUTER_SKIN,
            p(4101, 1400, 500),
            p(4114, 1400, 500),
            "east/bay-1200",
            to,
            List.of("east/board-0"),
            List.of(),
            25,
            32,
            false,
            false));
    return find(toy.plan(13), toy.house());
  }

  private static List<Finding> assumed(boolean unsure) {
    Plan good = ToyPlan.good();
    Plan.PlannedHole h = good.holes().get(0);
    Plan.PlannedHole hole =
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
            unsure,
            h.otherMethods(),
            h.bores(),
            h.axis(),
            h.through());
    return find(Spoiled.with(good, List.of(hole), good.works()), ToyHouse.build());
  }
}
