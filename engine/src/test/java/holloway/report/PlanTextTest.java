package holloway.report;

import static holloway.report.ToySheet.metric;
import static holloway.report.ToySheet.sheet;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.RulePlace;
import holloway.pipeline.Toy;
import holloway.units.UnitSystem;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The text as a whole: its order, width, ink, units and names. */
class PlanTextTest {
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
  void namesOfSpotsStayOutOfTheText() {
    assertEquals(
        "from the cut-out of bonus desk", HouseWords.plain("from the cut-out of bonus desk@5"));
  }
}
