package holloway.housefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.house.Found;
import holloway.house.Origin;
import holloway.request.Profile;
import holloway.request.Spot;
import holloway.request.Wishes;
import holloway.units.Length;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The files beside the house file, and which of them wins. */
class CompanionsTest {
  @TempDir Path dir;

  @Test
  void wishesAlone() throws IOException {
    Wishes w =
        new Written(dir)
            .plus(
                "wishes: { hour-is-worth: 40 USD, visible-metre: 1.5 h, attic: summer, avoid: [office], bans: [chase] }\n")
            .plus("crew: 1\n")
            .sound()
            .request()
            .wishes();
    assertEquals(Optional.of(new Wishes.Money(4000, "USD")), w.hourIsWorth());
    assertEquals(90, w.visibleMetre());
    assertEquals(Wishes.Season.SUMMER, w.attic());
    assertEquals(List.of("office"), w.avoid());
    assertEquals(List.of("chase"), w.bans());
    assertEquals(1, w.crew());
    assertEquals(Profile.LEAST_WORK, w.profile());
  }

  @Test
  void theWishesFileBeatsTheHouseFileKeyByKey() throws IOException {
    Wishes w =
        new Written(dir)
            .plus("wishes: { visible-metre: 20 min, attic: summer, bans: [chase] }\ncrew: 1\n")
            .beside("toy.wishes.yaml", "attic: never\nbans: []\nprofile: shortest\ncrew: 2\n")
            .sound()
            .request()
            .wishes();
    assertEquals(20, w.visibleMetre());
    assertEquals(Wishes.Season.NEVER, w.attic());
    assertEquals(List.of(), w.bans());
    assertEquals(Profile.SHORTEST, w.profile());
    assertEquals(2, w.crew());
  }

  @Test
  void foundThings() throws IOException {
    var sound =
        new Written(dir)
            .beside(
                "toy.found.yaml",
                """
                studs: [{ side: office east, from: south 15-1/4 in }]
                blocks: [{ side: office east, from: south 2 ft, height: 4 ft }]
                clear-bays: [{ side: office south, from: west 3 ft }]
                holes: [{ id: office/top-plate/1, diameter: 22 mm, cables: 2 }]
                """)
            .sound();
    List<Found> found = sound.house().found();
    assertEquals(4, found.size());
    var stud = assertInstanceOf(Found.Stud.class, found.get(0));
    assertEquals(Origin.FOUND, stud.along().distance().origin());
    assertEquals("toy.found.yaml", stud.where().file());
    var hole = assertInstanceOf(Found.HoleMade.class, found.get(3));
    assertEquals(Length.mm(22), hole.diameter());
    assertEquals(
        List.of("toy.yaml", "toy.found.yaml"),
        sound.house().inputs().stream().map(i -> i.file()).toList());
  }

  @Test
  void foundNotches() throws IOException {
    List<Found> found =
        new Written(dir)
            .beside(
                "toy.found.yaml",
                """
                notches:
                  - { below-floor-of: office, at: [west 4 ft, south 5 ft], edge: top, depth: 1 in, length: 2 in }
                  - { side: office east, from: south 2 ft, height: 4 ft, depth: 20 mm, length: 60 mm }
                """)
            .sound()
            .house()
            .found();
    var joist = assertInstanceOf(Found.Notch.class, found.get(0));
    assertTrue(assertInstanceOf(Found.InJoist.class, joist.cut()).top());
    assertEquals(Length.inches(1), joist.deep().value());
    assertEquals(Origin.FOUND, joist.deep().origin());
    var stud = assertInstanceOf(Found.Notch.class, found.get(1));
    assertEquals(
        Length.inches(48), assertInstanceOf(Found.InStud.class, stud.cut()).at().height().value());
    assertEquals(Length.mm(60), stud.run().value());
  }

  /** What a newcomer leaves out of a notch has its own message. */
  @Test
  void aNotchIsInOnePlaceAndHasAnEdge() throws IOException {
    String both = "{ side: office east, below-floor-of: office, depth: 1 in, length: 2 in }";
    String bare = "{ below-floor-of: office, depth: 1 in, length: 2 in }";
    String stud = "{ side: office east, from: south 2 ft, depth: 1 in, length: 2 in }";
    assertEquals(
        List.of("a notch is in one place: a stud of a wall, or a joist over or under a room"),
        told(both));
    assertEquals(
        List.of("a notch in a joist lacks 'at:'", "a notch in a joist lacks 'edge:'"), told(bare));
    assertEquals(List.of("a notch in a stud lacks 'height:'"), told(stud));
  }

  private List<String> told(String notch) throws IOException {
    return new Written(dir)
        .beside("toy.found.yaml", "notches: [%s]\n".formatted(notch)).problems().stream()
            .map(Problem::text)
            .toList();
  }

  /** The house file says where the outlet of the toy is; the wishes file slides it. */
  @Test
  void aWishedSpotMovesAnOutletAlongItsWall() throws IOException {
    String name = new Written(dir).sound().request().outlets().get(0).name();
    var before = (Spot.OnWall) new Written(dir).sound().request().outlets().get(0).spots().get(0);
    String end = before.at().along().from().word();
    var after =
        (Spot.OnWall)
            new Written(dir)
                .beside("toy.wishes.yaml", "spots: { %s: %s 30 in }\n".formatted(name, end))
                .sound()
                .request()
                .outlets()
                .get(0)
                .spots()
                .get(0);
    assertEquals(Length.inches(30), after.at().along().distance().value());
    assertEquals(before.at().face().side(), after.at().face().side());
    assertEquals(before.at().height().value(), after.at().height().value());
  }

  @Test
  void aWishedSpotOfNoOutletIsToldWithTheNearestName() throws IOException {
    String name = new Written(dir).sound().request().outlets().get(0).name();
    List<Problem> all =
        new Written(dir)
            .beside("toy.wishes.yaml", "spots: { %sx: west 30 in }\n".formatted(name))
            .problems();
    assertEquals(List.of(name), all.stream().map(Problem::nearest).toList());
  }

  @Test
  void problemsOfAllFilesComeTogether() throws IOException {
    List<Problem> all =
        new Written(dir)
            .with("place: us", "place: usa")
            .beside("toy.wishes.yaml", "attic: wintry\n")
            .beside("toy.found.yaml", "studs:\n  - { side: offise east, from: south 2 ft }\n")
            .problems();
    assertEquals(
        List.of("toy.found.yaml", "toy.wishes.yaml", "toy.yaml"),
        all.stream().map(p -> p.where().file()).toList());
    assertEquals(2, all.get(0).where().line());
    assertEquals("office", all.get(0).nearest());
  }

  @Test
  void anEffortFileOverridesKeyByKey() throws IOException {
    var defaults = EffortFile.defaults();
    var effort =
        new Written(dir)
            .plus("effort: mine.yaml\n")
            .beside("mine.yaml", "zone.attic: 99\nbore:\n  joist: 7.5\n")
            .sound()
            .request()
            .effort();
    assertTrue(effort.overridden());
    assertEquals(99, effort.get("zone.attic"));
    assertEquals(7.5, effort.get("bore.joist"));
    assertEquals(defaults.get("bore.stud"), effort.get("bore.stud"));
    assertEquals(defaults.minutes().keySet(), effort.minutes().keySet());
    assertTrue(!defaults.overridden());
  }

  @Test
  void faultsOfAnEffortFile() throws IOException {
    List<Problem> all =
        new Written(dir)
            .plus("effort: mine.yaml\n")
            .beside("mine.yaml", "zone.atic: 9\nbore:\n  stud: -1\n  joist: 4 min\n")
            .problems();
    assertEquals(List.of(1, 3, 4), all.stream().map(p -> p.where().line()).toList());
    assertEquals("zone.attic", all.get(0).nearest());
    assertTrue(all.get(1).expected().contains("not negative"), all::toString);
    Problem gone = new Written(dir).plus("effort: gone.yaml\n").problem();
    assertTrue(gone.text().contains("no file 'gone.yaml'"), gone::toString);
    new Written(dir).plus("effort: ../mine.yaml\n").assertProblemAt("../mine", "no / or \\");
  }

  @Test
  void anEffortFileIsAnInputToo() throws IOException {
    var house =
        new Written(dir)
            .plus("effort: mine.yaml\n")
            .beside("mine.yaml", "zone.attic: 99\n")
            .sound()
            .house();
    assertEquals(
        List.of("toy.yaml", "mine.yaml"), house.inputs().stream().map(i -> i.file()).toList());
  }
}
