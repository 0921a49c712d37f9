package holloway.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Sentences with slots, on a language of a few words. */
class SayingsTest {
  private static final Map<String, String> FROM =
      Map.of(
          "say.from", "{n1} from {t1}",
          "say.corner", "the corner at the {t1} wall",
          "say.north", "north",
          "say.join", "{t1}, {t2}",
          "say.room", "in the {o1}",
          "say.lie", "drill {n1}",
          "say.at", "{t1} at {i1}",
          "unit.ft", "ft",
          "unit.in", "in");
  private static final Map<String, String> TO =
      Map.of(
          "say.from", "{n1} ab {t1}",
          "say.corner", "Ecke an der Wand im {t1}",
          "say.north", "Norden",
          "say.join", "{t1}, {t2}",
          "say.room", "in {o1}",
          "say.lie", "13 bohren, {n1}",
          "say.at", "{t1} bei {i1}",
          "unit.ft", "Fuß",
          "unit.in", "Zoll");

  private final Sayings sayings = new Sayings(FROM, TO, Set.of("den", "from here", "H1"));

  @Test
  void slotsHoldSlots() {
    assertEquals(
        "3 Fuß 2-1/2 Zoll ab Ecke an der Wand im Norden",
        sayings.say("3 ft 2-1/2 in from the corner at the north wall"));
    assertEquals(Set.of(), sayings.missed());
  }

  @Test
  void namesStayAsTheyAre() {
    assertEquals("in from here", sayings.say("in the from here"));
    assertEquals("H1, den", sayings.say("H1, den"));
    assertEquals("in the kitchen", sayings.say("in the kitchen"));
    assertEquals(Set.of("in the kitchen"), sayings.missed());
  }

  /** A fraction holds a slash too. */
  @Test
  void anIdIsNoMeasure() {
    assertEquals("Norden bei ground/a-b/1", sayings.say("north at ground/a-b/1"));
    assertEquals("north at 3/4 in", sayings.say("north at 3/4 in"));
    assertEquals(Set.of("north at 3/4 in"), sayings.missed());
  }

  @Test
  void aWordThatIsNoMeasureIsNone() {
    assertEquals("3 apples from north", sayings.say("3 apples from north"));
    assertEquals("1 Zoll, Norden", sayings.say("1 in, north"));
  }

  /** Rather another language than another figure. */
  @Test
  void whatWouldChangeAFigureIsNotSaid() {
    assertEquals("drill 5 ft", sayings.say("drill 5 ft"));
  }

  /** As the legend of a floor plan has it. */
  @Test
  void howAHouseStands() {
    Sayings german = new Sayings(Language.ENGLISH.texts(), Language.GERMAN.texts(), Set.of());
    String said =
        german.say(
            "The house stands turned 36.9 degrees clockwise: N and north mean its own north, the open arrow that of its site.");
    assertEquals(
        "Das Haus ist um 36.9 Grad im Uhrzeigersinn gedreht: N und Norden meinen seinen eigenen Norden, der offene Pfeil den des Grundstücks.",
        said);
    german.say(
        "The house stands turned 30 degrees counter-clockwise: N and north mean its own north, the open arrow that of its site.");
    assertEquals(Set.of(), german.missed());
  }
}
