package holloway.pipeline;

import holloway.survey.Placed;
import java.util.List;

/** The notes on lowered ceilings as plain texts, for tests in other packages. */
public final class LoweredNotesView {
  private LoweredNotesView() {}

  /** One text a note. */
  public static List<String> of(Placed placed) {
    return LoweredNotes.of(placed).stream().map(l -> l.text()).toList();
  }
}
