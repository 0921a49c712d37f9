package holloway.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.look.Key;
import holloway.look.Mark;
import holloway.look.Measure;
import holloway.look.Pane;
import holloway.look.Rgb;
import holloway.look.Sheet;
import holloway.pipeline.LiveHouse;
import holloway.pipeline.Progress;
import holloway.session.Choice;
import holloway.session.Cut;
import holloway.session.Peel;
import holloway.session.Shown;
import holloway.session.WishesFile;
import holloway.view.Piece;
import holloway.view.Pin;
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
            file,
            live,
            judged,
            new HouseDesk.Around(Runnable::run, Runnable::run, () -> time, x -> {}, null));
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
    assertEquals(Set.of(), table().ways().onlyFirst());
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
    assertFalse(panels.all().contains("-0.0"), panels.all());
    assertTrue(panels.all().contains("holes: " + judged.plan().holes().size()), panels.all());
  }

  /** By key or by click: what is chosen in a list is what is looked at. */
  @Test
  void theEyeGoesToWhatIsChosenInAList() {
    press(Key.TAB, Key.DOWN);
    looksAtWhatIsChosen("hole");
    press(Key.DOWN);
    looksAtWhatIsChosen("hole");
    press(Key.HOME, Key.ESCAPE);
    desk.panels(new FakePanels().pressing("H2"));
    looksAtWhatIsChosen("hole");
    press(Key.HOME, Key.O);
    looksAtWhatIsChosen("outlet");
    press(Key.PLUS, Key.PLUS, Key.PLUS, Key.PLUS, Key.PLUS, Key.ENTER);
    looksAtWhatIsChosen("outlet");
  }

  private long triangles() {
    Sheet s = desk.sheet(TYPE);
    int colour = Rgb.opaque(s.theme().glow());
    int law = Rgb.opaque(s.theme().warn());
    return s.over().stream()
        .filter(m -> m instanceof Mark.Wedge w && (w.colour() == colour || w.colour() == law))
        .count();
  }

  /** What a slice cuts away has neither pin nor triangle. */
  @Test
  void findingsOutsideOfASliceAreNotPinned() {
    assertTrue(triangles() > 0, "the hut has findings");
    Cut beside = Cut.usual(Cut.Way.WEST, -5_000_000_000L);
    table().show(table().shown.with(java.util.Optional.of(beside)));
    assertEquals(0, triangles());
  }

  /** Nothing of the house is outside of the picture, and it is not lost in the middle of it. */
  @Test
  void theWholeHouseFillsThePicture() {
    press(Key.A, Key.HOME);
    Pane pane = desk.pane();
    float most = 0;
    for (Piece p : table().model().pieces()) {
      Vector3f at = pane.pixel(p.centre());
      assertTrue(pane.holds(at.x, at.y), p.id());
      float up = Math.abs(at.y - pane.height() / 2f) / pane.height();
      float right = Math.abs(at.x - pane.width() / 2f) / pane.height();
      most = Math.max(most, Math.max(up, right));
    }
    assertTrue(most > 0.35f, "only " + most + " of the height from its middle");
  }

  private void looksAtWhatIsChosen(String kind) {
    assertEquals(kind, table().shown.choice().kind());
    Vector3f at = desk.pane().pixel(table().placeOf(table().shown.choice()).orElseThrow());
    float card = Board.card(1280, 800, desk.typeSize()).right();
    assertEquals((card + desk.pane().width()) / 2, at.x, 1, "in the middle of what no card covers");
    assertTrue(table().orbit.distance() < 5, "not from near by");
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

  /** Where it has no room, the help is moved by keys; what is chosen stays as it is. */
  @Test
  void keysMoveTheHelpWhileItIsShown() {
    press(Key.H, Key.DOWN, Key.PAGE_DOWN);
    FakePanels panels = new FakePanels();
    desk.panels(panels);
    assertTrue(panels.scrolled() > 10, () -> panels.scrolled() + " lines");
    assertEquals(Choice.NONE, table().shown.choice());
    FakePanels again = new FakePanels();
    desk.panels(again);
    assertEquals(0, again.scrolled(), "once");
    press(Key.H, Key.DOWN);
    assertNotEquals(Choice.NONE, table().shown.choice());
  }
}
