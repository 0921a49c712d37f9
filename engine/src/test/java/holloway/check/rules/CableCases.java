package holloway.check.rules;

import static holloway.check.rules.ToyCase.at;
import static holloway.check.rules.ToyCase.box;
import static holloway.check.rules.ToyCase.toy;

import holloway.finding.Finding;
import holloway.hollow.HollowKind;
import holloway.house.Conduit;
import holloway.house.TubeWay;
import holloway.units.Length;
import java.util.List;

/** Houses for what hangs on the cable: each over a limit, and only just not. */
final class CableCases {
  /** Takes a rule's two houses. */
  @FunctionalInterface
  interface Rule {
    void rule(String id, List<Finding> over, List<Finding> at);
  }

  private CableCases() {}

  /** What hangs on the cable: length, loss, power, turns, pull, tubes. */
  static void all(Rule to) {
    to.rule("link-too-long", toy().find("cat6", 90.1), toy().find("cat6", 90));
    // all of it at 50 C: 90 - 75 x (20 x 0.004 + 10 x 0.006) = 79.5 m
    ToyCase hot = toy().laid("attic", HollowKind.ATTIC, 90000);
    to.rule("link-in-the-heat", hot.find("cat6", 79.6), hot.find("cat6", 79.5));
    to.rule("ten-gigabit-reach", toy().find("cat6", 37.1), toy().find("cat6", 37));
    // 0.4 km x 3.5 + 2 x 0.75 = 2.9 dB
    to.rule("fibre-budget", toy().find("om4", 400.1), toy().find("om4", 400));
    // 4.7 km at 1.0 dB and 9.4 km at 0.5 dB, two pairs of 0.75 dB each: 6.2 dB
    to.rule("fibre-budget", toy().find("os2", 4700.1), toy().find("os2", 4700));
    to.rule("fibre-budget", toy().find("outdoor-fibre", 9400.1), toy().find("outdoor-fibre", 9400));
    // 12.5 ohm / 9.38 ohm a 100 m = 133.26 m
    to.rule(
        "power-at-the-far-end",
        toy().power("class 4").find("cat6", 133.3),
        toy().power("class 4").find("cat6", 133.2));
    ToyCase powered = toy().power("class 8");
    to.rule("bundle-heat", powered.find("cat6", 20, 25), powered.find("cat6", 20, 24));
    // 24.4 mm for 6.1 mm of cable: a void of 30.5 mm leaves just that
    to.rule(
        "tight-turn",
        toy()
            .space("void", HollowKind.DAB_VOID, box(30, 500, 900))
            .fished("void", HollowKind.DAB_VOID, at(15, 0, 0), at(15, 0, 800), at(25, 0, 800))
            .find("cat6", 12),
        toy()
            .space("void", HollowKind.DAB_VOID, box(31, 500, 900))
            .fished("void", HollowKind.DAB_VOID, at(15, 0, 0), at(15, 0, 800), at(25, 0, 800))
            .find("cat6", 12));
    // 0.4247 N/m: up 260 m 110.4 N, up 263 m 111.7 N; 25 lbf are 111.2 N
    to.rule(
        "pull-tension",
        toy().fished("shaft", HollowKind.CHASE, at(0, 0, 0), at(0, 0, 263000)).find("cat6", 12),
        toy().fished("shaft", HollowKind.CHASE, at(0, 0, 0), at(0, 0, 260000)).find("cat6", 12));
    // 6.1 mm in 8.3 mm: 54.0 %; in 8.4 mm: 52.7 %; one cable may take 53 %
    to.rule("cable-between-buildings", link(304.8, "cat6"), tube(26.6, 2, 30));
    to.rule("copper-between-buildings", link(304.8, "cat6"), link(304.8, "om4"));
    // 12 in = 304.8 mm
    to.rule("depth-between-buildings", link(304.7, "om4"), link(304.8, "om4"));
    to.rule("tube-too-full", tube(8.3, 2, 30), tube(8.4, 2, 30));
    to.rule("tube-too-long", tube(26.6, 3, 30), tube(26.6, 2, 30));
    // 90 + 45 + 46 degrees, one over two quarter turns; in two parts none is over
    to.rule("tube-too-long", bent(List.of(), 90, 45, 46), bent(List.of(), 90, 45, 45));
    // a cat6 of 6.1 mm beside one of 7.6: 95.0 of 17.5 squared are 31.0 %
    to.rule("tube-too-full", bent(17.4, List.of("rg6")), bent(17.6, List.of("rg6")));
  }

  private static List<Finding> link(double depth, String cable) {
    return toy()
        .link(Conduit.Kind.TUBE, depth)
        .laid("conduit/yard", HollowKind.CONDUIT, 4000)
        .find(cable, 12);
  }

  private static List<Finding> bent(List<String> holds, Integer... angles) {
    return bent(26.6, holds, angles);
  }

  private static List<Finding> bent(double inside, List<String> holds, Integer... angles) {
    TubeWay.Part part = new TubeWay.Part(Length.mm(4000), List.of(angles));
    return toy()
        .conduit(inside, 1, 4)
        .tubeWay(new TubeWay(List.of(part), holds))
        .laid("conduit/tube", HollowKind.CONDUIT, 4000)
        .find("cat6", 6);
  }

  private static List<Finding> tube(double inside, int bends, double metres) {
    return toy()
        .conduit(inside, bends, metres)
        .laid("conduit/tube", HollowKind.CONDUIT, 4000)
        .find("cat6", 12);
  }
}
