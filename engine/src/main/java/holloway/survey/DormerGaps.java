package holloway.survey;

import holloway.house.Along;
import holloway.house.Dormer;
import holloway.house.FaceRef;
import holloway.house.Fact;
import holloway.house.House;
import holloway.house.Opening;
import holloway.house.Roof;
import holloway.house.WallRef;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Where knee walls stop at the cheeks of dormers, as openings over their whole height. */
public final class DormerGaps {
  private DormerGaps() {}

  /** Those of all roofs, each at the place of its dormer in the file. */
  static List<Opening> of(House house) {
    List<Opening> out = new ArrayList<>();
    for (Roof r : house.roofs()) {
      for (Dormer d : r.dormers()) {
        d.room().flatMap(in -> r.kneeOf(in, d.side())).ifPresent(f -> out.add(gap(d, f)));
      }
    }
    return out;
  }

  private static Opening gap(Dormer d, FaceRef face) {
    WallRef wall = new WallRef(Optional.empty(), Optional.of(face), d.where());
    Fact<Length> floor = Fact.stated(new Length(0), d.where());
    Along from = d.from();
    return new Opening(Opening.Kind.OPENING, wall, from, d.width(), floor, d.height(), d.where());
  }

  /** The dormer that a wall stops for; empty for an opening that was stated. */
  public static Optional<Dormer> find(House house, Wall w, Wall.WallOpening o) {
    return house.roofs().stream()
        .flatMap(r -> r.dormers().stream())
        .filter(d -> w.isGap(o) && d.where().equals(o.opening().where()))
        .findFirst();
  }
}
