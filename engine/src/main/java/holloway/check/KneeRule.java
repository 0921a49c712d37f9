package holloway.check;

import holloway.framing.Attic;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.hollow.Site;
import holloway.house.FaceRef;
import holloway.house.Opening;
import holloway.house.Roof;
import holloway.survey.PlacedRoom;
import holloway.survey.Wall;
import java.util.List;
import java.util.Optional;

/**
 * Knee walls, read from what was stated of rooms and roof: a leg behind them lies under the slope
 * that their height gives, within an arm of where a body fits, behind a stated knee wall, in a
 * space that a door leads into; a cable passes into a knee wall from there only through a bare
 * back; and nothing in the rooms lies above the slope or comes from out of doors through a knee
 * wall.
 */
final class KneeRule implements Rule {
  private static final double SLACK_MM = 1;

  /** Clear height that a body crawls through, an arm, and the least hatch; from experience. */
  private static final double BODY_MM = 600;

  private static final double ARM_MM = 600;
  private static final double HATCH_MM = 350;

  /** A partition between two rooms in a row is no gap behind their knee walls. */
  private static final double PARTITION_MM = 250;

  /** Walls round a room belong under its slope. */
  private static final double WALL_MM = 150;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    for (Roof roof : evidence.house().framed().placed().house().roofs()) {
      if (!roof.knees().isEmpty()) {
        for (Walk.At at : evidence.steps()) {
          judgeStep(at, roof, evidence, charge);
        }
      }
    }
  }

  private void judgeStep(Walk.At at, Roof roof, Evidence evidence, Charge charge) {
    if (at.isCrossing()) {
      evidence.site(at).ifPresent(s -> judgeCrossing(at, s, evidence, charge));
      return;
    }
    Optional<Hollow> hollow = at.isLeg() ? evidence.hollow(at) : Optional.empty();
    if (hollow.isEmpty()) {
      return;
    }
    Optional<Attic> attic =
        evidence.house().framed().attics().stream()
            .filter(a -> a.roof().name().equals(roof.name()))
            .filter(a -> at.hollow().equals("attic/" + a.id()))
            .findFirst();
    if (attic.isPresent()) {
      judgeBehind(at, attic.get(), evidence, charge);
    } else if (hollow.get().kind() == HollowKind.STUD_BAY
        || hollow.get().kind() == HollowKind.ROOM_SURFACE) {
      judgeUnder(at, roof, evidence, charge);
    }
  }

  private void judgeBehind(Walk.At at, Attic attic, Evidence evidence, Charge charge) {
    Roof roof = attic.roof();
    for (Span span : at.spans()) {
      for (Mm p : List.of(span.a(), span.b())) {
        Optional<Roof.Knee> before =
            roof.knees().stream().filter(k -> isBefore(k, p, evidence)).findFirst();
        if (before.isEmpty()) {
          charge.step(at, "lies at %s, behind no knee wall that was stated", p);
          return;
        }
        PlacedRoom room = room(before.get(), evidence);
        double out = outward(before.get().face(), room, p);
        double fits =
            (slopeZ(roof, before.get(), room, 0) - attic.chordTopZ() / 1e6 - BODY_MM) / slope(roof);
        if (p.z() > slopeZ(roof, before.get(), room, out) + SLACK_MM) {
          charge.step(at, "lies at %s, above the rafters", p);
          return;
        }
        if (out > fits + ARM_MM + SLACK_MM) {
          charge.step(at, "is laid at %s, further than an arm reaches under this roof", p);
          return;
        }
      }
    }
    if (roof.knees().stream().noneMatch(k -> hasDoor(k, attic, evidence))) {
      charge.step(at, "lies in %s, which no door in a knee wall leads into", at.hollow());
    }
  }

  /** Under the slope of each knee wall of the room it is in. */
  private void judgeUnder(Walk.At at, Roof roof, Evidence evidence, Charge charge) {
    for (Roof.Knee k : roof.knees()) {
      PlacedRoom room = room(k, evidence);
      Outline outline = new Outline(room.outline());
      for (Span span : at.spans()) {
        for (Mm p : List.of(span.a(), span.b())) {
          boolean in = p.z() > room.floorZ() / 1e6 && outline.near(p, WALL_MM);
          double out = outward(k.face(), room, p);
          if (in && p.z() > slopeZ(roof, k, room, out) + SLACK_MM) {
            charge.step(at, "lies at %s, above the slope over the %s", p, room.name());
            return;
          }
        }
      }
    }
  }

  private void judgeCrossing(Walk.At at, Site site, Evidence evidence, Charge charge) {
    for (Wall w : evidence.house().framed().placed().walls()) {
      Optional<Roof.Knee> knee = knee(w, evidence);
      if (knee.isEmpty()) {
        continue;
      }
      boolean bay = owns(w, site.hollowA(), evidence) || owns(w, site.hollowB(), evidence);
      boolean attic = site.hollowA().startsWith("attic/") || site.hollowB().startsWith("attic/");
      if (bay && attic && !isBare(site, w, evidence)) {
        charge.step(at, "passes the back of %s, which is not said to be bare", w.id());
      }
      boolean out = site.hollowA().startsWith("outside/") || site.hollowB().startsWith("outside/");
      boolean pierced = site.pierces().stream().anyMatch(m -> m.startsWith(w.id() + "/"));
      if (out && (bay || pierced)) {
        charge.step(at, "comes from outside through %s: behind it lie the eaves", w.id());
      }
    }
  }

  /** The room that the crossing lies beside says so. */
  private static boolean isBare(Site site, Wall w, Evidence evidence) {
    Mm p = Mm.of(site.middle());
    return evidence.house().framed().placed().house().roofs().stream()
        .flatMap(r -> r.knees().stream())
        .filter(k -> k.bare() && isBefore(k, p, evidence))
        .anyMatch(
            k ->
                new Outline(room(k, evidence).outline()).near(p, WALL_MM)
                    && w.faces().stream().anyMatch(f -> f.room().equals(k.face().room())));
  }

  private static boolean owns(Wall w, String hollow, Evidence evidence) {
    return evidence.house().findHollow(hollow).filter(h -> h.owner().equals(w.id())).isPresent();
  }

  private static Optional<Roof.Knee> knee(Wall w, Evidence evidence) {
    return evidence.house().framed().placed().house().roofs().stream()
        .flatMap(r -> r.knees().stream())
        .filter(
            k ->
                w.faces().stream()
                    .anyMatch(
                        f -> f.room().equals(k.face().room()) && f.roomSide() == k.face().side()))
        .findFirst();
  }

  /** The point lies outwards of the wall and no further along it than the room and its walls. */
  private static boolean isBefore(Roof.Knee k, Mm p, Evidence evidence) {
    PlacedRoom room = room(k, evidence);
    boolean ew = k.face().side().runsEastWest();
    var range = ew ? room.outline().xRange() : room.outline().yRange();
    double along = ew ? p.x() : p.y();
    return outward(k.face(), room, p) > -SLACK_MM
        && along > range.lo() / 1e6 - PARTITION_MM
        && along < range.hi() / 1e6 + PARTITION_MM;
  }

  private static boolean hasDoor(Roof.Knee k, Attic attic, Evidence evidence) {
    boolean beside =
        attic.outline().corners().stream()
            .allMatch(
                c -> outward(k.face(), room(k, evidence), new Mm(c.x() / 1e6, c.y() / 1e6, 0)) > 0);
    return beside
        && room(k, evidence).room().standing().isOpen()
        && evidence.house().framed().placed().house().openings().stream()
            .filter(o -> o.kind() != Opening.Kind.WINDOW)
            .filter(o -> o.wall().face().filter(f -> is(f, k.face())).isPresent())
            .anyMatch(
                o ->
                    o.width().value().toMm() >= HATCH_MM
                        && o.head().value().toMm() - o.sill().value().toMm() >= HATCH_MM);
  }

  private static boolean is(FaceRef a, FaceRef b) {
    return a.room().equals(b.room()) && a.side() == b.side() && a.ordinal() == b.ordinal();
  }

  private static PlacedRoom room(Roof.Knee k, Evidence evidence) {
    return evidence.house().framed().placed().getRoom(k.face().room());
  }

  private static double outward(FaceRef face, PlacedRoom room, Mm p) {
    var x = room.outline().xRange();
    var y = room.outline().yRange();
    return switch (face.side()) {
      case NORTH -> p.y() - y.hi() / 1e6;
      case SOUTH -> y.lo() / 1e6 - p.y();
      case EAST -> p.x() - x.hi() / 1e6;
      case WEST -> x.lo() / 1e6 - p.x();
    };
  }

  private static double slope(Roof roof) {
    return roof.pitchRise() / (double) roof.pitchRun();
  }

  private static double slopeZ(Roof roof, Roof.Knee k, PlacedRoom room, double outward) {
    return room.floorZ() / 1e6 + k.height().value().toMm() - slope(roof) * outward;
  }
}
