package holloway.cli;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person reads of ways that need little cutting: names of things, no ids. */
class CheapWayWordsTest {
  private static final String HOUSE =
      """
      house: Words Toy
      place: us
      built: 1994
      inner-walls: { studs: 2x4, every: 16 in }
      outer-walls: { studs: 2x4, every: 16 in }
      levels: { ground: { floor: slab, ceiling-height: 9 ft } }
      rooms:
        store: { level: ground, size: 8 ft x 12 ft, plain: yes }
        hall: { level: ground, size: 6 ft x 12 ft, east-of: store, align: south }
        lounge: { level: ground, size: 12 ft x 12 ft, east-of: hall, align: south }
      cabinet: { in: store, wall: east, from: south 6 ft, height: 5 ft }
      outlets:
        - { name: desk, in: lounge, wall: west, from: south 11 ft, height: 16 in, cables: [cat6] }
      wishes: { bans: [surface, outside] }
      """;

  @TempDir Path dir;

  private String plan(String hollow) throws IOException {
    return plan(HOUSE, hollow);
  }

  private String plan(String house, String hollow) throws IOException {
    Path file = Files.writeString(dir.resolve("toy.yaml"), house + "hollows:\n" + hollow);
    return Said.whole("plan", file.toString(), "--effort", "quick").out().replaceAll("\\s+", " ");
  }

  @Test
  void aPanelledBox() throws IOException {
    String said =
        plan("  - { soffit: duct box, along: hall north, size: 12 in x 10 in, cover: panel }\n");
    assertTrue(said.contains("> over the duct box "), said);
    assertTrue(said.contains("from the south board of the duct box"), said);
    assertTrue(said.contains("from the hall, over its lowered ceiling"), said);
  }

  @Test
  void aBoardedBox() throws IOException {
    String said = plan("  - { soffit: duct box, along: hall north, size: 12 in x 10 in }\n");
    assertTrue(said.contains("> a patch in the underside of the duct box >"), said);
  }

  @Test
  void anOldCable() throws IOException {
    String said =
        plan(
            HOUSE.replace("east-of: hall, align: south", "east-of: hall, align: south, plain: yes"),
            """
              - old-cable: tv lead
                from: { in: store, wall: east, from: south 7 ft, height: 5 ft }
                to: { in: lounge, wall: west, from: south 10 ft, height: 16 in }
                length: 5 m
                hole: 13 mm
                stapled: no
            """);
    String way = "> the box at the end of the tv lead > the old cable tv lead ";
    assertTrue(said.contains(way), said);
  }

  @Test
  void skirting() throws IOException {
    String said =
        plan(
            HOUSE.replace(
                "in: lounge, wall: west, from: south 11 ft",
                "in: store, wall: east, from: south 11 ft"),
            "  - { skirting: store, sides: [east] }\n");
    assertTrue(said.contains("open in the store"), said);
    String hidden =
        plan(
            HOUSE
                .replace("plain: yes", "plain: no")
                .replace(
                    "in: lounge, wall: west, from: south 11 ft",
                    "in: store, wall: east, from: south 11 ft"),
            "  - { skirting: store, sides: [east] }\n");
    assertTrue(hidden.contains("behind the skirting in the store"), hidden);
    assertTrue(hidden.contains("from the store, skirting off"), hidden);
  }
}
