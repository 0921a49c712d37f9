package holloway.framing;

import holloway.geometry.Box;
import holloway.survey.Wall;
import java.util.List;

/** The header over an open side: the only solid thing between the two rooms. */
final class HeaderFramer {
  private HeaderFramer() {}

  static List<Member> members(Wall w) {
    Box box = new Box(0, w.length(), w.core().lo(), w.core().hi(), underside(w), w.height());
    return List.of(
        new Member(w.id() + "/header", MemberKind.HEADER, w.frame(), box, w.id(), false));
  }

  /** Of its lining too: as far below the lower ceiling as is stated. */
  static long underside(Wall w) {
    long ceiling = w.faces().stream().mapToLong(Wall.WallFace::ceilingZ).min().orElse(w.height());
    return ceiling - w.traits().header().orElseThrow().value().nm();
  }
}
