package holloway.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.hollow.SiteKind;
import holloway.pipeline.Answers;
import holloway.plan.Plan;
import holloway.support.PackedSample;
import holloway.survey.Wall;
import holloway.survey.WallNames;
import holloway.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is looked at first names walls as a person does. */
class CheckFirstWordsTest {
  private static final String SHUT =
      " stands between parts of the house with floors at different heights: taken as shut, no cable"
          + " is led into or through it. Maybe have it opened and sleeved, and state the sleeve, or a"
          + " tube that is there, under hollows as a conduit";

  @Test
  void aShutWallIsNamedByItsRoomsAndSaidOnce() {
    Answers.Planned a = PackedSample.get("plumb-corner").planned();
    Wall wall =
        a.placed().walls().stream().filter(w -> w.id().contains("/")).findFirst().orElseThrow();
    List<String> assumed = List.of(wall.id() + SHUT, wall.id() + SHUT);
    Plan plan =
        a.plan().withInputs(a.plan().inputs(), new Plan.SurveyNotes(List.of(), List.of(), assumed));
    Sheet sheet =
        new Sheet(plan, a.placed(), a.request(), a.cards(), true, UnitSystem.METRIC, Ink.PLAIN);
    List<String> said =
        new SheetWords(sheet).checkFirst().stream().filter(l -> l.contains("as shut")).toList();
    assertEquals(1, said.size(), said.toString());
    assertFalse(said.get(0).contains(wall.id()), said.toString());
    assertTrue(said.get(0).startsWith("assumed: the " + WallNames.of(wall)), said.toString());
  }

  /** Of the kinds of hole that hang on a member, as cards and lists have them. */
  @Test
  void aJoistIsNoStud() {
    assertEquals("find the joist first", HouseWords.findFirst(SiteKind.JOIST.word()));
    assertEquals("find the joist first", HouseWords.findFirst(SiteKind.BLOCKING.word()));
    assertEquals("find the stud first", HouseWords.findFirst(SiteKind.STUD.word()));
    assertEquals("find the stud first", HouseWords.findFirst(SiteKind.TOP_PLATE.word()));
  }
}
