package holloway.schedule;

import holloway.geometry.Frame.Axis;
import holloway.geometry.Point3;
import holloway.hollow.Site;
import holloway.hollow.SiteKind;
import holloway.survey.Placed;
import holloway.survey.PlacedPorch;
import java.util.List;

/**
 * On the boards over a porch, for a hole up through them: from the wall they end at, and from the
 * nearer end of the porch. Both are seen, other than the edges of a wall's cladding.
 */
final class PorchSight {
  private PorchSight() {}

  /** Both dimensions from below; none for any other hole. */
  static List<Dimension> of(Site site, Point3 at, Placed placed) {
    if (site.kind() != SiteKind.CEILING) {
      return List.of();
    }
    return PlacedPorch.of(placed).stream()
        .filter(
            p ->
                site.hollowA().startsWith(p.space() + "/")
                    || site.hollowB().startsWith(p.space() + "/"))
        .findFirst()
        .map(p -> on(p, at))
        .orElse(List.of());
  }

  private static List<Dimension> on(PlacedPorch p, Point3 at) {
    Point3 local = p.frame().toLocal(at);
    boolean near = local.x() <= p.length() / 2;
    Axis along = near ? p.frame().u() : Lines.turned(p.frame().u());
    Point3 end = p.frame().toWorld(near ? 0 : p.length(), local.y(), local.z());
    Point3 wall = p.frame().toWorld(local.x(), 0, local.z());
    String name = "porch " + p.porch().name();
    return List.of(
        new Dimension(
            "the %s end of %s".formatted(Lines.word(Lines.turned(along)), name),
            end,
            along,
            near ? local.x() : p.length() - local.x()),
        new Dimension("the house's wall under " + name, wall, p.frame().v(), local.y()));
  }
}
