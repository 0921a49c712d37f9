package holloway.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.RulePlace;
import holloway.pipeline.Toy;
import holloway.plan.Plan;
import holloway.survey.Placed;
import holloway.takeoff.TakeOff;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class PlanTextTest {
  private static Sheet sheet(Placed placed, boolean steps, UnitSystem system, Ink ink) {
    Plan plan =
        TakeOff.of(Toy.bare(), Toy.request(), placed)
            .withFindings(
                List.of(
                    new Plan.FindingLine("b", "practice", Optional.empty(), "src", "Label it."),
                    new Plan.FindingLine("a", "law", Optional.empty(), "code", "Seal it.")))
            .withUnrouted(List.of(new Plan.Unrouted("spare-1", List.of("no way into the attic"))));
    return new Sheet(
        plan, placed, Toy.request(), Map.of(Toy.card().holeId(), Toy.card()), steps, system, ink);
  }

  private static String metric() {
    return PlanText.of(sheet(Toy.placed(), false, UnitSystem.METRIC, Ink.PLAIN));
  }

  @Test
  void sectionsStandInTheOrderOfTheWork() {
    String text = metric();
    int from = -1;
    for (String title :
        List.of(
            "Toy Cottage: plan for the least work\n",
            "\nCHECK FIRST\n",
            "\nRUNS\n",
            "\nOUTLETS\n",
            "\nHOLES\n",
            "\nHOURS\n",
            "\nFINDINGS\n",
            "\nMATERIALS\n",
            "\nCAUTIONS FOR THIS HOUSE\n",
            "\nWITHOUT A ROUTE\n")) {
      int at = text.indexOf(title);
      assertTrue(at > from, title);
      from = at;
    }
  }

  @Test
  void everyLineFitsEightyColumnsOfPlainLetters() {
    for (boolean steps : List.of(false, true)) {
      for (UnitSystem system : UnitSystem.values()) {
        String text = PlanText.of(sheet(Toy.placed(), steps, system, Ink.PLAIN));
        assertTrue(text.lines().allMatch(l -> l.length() <= 80));
        assertTrue(text.chars().allMatch(c -> c == '\n' || c >= 32 && c < 127));
        assertTrue(text.lines().noneMatch(l -> l.endsWith(" ")));
      }
    }
  }

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
  void assumedHolesSayFindTheStudFirst() {
    String text = metric();
    assertTrue(text.contains("  - H1: find the stud or joist first"), text);
    assertTrue(text.contains("  H1   top plate, 22 mm (7/8 in) bit; find the stud first\n"), text);
    assertTrue(text.contains("  H2   top plate, 32 mm (1-1/4 in) bit\n"), text);
    assertTrue(text.contains("does not close: ground, east-west: off by 41 mm, 12 mm"), text);
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

  @Test
  void aHoleIsPlacedMeasuredAndExplained() {
    String text = metric();
    assertTrue(text.contains("wall between garage and office, 1.200 m from its"), text);
    assertTrue(text.contains("top plate, then top plate; 76 mm in all"), text);
    assertTrue(text.contains("far side   1.200 m from the south-west corner of office"), text);
    assertTrue(text.contains("or         through a patch"), text);
    assertTrue(text.contains("no tape dimensions for this hole"), text);
  }

  @Test
  void runsSayWhereTheyGo() {
    String text = metric();
    assertTrue(text.contains("  desk/cat6-1: 10.0 m of cat6, cut 13.3 m\n"), text);
    assertTrue(
        text.contains("cabinet > open in the garage 1.0 m > H1 > inside the wall between"), text);
    assertTrue(text.contains("the same way as desk/cat6-1"), text);
    assertTrue(text.contains("a ready-made lead of 15 m, 1.0 m over"), text);
    assertTrue(text.contains("BICSI"), text);
    String steps = PlanText.of(sheet(Toy.placed(), true, UnitSystem.METRIC, Ink.PLAIN));
    assertTrue(
        steps.contains(
            "            8.9 m  inside the wall between garage and office, blind, fish 1\n"),
        steps);
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
  void outletsAreTapedFromBothEndsAndSayWhatIsBroughtThere() {
    String text = metric().split("\nOUTLETS\n")[1].split("\nHOLES\n")[0];
    assertTrue(text.contains("cabinet: east wall of the garage"), text);
    String desk = text.substring(text.indexOf("  desk:")).replaceAll("\\s+", " ");
    assertTrue(
        desk.contains("west wall of the office, 1.200 m from its south end and 2.800 m from"),
        desk);
    assertTrue(desk.contains("400 mm over its floor"), desk);
    assertTrue(desk.contains("brings 2 cat6, 1 om4 (1 of them spare"), desk);
  }

  @Test
  void powerAndBlocksNearTheHolesAreToldOf() {
    String text = metric().replaceAll("\\s+", " ");
    assertTrue(text.contains("H1: a socket 0 mm along the same wall"), text);
    assertTrue(text.contains("a block may stand half-way up a bay: about 40 in 100"), text);
    assertTrue(text.contains("our judgement; no published survey"), text);
  }

  @Test
  void sealsAreOneLineAndBrokenLawStandsOnTop() {
    Sheet s = sheet(Toy.placed(), false, UnitSystem.METRIC, Ink.PLAIN);
    List<Plan.FindingLine> lines = new java.util.ArrayList<>();
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
  void namesOfSpotsStayOutOfTheText() {
    assertEquals(
        "from the cut-out of bonus desk", HouseWords.plain("from the cut-out of bonus desk@5"));
  }

  @Test
  void boldTitlesOnlyWithInk() {
    assertFalse(metric().contains("\u001b"));
    String bold = PlanText.of(sheet(Toy.placed(), false, UnitSystem.METRIC, Ink.BOLD_TITLES));
    assertTrue(bold.contains("\u001b[1mHOLES\u001b[0m\n"));
    assertEquals(metric(), bold.replace("\u001b[1m", "").replace("\u001b[0m", ""));
  }

  @Test
  void unitsFollowThePlace() {
    assertEquals(UnitSystem.FT_IN, UnitWords.usual(Toy.house(RulePlace.US, 1990)));
    assertEquals(UnitSystem.METRIC, UnitWords.usual(Toy.house(RulePlace.UK, 1990)));
    String feet = PlanText.of(sheet(Toy.placed(), false, UnitSystem.FT_IN, Ink.PLAIN));
    assertTrue(feet.contains("3 ft 11-1/4 in"), feet);
    assertTrue(feet.contains("7/8 in (22 mm) bit"), feet);
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
}
