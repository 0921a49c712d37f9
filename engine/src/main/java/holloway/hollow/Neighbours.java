package holloway.hollow;

import holloway.framing.Framed;
import holloway.framing.Member;
import holloway.framing.MemberKind;
import holloway.geometry.Frame;
import holloway.geometry.Overlay;
import org.locationtech.jts.geom.Geometry;

/** What of a plan region lies under, over or in rooms that are somebody else's. */
final class Neighbours {
  private Neighbours() {}

  /** A room's solid with the voids over and under it, not the skin before a shared wall. */
  static boolean isTheirs(Member m) {
    return m.kind() == MemberKind.NOT_OURS && m.frame().equals(Frame.WORLD);
  }

  /** The region, which lies at the world height {@code z}, less what is theirs at that height. */
  static Geometry without(Framed framed, Geometry region, long z) {
    Geometry out = region;
    for (Member m : framed.members()) {
      if (isTheirs(m) && m.box().z().contains(z)) {
        out =
            Overlay.without(
                out,
                Spaces.rectangle(
                    m.box().x0() / 1e6,
                    m.box().y0() / 1e6,
                    m.box().x1() / 1e6,
                    m.box().y1() / 1e6));
      }
    }
    return out;
  }
}
