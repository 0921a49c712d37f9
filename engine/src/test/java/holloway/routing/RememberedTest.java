package holloway.routing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import holloway.framing.Framed;
import holloway.framing.Framing;
import holloway.geometry.Point3;
import holloway.hollow.Hollow;
import holloway.hollow.Hollows;
import holloway.house.House;
import holloway.housefile.HouseFile;
import holloway.housefile.Reading;
import holloway.survey.Survey;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is remembered is told again, and nothing else is told instead. */
final class RememberedTest {
  private final List<String> looked = new ArrayList<>();
  private final Remembered<String, String> memory = new Remembered<>();

  private String ask(String place, String asked) {
    return memory.of(
        place,
        asked,
        (before, then) -> {
          looked.add(asked + " after " + before + "=" + then);
          return place + ":" + asked;
        });
  }

  @Test
  void toAndFroIsLookedForOnceEach() {
    for (String asked : List.of("a", "b", "a", "c", "a", "b", "c")) {
      assertEquals("bay:" + asked, ask("bay", asked));
    }
    assertEquals(List.of("a after null=null", "b after a=bay:a", "c after a=bay:a"), looked);
  }

  @Test
  void theLeastLatelyUsedOfThreeIsForgotten() {
    for (String asked : List.of("a", "b", "c", "a", "d", "b")) {
      assertEquals("bay:" + asked, ask("bay", asked));
    }
    assertEquals(5, looked.size(), "b was forgotten for d: " + looked);
  }

  @Test
  void eachPlaceHasItsOwn() {
    assertEquals("bay:a", ask("bay", "a"));
    assertEquals("attic:a", ask("attic", "a"));
  }

  /**
   * Three hands of a hollow, each pair a fish; one is taken away, a new one comes in before the
   * others, and two change places: only pairs that were not there in that order are looked for.
   */
  @Test
  void fishesAreLookedForBetweenNewHandsAlone() {
    Framed framed = framed();
    Hollow bay = Hollows.of(framed).near(List.of()).hollows().get(0);
    FishMemory fishes = new FishMemory();
    assertEquals("ab ac bc", told(fishes, bay, "a", "b", "c"));
    assertEquals("looked for ab ac bc", looked());
    assertEquals("da dc ac", told(fishes, bay, "d", "a", "c"));
    assertEquals("looked for da dc", looked());
    assertEquals("ab ac bc", told(fishes, bay, "a", "b", "c"));
    assertEquals("looked for", looked());
    assertEquals("ba bc ac", told(fishes, bay, "b", "a", "c"));
    assertEquals("looked for ba", looked());
  }

  private String looked() {
    String out = String.join(" ", looked);
    looked.clear();
    return ("looked for " + out).strip();
  }

  private String told(FishMemory memory, Hollow bay, String... names) {
    List<FishMemory.Hand> hands = new ArrayList<>();
    for (String n : names) {
      hands.add(new FishMemory.Hand(n, new Point3(0, 0, 0), List.of(), "", true));
    }
    List<FishMemory.Found> found =
        memory
            .within(
                memory.side(bay, hands),
                true,
                (i, j) -> {
                  looked.add(names[i] + names[j]);
                  RouteGraph.Piece at = new RouteGraph.Piece.Pass(names[i] + names[j], List.of());
                  return new FishMemory.Fish(Laid.of(List.of(at)), 0);
                })
            .found();
    List<String> out = new ArrayList<>();
    for (FishMemory.Found f : found) {
      String laid = ((RouteGraph.Piece.Pass) f.fish().laid().pieces().get(0)).site();
      assertEquals(names[f.from()] + names[f.to()], laid);
      out.add(laid);
    }
    return String.join(" ", out);
  }

  @Test
  void anotherHouseIsNotAnsweredOutOfThisOne() {
    Reading.Sound sound = (Reading.Sound) HouseFile.read(SAMPLE);
    RoutingMemory memory = new RoutingMemory(sound.request());
    Framed framed = framed();
    assertEquals(memory.house(framed), memory.house(framed));
    Framed other = framed();
    assertThrows(IllegalArgumentException.class, () -> memory.house(other));
  }

  private static final Path SAMPLE = Path.of("..", "samples", "tin-street.yaml");

  private static Framed framed() {
    House house = ((Reading.Sound) HouseFile.read(SAMPLE)).house();
    return Framing.of(Survey.of(house).value());
  }
}
