package holloway.pipeline;

import holloway.finding.Finding;
import holloway.finding.Outcome;
import holloway.house.House;
import holloway.house.RulePlace;
import holloway.plan.Plan;
import holloway.request.Request;
import holloway.schedule.HoleCard;
import holloway.survey.Placed;
import holloway.units.UnitSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Stages that answer with the toy; what they say can be changed by a test. */
public final class ToyStages implements Stages {
  public Plan bare = Toy.bare();
  public List<String> refusals = List.of();
  public List<Finding> judged = List.of();
  public List<Plan> routes = List.of();
  public Throwable failure;
  public final List<List<String>> bansSeen = new ArrayList<>();
  public final List<String> profilesSeen = new ArrayList<>();
  private final Plan withoutAttic;

  public java.util.Set<String> present = new java.util.TreeSet<>(Ways.WORDS);

  public ToyStages() {
    Plan.Totals t = bare.totals();
    withoutAttic =
        bare.withRuns(
            bare.runs().subList(0, 1),
            new Plan.Totals(
                2_000_000, 1_900_000, 0.05, 200, 5, 1, 12, 12, 3, t.money(), "USD", List.of()));
  }

  public Pipeline pipeline() {
    return new Pipeline(this, Progress.SILENT);
  }

  @Override
  public Reading read(Path houseFile) {
    if (!Files.exists(houseFile)) {
      throw new InputTrouble(
          List.of("toy.yaml:3:7: read 12, expected a length", "toy.yaml:9:1: no such key 'roms'"));
    }
    return new Reading(Toy.house(RulePlace.US, 1962), Toy.request());
  }

  @Override
  public Outcome<Placed> survey(House house) {
    return new Outcome<>(Toy.placed(house), List.of());
  }

  @Override
  public void checkEnds(Placed placed, Request request) {}

  @Override
  public Site derive(Placed placed, Request request) {
    if (failure instanceof Error e) {
      throw e;
    }
    if (failure instanceof RuntimeException e) {
      throw e;
    }
    return new ToySite();
  }

  @Override
  public String inputSchema(String of) {
    return "{\"of\": \"" + of + "\"}";
  }

  @Override
  public String startFile(StartWishes wishes) {
    return "# " + wishes.schema() + "\nhouse: My house\n";
  }

  @Override
  public String importFile(Path model, StartWishes wishes, java.util.Optional<String> name) {
    if (!Files.exists(model)) {
      throw new InputTrouble("toy.ifc:2:1: here stands ')'");
    }
    return "house: " + name.orElse("Model") + "\n# to finish: all\n";
  }

  private final class ToySite implements Site {
    @Override
    public java.util.Set<String> ways() {
      return present;
    }

    @Override
    public List<Finding> findings() {
      return List.of(Toy.practice());
    }

    @Override
    public Plan plan(Request request, Thoroughness thoroughness) {
      bansSeen.add(request.wishes().bans());
      profilesSeen.add(request.wishes().profile().word());
      return request.wishes().bans().contains("attic") ? withoutAttic : bare;
    }

    @Override
    public List<Plan> routes(Request request, String runId, int most) {
      return routes.subList(0, Math.min(most, routes.size()));
    }

    @Override
    public List<Finding> rules(Plan plan, Request request) {
      return judged;
    }

    @Override
    public List<String> refusals(Plan plan, Request request) {
      return refusals;
    }

    @Override
    public Map<String, HoleCard> cards(Plan plan, UnitSystem units) {
      return Map.of(Toy.card().holeId(), Toy.card());
    }
  }
}
