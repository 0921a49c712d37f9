package holloway.pipeline;

import holloway.finding.Outcome;
import holloway.framing.Framed;
import holloway.framing.Framing;
import holloway.hollow.HollowHouse;
import holloway.hollow.Hollows;
import holloway.house.House;
import holloway.housefile.HouseFile;
import holloway.housefile.HouseSchema;
import holloway.housefile.PriceFile;
import holloway.housefile.Problem;
import holloway.housefile.RulesFile;
import holloway.housefile.Starter;
import holloway.request.Request;
import holloway.routing.Ends;
import holloway.routing.Routing;
import holloway.routing.RoutingMemory;
import holloway.survey.Placed;
import holloway.survey.Survey;
import holloway.survey.SurveyException;
import java.nio.file.Path;
import java.util.Optional;

/** The stages of this program, one after another. */
final class RealStages implements Stages {
  /** A house of 600 m2 has about a quarter of that; more would not fit a gigabyte. */
  static final int MOST_MEMBERS = 12_000;

  private final Progress progress;

  RealStages(Progress progress) {
    this.progress = progress;
  }

  @Override
  public Reading read(Path houseFile) {
    holloway.housefile.Reading reading = HouseFile.read(houseFile);
    if (reading instanceof holloway.housefile.Reading.Sound sound) {
      return new Reading(sound.house(), sound.request());
    }
    throw new InputTrouble(
        ((holloway.housefile.Reading.Faulty) reading)
            .problems().stream().map(Problem::toString).toList());
  }

  @Override
  public Priced prices(Path file) {
    PriceFile.Answer answer = PriceFile.read(file);
    return answer
        .list()
        .map(list -> new Priced(list, answer.inputs()))
        .orElseThrow(
            () -> new InputTrouble(answer.problems().stream().map(Problem::toString).toList()));
  }

  @Override
  public Ruled rules(Path file) {
    RulesFile.Answer answer = RulesFile.read(file);
    return answer
        .rules()
        .map(rules -> new Ruled(rules, answer.inputs()))
        .orElseThrow(
            () -> new InputTrouble(answer.problems().stream().map(Problem::toString).toList()));
  }

  @Override
  public Outcome<Placed> survey(House house) {
    try {
      return Survey.of(house);
    } catch (SurveyException e) {
      throw new InputTrouble(e.problems().stream().map(SurveyException.Problem::toString).toList());
    }
  }

  @Override
  public void checkEnds(Placed placed, Request request) {
    ends(placed, request);
  }

  private static Ends ends(Placed placed, Request request) {
    Ends ends = Ends.of(placed, request);
    if (!ends.problems().isEmpty()) {
      throw new InputTrouble(
          ends.problems().stream().map(p -> p.where() + ": " + p.text()).toList());
    }
    return ends;
  }

  @Override
  public Site derive(Placed placed, Request request) {
    // What is wrong with an end is said before anything long begins.
    Ends ends = ends(placed, request);
    progress.now("listing hollows and the ways out of them");
    Framed framed = Framing.of(placed);
    if (framed.members().size() > MOST_MEMBERS) {
      throw new InputTrouble(
          "this house would hold %d studs, joists and other members; up to %d are planned for. Is a"
                  .formatted(framed.members().size(), MOST_MEMBERS)
              + " size, or a spacing of studs or joists, wrong?");
    }
    return over(new HouseBase(Hollows.of(framed), new RoutingMemory(request)), ends, request);
  }

  /**
   * The same house with its ends elsewhere, at the same prices: only what hangs on the ends is
   * looked for.
   *
   * @throws InputTrouble when an end cannot be where it is wanted
   */
  RealSite derive(HouseBase base, Request request) {
    return over(base, ends(base.hollows().framed().placed(), request), request);
  }

  private RealSite over(HouseBase base, Ends ends, Request request) {
    HollowHouse hollows = base.hollows().near(ends.interests());
    progress.now("laying the wanted runs over the house");
    Ends beside = ends.besideStuds(hollows);
    Routing.Routed routed = Routing.of(hollows, beside, request, base.memory());
    return new RealSite(base, hollows, routed, beside, progress);
  }

  @Override
  public String inputSchema(String of) {
    return switch (of) {
      case "found" -> HouseSchema.foundText();
      case "wishes" -> HouseSchema.wishesText();
      case "rules" -> HouseSchema.rulesText();
      default -> HouseSchema.text();
    };
  }

  @Override
  public String startFile(StartWishes w) {
    try {
      return Starter.text(w.schema(), w.name(), w.place(), w.built(), w.levels(), w.metric());
    } catch (IllegalArgumentException e) {
      throw new InputTrouble("--name: " + e.getMessage());
    }
  }

  @Override
  public String importFile(Path model, StartWishes wishes, Optional<String> name) {
    progress.now("reading the model");
    return Imports.text(model, wishes, name);
  }
}
