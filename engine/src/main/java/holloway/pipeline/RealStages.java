package holloway.pipeline;

import holloway.finding.Outcome;
import holloway.house.House;
import holloway.request.Request;
import holloway.survey.Placed;
import java.nio.file.Path;

/** The stages of this program. */
final class RealStages implements Stages {
  @Override
  public Reading read(Path houseFile) {
    throw new NotWired("reader of house files");
  }

  @Override
  public Outcome<Placed> survey(House house) {
    throw new NotWired("survey");
  }

  @Override
  public Site derive(Placed placed, Request request) {
    throw new NotWired("framing");
  }

  @Override
  public String inputSchema(String of) {
    throw new NotWired("schema of " + of);
  }

  @Override
  public String startFile(StartWishes wishes) {
    throw new NotWired("start file");
  }
}
