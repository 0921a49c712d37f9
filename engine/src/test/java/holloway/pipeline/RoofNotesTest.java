package holloway.pipeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** What a person is told of a flat roof. */
class RoofNotesTest {
  private static String note(String insulation) {
    var notes =
        RoofNotes.of(
            WrittenHouse.of(
                    """
                    house: Flat House
                    place: us
                    built: 1990
                    levels: { main: { ceiling-height: 8 ft, floor: slab } }
                    rooms:
                      store: { level: main, size: 3 m x 4 m }
                    roof:
                      - { name: top, over: main, shape: flat, run: east-west, frame: rafters, chord: 2x8, every: 16 in, insulation: FILL }
                    cabinet: { in: store, wall: west, from: south 2 m, height: 1.5 m }
                    outlets:
                      - { name: desk, in: store, wall: east, from: south 2 m, height: 400 mm, cables: [cat6] }
                    """
                        .replace("FILL", insulation))
                .placed());
    assertEquals(1, notes.size());
    return notes.get(0).text();
  }

  @Test
  void whatFillsItIsSaidInPlainWords() {
    assertTrue(
        note("6 in faced-batt").endsWith("184 mm deep, filled with faced batts."),
        note("6 in faced-batt"));
    assertTrue(
        note("6 in dense-packed").endsWith("filled with dense-packed fill."),
        note("6 in dense-packed"));
    assertTrue(note("none").endsWith("184 mm deep, empty."), note("none"));
  }
}
