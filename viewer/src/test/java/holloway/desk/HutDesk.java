package holloway.desk;

import holloway.look.Key;
import holloway.pipeline.LiveHouse;
import holloway.pipeline.Progress;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Queue;

/** A desk with a copy of the hut, whose answers come when a test lets them. */
final class HutDesk {
  static final Path HUT = Path.of("src", "test", "resources", "hut.yaml");
  static final LiveHouse LIVE = LiveHouse.open(HUT, Progress.SILENT);
  static final LiveHouse.Judged JUDGED = LIVE.judged();

  final Queue<Runnable> sketching = new ArrayDeque<>();
  final Queue<Runnable> judging = new ArrayDeque<>();
  final Path file;
  final HouseDesk desk;

  /** Nanoseconds, as the desk sees them. */
  long clock;

  HutDesk(Path dir) {
    file = dir.resolve("hut.yaml");
    try {
      Files.copy(HUT, file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    desk =
        new HouseDesk(
            file,
            LIVE,
            JUDGED,
            new HouseDesk.Around(sketching::add, judging::add, () -> clock, x -> {}, null));
    desk.resized(1280, 800, 1);
  }

  void press(Key... keys) {
    for (Key k : keys) {
      desk.key(k, false, false);
    }
    desk.tick();
  }

  /** All that was asked is answered. */
  void come(Queue<Runnable> answers) {
    while (!answers.isEmpty()) {
      answers.poll().run();
    }
    desk.tick();
  }
}
