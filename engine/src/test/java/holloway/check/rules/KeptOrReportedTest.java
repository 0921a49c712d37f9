package holloway.check.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.finding.Finding;
import holloway.pipeline.Answers;
import holloway.pipeline.Pipeline;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Progress;
import holloway.plan.Plan;
import holloway.support.TwoRooms;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What DEVELOPERS.md says of the rules of whole runs, entry by entry: a limit of the search has a
 * house whose plan breaks it as soon as it is not there, what is only reported has a house in which
 * it is found.
 */
class KeptOrReportedTest {
  @TempDir Path folder;

  /** Entries of "only reported", and the rules that report them. */
  private static final Map<String, Set<String>> REPORTED =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry("lengths of links", Set.of("link-too-long")),
              Map.entry("heat", Set.of("link-in-the-heat")),
              Map.entry("reach at 10 Gbit/s", Set.of("ten-gigabit-reach")),
              Map.entry("fibre loss", Set.of("fibre-budget")),
              Map.entry("power", Set.of("power-at-the-far-end")),
              Map.entry("bundles", Set.of("bundle-heat")),
              Map.entry("pull", Set.of("pull-tension", "cold-pull")),
              Map.entry("turns in thin voids", Set.of("tight-turn")),
              Map.entry("tubes", Set.of("tube-too-full", "tube-too-long")),
              Map.entry("outdoor cable indoors", Set.of("outdoor-cable-indoors")),
              Map.entry("listing", Set.of("riser-cable", "thick-cmx-cable")),
              Map.entry("supports", Set.of("support-spacing")),
              Map.entry("bonding", Set.of("bond-at-entrance")),
              Map.entry("shared boxes", Set.of("shared-box")),
              Map.entry("boxes back to back", Set.of("boxes-back-to-back")),
              Map.entry(
                  "everything by age",
                  Set.of("vermiculite", "old-paint", "old-wiring", "attic-hatch"))));

  private static String between(String text, String from, String to) {
    int a = text.indexOf(from) + from.length();
    assertTrue(a >= from.length(), "the page does not say: " + from);
    return text.substring(a, text.indexOf(to, a));
  }

  /** The page without its line ends. */
  private static String page() throws IOException {
    return Files.readString(Path.of("../DEVELOPERS.md")).replace('\n', ' ');
  }

  @Test
  void whatIsOnlyReportedIsFoundInSomeHouse() throws IOException {
    String list = between(page(), "because they hang on a whole run or on what is bought: ", ". ");
    Set<String> said =
        Arrays.stream(list.replaceAll(" \\([^)]*\\)", "").split(", "))
            .collect(Collectors.toCollection(TreeSet::new));
    assertEquals(REPORTED.keySet(), said);
    Map<String, List<Finding>> found = new EveryRuleTest().triggered();
    REPORTED.forEach(
        (entry, rules) ->
            rules.forEach(r -> assertFalse(found.getOrDefault(r, List.of()).isEmpty(), entry)));
  }

  @Test
  void everyKeptEntryIsAskedBelow() throws IOException {
    String list = between(page(), "Kept by the search, so that no plan breaks them: ", "Only rep");
    assertEquals(
        List.of(
            "sizes, edges and place along the span of every bore and its distance from notches",
            "return-air spaces",
            "the rules of one's own of a rule file",
            "and of whole runs the length and turns of a fish."),
        Arrays.stream(list.replaceAll(" \\([^)]*\\)", "").strip().split(", (?!edges)")).toList());
  }

  private static final String DESK =
      TwoRooms.UNDER_ONE_ROOF
          + """
cabinet: { in: den, wall: west, from: south 2 ft, height: 5 ft }
wishes: { bans: [outside, surface] }
outlets:
  - { name: desk, in: study, wall: east, from: south 9 ft, height: 16 in, cables: [%s] }
""";

  private Answers.Planned plan(String house, String rules) throws Exception {
    Files.writeString(folder.resolve("town.yaml"), "rules: Town\nbased-on: us\n" + rules);
    Path file = folder.resolve("house.yaml");
    Files.writeString(file, rules.isEmpty() ? house : house + "rules: town.yaml\n");
    return new Pipeline(Progress.SILENT).plan(file, PlanSettings.USUAL);
  }

  private static int widest(Plan plan, String kind) {
    return plan.holes().stream()
        .filter(h -> h.kind().equals(kind))
        .mapToInt(Plan.PlannedHole::diameterMm)
        .max()
        .orElse(0);
  }

  /** Five cables take 22 mm; 12 % of an outer wall's plate of 140 mm let 16 mm through. */
  @Test
  void aBoreIsNoWiderThanTheRulesLetIt() throws Exception {
    String five = DESK.formatted("cat6, cat6, cat6, cat6, cat6");
    assertEquals(22, widest(plan(five, "").plan(), "top plate"));
    String slim =
        "bearing-plate-hole: { at-most: 12 %, source: by-law 1 }\n"
            + "partition-plate-hole: { at-most: 12 %, source: by-law 1 }\n";
    Plan kept = plan(five, slim).plan();
    assertTrue(widest(kept, "top plate") <= 16, "kept: " + widest(kept, "top plate"));
  }

  private static boolean passes(Plan plan, Predicate<Plan.PlanStep> step) {
    return plan.runs().stream().flatMap(r -> r.steps().stream()).anyMatch(step);
  }

  @Test
  void aSpaceOfOnesOwnRulesIsNotEntered() throws Exception {
    Predicate<Plan.PlanStep> attic = s -> s.hollow().filter("attic"::equals).isPresent();
    assertTrue(passes(plan(DESK.formatted("cat6"), "").plan(), attic));
    String none = "own: [{ no-cable-in: attic, source: by-law 4 }]\n";
    assertFalse(passes(plan(DESK.formatted("cat6"), none).plan(), attic));
  }
}
