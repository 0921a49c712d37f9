package holloway.schedule;

import holloway.hollow.HollowHouse;
import holloway.hollow.Site;
import holloway.plan.Drilling;
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

  private Tools() {}

  static String bit(Plan.PlannedHole hole, UnitSystem units) {
    String inch = INCHES.get(hole.diameterMm());
    String size =
        units == UnitSystem.FT_IN && inch != null ? inch + " in" : hole.diameterMm() + " mm";
    return size + (Drilling.isStone(hole) ? " masonry bit, hammer drill" : " wood bit");
  }

  /** What it takes to reach through; empty where a bit of the usual length does. */
  static String extension(Plan.PlannedHole hole, HollowHouse house, UnitSystem units) {
    return switch (Drilling.of(hole, house)) {
      case SHORT, MASONRY -> "";
      case LONG -> units.format(Length.mm(Drilling.LONG_MM)) + " bit, or an extension";
      case ANGLED ->
          Drilling.isDeep(hole)
              ? "right-angle drill and a long bit or an extension, put in through the opening"
              : "right-angle drill and a short bit, put in through the opening";
      case FLEXIBLE ->
          Drilling.isThroughOpening(hole, house)
              ? "flexible-shaft bit, fed in through the opening"
              : "flexible-shaft bit, " + units.format(Length.inches(72));
    };
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
