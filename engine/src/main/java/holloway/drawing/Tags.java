package holloway.drawing;

import holloway.house.Opening;
import holloway.survey.Placed;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Short names of the openings of a level, D1, W1, O1 and so on, in the order of its walls. */
public final class Tags {
  private Tags() {}

  /** An opening with its short name. */
  public record Tag(String name, Wall wall, Wall.WallOpening opening) {
    public String kind() {
      return opening.opening().kind().name().toLowerCase(Locale.ROOT);
    }
  }

  public static List<Tag> of(Placed placed, String level) {
    List<Tag> out = new ArrayList<>();
    int[] count = new int[Opening.Kind.values().length];
    for (Wall w : placed.walls()) {
      for (Wall.WallOpening o :
          w.level().equals(level) ? w.openings() : List.<Wall.WallOpening>of()) {
        int kind = o.opening().kind().ordinal();
        count[kind]++;
        out.add(new Tag("DWO".charAt(kind) + String.valueOf(count[kind]), w, o));
      }
    }
    return out;
  }
}
