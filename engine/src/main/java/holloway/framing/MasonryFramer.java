package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.house.WallSpec;
import holloway.survey.CavityGap;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A masonry or glazed wall as solid boxes round its openings. The gap of a cavity wall is left
 * between its leaves, if they were stated; it is never offered (it keeps the damp out).
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
      Optional<Interval> gap = CavityGap.of(wall);
      if (gap.isEmpty()) {
        out.add(new Member(id, kind, wall.frame(), b, wall.id(), false));
      } else {
        Box low = new Box(b.x0(), b.x1(), b.y0(), gap.get().lo(), b.z0(), b.z1());
        Box high = new Box(b.x0(), b.x1(), gap.get().hi(), b.y1(), b.z0(), b.z1());
        out.add(new Member(id + "-leaf-a", kind, wall.frame(), low, wall.id(), false));
        out.add(new Member(id + "-leaf-b", kind, wall.frame(), high, wall.id(), false));
      }
    }
    BoardVoid.of(wall).forEach(v -> out.addAll(v.members()));
    return out;
  }
}
