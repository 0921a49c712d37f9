package holloway.check.rules;

import static holloway.check.rules.Found.of;
import static holloway.check.rules.ToyCase.at;
import static holloway.check.rules.ToyCase.box;
import static holloway.check.rules.ToyCase.toy;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.hollow.HollowKind;
import holloway.hollow.SiteKind;
import holloway.house.Conduit;
import holloway.request.Job;
import holloway.units.Length;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a house file states under {@code job} decides the rules that hang on it. */
class JobTest {
  private static Job speed(Job.Speed s) {
    return new Job(Optional.of(s), Optional.empty(), Optional.empty(), Map.of());
  }

  private static Job cold(int celsius) {
    return new Job(Optional.empty(), Optional.of(celsius), Optional.empty(), Map.of());
  }

  private static Job listed(String cable, Job.Listing l) {
    return new Job(Optional.empty(), Optional.empty(), Optional.empty(), Map.of(cable, l));
  }

  @Test
  void theSpeedAsked() {
    // TSB-155: 37 m of Cat 6; 10GBASE-T is not made for Cat 5e
    assertEquals(1, of("ten-gigabit-reach", toy().find("cat6", 40)).size());
    assertEquals(
        0, of("ten-gigabit-reach", toy().job(speed(Job.Speed.G5)).find("cat6", 40)).size());
    Finding asked =
        of("ten-gigabit-reach", toy().job(speed(Job.Speed.G10)).find("cat6", 40)).get(0);
    assertTrue(asked.remedy().startsWith("10 Gbit/s are asked"), asked.remedy());
    assertEquals(0, of("ten-gigabit-reach", toy().find("cat5e", 5)).size());
    Finding five = of("ten-gigabit-reach", toy().job(speed(Job.Speed.G10)).find("cat5e", 5)).get(0);
    assertEquals(Severity.STANDARD, five.severity());
    assertTrue(five.broken());
    // IEEE 802.3bz, TSB-5021: 5GBASE-T on Cat 5e hangs on alien crosstalk; 2.5GBASE-T does not
    Finding leaks = of("ten-gigabit-reach", toy().job(speed(Job.Speed.G5)).find("cat5e", 5)).get(0);
    assertTrue(leaks.limit().startsWith("Cat 6 or better to "), leaks.limit());
    assertTrue(!leaks.broken() && leaks.source().contains("TSB-5021"), leaks.toString());
    assertEquals(
        0, of("ten-gigabit-reach", toy().job(speed(Job.Speed.G2_5)).find("cat5e", 5)).size());
  }

  @Test
  void theColdOfTheDay() {
    ToyCase attic = toy().laid("attic", HollowKind.ATTIC, 3001);
    assertEquals(0, of("cold-pull", attic.find("cat6", 12)).size(), "nothing is stated");
    assertEquals(0, of("cold-pull", attic.job(cold(0)).find("cat6", 12)).size());
    List<Finding> cold = of("cold-pull", attic.job(cold(-1)).find("cat6", 12));
    assertEquals("-1 C (30 F)", cold.get(0).measured());
    ToyCase outside = toy().laid("out", HollowKind.OUTSIDE_FACE, 3001);
    assertEquals(1, of("cold-pull", outside.find("cat6", 12)).size());
    assertEquals(0, of("cold-pull", outside.job(cold(4)).find("cat6", 12)).size());
  }

  @Test
  void longCordsShortenTheLink() {
    // A1-4: H = 102 - 1.2 C; with 20 m of cords 78 m
    Job cords =
        new Job(Optional.empty(), Optional.empty(), Optional.of(Length.mm(20_000)), Map.of());
    assertEquals(0, of("link-too-long", toy().job(cords).find("cat6", 78)).size());
    List<Finding> over = of("link-too-long", toy().job(cords).find("cat6", 78.1));
    assertEquals(1, over.size());
    assertTrue(over.get(0).limit().contains("78.0 m"), over.get(0).limit());
    assertEquals(0, of("link-too-long", toy().find("cat6", 78.1)).size());
    Job few = new Job(Optional.empty(), Optional.empty(), Optional.of(Length.mm(2_000)), Map.of());
    assertEquals(1, of("link-too-long", toy().job(few).find("cat6", 90.1)).size(), "90 m is most");
  }

  @Test
  void whatIsPrintedOnTheJacket() {
    ToyCase up = toy().through(SiteKind.PLATE_STACK);
    assertEquals(
        1, of("riser-cable", up.job(listed("cat6", Job.Listing.CM)).find("cat6", 12)).size());
    assertEquals(
        0, of("riser-cable", up.job(listed("cat6", Job.Listing.CMR)).find("cat6", 12)).size());
    ToyCase in = toy().laid("attic", HollowKind.ATTIC, 15_241);
    assertEquals(1, of("outdoor-cable-indoors", in.find("outdoor-cat6", 20)).size());
    Job both = listed("outdoor-cat6", Job.Listing.CMR);
    assertEquals(0, of("outdoor-cable-indoors", in.job(both).find("outdoor-cat6", 20)).size());
    Finding open =
        of("outdoor-cable-indoors", in.job(Job.UNSTATED).find("outdoor-cat6", 20)).get(0);
    assertFalse(open.broken(), "nothing is stated");
    Job none = listed("outdoor-cat6", Job.Listing.NONE);
    Finding told = of("outdoor-cable-indoors", in.job(none).find("outdoor-cat6", 20)).get(0);
    assertTrue(told.broken() && told.severity() == Severity.LAW, told.toString());
    ToyCase air =
        toy()
            .space("air", HollowKind.RETURN_AIR, box(380, 89, 2300))
            .fished("air", HollowKind.RETURN_AIR, at(100, 44, 100), at(100, 44, 250));
    assertEquals(1, of("return-air", air.find("cat6", 12)).size());
    assertEquals(
        0, of("return-air", air.job(listed("cat6", Job.Listing.CMP)).find("cat6", 12)).size());
  }

  /** What lies in a duct or a span between buildings is not yet indoors. */
  @Test
  void theWayToAnotherBuildingIsOutdoors() {
    ToyCase yard =
        toy().link(Conduit.Kind.TUBE, 304.8).laid("conduit/yard", HollowKind.CONDUIT, 20_000);
    assertEquals(0, of("outdoor-cable-indoors", yard.find("outdoor-cat6", 30)).size());
    ToyCase inside = toy().conduit(26.6, 2, 30).laid("conduit/tube", HollowKind.CONDUIT, 20_000);
    assertEquals(1, of("outdoor-cable-indoors", inside.find("outdoor-cat6", 30)).size());
  }

  /** A2-3, A2-7, A2-8: the source is that of the cable that turns. */
  @Test
  void aTightTurnNamesItsOwnSource() {
    ToyCase thin =
        toy()
            .space("void", HollowKind.DAB_VOID, box(20, 500, 900))
            .fished("void", HollowKind.DAB_VOID, at(15, 0, 0), at(15, 0, 800), at(10, 0, 800));
    assertEquals("TIA-568.0-D", of("tight-turn", thin.find("cat6", 12)).get(0).source());
    assertEquals("TIA-568-B.3, 568.0", of("tight-turn", thin.find("om4", 12)).get(0).source());
    String outdoor = of("tight-turn", thin.find("outdoor-fibre", 12)).get(0).source();
    assertTrue(outdoor.startsWith("later editions of TIA-568.3"), outdoor);
  }
}
