package holloway.survey;

import holloway.house.Where;
import java.util.List;
import java.util.stream.Collectors;

/** A house that cannot be placed: all problems of the file together, in file order. */
public final class SurveyException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Problem> problems;

  /** One thing that cannot be, where it stands in the file, and what to try. */
  public record Problem(Where where, String text) {
    @Override
    public String toString() {
      return where + ": " + text;
    }
  }

  public SurveyException(List<Problem> problems) {
    super(problems.stream().map(Problem::toString).collect(Collectors.joining("\n")));
    this.problems = List.copyOf(problems);
  }

  public List<Problem> problems() {
    return problems;
  }
}
