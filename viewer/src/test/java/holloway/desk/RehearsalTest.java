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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Slides tried before anybody asks: beside everything else, and without a trace in any plan. */
final class RehearsalTest {
  private static final LiveHouse LIVE = HutDesk.LIVE;
  private static final LiveHouse.Judged JUDGED = HutDesk.JUDGED;

  @TempDir Path dir;
  private HutDesk hut;
  private HouseDesk desk;

  @BeforeEach
  void desk() {
    hut = new HutDesk(dir);
    desk = hut.desk;
    desk.rehearse();
  }

  /** Ticks, doing what is asked one by one, until the desk waits for nothing; how much was done. */
  private int rest() {
    int done = 0;
    for (int ticks = 0; desk.isWaiting(); ticks++) {
      assertTrue(ticks < 1000, "never ends");
      desk.tick();
      assertTrue(hut.judging.size() <= 1, "one at a time");
      if (!hut.judging.isEmpty()) {
        hut.judging.poll().run();
        done++;
      }
    }
    return done;
  }

  private static long slidable() {
    return LIVE.request().outlets().stream().filter(Wanted::slides).count();
  }

  @Test
  void eachOutletIsTriedToEitherSideAndNothingOfItIsSeen() {
    int version = desk.table().version;
    int derived = LIVE.derived();
    assertTrue(slidable() > 0);
    assertEquals(2 * slidable(), rest());
    assertEquals(version, desk.table().version, "nothing to draw");
    assertEquals(derived, LIVE.derived(), "nothing is kept");
    assertEquals(JUDGED.plan(), desk.table().plan());
    assertEquals("", desk.table().message);
  }

  @Test
  void nothingIsTriedWhileAPersonWaits() {
    hut.press(Key.TAB, Key.DOWN, Key.F);
    assertEquals(1, hut.sketching.size());
    assertEquals(0, hut.judging.size());
    hut.sketching.poll().run();
    desk.tick();
    assertEquals(1, hut.judging.size(), "the judging of the sketch and nothing else");
    hut.judging.poll().run();
    desk.tick();
    assertFalse(desk.table().work.isPlanning());
    assertEquals(2 * slidable(), rest(), "and then it goes on");
  }

  @Test
  void aHouseReadAgainIsTriedAgain() throws IOException {
    rest();
    Files.writeString(hut.file, Files.readString(HutDesk.HUT) + "# measured again\n");
    hut.clock += 1_000_000_000L;
    desk.tick();
    assertEquals(1 + 2 * slidable(), rest(), "reading it, and its slides");
  }

  /** The sketch of a house where it was tried before, and of one where it was not. */
  @Test
  void whatIsTriedIsTheSameSketchAndLeavesNoTraceInIt() {
    LiveHouse fresh = LiveHouse.open(HutDesk.HUT, Progress.SILENT);
    rest();
    for (int by : new int[] {1, -2}) {
      String name =
          LIVE.request().outlets().stream().filter(Wanted::slides).findFirst().orElseThrow().name();
      Request slid = Wanted.of(LIVE.request(), Changes.NONE.then(Acts.slide(LIVE, name, by)));
      assertEquals(fresh.sketch(slid).plan(), LIVE.sketch(slid).plan());
      assertEquals(fresh.sketch(slid).plan(), LIVE.rehearse(slid).plan());
    }
  }
}
