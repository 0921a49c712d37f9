package holloway.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.housefile.HouseFile;
import holloway.housefile.Reading;
import holloway.request.Request;
import holloway.request.Spot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What is saved is what is read back, and the person's own lines stay. */
final class WishesFileTest {
  @TempDir Path dir;
  private Path house;
  private Request files;

  @BeforeEach
  void copy() throws IOException {
    house = dir.resolve("ranch.yaml");
    Files.copy(Path.of("..", "samples", "quince-ranch.yaml"), house);
    files = read();
  }

  private Request read() {
    return ((Reading.Sound) HouseFile.read(house)).request();
  }

  private Request saved(Changes changes, String existing) throws IOException {
    Request wanted = Wanted.of(files, changes);
    WishesFile.write(WishesFile.beside(house), WishesFile.text(existing, files, wanted));
    return read();
  }

  @Test
  void itStandsBesideTheHouseFile() {
    assertEquals(dir.resolve("ranch.wishes.yaml"), WishesFile.beside(house));
  }

  @Test
  void bansPinsAndSlidOutletsAreReadBackAsTheyWereWanted() throws IOException {
    String run = files.runs().get(0).id();
    String outlet =
        files.outlets().stream().filter(Wanted::slides).findFirst().orElseThrow().name();
    Changes changes =
        Changes.NONE
            .then(new Change.Forbid("attic/roof over main", "the attic"))
            .then(new Change.Pin(run, "outside", "the outside"))
            .then(new Change.Slide(outlet, 101_600_000L));
    Request wanted = Wanted.of(files, changes);
    Request back = saved(changes, "");
    assertEquals(wanted.wishes().bans(), back.wishes().bans());
    assertEquals(Optional.of("outside"), back.runs().get(0).through());
    assertEquals(along(wanted, outlet), along(back, outlet));
    assertEquals(along(files, outlet) + 101_600_000L, along(back, outlet));
  }

  private static long along(Request r, String outlet) {
    Spot s = r.getOutlet(outlet).spots().get(0);
    return (s instanceof Spot.OnWall w ? w.at() : ((Spot.Outside) s).at())
        .along()
        .distance()
        .value()
        .nm();
  }

  @Test
  void whatIsUndoneLeavesNoTrace() {
    Changes none = Changes.NONE.then(new Change.Forbid("x", "H1")).undo().orElseThrow();
    assertEquals("", WishesFile.text("", files, Wanted.of(files, none)));
  }

  @Test
  void keysAndCommentsOfThePersonStay() {
    String own = "# mine\nattic: never # too hot\nbans:\n  - \"old\"\ncrew: 1\n";
    Request wanted = Wanted.of(files, Changes.NONE.then(new Change.Forbid("new \"x\"", "H1")));
    String text = WishesFile.text(own, files, wanted);
    assertTrue(text.startsWith("# mine\nattic: never # too hot\n"), text);
    assertTrue(text.contains("crew: 1\n"), text);
    assertTrue(text.contains("  - \"new \\\"x\\\"\"\n"), text);
    assertEquals(1, text.lines().filter(l -> l.startsWith("bans:")).count());
  }

  @Test
  void aFileInOneLineIsLeftAlone() {
    Request wanted = Wanted.of(files, Changes.NONE.then(new Change.Forbid("a", "H1")));
    IllegalArgumentException e =
        assertThrows(
            IllegalArgumentException.class,
            () -> WishesFile.text("{ bans: [x] }\n", files, wanted));
    assertTrue(e.getMessage().contains("{ bans: [x] }"));
  }

  @Test
  void forbiddingAndAllowingIsWhatTheFilesWant() {
    List<String> bans = files.wishes().bans();
    Changes both =
        Changes.NONE.then(new Change.Forbid("a", "H1")).then(new Change.Allow("a", "H1"));
    assertEquals(bans, Wanted.of(files, both).wishes().bans());
  }
}
