package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.house.WallSpec;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;

/**
 * A masonry or glazed wall as solid boxes round its openings. A cavity is part of the solid: it is
 * never offered (it keeps the damp out).
 */
final class MasonryFramer {
  private MasonryFramer() {}

  static List<Member> members(Wall wall) {
    List<Member> out = new ArrayList<>();
    for (Box b :
        Sheets.around(
            new Interval(0, wall.length()),
            wall.core(),
            new Interval(0, wall.height()),
            wall.openings())) {
      String id = wall.id() + "/masonry-" + WallFramer.tag(b.x0()) + "-" + WallFramer.tag(b.z0());
      MemberKind kind = wall.kind() == WallSpec.Kind.GLAZED ? MemberKind.GLASS : MemberKind.MASONRY;
      out.add(new Member(id, kind, wall.frame(), b, wall.id(), false));
    }
    BoardVoid.of(wall).forEach(v -> out.addAll(v.members()));
    return out;
  }
}
