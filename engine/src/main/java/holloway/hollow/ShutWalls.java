package holloway.hollow;

import holloway.survey.Wall;

/** Why nothing goes into or through a wall that is taken as shut: not ours, or not known. */
final class ShutWalls {
  private ShutWalls() {}

  /** What a way straight through it would have met. */
  static String through(Wall w) {
    return w.traits().isSplit()
        ? "it stands between parts of the house with floors at different heights: what is in it is"
            + " not known, so nothing goes through it; a tube, a sleeve or an old cable that does is"
            + " stated under hollows (conduit, old-cable) with its ends in the two rooms"
        : "it is shared with somebody else (party wall): nothing goes through it";
  }

  /** What a way along another wall meets where this one ends at it. */
  static String crossed(Wall w) {
    return w.traits().isSplit()
        ? "a wall between parts of the house with floors at different heights ends here: what stands"
            + " in it is not known, so it is not crossed"
        : "a wall shared with somebody else (party wall) ends here: it is not crossed";
  }

  /** What a bore on any axis meets. */
  static String bored(Wall w) {
    return w.traits().isSplit()
        ? "the wall stands between parts of the house with floors at different heights: what is in"
            + " it is not known, so it is taken as shut"
        : "the wall is shared with somebody else: nothing is bored, cut or fixed in it";
  }

  /** Who says so. */
  static String source(Wall w) {
    return w.traits().isSplit() ? "house" : "as stated in the house file";
  }
}
