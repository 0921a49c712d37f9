package holloway.routing;

import holloway.catalog.Cable;
import holloway.house.Conduit;

/**
 * The empty tube that takes no more than what a tube has room for beside the cables in it: whole
 * millimetres, a little on the small side, so that whatever fits it fits beside them.
 */
final class TubeRoom {
  /** Shares of a tube's section that one, two, and three cables or more may take (A6-1). */
  private static final double ONE = 0.53;

  private static final double TWO = 0.31;
  private static final double MORE = 0.40;

  /** No cable goes through a millimetre. */
  private static final int LEAST = 1;

  private TubeRoom() {}

  static int of(Conduit c) {
    double inside = Math.floor(c.insideDiameter().nm() / 1e6);
    double held = 0;
    double widest = 0;
    for (String kind : c.way().holds()) {
      double mm = Cable.get(kind).outside().toMm();
      held += mm * mm;
      widest = Math.max(widest, mm);
    }
    if (held == 0) {
      return (int) inside;
    }
    // One cable more makes two with the widest of them, and two or three and more with all.
    double pair = TWO * inside * inside - widest * widest;
    double all = MORE * inside * inside - held;
    double room = Math.sqrt(Math.max(0, Math.min(pair, all)) / ONE);
    // A pull head passes beside the widest of them.
    return Math.max(LEAST, (int) Math.floor(Math.min(room, inside - widest)));
  }
}
