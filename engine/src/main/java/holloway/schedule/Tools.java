package holloway.schedule;

import holloway.catalog.Fit;
import holloway.hollow.Site;
import holloway.plan.Plan;
import holloway.units.Length;
import holloway.units.UnitSystem;
import java.util.List;
import java.util.Map;

/** The bit for a hole and what it takes to reach through: trade-facts E1 to E3. */
final class Tools {
  private static final Map<Integer, String> INCHES =
      Map.of(
          13, "1/2", 16, "5/8", 19, "3/4", 22, "7/8", 25, "1", 32, "1-1/4", 38, "1-1/2", 51, "2");

  /** A ship auger's length, E3. */
  private static final double AUGER_MM = 190;

  /** An electrician's long bit, E3. */
  private static final double LONG_MM = 455;

  private Tools() {}

  static String bit(Plan.PlannedHole hole, Site site, UnitSystem units) {
    String inch = INCHES.get(hole.diameterMm());
    String size =
        units == UnitSystem.FT_IN && inch != null ? inch + " in" : hole.diameterMm() + " mm";
    boolean stone = site.layers().stream().anyMatch(l -> l.what().equals("masonry"));
    return size + (stone ? " masonry bit, hammer drill" : " wood bit");
  }

  static String extension(int wideMm, Site site, UnitSystem units, boolean blind) {
    double depth = site.a().distanceTo(site.b()) / 1e6;
    boolean flexible = Fit.FLEXIBLE_MM.contains(wideMm);
    if (blind) {
      return flexible
          ? "flexible-shaft bit, fed in through the opening"
          : "right-angle drill and a short bit, put in through the opening";
    }
    if (depth <= AUGER_MM) {
      return "";
    }
    return depth <= LONG_MM || !flexible
        ? units.format(Length.mm(LONG_MM)) + " bit, or an extension"
        : "flexible-shaft bit, " + units.format(Length.inches(72));
  }

  /** What the bit meets in order, and the depth at which it is through. */
  static String breakthrough(Site site, boolean fromA, UnitSystem units) {
    List<Site.Layer> layers = new java.util.ArrayList<>(site.layers());
    if (!fromA) {
      java.util.Collections.reverse(layers);
    }
    StringBuilder out = new StringBuilder();
    for (Site.Layer l : layers) {
      out.append(out.length() == 0 ? "" : ", then ")
          .append(units.format(new Length(l.thickness())))
          .append(' ')
          .append(l.what());
    }
    String depth = units.format(new Length(site.a().distanceTo(site.b())));
    return (out.length() == 0 ? "" : out + "; ") + "through at " + depth;
  }
}
