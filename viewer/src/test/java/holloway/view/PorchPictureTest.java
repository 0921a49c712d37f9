package holloway.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.look.Mark;
import holloway.look.Pane;
import holloway.look.Sheet;
import holloway.look.Theme;
import holloway.pipeline.LiveHouse;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Progress;
import holloway.pipeline.Thoroughness;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A house with a garden room far off is drawn larger above, and its porch belongs to it. */
class PorchPictureTest {
  private static final Pictures.Paper PAPER =
      new Pictures.Paper(1500, 1000, Theme.DUSK, (t, s, b) -> t.length() * s / 2);

  @Test
  void whatHangsUnderThePorchIsShownWithTheHouse() {
    PlanSettings quick = new PlanSettings(Optional.empty(), Thoroughness.QUICK, Optional.empty());
    LiveHouse live =
        LiveHouse.open(Path.of("..", "samples", "alder-lane.yaml"), quick, Progress.SILENT);
    Sheet sheet = new Pictures(live.drawn(live.judged())).level("ground", PAPER).orElseThrow();
    List<Mark.Word> camera =
        sheet.over().stream()
            .filter(m -> m instanceof Mark.Word w && w.text().equals("porch camera"))
            .map(m -> (Mark.Word) m)
            .toList();
    Pane house = sheet.panes().get(0);
    assertEquals(2, sheet.panes().size());
    assertEquals(1, camera.size(), "once");
    assertTrue(camera.get(0).y() < house.y() + house.height(), "in the upper picture");
    assertTrue(camera.get(0).y() > house.y(), "and within it");
  }
}
