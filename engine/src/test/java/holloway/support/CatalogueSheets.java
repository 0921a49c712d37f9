package holloway.support;

import holloway.drawing.FloorDrawing;
import holloway.plan.Plan;
import holloway.request.Request;
import holloway.survey.Placed;
import holloway.units.UnitSystem;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Draws what the catalogue's tests plan into {@code target/catalogue}, named after the test: {@code
 * SteelStudTest.theKnockoutSavesTheBore-1-runs-ground.svg}, counted up plan by plan.
 */
public final class CatalogueSheets {
  private static final Path FOLDER = Path.of("target", "catalogue");
  private static final Map<String, Integer> DRAWN = new TreeMap<>();

  private CatalogueSheets() {}

  /** Draws the plan if a class of the catalogue asked for it; any other caller's it passes over. */
  public static synchronized void write(Placed placed, Request request, Plan plan) {
    Optional<String> test = feature();
    if (test.isEmpty()) {
      return;
    }
    int count = DRAWN.merge(test.get(), 1, Integer::sum);
    FloorDrawing.of(placed, request, plan, UnitSystem.FT_IN)
        .forEach((name, svg) -> write(test.get() + "-" + count + "-" + name, svg));
  }

  private static void write(String name, String svg) {
    try {
      Files.createDirectories(FOLDER);
      Files.writeString(FOLDER.resolve(name), svg);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The outermost method of the catalogue among the callers, its lambdas under its own name. */
  private static Optional<String> feature() {
    List<StackWalker.StackFrame> callers =
        StackWalker.getInstance()
            .walk(s -> s.filter(f -> f.getClassName().startsWith("holloway.catalogue.")).toList());
    if (callers.isEmpty()) {
      return Optional.empty();
    }
    StackWalker.StackFrame f = callers.get(callers.size() - 1);
    String type = f.getClassName().substring("holloway.catalogue.".length()).replace('$', '.');
    return Optional.of(type + "." + f.getMethodName().replaceAll("^lambda\\$(\\w+)\\$\\d+$", "$1"));
  }
}
