package holloway.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.framing.MemberKind;
import holloway.hollow.HollowKind;
import holloway.look.Key;
import holloway.look.Measure;
import holloway.look.Pane;
import holloway.look.Sheet;
import holloway.pipeline.LiveHouse;
import holloway.pipeline.Progress;
import holloway.session.Choice;
import holloway.session.Peel;
import holloway.session.Shown;
import holloway.session.WishesFile;
import holloway.view.Piece;
import holloway.view.Pin;
import holloway.view.Space;
import holloway.view.TwoWays;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Set;
import org.joml.Vector3f;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The desk without a window: keys and clicks in, state out; plans are made at once. */
final class HouseDeskTest {
  private static final Measure TYPE = (text, size, bold) -> text.length() * size * 0.5f;
  private static final Path HUT = Path.of("src", "test", "resources", "hut.yaml");
  private static LiveHouse live;
  private static LiveHouse.Judged judged;

  @TempDir Path dir;
  private Path file;
  private HouseDesk desk;
  private long time;

  @BeforeAll
  static void open() {
    live = LiveHouse.open(HUT, Progress.SILENT);
    judged = live.judged();
  }

  @BeforeEach
  void desk() throws IOException {
    file = dir.resolve("ranch.yaml");
    Files.copy(HUT, file);
    desk =
        new HouseDesk(
            file, live, judged, new HouseDesk.Around(Runnable::run, () -> time, x -> {}, null));
    desk.resized(1280, 800, 1);
  }

  private Table table() {
    return desk.table();
  }

  private void press(Key... keys) {
    for (Key k : keys) {
      desk.key(k, false, false);
    }
    desk.tick();
  }

  private void later() {
    time += 1_000_000_000L;
    desk.tick();
  }

  @Test
  void finishesPeelAndLevelsHide() {
    press(Key.P);
    assertEquals(Peel.FRAMING, table().shown.peel());
    press(Key.DIGIT_1);
    assertEquals(Set.of("main"), table().shown.hiddenLevels());
    press(Key.DIGIT_0);
    assertEquals(Set.of(), table().shown.hiddenLevels());
  }

  @Test
  void aClickOnAPinsPixelChoosesItsHole() {
    Pin pin = table().model().pins().get(0);
    Vector3f at = desk.pane().pixel(pin.middle());
    desk.click(at.x + 2, at.y - 2);
    assertEquals(new Choice.Hole(pin.id()), table().shown.choice());
    desk.click(3, 3);
    assertEquals(Choice.NONE, table().shown.choice());
  }

  /** Straight at a stud with the finishes off: it is chosen, and its card says what it is. */
  @Test
  void aClickOnBareTimberChoosesItAndAgainWhatLiesBehind() {
    press(Key.P);
    Piece stud = nearest(MemberKind.STUD);
    desk.look(table().orbit.to(stud.centre(), 1.2f));
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
    desk.look(table().orbit.to(bay.centre(), 1.2f));
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
    desk.look(table().orbit.nearer(2.5f));
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

  @Test
  void aForbiddenHoleIsPlannedRoundAndComesBackWhenUndone() {
    press(Key.TAB, Key.DOWN, Key.F);
    String hole = judged.plan().holes().get(0).id();
    assertTrue(table().work.wanted().wishes().bans().contains(hole));
    assertTrue(table().hole(hole).isEmpty(), "it is not in the new plan");
    assertEquals(java.util.List.of(), table().work.judged().refusals());
    assertEquals(Choice.NONE, table().shown.choice(), "what is gone is not chosen");
    press(Key.U);
    assertEquals(judged.plan().holes(), table().plan().holes());
    press(Key.R);
    assertTrue(table().hole(hole).isEmpty());
  }

  @Test
  void thePlanOfBeforeStandsBesideTheOneOfNow() {
    press(Key.TAB, Key.DOWN, Key.F);
    String hole = judged.plan().holes().get(0).id();
    assertEquals(1, desk.sheet(TYPE).panes().size());
    TwoWays ways = table().ways();
    assertTrue(ways.onlyFirst().contains(hole), ways.onlyFirst()::toString);
    assertFalse(ways.onlySecond().contains(hole));
    assertFalse(ways.runsThatDiffer().isEmpty());
    press(Key.V, Key.TAB, Key.TAB);
    Sheet both = desk.sheet(TYPE);
    assertEquals(2, both.panes().size());
    assertTrue(both.panes().get(0).x() + both.panes().get(0).width() <= both.panes().get(1).x());
    FakePanels panels = new FakePanels();
    desk.panels(panels);
    double more = table().plan().totals().minutes() - judged.plan().totals().minutes();
    String sign = more > 0.05 ? "work: +" : more < -0.05 ? "work: \u2212" : "work: the same";
    assertTrue(panels.all().contains(sign), panels.all());
    press(Key.V, Key.U);
    assertEquals(1, desk.sheet(TYPE).panes().size());
    assertEquals(Set.of(), table().ways().runsThatDiffer());
    assertEquals("the same", table().ways().rows().get(0).more());
  }

  @Test
  void aWalkGoesStepByStepToTheEndAndNoFurther() {
    press(Key.DOWN, Key.W);
    int steps = table().chosenRun().orElseThrow().steps().size();
    assertEquals(0, table().shown.step().orElseThrow());
    Vector3f first = new Vector3f(table().orbit.target());
    for (int i = 0; i < steps + 3; i++) {
      press(Key.RIGHT);
    }
    assertEquals(steps - 1, table().shown.step().orElseThrow());
    assertNotEquals(first, new Vector3f(table().orbit.target()), "the eye walks along");
    press(Key.ESCAPE);
    assertTrue(table().shown.step().isEmpty());
  }

  @Test
  void thePanelsTellTheStepAndThePlan() {
    press(Key.DOWN, Key.W, Key.RIGHT);
    FakePanels panels = new FakePanels();
    desk.panels(panels);
    assertTrue(panels.all().contains("> 2. "), panels.all());
    assertTrue(panels.all().contains("holes: " + judged.plan().holes().size()), panels.all());
  }

  @Test
  void aButtonDoesWhatItsKeyDoes() {
    desk.panels(new FakePanels().pressing("holes"));
    assertEquals(Shown.Page.HOLES, table().shown.page());
    desk.panels(new FakePanels().pressing("H2"));
    assertEquals("hole", table().shown.choice().kind());
    desk.panels(new FakePanels().pressing("forbid (F)"));
    desk.tick();
    assertEquals(1, table().work.changes().done().size());
  }

  @Test
  void everyActHasAKeyOfItsOwnAndStandsInTheHelp() {
    press(Key.H);
    FakePanels panels = new FakePanels();
    desk.panels(panels);
    Set<String> keys = new java.util.HashSet<>();
    for (Act a : Act.values()) {
      assertTrue(panels.all().contains(a.said + ": " + a.does), a.name());
      assertTrue(keys.add(a.key + " " + a.shift), a + " shares its key");
    }
  }

  @Test
  void savedWishesStandBesideTheHouseWhichStaysAsItWas() throws IOException {
    String before = Files.readString(file);
    press(Key.TAB, Key.DOWN, Key.F, Key.S);
    String hole = judged.plan().holes().get(0).id();
    String wishes = Files.readString(WishesFile.beside(file));
    assertTrue(wishes.contains(hole), wishes);
    assertEquals(before, Files.readString(file));
    later();
    assertEquals(1, table().work.changes().done().size(), "our own writing is not read again");
  }

  @Test
  void aSavedHouseFileIsReadAgainAndABrokenOneLeavesTheLastGoodModel() throws IOException {
    String good = Files.readString(file);
    write(good.replaceFirst("(?m)^house: .*", "house: Hut again"));
    later();
    later();
    assertEquals("Hut again", table().model().name());
    write(good.replaceFirst("(?m)^place: .*", "place: nowhere"));
    later();
    later();
    assertEquals("Hut again", table().model().name());
    assertTrue(table().work.trouble().get(0).contains("nowhere"), table().work.trouble()::toString);
    FakePanels panels = new FakePanels();
    desk.panels(panels);
    assertTrue(panels.all().contains("! "), panels.all());
    write(good);
    later();
    later();
    assertEquals("Hut", table().model().name());
    assertEquals(java.util.List.of(), table().work.trouble());
  }

  private void write(String text) throws IOException {
    Files.writeString(file, text);
    // Two writings within the disk's own step of time would look the same.
    time += 1;
    Files.setLastModifiedTime(file, FileTime.fromMillis(1_700_000_000_000L + 5000 * ++writes));
  }

  private int writes;

  @Test
  void nothingIsStaleWhileNothingChanges() {
    Sheet first = desk.sheet(TYPE);
    assertFalse(desk.isStale());
    later();
    assertFalse(desk.isStale());
    assertSame(first, desk.sheet(TYPE));
    press(Key.D);
    assertTrue(desk.isStale());
    assertNotEquals(first, desk.sheet(TYPE));
  }

  @Test
  void anOutletSlidesAlongItsWall() {
    press(Key.O);
    String name = table().shown.choice().name();
    press(Key.PERIOD);
    assertEquals(1, table().work.changes().done().size(), name);
    assertTrue(table().work.trouble().isEmpty() || table().work.changes().done().isEmpty());
  }
}
