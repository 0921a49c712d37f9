package holloway.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.look.Mark;
import holloway.look.Sheet;
import holloway.look.Theme;
import holloway.pipeline.LiveHouse;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Progress;
import holloway.pipeline.Thoroughness;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A run of a house that stands turned is drawn with real north and with the house's own, and says
 * so.
 */
final class RunNorthTest {
  private static final Pictures.Paper PAPER =
      new Pictures.Paper(1500, 1000, Theme.DUSK, (t, s, b) -> t.length() * s / 2);

  @TempDir Path folder;

  @Test
  void northIsMarkedWhereTheHouseStandsTurned() throws Exception {
    assertEquals(List.of("N", "N: north", "own"), marks("turned: 23.5 deg clockwise\nplace: us"));
    assertEquals(List.of(), marks("place: us"));
  }

  private List<String> marks(String place) throws Exception {
    Path file = folder.resolve("hut.yaml");
    String hut;
    try (var in = getClass().getResourceAsStream("/hut.yaml")) {
      hut = new String(in.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
    }
    Files.writeString(file, hut.replaceFirst("(?m)^place: us", place));
    PlanSettings quick = new PlanSettings(Optional.empty(), Thoroughness.QUICK, Optional.empty());
    LiveHouse live = LiveHouse.open(file, quick, Progress.SILENT);
    Pictures pictures = new Pictures(live.drawn(live.judged()));
    Sheet sheet = pictures.run(live.plan().runs().get(0).id(), PAPER).orElseThrow();
    return sheet.over().stream()
        .filter(m -> m instanceof Mark.Word)
        .map(m -> ((Mark.Word) m).text())
        .filter(w -> w.equals("N") || w.equals("own") || w.startsWith("N: north"))
        .map(w -> w.startsWith("N: north") ? "N: north" : w)
        .sorted()
        .toList();
  }
}
