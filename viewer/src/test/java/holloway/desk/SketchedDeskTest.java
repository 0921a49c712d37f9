package holloway.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.look.Key;
import holloway.look.Mark;
import holloway.look.Measure;
import holloway.pipeline.LiveHouse;
import holloway.session.Choice;
import holloway.session.WishesFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a person sees while a plan is only sketched: that nothing of it is to be drilled by. */
final class SketchedDeskTest {
  private static final Measure TYPE = (text, size, bold) -> text.length() * size * 0.5f;
  private static final LiveHouse.Judged JUDGED = HutDesk.JUDGED;

  @TempDir Path dir;
  private HutDesk hut;
  private HouseDesk desk;

  @BeforeEach
  void desk() {
    hut = new HutDesk(dir);
    desk = hut.desk;
  }

  private String panels() {
    FakePanels panels = new FakePanels();
    desk.panels(panels);
    return panels.all();
  }

  private boolean isOverThePicture(String words) {
    return desk.sheet(TYPE).over().stream()
        .anyMatch(m -> m instanceof Mark.Word w && w.text().equals(words));
  }

  @Test
  void aSketchSaysEverywhereThatItIsNotJudged() {
    hut.press(Key.TAB, Key.DOWN, Key.F);
    assertTrue(desk.isWaiting());
    hut.come(hut.sketching);
    Table t = desk.table();
    String said = panels();
    assertTrue(said.contains("Sketch: not judged yet"), said);
    assertTrue(said.contains("proven within: not proven yet"), said);
    assertTrue(said.contains("H1?"), said);
    assertTrue(isOverThePicture("Sketch: not judged yet"));
    t.show(t.shown.choosing(new Choice.Hole(t.plan().holes().get(0).id())));
    String card = panels();
    assertTrue(card.contains("Do not drill by this card"), card);
    assertFalse(card.contains("Make it"), card);
    t.show(t.shown.choosing(new Choice.Run(t.plan().runs().get(0).id())));
    assertTrue(panels().contains("to cut: not known yet"), panels());
    t.show(t.shown.choosing(new Choice.Outlet(t.work.wanted().outlets().get(0).name())));
    assertTrue(panels().contains("Do not cut"), panels());
    hut.press(Key.TAB);
    assertTrue(panels().contains("no rule has looked at this plan"), panels());
    hut.press(Key.TAB);
    assertFalse(panels().contains("cable to cut"), panels());
    hut.come(hut.judging);
    assertFalse(panels().contains("not judged yet"), panels());
    assertFalse(isOverThePicture("Sketch: not judged yet"));
    assertTrue(panels().contains("judged: as it was sketched"), panels());
  }

  @Test
  void aSketchIsNotSaved() {
    hut.press(Key.TAB, Key.DOWN, Key.F);
    hut.come(hut.sketching);
    hut.press(Key.S);
    assertFalse(Files.exists(WishesFile.beside(hut.file)));
    assertTrue(desk.table().message.startsWith("not saved"), desk.table().message);
    hut.come(hut.judging);
    hut.press(Key.S);
    assertTrue(Files.exists(WishesFile.beside(hut.file)), desk.table().message);
  }

  @Test
  void keysGoOnWhileItIsJudgedAndUndoBringsTheJudgedPlanBack() {
    hut.press(Key.TAB, Key.DOWN, Key.F);
    hut.come(hut.sketching);
    hut.press(Key.P);
    hut.press(Key.U);
    assertFalse(desk.table().work.isSketch());
    assertEquals(JUDGED.plan(), desk.table().plan());
    hut.come(hut.judging);
    assertEquals(JUDGED.plan(), desk.table().plan());
  }

  /** Two sketches of a hand's doing: what judging changes is told in words. */
  @Test
  void whatJudgingChangesIsTold() {
    var words = desk.table().pictures.words();
    Outcome same = Outcome.of(JUDGED.plan(), JUDGED.plan(), words);
    assertTrue(same.isAsSketched());
    var fewer = JUDGED.plan().runs().subList(1, JUDGED.plan().runs().size());
    var other = JUDGED.plan().withRuns(fewer, JUDGED.plan().totals());
    Outcome differs = Outcome.of(other, JUDGED.plan(), words);
    assertTrue(differs.lines().get(0).startsWith("Judged, and not as"));
    assertTrue(differs.lines().get(1).contains(JUDGED.plan().runs().get(0).id()));
    assertEquals("judged: not as sketched, see the list", differs.inShort());
  }
}
