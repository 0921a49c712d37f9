package holloway.desk;

import holloway.pipeline.LiveHouse;
import holloway.pipeline.Progress;
import holloway.request.Request;
import holloway.session.Change;
import holloway.session.Changes;
import holloway.session.Wanted;
import java.nio.file.Path;

/** How long a person waits for each change of a house: printed, for DEVELOPERS.md. */
public final class Waits {
  private Waits() {}

  public static void main(String[] args) {
    long t0 = System.nanoTime();
    LiveHouse h = LiveHouse.open(Path.of(args[0]), Progress.SILENT);
    System.out.printf("open %.0f ms%n", (System.nanoTime() - t0) / 1e6);
    LiveHouse.Judged judged = h.judged();
    for (int round = 0; round < 2; round++) {
      for (var hole : judged.plan().holes()) {
        Request wanted =
            Wanted.of(h.request(), Changes.NONE.then(new Change.Forbid(hole.id(), hole.label())));
        long a = System.nanoTime();
        LiveHouse next = h.with(wanted);
        long b = System.nanoTime();
        next.judged();
        long c = System.nanoTime();
        System.out.printf(
            "%s: plan %.0f ms, judged %.0f ms%n", hole.label(), (b - a) / 1e6, (c - b) / 1e6);
      }
    }
  }
}
