package holloway.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.framing.MemberKind;
import holloway.hollow.HollowKind;
import holloway.look.Key;
import holloway.look.Pane;
import holloway.pipeline.LiveHouse;
import holloway.pipeline.Progress;
import holloway.session.Choice;
import holloway.view.Piece;
import holloway.view.Space;
import java.nio.file.Path;
import org.joml.Vector3f;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** What clicks choose: timber, hollows, and what is thin, as looking at everything finds it. */
final class PointingTest {
  private static final Path HUT = Path.of("src", "test", "resources", "hut.yaml");
  private static LiveHouse live;
  private static LiveHouse.Judged judged;
  private HouseDesk desk;

  @BeforeAll
  static void open() {
    live = LiveHouse.open(HUT, Progress.SILENT);
    judged = live.judged();
  }

  @BeforeEach
  void desk() {
    desk =
        new HouseDesk(
            HUT,
            live,
            judged,
            new HouseDesk.Around(Runnable::run, Runnable::run, () -> 0, x -> {}, null));
    desk.resized(1280, 800, 1);
  }

  private Table table() {
    return desk.table();
  }

  private void press(Key key) {
    desk.key(key, false, false);
    desk.tick();
  }

  /** Straight at a stud with the finishes off: it is chosen, and its card says what it is. */
  @Test
  void aClickOnBareTimberChoosesItAndAgainWhatLiesBehind() {
    press(Key.P);
    Piece stud = nearest(MemberKind.STUD);
    table().see(table().orbit.to(stud.centre(), 1.2f));
    Vector3f at = desk.pane().pixel(stud.centre());
    desk.click(at.x, at.y);
    assertEquals("member", table().shown.choice().kind());
    Piece chosen = table().model().findPiece(table().shown.choice().name()).orElseThrow();
    FakePanels panels = new FakePanels();
    desk.panels(panels);
    assertTrue(panels.all().contains(chosen.kind().word()), panels.all());
    assertTrue(panels.all().contains("part of: "), panels.all());
    assertTrue(panels.all().contains(chosen.id()), panels.all());
    Choice first = table().shown.choice();
    desk.click(at.x + 1, at.y);
    assertNotEquals(first, table().shown.choice());
    assertNotEquals(Choice.NONE, table().shown.choice());
  }

  private Piece nearest(MemberKind kind) {
    Vector3f eye = table().orbit.eye();
    return table().model().pieces().stream()
        .filter(p -> p.kind() == kind)
        .min(java.util.Comparator.comparingDouble(p -> p.centre().distance(eye)))
        .orElseThrow();
  }

  /** Some click or other of a few in one place comes to the hollow between two studs. */
  @Test
  void aHollowIsChosenByClicksAndCanBeForbidden() {
    press(Key.P);
    Space bay =
        table().model().spaces().stream()
            .filter(s -> s.kind() == HollowKind.STUD_BAY && s.isLit())
            .findFirst()
            .orElseThrow();
    table().see(table().orbit.to(bay.centre(), 1.2f));
    Vector3f at = desk.pane().pixel(bay.centre());
    Choice wanted = new Choice.Hollow(bay.id());
    for (int i = 0; i < 40 && !table().shown.choice().equals(wanted); i++) {
      desk.click(at.x, at.y);
    }
    assertEquals(wanted, table().shown.choice());
    FakePanels panels = new FakePanels();
    desk.panels(panels);
    assertTrue(panels.all().contains("stud bay"), panels.all());
    bay.runs().forEach(r -> assertTrue(panels.all().contains(r), panels.all()));
    press(Key.F);
    assertTrue(table().work.trouble().size() + table().work.wanted().wishes().bans().size() > 0);
  }

  /** The trees find what looking at every pin, outlet and cable finds. */
  @Test
  void pointingIsTheSameAsLookingAtEverything() {
    table().see(table().orbit.nearer(2.5f));
    Seen seen = new Seen(table().model(), table().shown);
    Pane pane = desk.pane();
    java.util.Random r = new java.util.Random(11);
    int found = 0;
    for (int i = 0; i < 4000; i++) {
      float x = r.nextFloat() * 900;
      float y = r.nextFloat() * 700;
      Choice brute = EveryThing.at(table(), seen, pane, x, y);
      Choice tree =
          table().pointed().at(seen, pane, x, y, 1).stream().findFirst().orElse(Choice.NONE);
      boolean thin = !brute.equals(Choice.NONE);
      if (thin) {
        found++;
        assertEquals(brute, tree, x + ", " + y);
      } else {
        boolean body = tree instanceof Choice.Member || tree instanceof Choice.Hollow;
        assertTrue(body || tree.equals(Choice.NONE), tree + " at " + x + ", " + y);
      }
    }
    assertTrue(found > 50, found + " of them on something");
  }
}
