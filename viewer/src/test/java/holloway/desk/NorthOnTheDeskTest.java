package holloway.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.look.Key;
import holloway.look.Mark;
import holloway.look.Measure;
import holloway.pipeline.LiveHouse;
import holloway.pipeline.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Of a house that stands turned the window says where north is, in each part that shows it. */
final class NorthOnTheDeskTest {
  private static final Measure TYPE = (text, size, bold) -> text.length() * size * 0.5f;
  private static final Path HUT = Path.of("src", "test", "resources", "hut.yaml");

  @TempDir Path dir;

  private HouseDesk desk(String place) throws IOException {
    Path file = dir.resolve("hut.yaml");
    Files.writeString(file, Files.readString(HUT).replace("place: us", place));
    LiveHouse live = LiveHouse.open(file, Progress.SILENT);
    HouseDesk desk =
        new HouseDesk(
            file,
            live,
            live.judged(),
            new HouseDesk.Around(Runnable::run, Runnable::run, () -> 0, x -> {}, null));
    desk.resized(1280, 800, 1);
    return desk;
  }

  private static List<Float> norths(HouseDesk desk) {
    return desk.sheet(TYPE).over().stream()
        .filter(m -> m instanceof Mark.Word w && w.text().equals("N"))
        .map(m -> ((Mark.Word) m).x())
        .toList();
  }

  @Test
  void sideBySideEachPartHasItsOwn() throws IOException {
    HouseDesk desk = desk("turned: 23.5 deg clockwise\nplace: us");
    assertEquals(1, norths(desk).size());
    desk.table().turnBoth();
    List<Float> both = norths(desk);
    assertEquals(2, both.size());
    float middle = desk.pane().x();
    assertTrue(both.get(0) < middle && both.get(1) > middle, both + " beside " + middle);
  }

  private static String help(HouseDesk desk) {
    desk.key(Key.H, false, false);
    FakePanels panels = new FakePanels();
    desk.panels(panels);
    return panels.all();
  }

  @Test
  void theHelpSaysWhatTheMarkMeans() throws IOException {
    String says = "own is the house's own north";
    assertTrue(help(desk("turned: 23.5 deg clockwise\nplace: us")).contains(says));
    assertFalse(help(desk("place: us")).contains(says));
  }

  @Test
  void aHouseThatStandsStraightNeedsNone() throws IOException {
    HouseDesk desk = desk("place: us");
    assertEquals(List.of(), norths(desk));
    desk.table().turnBoth();
    assertEquals(List.of(), norths(desk));
  }
}
