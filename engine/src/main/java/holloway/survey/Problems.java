package holloway.survey;

import holloway.house.Where;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;

/** Gathers what cannot be, so that one look at the file mends all of it. */
final class Problems {
  private final TreeSet<SurveyException.Problem> found =
      new TreeSet<>(
          Comparator.comparing(SurveyException.Problem::where)
              .thenComparing(SurveyException.Problem::text));

  void add(Where where, String text, Object... values) {
    found.add(new SurveyException.Problem(where, text.formatted(values)));
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  void throwIfAny() {
    if (!found.isEmpty()) {
      throw new SurveyException(List.copyOf(found));
    }
  }
}
