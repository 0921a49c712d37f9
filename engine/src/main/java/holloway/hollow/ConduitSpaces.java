package holloway.hollow;

import holloway.geometry.Box;
import holloway.geometry.Frame;
import holloway.geometry.Point3;
import holloway.house.Conduit;
import holloway.house.Fill;
import holloway.house.WallSpot;
import holloway.limits.TubePull;
import holloway.survey.OnWall;
import java.util.Optional;

/**
 * Existing tubes, and loose old cables, between two boxes. Where one runs is unknown: only its two
 * ends and its length count. A cable that may be stapled is none. So are links between buildings.
 */
final class ConduitSpaces {
  private ConduitSpaces() {}

  static void find(Draft draft) {
    for (Conduit c : draft.framed.placed().house().conduits()) {
      Optional<Point3> a = mouth(draft, c, c.from());
      Optional<Point3> b = mouth(draft, c, c.to());
      if (a.isEmpty() || b.isEmpty()) {
        draft.refuse(
            "conduit " + c.name(), new Point3(0, 0, 0), "an end lies on no wall", "house file");
        continue;
      }
      Optional<String> why = OutdoorLinks.whyNot(draft.framed, c);
      if (why.isPresent()) {
        draft.refuse("link " + c.name(), a.get(), why.get(), "house file");
        continue;
      }
      if (c.kind() == Conduit.Kind.TUBE && tooFar(c).isPresent()) {
        String what = c.outdoor().isPresent() ? "link " : "conduit ";
        draft.refuse(what + c.name(), a.get(), tooFar(c).get(), "TIA-569, BICSI");
        continue;
      }
      if (c.kind() == Conduit.Kind.FAST_CABLE) {
        draft.refuse(
            "old cable " + c.name(),
            a.get(),
            "it is stapled, or nobody knows: it draws nothing in (stapled: no, once it slides)",
            "from experience");
        continue;
      }
      Point3 p = a.get();
      Point3 q = b.get();
      long spare = Math.max(0, c.length().value().nm() - p.distanceTo(q)) + 10_000_000;
      Box box =
          new Box(
              Math.min(p.x(), q.x()) - spare,
              Math.max(p.x(), q.x()) + spare,
              Math.min(p.y(), q.y()) - spare,
              Math.max(p.y(), q.y()) + spare,
              Math.min(p.z(), q.z()) - spare,
              Math.max(p.z(), q.z()) + spare);
      draft.hollow(
          new Hollow(
              "conduit/" + c.name(),
              kind(c),
              Frame.WORLD,
              box,
              Optional.empty(),
              Fill.EMPTY,
              "conduit/" + c.name(),
              stand(c)));
    }
  }

  /** Why cable cannot be drawn through one of its parts. */
  private static Optional<String> tooFar(Conduit c) {
    String boxes =
        c.way().pullBoxes() == 0
            ? "; if there is a pull box half-way, say 'parts'"
            : " between two pull boxes";
    return c.way().parts().stream()
        .filter(p -> TubePull.tooLong(p.length()) || TubePull.tooBent(p.degrees()))
        .findFirst()
        .map(
            p ->
                "%.1f m and %d degrees of turns%s: cable is drawn through 30 m and 180 degrees at most"
                    .formatted(p.length().toMetres(), p.degrees(), boxes));
  }

  private static HollowKind kind(Conduit c) {
    return switch (c.kind()) {
      case TUBE -> HollowKind.CONDUIT;
      case BURIED -> HollowKind.TRENCH;
      case SPAN -> HollowKind.SPAN;
      default -> HollowKind.OLD_CABLE;
    };
  }

  private static Optional<String> stand(Conduit c) {
    return switch (c.kind()) {
      case BURIED -> Optional.of("outside");
      case SPAN -> Optional.of("ladder");
      default -> Optional.empty();
    };
  }

  private static Optional<Point3> mouth(Draft draft, Conduit c, WallSpot at) {
    return c.outdoor().isPresent()
        ? OutdoorLinks.spot(draft.framed, at).map(OutdoorLinks::mouth)
        : end(draft, at);
  }

  /** The mouth of a tube: in the middle of the wall behind its box. */
  static Optional<Point3> end(Draft draft, WallSpot at) {
    return end(draft.framed, at);
  }

  static Optional<Point3> end(holloway.framing.Framed framed, WallSpot at) {
    Optional<OnWall> spot =
        framed.placed().findSpot(at.face(), at.along(), at.height().value().nm());
    return spot.map(s -> s.wall().world(s.s(), s.wall().core().mid(), s.z()));
  }
}
