package holloway.schedule;

import holloway.geometry.Frame.Axis;
import holloway.geometry.Point3;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.survey.Placed;
import holloway.survey.PlacedPorch;
import java.util.List;

/**
 * On the boards over a porch: along them from its nearer end, and from the wall for a hole up
 * through them, else how far over their underside. These are seen, other than the edges of a wall's
 * cladding.
 */
final class PorchSight {
  private PorchSight() {}

  /** Both dimensions from below; none for what does not end over or under boards. */
  static List<Dimension> of(Site site, Point3 at, Placed placed) {
    boolean upright = site.kind() == SiteKind.CEILING;
    return PlacedPorch.of(placed).stream()
        .filter(p -> p.porch().boarded())
        .filter(
            p ->
                site.hollowA().startsWith(p.space() + "/")
                    || site.hollowB().startsWith(p.space() + "/"))
        .findFirst()
        .map(p -> on(p, at, upright))
        .orElse(List.of());
  }

  private static List<Dimension> on(PlacedPorch p, Point3 at, boolean upright) {
    Point3 local = p.frame().toLocal(at);
    boolean near = local.x() <= p.length() / 2;
    Axis along = near ? p.frame().u() : Lines.turned(p.frame().u());
    long z = upright ? local.z() : 0;
    Point3 end = p.frame().toWorld(near ? 0 : p.length(), local.y(), z);
    String name = "porch " + p.porch().name();
    Dimension first =
        new Dimension(
            "the %s end of %s".formatted(Lines.word(Lines.turned(along)), name),
            end,
            along,
            near ? local.x() : p.length() - local.x());
    Dimension second =
        upright
            ? new Dimension(
                "the house's wall under " + name,
                p.frame().toWorld(local.x(), 0, z),
                p.frame().v(),
                local.y())
            : new Dimension(
                "the boards of " + name + ", straight up into them",
                p.frame().toWorld(local.x(), local.y(), 0),
                Axis.UP,
                local.z());
    return List.of(first, second);
  }
}
