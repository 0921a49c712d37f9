package holloway.view;

import holloway.pipeline.LiveHouse;
import holloway.pipeline.Progress;
import java.nio.file.Path;

/** One sample, planned once for all tests that look at it. */
public final class Ranch {
  public static final Path FILE = Path.of("..", "samples", "quince-ranch.yaml");
  private static LiveHouse live;
  private static LiveHouse.Judged judged;

  private Ranch() {}

  public static synchronized LiveHouse live() {
    if (live == null) {
      live = LiveHouse.open(FILE, Progress.SILENT);
      judged = live.judged();
    }
    return live;
  }

  public static LiveHouse.Judged judged() {
    live();
    return judged;
  }

  public static Pictures pictures() {
    return new Pictures(live().drawn(judged()));
  }
}
