package holloway.view;

import holloway.gl.Offscreen;
import holloway.look.Bodies;
import holloway.look.Pane;
import holloway.look.Sheet;
import holloway.look.Theme;
import holloway.pipeline.Pipeline;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Progress;
import holloway.pipeline.Search;
import holloway.pipeline.Thoroughness;
import holloway.session.Shown;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * How long one frame takes against as many bare boxes, in one run; printed, for DEVELOPERS.md. The
 * house is drawn as the window draws it at first: finishes as a veil, hollows lit, cables twice.
 */
public final class Frames {
  private static final int ROUNDS = 11;

  private Frames() {}

  /** The house file. */
  public static void main(String[] args) {
    Model m = planned(Path.of(args[0]));
    try (Offscreen draws = Offscreen.open()) {
      System.out.println(draws.driver() + "; " + measured(draws, m));
      Bodies veils = timber(m).veiled(Piece::isSkin).bodies();
      Bodies cables = timber(m).veiled(Piece::isSkin).cables(c -> true, 1).bodies();
      double[] parts = medians(draws, m, List.of(timber(m).bodies(), veils, cables));
      System.out.printf(
          "timber alone %.0f ms, and veils %.0f, and cables %.0f%n", parts[0], parts[1], parts[2]);
    }
  }

  /** Planned in little time: which plan it is does not matter here. */
  static Model planned(Path house) {
    Search little =
        new Search(Thoroughness.QUICK, 0, Optional.of(Duration.ofSeconds(20)), System::nanoTime);
    PlanSettings quick =
        new PlanSettings(Optional.empty(), little, Optional.empty(), false, Optional.empty());
    Pipeline pipeline = new Pipeline(Progress.SILENT);
    return new Pictures(pipeline.picture(house, quick, List.of()).house().orElseThrow()).model();
  }

  /** Milliseconds a frame, each the median of rounds that took turns. */
  record Ratio(int pieces, double house, double bare) {
    double times() {
      return house / bare;
    }

    @Override
    public String toString() {
      return "%d pieces: house %.0f ms, bare %.0f ms, ratio %.2f"
          .formatted(pieces, house, bare, times());
    }
  }

  static Ratio measured(Offscreen draws, Model m) {
    Bodies house =
        timber(m)
            .veiled(Piece::isSkin)
            .lit(s -> true)
            .cables(c -> true, Shown.FIRST.fat())
            .bodies();
    Bodies bare = new Painted(m, Theme.DUSK).solid(p -> true).bodies();
    double[] both = medians(draws, m, List.of(house, bare));
    return new Ratio(m.pieces().size(), both[0], both[1]);
  }

  private static Painted timber(Model m) {
    return new Painted(m, Theme.DUSK).solid(p -> !p.isSkin());
  }

  private static double[] medians(Offscreen draws, Model m, List<Bodies> all) {
    List<double[]> taken = new ArrayList<>();
    all.forEach(b -> taken.add(new double[ROUNDS]));
    for (int i = 0; i < ROUNDS; i++) {
      // Taking turns, so that other work on the machine meets all of them.
      for (int k = 0; k < all.size(); k++) {
        taken.get(k)[i] = millis(draws, m, all.get(k));
      }
    }
    return taken.stream().peek(Arrays::sort).mapToDouble(t -> t[ROUNDS / 2]).toArray();
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
