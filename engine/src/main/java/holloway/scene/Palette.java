package holloway.scene;

import java.util.List;

/** Colours as 0xRRGGBB. */
public final class Palette {
  /** The public palette of Okabe and Ito, with white for black: the ground may be dark. */
  public static final List<Integer> RUNS =
      List.of(0xE69F00, 0x56B4E9, 0x009E73, 0xF0E442, 0x0072B2, 0xD55E00, 0xCC79A7, 0xF4F1EA);

  private Palette() {}

  /** The colour of the n-th run, from 0. */
  public static int run(int n) {
    return RUNS.get(Math.floorMod(n, RUNS.size()));
  }
}
