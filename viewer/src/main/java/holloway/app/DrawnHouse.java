package holloway.app;

import holloway.gl.NoDisplay;
import holloway.gl.Offscreen;
import holloway.look.Sheet;
import holloway.look.Theme;
import holloway.pack.Pictures;
import holloway.pipeline.PlannedHouse;
import holloway.view.Storey;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/** The pictures of a work pack, drawn without a window on a light ground. */
final class DrawnHouse implements Pictures {
  /** Metres of a slice: deep enough for a wall and what stands before it. */
  private static final double THICK = 0.6;

  private final Offscreen draws;
  private final holloway.view.Pictures pictures;

  private DrawnHouse(Offscreen draws, holloway.view.Pictures pictures) {
    this.draws = draws;
    this.pictures = pictures;
  }

  /** Without a driver the answer has no pictures and says why. */
  static Pictures of(PlannedHouse house) {
    var pictures = new holloway.view.Pictures(house);
    try {
      return new DrawnHouse(Offscreen.open(), pictures);
    } catch (NoDisplay e) {
      return Pictures.none(e.getMessage());
    }
  }

  @Override
  public Optional<byte[]> png(
      String of, String name, int width, int height, UnaryOperator<String> words) {
    var paper =
        new holloway.view.Pictures.Paper(width, height, Theme.LIGHT, draws.measure(), words);
    Optional<Sheet> sheet =
        switch (of) {
          case "level" -> pictures.level(name, paper);
          case "run" -> pictures.run(name, paper);
          case "hole" -> pictures.hole(name, paper);
          case "slice" -> Optional.of(pictures.slice(Naming.slice(name, THICK), paper));
          default -> throw new IllegalArgumentException("no pictures are of a '" + of + "'");
        };
    return sheet.map(draws::png);
  }

  @Override
  public String why() {
    return "";
  }

  @Override
  public List<String> levels() {
    return pictures.model().storeys().stream().map(Storey::name).toList();
  }

  @Override
  public void close() {
    draws.close();
  }
}
