package holloway.hollow;

import holloway.framing.Attic;
import holloway.framing.Framed;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

/** The way into a side attic: a door or opening in a knee wall before it. */
final class KneeAccess {
  private KneeAccess() {}

  /** True for the space behind a knee wall. */
  static boolean isSide(Attic a) {
    return !a.roof().knees().isEmpty();
  }

  /** The part of the body's place that a door leads into. */
  static Optional<Polygon> by(Framed framed, Attic a, Geometry body, List<Refused> refused) {
    for (Attic.Door d : a.doors()) {
      boolean wide =
          d.wide().toMm() >= AtticSpace.HATCH_LEAST_MM
              && d.high().toMm() >= AtticSpace.HATCH_LEAST_MM;
      boolean open = framed.placed().getRoom(d.room()).room().standing().isOpen();
      Geometry at = Spaces.point(d.at().x() / 1e6, d.at().y() / 1e6);
      Optional<Polygon> part =
          wide && open ? Spaces.partAt(body, at, AtticSpace.NEAR_MM) : Optional.empty();
      if (part.isPresent()) {
        return part;
      }
      String why =
          !open
              ? "nobody works in that room"
              : wide
                  ? "less than " + Math.round(AtticSpace.BODY_MM) + " mm of headroom behind it"
                  : "it is too small for a body";
      refused.add(
          new Refused(
              "attic " + a.id() + " by the knee wall of the " + d.room(),
              d.at().at(a.plateZ()),
              why,
              "from experience"));
    }
    return Optional.empty();
  }
}
