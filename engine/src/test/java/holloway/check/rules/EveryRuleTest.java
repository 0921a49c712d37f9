package holloway.check.rules;

import static holloway.check.rules.Found.find;
import static holloway.check.rules.Found.of;
import static holloway.check.rules.ToyCase.at;
import static holloway.check.rules.ToyCase.box;
import static holloway.check.rules.ToyCase.toy;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.geometry.Box;
import holloway.geometry.Point3;
import holloway.hollow.AccessPlace;
import holloway.hollow.HollowKind;
import holloway.hollow.SiteKind;
import holloway.house.RulePlace;
import holloway.house.Side;
import holloway.house.Thing;
import holloway.limits.OwnRule;
import holloway.limits.RuleKey;
import holloway.pack.GermanWords;
import holloway.request.Job;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Every rule has a house that triggers it, one that only just does not, and a full entry. */
class EveryRuleTest {
  /** What is found of the rule in a house over its limit, and in one at it. */
  private record Houses(List<Finding> over, List<Finding> at) {}

  /** What toy houses call their outlets, tubes and rooms. */
  private static final Set<String> NAMES =
      Set.of(
          "desk",
          "den",
          "cat6",
          "tube",
          "yard",
          "hall",
          "main",
          "attic",
          "shop",
          "roof",
          "outdoor-cat6",
          "outdoor-fibre",
          "os2",
          "om4");

  private final Map<String, Houses> cases = new TreeMap<>();

  private void rule(String id, List<Finding> over, List<Finding> at) {
    Houses h = new Houses(of(id, over), of(id, at));
    Houses before = cases.put(id, h);
    // Where a rule has several houses each of them triggers it, and each only just does not.
    if (before != null) {
      assertFalse(h.over().isEmpty(), id + " is not triggered");
      assertFalse(before.over().isEmpty(), id + " is not triggered");
      assertEquals(List.of(), before.at(), id + " at its limit");
      List<Finding> all = new ArrayList<>(before.over());
      all.addAll(h.over());
      cases.put(id, new Houses(all, h.at()));
    }
  }

  private void fill() {
    HoleCases.all().forEach((id, h) -> rule(id, h.over(), h.at()));
    runs();
    CableCases.all(this::rule);
    NotchCases.all().forEach(h -> rule("notched-member", h.over(), h.at()));
    walls();
    ages();
  }

  /** What each rule finds in the houses that trigger it. */
  Map<String, List<Finding>> triggered() {
    fill();
    Map<String, List<Finding>> out = new TreeMap<>();
    cases.forEach((id, h) -> out.put(id, h.over()));
    return out;
  }

  @Test
  void everyRuleHasBothHousesAndAnEntry() {
    fill();
    for (PlanRule r : PlanRules.all()) {
      Houses h = cases.get(r.id());
      assertTrue(h != null, "no houses for " + r.id());
      assertFalse(h.over().isEmpty(), r.id() + " is not triggered");
      assertEquals(List.of(), h.at(), r.id() + " at its limit");
      assertFalse(r.entry().severity().isBlank() || r.entry().source().isBlank(), r.id());
      assertFalse(r.entry().limit().isBlank(), r.id());
      h.over().forEach(EveryRuleTest::assertFull);
    }
    assertEquals(PlanRules.all().size(), cases.size());
    List<Finding> all = cases.values().stream().flatMap(h -> h.over().stream()).toList();
    assertEquals(Set.of(), GermanWords.unsaid(all, NAMES));
  }

  /** What was measured, the limit and what to do stand apart, and the text ends with the last. */
  private static void assertFull(Finding f) {
    assertFalse(
        f.measured().isBlank() || f.limit().isBlank() || f.remedy().isBlank(), f.toString());
    assertTrue(f.text().endsWith(" " + f.remedy()), f.toString());
    String inTheUk = f.from().in(Optional.of(Source.Of.UK)).words();
    assertFalse(inTheUk.matches(".*\\b(NEC|IRC|OSHA|CFR|EPA)\\b.*"), inTheUk);
  }

  /** What hangs on a run's length and spaces. */
  private void runs() {
    ToyCase short1 = toy().laid("out", HollowKind.OUTSIDE_FACE, 300);
    rule(
        "indoor-cable-outside",
        toy().laid("out", HollowKind.OUTSIDE_FACE, 301).find("cat6", 12),
        short1.find("cat6", 12));
    rule(
        "cold-pull",
        toy().laid("out", HollowKind.OUTSIDE_FACE, 3001).find("cat6", 12),
        toy().laid("out", HollowKind.OUTSIDE_FACE, 3000).find("cat6", 12));
    // 4 ft = 1219.2 mm
    rule(
        "support-spacing",
        toy().laid("crawl", HollowKind.CRAWLSPACE, 1219.3).find("cat6", 12),
        toy().laid("crawl", HollowKind.CRAWLSPACE, 1219.2).find("cat6", 12));
    // 1-1/4 in = 31.75 mm of lining below the cable
    rule("screws-in-the-ceiling", onTheLining(31.7), onTheLining(31.8));
    rule("screws-in-the-wall", behindTheBoard(31.7), behindTheBoard(31.8));
    // 50 ft = 15.24 m; the metres outside do not count
    rule(
        "outdoor-cable-indoors",
        toy().laid("attic", HollowKind.ATTIC, 15241).find("outdoor-cat6", 20),
        toy()
            .laid("attic", HollowKind.ATTIC, 15240)
            .laid("out", HollowKind.OUTSIDE_FACE, 9000)
            .find("outdoor-cat6", 30));
    // the US pack's own third is not looser than itself
    rule("own-rules", own(0.34), own(1.0 / 3));
    // the toy's hole through the west top plate is of 13 mm
    rule("own-rule-broken", ownBore(12), ownBore(13));
    rule(
        "return-air",
        toy()
            .space("air", HollowKind.RETURN_AIR, box(380, 89, 2300))
            .fished("air", HollowKind.RETURN_AIR, at(100, 44, 100), at(100, 44, 250))
            .find("cat6", 12),
        toy()
            .space("air", HollowKind.RETURN_AIR, box(380, 89, 2300))
            .fished("air", HollowKind.RETURN_AIR, at(0, 44, 100), at(380, 44, 100))
            .find("cat6", 12));
    rule(
        "riser-cable",
        toy().through(SiteKind.PLATE_STACK).find("cat6", 12),
        toy().through(SiteKind.TOP_PLATE).find("cat6", 12));
    // outdoor-cat6 is thicker than 0.25 in; 10 ft = 3.048 m
    rule("thick-cmx-cable", cmx(3049), cmx(3048));
  }

  /** Cable along the void over the shop's ceiling, whose foot lies so many mm over it. */
  private static List<Finding> onTheLining(double mm) {
    long foot = 2_387_000_000L + Math.round(mm * 1e6);
    Box box = new Box(0, 4_000_000_000L, 900_000_000L, 1_200_000_000L, foot, foot + 19_000_000);
    return toy()
        .space("straps", HollowKind.BATTEN_VOID, box)
        .fished(
            "straps",
            HollowKind.BATTEN_VOID,
            new Point3(500_000_000, 1_000_000_000, foot + 9_000_000),
            new Point3(2_500_000_000L, 1_000_000_000, foot + 9_000_000))
        .find("cat6", 12);
  }

  /** Cable along level battens, so many mm behind the face of the east wall. */
  private static List<Finding> behindTheBoard(double mm) {
    long near = Math.round(mm * 1e6);
    Box box = new Box(0, 3_000_000_000L, near, near + 38_000_000, 100_000_000, 650_000_000);
    return toy()
        .space("battens", HollowKind.SERVICE_VOID, box)
        .fished(
            "battens",
            HollowKind.SERVICE_VOID,
            new Point3(500_000_000, near + 19_000_000, 400_000_000),
            new Point3(2_500_000_000L, near + 19_000_000, 400_000_000))
        .find("cat6", 12);
  }

  private static List<Finding> cmx(double mm) {
    Job cmx =
        new Job(
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Map.of("outdoor-cat6", Job.Listing.CMX));
    return toy()
        .laid("attic", HollowKind.ATTIC, mm)
        .laid("out", HollowKind.OUTSIDE_FACE, 9000)
        .job(cmx)
        .find("outdoor-cat6", 20);
  }

  private static List<Finding> own(double share) {
    return toy().rules(RuleKey.JOIST_HOLE, share, "fraction").find("cat6", 12);
  }

  private static List<Finding> ownBore(long widest) {
    return toy()
        .own(
            new OwnRule.Bore(
                new OwnRule.Words("local rules of B: 4.6", Severity.LAW, Optional.empty()),
                Set.of(OwnRule.Part.TOP_PLATE),
                Length.mm(widest)))
        .find("cat6", 12);
  }

  /** What hangs on boxes and things on the walls. */
  private void walls() {
    ToyCase leg =
        toy()
            .thing(Thing.Kind.SOCKET, Side.EAST, 1000, 1000)
            .fished("east/bay-800", HollowKind.STUD_BAY, at(4057, 1000, 2324), at(4057, 1000, 400));
    ToyCase next =
        toy()
            .thing(Thing.Kind.SOCKET, Side.EAST, 1500, 1000)
            .fished("east/bay-800", HollowKind.STUD_BAY, at(4057, 1000, 2324), at(4057, 1000, 400));
    rule("power-in-the-bay", leg.find("cat6", 12), next.find("cat6", 12));
    ToyCase light =
        toy()
            .thing(Thing.Kind.LIGHT, Side.EAST, 1000, 1000)
            .fished("east/bay-800", HollowKind.STUD_BAY, at(4057, 1000, 2324), at(4057, 1000, 400));
    List<Finding> lit = of("power-in-the-bay", light.find("cat6", 12));
    // A8-14, common practice: 300 mm = 12 in
    assertTrue(lit.get(0).remedy().contains("fluorescent one keep 12 in (300 mm)"), lit.toString());
    assertEquals(Set.of(), GermanWords.unsaid(lit, NAMES));
    rule("beside-power", besidePower(1049), besidePower(1050));
    // the shop's east wall begins at 4 m; 48 in = 1219.2 mm, and 300 mm of a fluorescent light
    rule("near-motor-or-lamp", near(Thing.Kind.MOTOR, 2781), near(Thing.Kind.MOTOR, 2780));
    rule(
        "near-motor-or-lamp",
        near(Thing.Kind.FLUORESCENT_LIGHT, 3701),
        near(Thing.Kind.FLUORESCENT_LIGHT, 3700));
    // both plates are 70 mm wide
    rule(
        "shared-box",
        toy().thing(Thing.Kind.SOCKET, Side.EAST, 1069, 400).find("cat6", 12),
        toy().thing(Thing.Kind.SOCKET, Side.EAST, 1070, 400).find("cat6", 12));
    // 24 in = 609.6 mm
    rule(
        "boxes-back-to-back",
        toy().garage().socketBehind(1609).find("cat6", 12),
        toy().garage().socketBehind(1610).find("cat6", 12));
    rule(
        "grommet-in-steel", toy().steel(true).find("cat6", 12), toy().steel(false).find("cat6", 1));
    rule(
        "garage-ceiling",
        toy().garage().ceilingBored(1999).find("cat6", 12),
        toy().garage().ceilingBored(2001).find("cat6", 12));
    // the east wall parts the garage from the house, the west one does not
    rule("garage-patch", patch("east/bay-800"), patch("west/bay-800"));
    rule(
        "bond-at-entrance",
        toy().feed().find("outdoor-cat6", 12),
        toy().feed().find("outdoor-fibre", 12));
  }

  /** A cable that comes straight at it from the west, to so far. */
  private static List<Finding> near(Thing.Kind kind, long to) {
    return noise(kind, to).find("cat6", 12);
  }

  /** Glass minds no motor. */
  @Test
  void fibreMayPassAMotor() {
    assertEquals(
        List.of(), of("near-motor-or-lamp", noise(Thing.Kind.MOTOR, 3900).find("om4", 12)));
  }

  private static ToyCase noise(Thing.Kind kind, long to) {
    return toy()
        .thing(kind, Side.EAST, 1000, 1000)
        .fished("attic", HollowKind.ATTIC, at(1000, 1000, 1000), at(to, 1000, 1000));
  }

  private static List<Finding> patch(String bay) {
    return toy()
        .garage()
        .patched(AccessPlace.Kind.WALL_PATCH, bay, at(4057, 1000, 400))
        .find("cat6", 12);
  }

  private static List<Finding> besidePower(long from) {
    return toy()
        .powerInWall(from)
        .fished("east/bay-800", HollowKind.STUD_BAY, at(4057, 1000, 2324), at(4057, 1000, 400))
        .find("cat6", 12);
  }

  /** What hangs on the age of the house and on its attic. */
  private void ages() {
    rule(
        "vermiculite",
        toy().built(1990).roof(ToyRoofs.hatched(559)).find("cat6", 12),
        toy().built(1991).roof(ToyRoofs.hatched(559)).find("cat6", 12));
    // 22 in = 558.8 mm
    rule(
        "attic-hatch",
        toy().roof(ToyRoofs.hatched(558)).find("cat6", 12),
        toy().roof(ToyRoofs.hatched(559)).find("cat6", 12));
    rule(
        "old-paint",
        toy().built(1977).patches(7).find("cat6", 12),
        toy().built(1977).patches(6).find("cat6", 12));
    rule(
        "old-wiring",
        toy().built(1949).laid("attic", HollowKind.ATTIC, 1000).find("cat6", 12),
        toy().built(1950).laid("attic", HollowKind.ATTIC, 1000).find("cat6", 12));
    assertEquals(
        List.of(),
        of("old-paint", toy().place(RulePlace.UK).built(1900).patches(9).find("cat6", 12)));
    assertEquals(2, find(holloway.check.ToyPlan.good(), holloway.check.ToyHouse.build()).size());
  }
}
