package holloway.view;

import holloway.gl.Offscreen;
import holloway.look.Bodies;
import holloway.look.Pane;
import holloway.look.Sheet;
import holloway.look.Theme;
import holloway.pipeline.Pipeline;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Progress;
import holloway.pipeline.Thoroughness;
import holloway.session.Shown;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How long one frame takes against as many bare boxes, in one run: printed, for DEVELOPERS.md. The
 * house is drawn as the window draws it at first: finishes as a veil, hollows lit, cables twice.
 */
public final class Frames {
  private static final int ROUNDS = 9;

  private Frames() {}

  /** The house file. */
  public static void main(String[] args) {
    PlanSettings quick = new PlanSettings(Optional.empty(), Thoroughness.QUICK, Optional.empty());
    Pipeline pipeline = new Pipeline(Progress.SILENT);
    Model m = new Pictures(pipeline.pack(Path.of(args[0]), quick).house().orElseThrow()).model();
    Bodies house =
        new Painted(m, Theme.DUSK)
            .solid(p -> !p.isSkin())
            .veiled(Piece::isSkin)
            .lit(s -> true)
            .cables(c -> true, Shown.FIRST.fat())
            .bodies();
    Bodies bare = new Painted(m, Theme.DUSK).solid(p -> true).bodies();
    Bodies noVeil = new Painted(m, Theme.DUSK).solid(p -> !p.isSkin()).bodies();
    Bodies noTubes =
        new Painted(m, Theme.DUSK).solid(p -> !p.isSkin()).veiled(Piece::isSkin).bodies();
    Bodies noGlow =
        new Painted(m, Theme.DUSK)
            .solid(p -> !p.isSkin())
            .veiled(Piece::isSkin)
            .cables(c -> true, 1)
            .bodies();
    try (Offscreen draws = Offscreen.open()) {
      System.out.println(draws.driver() + "; " + m.pieces().size() + " pieces");
      double[] a = new double[ROUNDS];
      double[] b = new double[ROUNDS];
      for (int i = 0; i < ROUNDS; i++) {
        a[i] = millis(draws, m, house);
        b[i] = millis(draws, m, bare);
      }
      Arrays.sort(a);
      Arrays.sort(b);
      double ha = a[ROUNDS / 2];
      double hb = b[ROUNDS / 2];
      for (Bodies part : List.of(noVeil, noTubes, noGlow)) {
        double[] c = new double[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
          c[i] = millis(draws, m, part);
        }
        Arrays.sort(c);
        System.out.printf("part %.0f%n", c[ROUNDS / 2]);
      }
      System.out.printf("house %.0f ms, bare %.0f ms, ratio %.2f%n", ha, hb, ha / hb);
    }
  }

  private static double millis(Offscreen draws, Model m, Bodies bodies) {
    Orbit o = Orbit.whole(m);
    Pane p = new Pane(0, 0, 1600, 1000, o.view(), o.projection(1600, 1000), List.of(), bodies, 3);
    Sheet s = new Sheet(1600, 1000, Theme.DUSK, List.of(p), List.of());
    draws.draw(s);
    long before = System.nanoTime();
    draws.draw(s);
    return (System.nanoTime() - before) / 1e6;
  }
}
