package holloway.support;

import holloway.pipeline.Answers;
import holloway.pipeline.Pipeline;
import holloway.pipeline.PlanSettings;
import holloway.pipeline.Progress;
import holloway.pipeline.Thoroughness;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Samples planned at quick effort with their order of work, each once for all tests. */
public final class PackedSample {
  private static final Map<String, Answers.Packed> DONE = new TreeMap<>();

  private PackedSample() {}

  public static synchronized Answers.Packed get(String name) {
    return DONE.computeIfAbsent(
        name,
        n ->
            new Pipeline(Progress.SILENT)
                .pack(
                    Path.of("..", "samples", n + ".yaml"),
                    new PlanSettings(Optional.empty(), Thoroughness.QUICK, Optional.empty())));
  }
}
