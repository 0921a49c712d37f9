package holloway.takeoff;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.catalog.Cable;
import holloway.catalog.Cables;
import holloway.plan.Plan;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** A cable is never cut short, whatever its kind, its ends and its route. */
class CutLengthPropertyTest {
  private static Plan.PlannedRun run(String from, String cable, long mm) {
    double m = BigDecimal.valueOf(mm, 3).doubleValue();
    return new Plan.PlannedRun("r", from, "desk", cable, m, m, List.of());
  }

  @Provide
  Arbitrary<String> kinds() {
    return Arbitraries.of(Cables.all().stream().map(Cable::kind).toList());
  }

  @Provide
  Arbitrary<String> ends() {
    return Arbitraries.of("cabinet", "hall");
  }

  @Property(tries = 3000, seed = "6")
  void neverShort(
      @ForAll("ends") String from,
      @ForAll("kinds") String kind,
      @ForAll @LongRange(min = 1, max = 120_000) long mm) {
    CutLength cut = CutLength.of(run(from, kind, mm));
    // The slacks again, from the rows A2-11 to A2-13 and not from the class.
    long outlet = Cable.get(kind).fibre() ? 1000 : 300;
    long least = mm + outlet + (from.equals("cabinet") ? 3000 : outlet);
    BigDecimal got = BigDecimal.valueOf(cut.metres()).movePointRight(3);
    assertTrue(got.compareTo(BigDecimal.valueOf(least)) >= 0, got + " < " + least);
    BigDecimal over = got.subtract(BigDecimal.valueOf(least));
    assertTrue(
        cut.lead().isPresent() || over.compareTo(BigDecimal.valueOf(100)) < 0,
        "less than a tenth of a metre over: " + over);
  }

  @Test
  void exactlyOnATenthAndAMillimetrePast() {
    assertEquals(13.3, CutLength.of(run("cabinet", "cat6", 10_000)).metres());
    assertEquals(13.4, CutLength.of(run("cabinet", "cat6", 10_001)).metres());
    // 6 + 1 + 3 = 10 m: the lead of 10 m just does; a millimetre more takes the next one.
    assertEquals(10, CutLength.of(run("cabinet", "om4", 6_000)).lead().getAsInt());
    assertEquals(15, CutLength.of(run("cabinet", "om4", 6_001)).lead().getAsInt());
  }

  /** 300 mm for each wall that a link between buildings ends at, half at either end. */
  @Test
  void aLinkBetweenBuildingsHasDripLoops() {
    List<Plan.PlanStep> steps =
        Stream.of(
                "conduit/yard/outdoor-a/cut-out", "conduit/yard", "conduit/yard/outdoor-b/cut-out")
            .map(CutLengthPropertyTest::step)
            .toList();
    CutLength cut =
        CutLength.of(new Plan.PlannedRun("r", "cabinet", "desk", "outdoor-cat6", 10, 10, steps));
    assertEquals(13.9, cut.metres());
    assertEquals(3.3, cut.slackFromM(), 1e-9);
    assertEquals(0.6, cut.slackToM(), 1e-9);
    CutLength one =
        CutLength.of(
            new Plan.PlannedRun("r", "cabinet", "desk", "cat6", 10, 10, steps.subList(0, 2)));
    assertEquals(13.6, one.metres());
  }

  private static Plan.PlanStep step(String id) {
    return new Plan.PlanStep(
        id.endsWith("/cut-out") ? "crossing" : "leg",
        id,
        Optional.empty(),
        Optional.empty(),
        List.of(),
        0,
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  @Test
  void theCoilOfALead() {
    Plan.PlannedRun om4 = run("cabinet", "om4", 8_000);
    // 15 m lead, 8 + 4 used: 3 m over; a turn of 300 mm across is 0.942 m: 3 turns.
    assertEquals(new Coil("cabinet", 25, 3), Coil.of(om4, CutLength.of(om4)));
    Plan.PlannedRun outdoor = run("hall", "outdoor-fibre", 8_000);
    // 8 + 2 = 10 m: nothing over; ten diameters of 5 mm (A2-8).
    assertEquals(new Coil("hall", 50, 0), Coil.of(outdoor, CutLength.of(outdoor)));
  }
}
