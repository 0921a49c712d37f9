package holloway.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.pipeline.Answers;
import holloway.plan.Plan;
import holloway.report.Ink;
import holloway.report.Sheet;
import holloway.report.SheetWords;
import holloway.schedule.Label;
import holloway.schedule.Labels;
import holloway.schedule.Pull;
import holloway.schedule.RunProof;
import holloway.schedule.Step;
import holloway.schedule.WorkSchedule;
import holloway.support.PackedSample;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** The steps of the work as somebody reads them who has nothing but the page. */
class WorkOnPageTest {
  private static final Answers.Packed PACKED = PackedSample.get(PackedHouse.SMALL);
  private static final Sheet SHEET = sheet(PACKED);
  private static final String PAGE = text(PACKED);
  private static final Map<String, String> LABELS = new TreeMap<>();

  static {
    for (Label l : Labels.of(SHEET.plan(), SHEET.request(), SHEET.placed())) {
      LABELS.put(l.run(), l.id());
    }
  }

  private static Sheet sheet(Answers.Packed p) {
    Answers.Planned a = p.planned();
    return new Sheet(a.plan(), a.placed(), a.request(), a.cards(), true, a.system(), Ink.PLAIN);
  }

  private static String text(Answers.Packed p) {
    return PackedHouse.paper(p, Language.ENGLISH, PaperSize.A4)
        .replaceAll("<[^>]*>", " ")
        .replaceAll("\\s+", " ");
  }

  /** A bundle is known by what is printed on its ends, not by a column of long names. */
  @Test
  void manyCablesOfAPullAreNamedByTheirLabels() {
    List<Pull> many = PACKED.work().pulls().stream().filter(p -> p.runs().size() > 3).toList();
    assertFalse(many.isEmpty());
    for (Pull p : many) {
      String labels = p.runs().stream().map(LABELS::get).sorted().collect(Collectors.joining(", "));
      String card = "Pull " + p.runs().size() + " cables: " + labels;
      assertTrue(PAGE.contains(card), card);
    }
  }

  /** Who measures out a box of cable needs to know for whom, and how much for each. */
  @Test
  void whatIsMarkedIsListedWithItsLength() {
    SheetWords words = new SheetWords(SHEET);
    for (Step s : PACKED.work().steps()) {
      if (s.kind() == Step.Kind.MARK) {
        String list =
            s.runs().stream()
                .map(
                    r ->
                        r
                            + " ("
                            + LABELS.get(r)
                            + ") : "
                            + SHEET.plan().runs().stream()
                                .filter(p -> p.id().equals(r))
                                .findFirst()
                                .map(words::lengths)
                                .get())
                .collect(Collectors.joining(" "));
        assertTrue(PAGE.contains(list), list);
      }
    }
  }

  /** The pilot of H8 is drilled with a thin bit: no other stands beside it. */
  @Test
  void aPilotAndASealNameNoBit() {
    Map<Step.Kind, String> said =
        Map.of(Step.Kind.PILOT, "Pilot with a thin bit, leave a wire:", Step.Kind.SEAL, "Seal");
    Set<Step.Kind> seen = new TreeSet<>();
    for (Step s : PACKED.work().steps()) {
      if (said.containsKey(s.kind())) {
        Plan.PlannedHole h =
            SHEET.plan().holes().stream().filter(o -> o.id().equals(s.subject())).findFirst().get();
        String step = said.get(s.kind()) + " " + h.label() + ", " + h.kind();
        assertTrue(PAGE.contains(step + " "), step);
        assertFalse(PAGE.contains(step + ","), step);
        seen.add(s.kind());
      }
    }
    assertEquals(said.keySet(), seen);
  }

  /** Coaxial cable has no wires to map. */
  @Test
  void coaxialCableIsTestedAsSuch() {
    String run = SHEET.plan().runs().get(0).id();
    List<RunProof.Check> checks = List.of(RunProof.Check.CONTINUITY, RunProof.Check.LENGTH);
    WorkSchedule work =
        new WorkSchedule(
            List.of(),
            List.of(),
            List.of(),
            0,
            1,
            List.of(new RunProof(run, "rg6", false, 10, checks)),
            List.of());
    String what = TestFacts.of(SHEET, work).get(0).get("what").toString();
    assertTrue(what.startsWith("coaxial cable: core and shield"), what);
    assertFalse(what.contains("eight wires"), what);
  }

  /** One sentence, and the holes it goes for. */
  @Test
  void aRuleSaysItsSentenceOnce() {
    String said = " opens a way for fire from one space to the next.";
    String rules = PAGE.substring(PAGE.lastIndexOf("What the rules say"));
    assertEquals(2, rules.split(said, -1).length, "once");
    assertTrue(rules.contains("H1" + said + " The same goes for H2, H3, H6, H5."), rules);
  }

  /** The next owner reads of each cable once, and of the way that several share once. */
  @Test
  void theNextOwnerReadsOfEachWayOnce() {
    String owner =
        PAGE.substring(
            PAGE.lastIndexOf("What is where, for the next owner"), PAGE.indexOf("Holes, and how"));
    LABELS.values().forEach(l -> assertEquals(2, owner.split(l + " ", -1).length, l));
    long ways = SHEET.plan().runs().stream().map(new SheetWords(SHEET)::way).distinct().count();
    assertTrue(owner.split("It lies in", -1).length - 1 <= ways, owner);
  }
}
