package holloway.cli;

import holloway.pipeline.Networks;
import holloway.pipeline.Thoroughness;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Lets the planner be judged by benchmark networks with known answers; not for houses. */
@Command(
    name = "network",
    hidden = true,
    header = "plan a benchmark network that is no house",
    customSynopsis = "holloway network FILE [OPTIONS]")
final class NetworkVerb implements Callable<Integer> {
  @Parameters(
      paramLabel = "FILE",
      description = "a Steiner tree (.stp) or a capacitated fixed-charge design (.dow)")
  Path file;

  @Option(
      names = "--effort",
      paramLabel = "HOW",
      converter = Choices.Search.class,
      description = "how long to search: quick, usual or thorough")
  Thoroughness effort = Thoroughness.USUAL;

  @Mixin HelpOption help;

  private final Surroundings around;

  NetworkVerb(Surroundings around) {
    this.around = around;
  }

  @Override
  public Integer call() {
    long before = System.nanoTime();
    Networks.Designed d = Networks.design(file, effort);
    double seconds = (System.nanoTime() - before) / 1e9;
    if (d.unrouted() > 0) {
      around.complain(
          d.unrouted() + " units have no route or no room; the cost would be of the others alone");
      return ExitCode.NO_ROUTE;
    }
    around.print(
        String.format(
            Locale.ROOT,
            "{\"cost\": %d, \"bound\": %d, \"proven\": %b, \"seconds\": %.3f}\n",
            d.cost(),
            d.bound(),
            d.proven(),
            seconds));
    return ExitCode.DONE;
  }
}
