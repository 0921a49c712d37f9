package holloway.report;

import static holloway.report.ToySheet.metric;
import static holloway.report.ToySheet.sheet;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Toy;
import holloway.plan.Plan;
import holloway.units.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the text says of totals, proof, hours, findings and what was assumed. */
class PlanTextProofTest {
  @Test
  void theHeadSaysTotalsAndProof() {
    String text = metric();
    assertTrue(text.contains("  work     1 h 40 min in all\n"), text);
    assertTrue(text.contains("3 runs, 30.0 m of route, 41.6 m to cut or buy"), text);
    assertTrue(text.contains("no plan can cost less than 1 h 39 min"), text);
    assertTrue(text.contains("within 1.0 %"), text);
    assertTrue(text.contains("  missing  1 run without a route"), text);
  }

  @Test
  void theProofOfFewestHolesCountsHoles() {
    Plan p = Toy.bare();
    Plan.Totals t = p.totals();
    Plan.Totals many =
        new Plan.Totals(
            30_001_000_000L,
            20_000_900_000L,
            0.33,
            100,
            3,
            0,
            30,
            30,
            0,
            t.money(),
            "USD",
            List.of());
    Plan plan =
        new Plan(
            1,
            p.house(),
            "fewest-holes",
            10_000,
            p.inputs(),
            many,
            p.runs(),
            p.holes(),
            p.unrouted(),
            p.works(),
            p.findings(),
            p.materials(),
            p.survey());
    String text =
        PlanText.of(
            new Sheet(
                plan, Toy.placed(), Toy.request(), Map.of(), false, UnitSystem.METRIC, Ink.PLAIN));
    assertTrue(text.contains("no plan needs fewer than 2 holes"), text);
  }

  @Test
  void dislikeOfCableInSightIsNoWork() {
    Sheet s = sheet(Toy.placed(), false, UnitSystem.METRIC, Ink.PLAIN);
    Plan.Totals t = s.plan().totals();
    Plan seen =
        s.plan()
            .withRuns(
                s.plan().runs(),
                new Plan.Totals(
                    t.objective(),
                    t.bound(),
                    t.gap(),
                    100,
                    2,
                    0,
                    30,
                    30,
                    1,
                    t.money(),
                    "USD",
                    t.zones()));
    String text =
        PlanText.of(
            new Sheet(
                seen, s.placed(), s.request(), s.cards(), false, UnitSystem.METRIC, Ink.PLAIN));
    assertTrue(text.contains("30 min stand for dislike of cable in sight, no work"), text);
    assertTrue(text.contains("dislike of cable in sight (no work)"), text);
  }

  @Test
  void hoursAddUpAndSayWhereTheyAreFrom() {
    String text = metric();
    assertTrue(text.contains("our own experience, no published source (edit the effort"), text);
    int in = 0;
    for (String line : text.split("HOURS\n")[1].split("Minutes are")[0].lines().toList()) {
      if (line.strip().endsWith("min") && !line.contains("in all")) {
        String[] words = line.strip().split(" +");
        in += Integer.parseInt(words[words.length - 2]);
      }
    }
    assertEquals(100, in);
  }

  @Test
  void lawComesFirst() {
    String text = metric();
    assertTrue(text.indexOf("law       Seal it. [a; code]") > 0, text);
    assertTrue(text.indexOf("Seal it.") < text.indexOf("Label it."), text);
  }

  @Test
  void sealsAreOneLineAndBrokenLawStandsOnTop() {
    Sheet s = sheet(Toy.placed(), false, UnitSystem.METRIC, Ink.PLAIN);
    List<Plan.FindingLine> lines = new ArrayList<>();
    for (int i = 1; i <= 11; i++) {
      lines.add(
          new Plan.FindingLine(
              "seal", "law", Optional.empty(), "code", "Close H" + i + " round the cables."));
    }
    lines.add(
        new Plan.FindingLine("bore", "law", Optional.empty(), "code", "H4 is too wide.", true));
    String text =
        PlanText.of(
            new Sheet(
                s.plan().withFindings(lines),
                s.placed(),
                s.request(),
                s.cards(),
                false,
                UnitSystem.METRIC,
                Ink.PLAIN));
    assertTrue(
        text.replaceAll("\\s+", " ").contains("H1, H2, H3, H4, H5, H6, H7, H8, H9, H10, H11"),
        text);
    assertEquals(1, text.split("round the cables", -1).length - 1);
    assertTrue(text.startsWith("DO NOT CARRY THIS OUT"), text);
    assertTrue(text.indexOf("H4 is too wide") < text.indexOf("H2, H3"), text);
  }

  @Test
  void onlyAssumptionsThatRoutesHangOnAreShown() {
    Sheet s = sheet(Toy.placed(), false, UnitSystem.METRIC, Ink.PLAIN);
    Plan.SurveyNotes notes =
        new Plan.SurveyNotes(
            List.of(),
            List.of(),
            List.of(
                "garage-office: studs taken to be laid out from its south end",
                "garage-office: taken as not bearing",
                "ground: floor assumed"));
    Plan used = s.plan().withInputs(List.of(), notes);
    String text =
        PlanText.of(
            new Sheet(
                used, s.placed(), s.request(), s.cards(), false, UnitSystem.METRIC, Ink.PLAIN));
    assertTrue(text.contains("wall between garage and office: assumed where its studs"), text);
    assertTrue(text.contains("assumed: ground: floor assumed"), text);
    Plan unused = used.withRuns(List.of(), used.totals());
    String without =
        PlanText.of(
            new Sheet(
                unused, s.placed(), s.request(), s.cards(), false, UnitSystem.METRIC, Ink.PLAIN));
    assertFalse(without.contains("assumed where its studs"), without);
    assertTrue(without.contains("2 assumptions more that no route hangs on"), without);
  }
}
