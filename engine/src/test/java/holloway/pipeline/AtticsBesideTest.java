package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two attics against one wall are shut until somebody has looked, and that is said. */
class AtticsBesideTest {
  private static final String HOUSE =
      """
      house: Two Roofs
      place: us
      built: 1990
      levels: { main: { ceiling-height: 8 ft, floor: slab } }
      rooms:
        store: { level: main, size: 3.8 m x 9 m, plain: yes }
        den: { level: main, size: 3.7 m x 9 m, east-of: store, align: south, shift: 1 m }
      roof:
        - { name: main roof, over: [store], shape: gable, ridge: north-south, pitch: 8/12, frame: rafters, JOIN1 }
        - { name: wing, over: [den], shape: gable, ridge: east-west, pitch: 8/12, frame: rafters, JOIN2 }
      cabinet: { in: store, wall: west, from: south 4.5 m, height: 1.5 m }
      outlets:
        - { name: desk, in: den, wall: east, from: south 4.5 m, height: 400 mm, cables: [cat6] }
      """;

  private static List<String> notes(String first, String second) {
    String text = HOUSE.replace("JOIN1", first).replace("JOIN2", second);
    return RoofNotes.besides(WrittenHouse.of(text).placed());
  }

  @Test
  void nobodySaid() {
    List<String> said = notes("boarded: no", "boarded: no");
    assertEquals(1, said.size(), said::toString);
    // both rooms are 9 m long, one lies 1 m further north: 8 m of wall under both
    assertTrue(
        said.get(0)
            .startsWith("The attics of 'main roof' and 'wing' lie side by side along 8.00 m"),
        said::toString);
    assertTrue(said.get(0).contains("taken as shut"), said::toString);
    assertTrue(said.get(0).endsWith("joins: [{ to: wing, shut: yes }]"), said::toString);
  }

  @Test
  void somebodySaid() {
    assertEquals(List.of(), notes("joins: [{ to: wing, shut: yes }]", "boarded: no"));
    assertEquals(List.of(), notes("boarded: no", "joins: [{ to: main roof, shut: yes }]"));
  }

  /** The wing's gable is asked for a way at the main roof's eave, where its slope comes down. */
  @Test
  void anOpeningThatCannotBeIsTold() {
    String said = notes("joins: [{ to: wing, size: 2 ft x 2 ft }]", "boarded: no").toString();
    assertTrue(
        said.startsWith("[The opening from attic main roof into wing is not believed: the slope"),
        said);
  }

  /** The garage's roof ends against the upper storey: a room is on the other side of that wall. */
  @Test
  void anotherStoreysAtticIsNotBeside() throws Exception {
    String alder = Files.readString(Path.of("..", "samples", "alder-lane.yaml"));
    assertEquals(List.of(), RoofNotes.besides(WrittenHouse.of(alder).placed()));
  }

  @Test
  void oneRoofHasNothingBeside() {
    String one = HOUSE.replaceAll("  - \\{ name: wing.*\n", "").replace("JOIN1", "boarded: no");
    assertEquals(List.of(), RoofNotes.besides(WrittenHouse.of(one).placed()));
  }
}
