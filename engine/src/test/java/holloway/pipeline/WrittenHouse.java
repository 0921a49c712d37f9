package holloway.pipeline;

import holloway.framing.Framed;
import holloway.framing.Framing;
import holloway.hollow.HollowHouse;
import holloway.hollow.Hollows;
import holloway.hollow.Refused;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.request.Request;
import holloway.routing.Ends;
import holloway.support.CatalogueSheets;
import holloway.survey.Placed;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** An invented house written out in a test, with what each stage makes of it. */
public record WrittenHouse(Request request, Placed placed, Framed framed, HollowHouse hollows) {
  /** The house in a file's words, taken through the stages up to its hollows. */
  public static WrittenHouse of(String yaml) {
    return of(yaml, "");
  }

  /** The same with a companion file of what was found. */
  public static WrittenHouse of(String yaml, String found) {
    RealStages stages = new RealStages(Progress.SILENT);
    Stages.Reading reading = stages.read(written(yaml, found));
    Placed placed = stages.survey(reading.house()).value();
    Framed framed = Framing.of(placed);
    Ends ends = Ends.of(placed, reading.request());
    return new WrittenHouse(
        reading.request(), placed, framed, Hollows.of(framed, ends.interests()));
  }

  private static Path written(String yaml, String found) {
    try {
      Path folder = Files.createTempDirectory("house");
      folder.toFile().deleteOnExit();
      if (!found.isEmpty()) {
        write(folder.resolve("toy.found.yaml"), found);
      }
      return write(folder.resolve("toy.yaml"), yaml);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path write(Path file, String text) throws IOException {
    file.toFile().deleteOnExit();
    return Files.writeString(file, text);
  }

  /** The plan by a short search, after the referee has accepted it. */
  public Plan plan(String... bans) {
    return plan(Profile.LEAST_WORK, bans);
  }

  public Plan plan(Profile profile, String... bans) {
    Request asked =
        Ways.with(
            request.wishes().bans().isEmpty() && bans.length == 0
                ? request
                : banning(request, List.of(bans)),
            profile);
    Stages.Site site = new RealStages(Progress.SILENT).derive(placed, asked);
    Plan plan = site.plan(asked, Thoroughness.QUICK);
    plan = plan.withFindings(SurveyWords.lines(site.rules(plan, asked)));
    List<String> refusals = site.refusals(plan, asked);
    if (!refusals.isEmpty()) {
      throw new AssertionError("the referee refuses: " + refusals);
    }
    CatalogueSheets.write(placed, request, plan);
    return plan;
  }

  private static Request banning(Request r, List<String> bans) {
    var w = r.wishes();
    List<String> all = Stream.concat(w.bans().stream(), bans.stream()).sorted().toList();
    var wishes =
        new holloway.request.Wishes(
            w.hourIsWorth(), w.visibleMetre(), w.attic(), w.avoid(), all, w.profile(), w.crew());
    return new Request(r.cabinet(), r.outlets(), r.runs(), wishes, r.effort());
  }

  public List<Site> sites(SiteKind kind) {
    return hollows.sites().stream().filter(s -> s.kind() == kind).toList();
  }

  public Optional<Refused> findRefused(String start) {
    return hollows.refused().stream().filter(r -> r.what().startsWith(start)).findFirst();
  }

  /**
   * The hollows and crossings of a run in order, crossings that are an end's own cut-out left out.
   */
  public static List<String> way(Plan plan, String run) {
    return plan.runs().stream()
        .filter(r -> r.id().equals(run))
        .flatMap(r -> r.steps().stream())
        .map(Plan.PlanStep::id)
        .filter(id -> !id.endsWith("/cut-out"))
        .toList();
  }
}
