package holloway.cli;

import holloway.pipeline.Answers;
import holloway.pipeline.Thoroughness;
import holloway.scene.Glb;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes a house with its plan as a 3D model. */
@Command(
    name = "model",
    header = "the house with its plan as a 3D model (glTF)",
    customSynopsis = "holloway model HOUSE --out FILE [OPTIONS]")
final class ModelVerb implements Callable<Integer> {
  @Parameters(paramLabel = "HOUSE", description = "the house file (YAML or JSON)")
  Path house;

  @Option(
      names = "--out",
      paramLabel = "FILE",
      required = true,
      description = "write the model there, whole or not at all; the name ends in .glb")
  Path file;

  @Mixin HouseOptions about;
  @Mixin SearchOptions search;
  @Mixin HelpOption help;

  private final Surroundings around;

  ModelVerb(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() {
    OutModel to = new OutModel(file);
    to.refuseForeign();
    Answers.Drawn drawn =
        around
            .pipeline()
            .draw(house, search.settings(about, new UnitsOption(), Thoroughness.USUAL, false));
    Answers.Planned planned = drawn.planned();
    if (around.refuses(planned, "no model is written")) {
      return ExitCode.REFUSED;
    }
    to.write(Glb.of(drawn.scene(), planned.plan().site()));
    planned
        .plan()
        .unrouted()
        .forEach(u -> around.complain("not in the model, no route: " + u.id()));
    return ExitCode.of(planned.plan());
  }
}
