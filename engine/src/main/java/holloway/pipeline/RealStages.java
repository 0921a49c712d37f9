package holloway.pipeline;

import holloway.finding.Outcome;
import holloway.framing.Framed;
import holloway.framing.Framing;
import holloway.hollow.HollowHouse;
import holloway.hollow.Hollows;
import holloway.house.House;
import holloway.housefile.HouseFile;
import holloway.housefile.HouseSchema;
import holloway.housefile.Problem;
import holloway.request.Request;
import holloway.routing.Ends;
import holloway.survey.Placed;
import holloway.survey.Survey;
import holloway.survey.SurveyException;
import java.nio.file.Path;

/** The stages of this program. */
final class RealStages implements Stages {
  @Override
  public Reading read(Path houseFile) {
    holloway.housefile.Reading reading = HouseFile.read(houseFile);
    if (reading instanceof holloway.housefile.Reading.Sound sound) {
      return new Reading(sound.house(), sound.request());
    }
    var faulty = (holloway.housefile.Reading.Faulty) reading;
    throw new InputTrouble(faulty.problems().stream().map(Problem::toString).toList());
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
  public Site derive(Placed placed, Request request) {
    Ends ends = Ends.of(placed, request);
    if (!ends.problems().isEmpty()) {
      throw new InputTrouble(
          ends.problems().stream().map(p -> p.where() + ": " + p.text()).toList());
    }
    Framed framed = Framing.of(placed);
    HollowHouse house = Hollows.of(framed, ends.interests());
    return new RealSite(house, ends);
  }

  @Override
  public String inputSchema(String of) {
    return switch (of) {
      case "found" -> HouseSchema.foundText();
      case "wishes" -> HouseSchema.wishesText();
      default -> HouseSchema.text();
    };
  }

  @Override
  public String startFile(StartWishes wishes) {
    return holloway.housefile.Starter.text("house.schema.json");
  }
}
