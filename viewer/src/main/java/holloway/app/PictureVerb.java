package holloway.app;

import holloway.cli.ExitCode;
import holloway.cli.HelpOption;
import holloway.cli.HouseOptions;
import holloway.cli.SearchOptions;
import holloway.cli.UnitsOption;
import holloway.gl.NoDisplay;
import holloway.gl.Offscreen;
import holloway.look.Sheet;
import holloway.look.Theme;
import holloway.pipeline.Answers;
import holloway.pipeline.Pipeline;
import holloway.pipeline.Progress;
import holloway.plan.Plan;
import holloway.units.LengthParser;
import holloway.view.Cable;
import holloway.view.Pictures;
import holloway.view.Pin;
import holloway.view.Storey;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;

/** Draws one picture of a planned house, without a window. */
@Command(
    name = "picture",
    header = "draw a level, a slice, a run or a hole as a PNG file",
    customSynopsis = "holloway picture HOUSE --of KIND NAME --out FILE [OPTIONS]")
final class PictureVerb implements Callable<Integer> {
  private static final int MOST = 16_384;

  @Parameters(paramLabel = "HOUSE", description = "the house file (YAML or JSON)")
  Path house;

  @Option(
      names = "--of",
      arity = "2",
      required = true,
      paramLabel = "KIND NAME",
      hideParamSyntax = true,
      description = {
        "level NAME, run NAME, hole NAME (like H3), or",
        "slice with where it is: \"west 12 ft\", \"south 3 m\", \"floor 4 ft\",",
        "without WAY: the plan beside the best one without the",
        "attic, chase, under-floor, outside or surface"
      })
  List<String> of;

  @Option(names = "--out", required = true, paramLabel = "FILE", description = "the PNG file")
  Path out;

  @Option(names = "--size", paramLabel = "WxH", description = "in pixels (usual: 1600x1000)")
  String size = "1600x1000";

  @Option(names = "--light", description = "a light ground, for print")
  boolean light;

  @Option(names = "--thick", paramLabel = "LENGTH", description = "of a slice (usual: 2 ft)")
  String thick = "2 ft";

  @Mixin HouseOptions about;
  @Mixin UnitsOption units;
  @Mixin SearchOptions search;
  @Mixin HelpOption help;

  @CommandLine.Spec CommandLine.Model.CommandSpec spec;

  private final PrintStream err;
  private final Progress progress;

  PictureVerb(PrintStream err, Progress progress) {
    this.err = err;
    this.progress = progress;
  }

  @Override
  public Integer call() throws IOException {
    int[] pixels = pixels();
    double slab = length("--thick", thick);
    if (!Naming.KINDS.contains(of.get(0))) {
      throw wrong("--of: '" + of.get(0) + "' is not one of " + String.join(", ", Naming.KINDS));
    }
    String trouble = WholeFile.trouble(out);
    if (!trouble.isEmpty()) {
      throw wrong("--out " + out.getFileName() + ": " + trouble);
    }
    // First what draws: nobody waits for a plan that cannot be shown.
    try (Offscreen draws = Offscreen.open()) {
      return drawn(draws, pixels, slab);
    } catch (NoDisplay e) {
      complain(e.getMessage());
      return ExitCode.NO_DISPLAY;
    }
  }

  private int drawn(Offscreen draws, int[] pixels, double slab) throws IOException {
    int most = Math.min(MOST, draws.most());
    if (pixels[0] > most || pixels[1] > most) {
      throw wrong("--size: the driver draws up to " + most + " pixels a side");
    }
    // What may be wrong with a name is said before anybody waits for a plan, where it can be.
    checkWords(slab);
    Answers.Pictured planned = planned(List.of());
    if (planned.house().isEmpty()) {
      return ExitCode.REFUSED;
    }
    Plan plan = planned.planned().plan();
    Pictures pictures = new Pictures(planned.house().get());
    if (!isThere(plan, pictures)) {
      return ExitCode.of(plan);
    }
    Optional<Pictures> other = Optional.empty();
    if (of.get(0).equals("without")) {
      other = planned(List.of(of.get(1))).house().map(Pictures::new);
      if (other.isEmpty()) {
        return ExitCode.REFUSED;
      }
    }
    progress.now("drawing");
    Theme theme = light ? Theme.LIGHT : Theme.DUSK;
    Pictures.Paper paper = new Pictures.Paper(pixels[0], pixels[1], theme, draws.measure());
    WholeFile.write(out, draws.png(sheet(pictures, other, slab, paper)));
    plan.unrouted().forEach(u -> complain("not in the picture, no route: " + u.id()));
    plan.findings().stream()
        .filter(Plan.FindingLine::breaksLaw)
        .forEach(f -> complain("the plan breaks a rule of law: " + f.rule() + " at " + f.place()));
    return ExitCode.of(plan);
  }

  /** A plan without some ways of working; without a house, and told, where it is refused. */
  private Answers.Pictured planned(List<String> without) {
    Answers.Pictured seen =
        new Pipeline(progress).picture(house, search.settings(about, units), without);
    if (seen.house().isEmpty()) {
      complain("the referee refuses the plan that was found, so it is not drawn:");
      seen.planned().refusals().forEach(r -> complain("refused: " + r));
    }
    return seen;
  }

  private void complain(String line) {
    err.print("holloway: " + line + "\n");
  }

  /** Whether what is asked for is in the plan; a run that has no route is told, and why. */
  private boolean isThere(Plan plan, Pictures pictures) {
    Optional<Plan.Unrouted> none =
        plan.unrouted().stream()
            .filter(u -> of.get(0).equals("run") && u.id().equals(of.get(1)))
            .findFirst();
    if (none.isEmpty()) {
      check(pictures);
      return true;
    }
    complain("no picture, no route: " + none.get().id());
    none.get().whyNot().forEach(w -> complain("  " + w));
    return false;
  }

  private Sheet sheet(Pictures p, Optional<Pictures> other, double slab, Pictures.Paper paper) {
    String name = of.get(1);
    if (other.isPresent()) {
      return p.beside("as wished", other.get(), "without " + name, paper);
    }
    return switch (of.get(0)) {
      case "level" -> p.level(name, paper).orElseThrow();
      case "run" -> p.run(name, paper).orElseThrow();
      case "hole" -> p.hole(name, paper).orElseThrow();
      default -> p.slice(Naming.slice(name, slab), paper);
    };
  }

  /** Refuses what no house can have. */
  private void checkWords(double slab) {
    String name = of.get(1);
    if (of.get(0).equals("slice")) {
      sliced(name, slab);
    } else if (of.get(0).equals("without") && !Naming.WITHOUT.contains(name)) {
      throw unknown("way of working", Naming.WITHOUT);
    }
  }

  /** Refuses a name that this house does not have, before anything is drawn. */
  private void check(Pictures p) {
    String name = of.get(1);
    List<String> known =
        switch (of.get(0)) {
          case "level" -> p.model().storeys().stream().map(Storey::name).toList();
          case "run" -> p.model().cables().stream().map(Cable::id).toList();
          case "hole" -> p.model().pins().stream().map(Pin::label).toList();
          default -> List.of(name);
        };
    boolean id = p.model().findPin(name).isPresent() && of.get(0).equals("hole");
    if (!id && !known.contains(name)) {
      throw unknown(of.get(0), known);
    }
  }

  private ParameterException unknown(String kind, List<String> known) {
    return wrong(
        "--of: no %s '%s'; there are: %s".formatted(kind, of.get(1), String.join(", ", known)));
  }

  private void sliced(String name, double slab) {
    try {
      Naming.slice(name, slab);
    } catch (IllegalArgumentException e) {
      throw wrong("--of: " + e.getMessage());
    }
  }

  private double length(String option, String text) {
    try {
      double metres = LengthParser.parse(text).value().toMetres();
      if (metres <= 0) {
        throw new IllegalArgumentException("'" + text + "' is not over 0");
      }
      return metres;
    } catch (IllegalArgumentException e) {
      throw wrong(option + ": " + e.getMessage());
    }
  }

  private int[] pixels() {
    Matcher m = Pattern.compile("(\\d{1,5})[xX](\\d{1,5})").matcher(size);
    if (!m.matches()) {
      throw wrong("--size: '" + size + "' is not like 1600x1000");
    }
    int w = Integer.parseInt(m.group(1));
    int h = Integer.parseInt(m.group(2));
    if (w < 320 || h < 240 || w > MOST || h > MOST) {
      throw wrong("--size: from 320x240 to " + MOST + "x" + MOST + ", not " + size);
    }
    return new int[] {w, h};
  }

  private ParameterException wrong(String message) {
    return new ParameterException(spec.commandLine(), message);
  }
}
