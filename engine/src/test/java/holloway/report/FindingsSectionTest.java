package holloway.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.plan.Plan;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Findings in 80 columns: alike ones once, with what was measured, the limit and what to do. */
class FindingsSectionTest {
  private static Plan.FindingLine line(
      String place, String what, String measured, String severity, boolean broken) {
    String remedy = "Close it. The local code decides.";
    return new Plan.FindingLine(
        "seal",
        severity,
        Optional.empty(),
        "code 1",
        what + " " + remedy,
        broken,
        place,
        measured,
        "no gap",
        remedy);
  }

  private static String text(Plan.FindingLine... lines) {
    Page page = new Page(Ink.PLAIN);
    FindingsSection.write(List.of(lines), s -> s, page);
    return page.text();
  }

  @Test
  void holesThatDifferByTheirSizeOnlyAreOneParagraph() {
    String text =
        text(
            line("a", "H10 is open.", "13 mm", "law", false),
            line("b", "H2 is open.", "13 mm", "law", false),
            line("c", "H3 is open.", "32 mm", "law", false));
    assertEquals(
        """
        FINDINGS
          law       H2, H3, H10, each: The hole is open.
                    Here: 13 mm (H2, H10); 32 mm (H3).
                    Asked: no gap.
                    Do: Close it.
                    [seal; code 1]
          Your local code decides on all of these; BROKEN marks what the plan goes
          against, the rest is to be done or known.
        """,
        text);
  }

  @Test
  void runsOfOneLengthAreOneParagraphAndTheLengthsStandWithTheirRuns() {
    String text =
        text(
            line("desk/cat6-1", "desk/cat6-1 lies 13.0 m outside.", "13.0 m", "practice", false),
            line("tv/cat6-1", "tv/cat6-1 lies 9.0 m outside.", "9.0 m", "practice", false));
    assertTrue(
        text.replaceAll("\\s+", " ")
            .contains(
                "desk/cat6-1, tv/cat6-1, each: The run lies as far as said below outside. Here: 13.0 m"
                    + " (desk/cat6-1); 9.0 m (tv/cat6-1)."),
        text);
  }

  @Test
  void brokenLawIsFirstAndSaysSo() {
    String text =
        text(
            line("a", "H1 is open.", "13 mm", "practice", true),
            line("b", "H2 is open.", "13 mm", "law", false),
            line("c", "H3 is open.", "13 mm", "law", true));
    assertTrue(text.indexOf("BROKEN: H3") < text.indexOf("H2 is open"), text);
    assertTrue(text.indexOf("H2 is open") < text.indexOf("BROKEN: H1"), text);
    assertTrue(text.lines().allMatch(l -> l.length() <= 80), text);
  }
}
