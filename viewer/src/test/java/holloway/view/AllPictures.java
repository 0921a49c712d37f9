package holloway.view;

import holloway.gl.Offscreen;
import holloway.look.Theme;
import holloway.pipeline.Pipeline;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Progress;
import holloway.pipeline.Thoroughness;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Draws every picture of a house, planned at quick effort, into a folder, to be looked at. */
public final class AllPictures {
  private AllPictures() {}

  /** House file, folder, width, height, and a word: light or dusk. */
  public static void main(String[] args) throws Exception {
    PlanSettings quick = new PlanSettings(Optional.empty(), Thoroughness.QUICK, Optional.empty());
    Pipeline pipeline = new Pipeline(Progress.SILENT);
    Pictures p = new Pictures(pipeline.pack(Path.of(args[0]), quick).house().orElseThrow());
    Path to = Files.createDirectories(Path.of(args[1]));
    Theme theme = args[4].equals("light") ? Theme.LIGHT : Theme.DUSK;
    try (Offscreen draws = Offscreen.open()) {
      Pictures.Paper paper =
          new Pictures.Paper(
              Integer.parseInt(args[2]), Integer.parseInt(args[3]), theme, draws.measure());
      for (Storey s : p.model().storeys()) {
        Files.write(
            to.resolve("level-" + s.name() + ".png"),
            draws.png(p.level(s.name(), paper).orElseThrow()));
      }
      for (Cable c : p.model().cables()) {
        Files.write(
            to.resolve("run-" + c.id().replace('/', '-') + ".png"),
            draws.png(p.run(c.id(), paper).orElseThrow()));
      }
      for (Pin h : p.model().pins()) {
        Files.write(
            to.resolve("hole-" + h.label() + ".png"),
            draws.png(p.hole(h.id(), paper).orElseThrow()));
      }
      for (int axis = 0; axis < 3; axis++) {
        float low = axis == 2 ? 0 : p.model().low().get(axis);
        float high = p.model().high().get(axis);
        for (int i = 1; i < 4; i++) {
          Slice s = new Slice(axis, low + (high - low) * i / 4, axis == 2 ? 0.3f : 0.6f);
          Files.write(to.resolve("slice-" + axis + "-" + i + ".png"), draws.png(p.slice(s, paper)));
        }
      }
    }
  }
}
