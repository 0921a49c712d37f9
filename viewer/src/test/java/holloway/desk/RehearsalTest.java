package holloway.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.look.Key;
import holloway.pipeline.LiveHouse;
import holloway.pipeline.Progress;
import holloway.request.Request;
import holloway.session.Changes;
import holloway.session.Wanted;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Queue;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Slides tried before anybody asks: beside everything else, and without a trace in any plan. */
final class RehearsalTest {
  private static final Path HUT = Path.of("src", "test", "resources", "hut.yaml");
  private static LiveHouse live;
  private static LiveHouse.Judged judged;

  private final Queue<Runnable> sketching = new ArrayDeque<>();
  private final Queue<Runnable> judging = new ArrayDeque<>();
  private long clock;

  @TempDir Path dir;
  private Path file;
  private HouseDesk desk;

  @BeforeAll
  static void open() {
    live = LiveHouse.open(HUT, Progress.SILENT);
    judged = live.judged();
  }

  @BeforeEach
  void desk() throws IOException {
    file = dir.resolve("hut.yaml");
    Files.copy(HUT, file);
    desk =
        new HouseDesk(
            file,
            live,
            judged,
            new HouseDesk.Around(sketching::add, judging::add, () -> clock, x -> {}, null));
    desk.resized(1280, 800, 1);
    desk.rehearse();
  }

  /** Ticks, doing what is asked one by one, until the desk waits for nothing; how much was done. */
  private int rest() {
    int done = 0;
    for (int ticks = 0; desk.isWaiting(); ticks++) {
      assertTrue(ticks < 1000, "never ends");
      desk.tick();
      assertTrue(judging.size() <= 1, "one at a time");
      if (!judging.isEmpty()) {
        judging.poll().run();
        done++;
      }
    }
    return done;
  }

  private static long slidable() {
    return live.request().outlets().stream().filter(Wanted::slides).count();
  }

  @Test
  void eachOutletIsTriedToEitherSideAndNothingOfItIsSeen() {
    int version = desk.table().version;
    int derived = live.derived();
    assertTrue(slidable() > 0);
    assertEquals(2 * slidable(), rest());
    assertEquals(version, desk.table().version, "nothing to draw");
    assertEquals(derived, live.derived(), "nothing is kept");
    assertEquals(judged.plan(), desk.table().plan());
    assertEquals("", desk.table().message);
  }

  @Test
  void nothingIsTriedWhileAPersonWaits() {
    desk.key(Key.TAB, false, false);
    desk.key(Key.DOWN, false, false);
    desk.key(Key.F, false, false);
    desk.tick();
    assertEquals(1, sketching.size());
    assertEquals(0, judging.size());
    sketching.poll().run();
    desk.tick();
    assertEquals(1, judging.size(), "the judging of the sketch and nothing else");
    judging.poll().run();
    desk.tick();
    assertFalse(desk.table().work.isPlanning());
    assertEquals(2 * slidable(), rest(), "and then it goes on");
  }

  @Test
  void aHouseReadAgainIsTriedAgain() throws IOException {
    rest();
    Files.writeString(file, Files.readString(HUT) + "# measured again\n");
    clock += 1_000_000_000L;
    desk.tick();
    assertEquals(1 + 2 * slidable(), rest(), "reading it, and its slides");
  }

  /** The sketch of a house where it was tried before, and of one where it was not. */
  @Test
  void whatIsTriedIsTheSameSketchAndLeavesNoTraceInIt() {
    LiveHouse fresh = LiveHouse.open(HUT, Progress.SILENT);
    rest();
    for (int by : new int[] {1, -2}) {
      String name =
          live.request().outlets().stream().filter(Wanted::slides).findFirst().orElseThrow().name();
      Request slid = Wanted.of(live.request(), Changes.NONE.then(Acts.slide(live, name, by)));
      assertEquals(fresh.sketch(slid).plan(), live.sketch(slid).plan());
      assertEquals(fresh.sketch(slid).plan(), live.rehearse(slid).plan());
    }
  }
}
