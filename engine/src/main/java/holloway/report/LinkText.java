package holloway.report;

import holloway.house.Conduit;
import holloway.house.WallSpot;
import holloway.survey.Placed;
import java.util.List;

/** What was understood of the links between buildings. */
final class LinkText {
  private LinkText() {}

  static void put(Placed placed, UnitWords units, Page page) {
    List<Conduit> links =
        placed.house().conduits().stream().filter(c -> c.outdoor().isPresent()).toList();
    if (links.isEmpty()) {
      return;
    }
    page.title("LINKS BETWEEN BUILDINGS");
    for (Conduit c : links) {
      page.put(
          "  ",
          6,
          "%s: %s, from the %s to the %s, %s along it%s"
              .formatted(
                  c.name(),
                  kind(c, units),
                  end(c.from(), units),
                  end(c.to(), units),
                  units.tape(c.length().value().nm()),
                  depth(c, units)));
    }
  }

  private static String kind(Conduit c, UnitWords units) {
    return switch (c.kind()) {
      case SPAN -> "an overhead span, yet to be strung";
      case BURIED -> "cable bare in the earth, the trench yet to be dug";
      default ->
          "a duct of %s inside, %s"
              .formatted(
                  units.tape(c.insideDiameter().nm()), c.dug() ? "yet to be dug in" : "there");
    };
  }

  private static String end(WallSpot s, UnitWords units) {
    return "%s wall of %s, %s from %s and %s over its floor"
        .formatted(
            s.face().side().word(),
            s.face().room(),
            units.tape(s.along().distance().value().nm()),
            s.along().from().word(),
            units.tape(s.height().value().nm()));
  }

  private static String depth(Conduit c, UnitWords units) {
    if (c.kind() == Conduit.Kind.SPAN) {
      return "";
    }
    return c.outdoor()
        .flatMap(Conduit.Outdoor::depth)
        .map(d -> ", " + units.tape(d.value().nm()) + " deep")
        .orElse(", how deep is not said");
  }
}
