package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.finding.Severity;
import holloway.limits.LocalRules;
import holloway.limits.OwnRule;
import holloway.limits.RuleKey;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RulesFileTest {
  private static final String HEAD = "rules: here\nbased-on: us\n";

  @TempDir Path folder;

  private RulesFile.Answer read(String text) throws Exception {
    return RulesFile.read(Files.writeString(folder.resolve("rules.yaml"), text));
  }

  private void fault(String text, String where, String... words) throws Exception {
    RulesFile.Answer answer = read(text);
    assertTrue(answer.rules().isEmpty());
    assertEquals(1, answer.problems().size(), answer.problems().toString());
    String said = answer.problems().get(0).toString();
    assertTrue(said.startsWith("rules.yaml:" + where), said);
    for (String w : words) {
      assertTrue(said.contains(w), said);
    }
  }

  @Test
  void theSampleIsRead() {
    RulesFile.Answer a = RulesFile.read(Path.of("../samples/rules/brookfield.yaml"));
    LocalRules rules = a.rules().orElseThrow(() -> new AssertionError(a.problems()));
    assertEquals("us", rules.basedOn());
    assertEquals(5, rules.stated().size());
    LocalRules.Stated joist = rules.stated().get(RuleKey.JOIST_HOLE);
    assertEquals(0.25, joist.figure().value());
    assertEquals(Optional.of(Severity.LAW), joist.severity());
    assertEquals(
        "local rules of Brookfield (invented): invented by-law 4.2", joist.figure().source());
    // 2-1/2 in = 63.5 mm; 3 ft = 914.4 mm
    var edge = rules.stated().get(RuleKey.JOIST_EDGE);
    assertEquals(63_500_000L, edge.figure().length().nm());
    assertEquals("64 mm (2-1/2 in)", edge.figure().said());
    assertEquals(Optional.empty(), edge.severity());
    assertEquals(914_400_000L, rules.stated().get(RuleKey.SUPPORTS).figure().length().nm());
    assertEquals(1, a.inputs().size());
    assertEquals(3, rules.own().size());
    var bore = (OwnRule.Bore) rules.own().get(0);
    assertEquals(Set.of(OwnRule.Part.RIM, OwnRule.Part.FIRE_BLOCK), bore.parts());
    assertEquals(25_400_000L, bore.widest().nm());
    assertEquals(
        "local rules of Brookfield (invented): invented by-law 4.6", bore.words().source());
    assertEquals(Severity.LAW, bore.words().severity());
    assertEquals(
        "Ask the building department before boring it.", bore.words().remedy().orElseThrow());
    var space = (OwnRule.Room) rules.own().get(1);
    assertEquals(Set.of(OwnRule.Space.CHASE), space.spaces());
    assertEquals(Optional.of(OwnRule.Listed.RISER), space.unless());
    var off = (OwnRule.KeepOff) rules.own().get(2);
    assertEquals(Set.of("panel", "pipe", "drain"), off.things());
    assertEquals(152_400_000L, off.least().nm());
    assertEquals(Severity.PRACTICE, off.words().severity());
  }

  /** The resource that other tests put beside a house states whatever can be stated. */
  @Test
  void theFileOfEverythingIsRead() {
    RulesFile.Answer a =
        RulesFile.read(Path.of("src/test/resources/holloway/everything.rules.yaml"));
    LocalRules rules = a.rules().orElseThrow(() -> new AssertionError(a.problems()));
    assertEquals(Set.of(RuleKey.values()), rules.stated().keySet());
    assertEquals(6, rules.own().size());
    var bore = (OwnRule.Bore) rules.own().get(0);
    assertEquals(Set.of(OwnRule.Part.values()), bore.parts());
    var space = (OwnRule.Room) rules.own().get(2);
    assertEquals(Set.of(OwnRule.Space.values()), space.spaces());
    assertEquals(
        Set.of(OwnRule.Listed.values()),
        rules
            .own(OwnRule.Room.class)
            .flatMap(r -> r.unless().stream())
            .collect(Collectors.toSet()));
  }

  @Test
  void aNewcomersMistakesInRulesOfTheirOwn() throws Exception {
    String own = HEAD + "own:\n  - ";
    assertEquals(
        1, read(own + "{ no-bore: joist, source: x }\n").rules().orElseThrow().own().size());
    fault(own + "{ no-bore: joists, source: x }\n", "4:", "joist");
    fault(own + "{ no-bore: [], source: x }\n", "4:");
    fault(own + "{ no-bore: joist }\n", "4:", "source");
    fault(own + "{ no-bore: joist, wider-than: 20, source: x }\n", "4:", "unit");
    fault(own + "{ keep-off: pipe, source: x }\n", "4:", "by");
    fault(own + "{ no-cable-in: loft, source: x }\n", "4:", "attic");
    fault(own + "{ forbid: attic, source: x }\n", "4:", "no-bore");
  }

  @Test
  void aNewcomersMistakes() throws Exception {
    fault("rules: here\njoist-hole: { at-most: 1/4, source: x }\n", "1:1", "based-on");
    fault(HEAD.replace("us", "usa"), "2:11", "us", "uk", "none");
    fault(HEAD, "1:1", "states no figure and no rule");
    fault(HEAD + "joist-holes: { at-most: 25 %, source: x }\n", "3:1", "joist-hole");
    fault(HEAD + "joist-hole: { at-most: 25, source: x }\n", "3:24", "25 %");
    fault(HEAD + "joist-hole: { at-most: 140 %, source: x }\n", "3:24", "share");
    assertTrue(
        read(HEAD + "joist-hole: { at-least: 25 %, source: x }\n")
            .problems()
            .toString()
            .contains("did you mean 'at-most'"));
    fault(HEAD + "joist-hole: { at-most: 25 % }\n", "3:13", "source");
    fault(HEAD + "joist-edge: { at-least: 60, source: x }\n", "3:25", "unit");
    fault(HEAD + "joist-edge: { at-least: 3 in, source: x, severity: laws }\n", "3:", "law");
    fault(HEAD + "joist-hole-to: { at-most: 30 %, source: x }\n", "3:", "no figure", "joist-hole");
    fault("- us\n", "1:1");
  }

  @Test
  void aHouseFileNamesIt() throws Exception {
    Files.copy(Path.of("../samples/rules/brookfield.yaml"), folder.resolve("town.yaml"));
    var house = new Written(folder).plus("rules: town.yaml\n").sound().house();
    assertEquals("Brookfield (invented)", house.ownRules().name());
    assertEquals("Brookfield (invented)", house.rulePack().local().name());
    assertTrue(house.inputs().stream().anyMatch(i -> i.file().equals("town.yaml")));
    var lost = new Written(folder).plus("rules: city.yaml\n");
    assertTrue(lost.problem().toString().contains("no file 'city.yaml'"));
    // Written again and read again it is the same house by the same rules.
    var sound = new Written(folder).plus("rules: town.yaml\n").sound();
    String text = HouseWriter.house(sound.house(), sound.request(), Optional.empty());
    Reading again = HouseFile.read(Files.writeString(folder.resolve("again.yaml"), text));
    assertEquals(sound.house().ownRules(), ((Reading.Sound) again).house().ownRules());
  }
}
