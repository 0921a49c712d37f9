package holloway.check;

import holloway.catalog.Cable;
import holloway.geometry.Box;
import holloway.hollow.Hollow;
import holloway.house.Battens;
import holloway.house.WallSpec;
import holloway.house.WallTraits;
import holloway.survey.Makeup;
import holloway.survey.Wall;
import java.util.Optional;

/**
 * A leg behind the board of a wall lies where the house file states something behind it: between
 * the room's lining and the depth that is stated for battens or dabs, along level battens or up and
 * down between upright ones, between floor and ceiling, and no thicker than the void is deep. All
 * of it is measured from the room's face, not from the hollow.
 */
final class BehindBoardRule implements Rule {
  private static final double SLACK_MM = 1;

  @Override
  public void judge(Evidence evidence, Charge charge) {
    for (Walk.At at : evidence.steps()) {
      Optional<Hollow> hollow = at.isLeg() ? evidence.hollow(at) : Optional.empty();
      boolean behind =
          hollow.isPresent()
              && switch (hollow.get().kind()) {
                case FURRED_BAY, DAB_VOID, SERVICE_VOID -> true;
                default -> false;
              };
      if (behind) {
        Wall wall = evidence.house().framed().placed().getWall(hollow.get().owner());
        judge(at, wall, charge);
      }
    }
  }

  private static void judge(Walk.At at, Wall wall, Charge charge) {
    Span first = at.spans().get(0);
    double y = local(wall, first.a())[1];
    int side = y < wall.thickness() / 2e6 ? 0 : 1;
    Optional<Wall.WallFace> face =
        wall.faces().stream()
            .filter(f -> f.side() == side)
            .filter(f -> holds(f, wall, first))
            .findFirst();
    Optional<Battens> battens = face.flatMap(f -> wall.traits().findBattens(f.roomSide()));
    boolean stated =
        wall.isFramed()
            ? battens.isPresent()
            : wall.kind() == WallSpec.Kind.FURRED || wall.kind() == WallSpec.Kind.DABBED;
    if (face.isEmpty() || !stated) {
      charge.step(at, "lies behind the board of %s, where nothing is stated behind it", wall.id());
      return;
    }
    place(at, wall, face.get(), charge);
    battens.ifPresent(b -> along(at, wall, b, charge));
    thickness(at, wall, battens, charge);
  }

  /** From the visible face inward, and between floor and ceiling. */
  private static void place(Walk.At at, Wall wall, Wall.WallFace face, Charge charge) {
    double board = boardMm(wall, face);
    double skin = (face.side() == 0 ? wall.core().lo() : wall.thickness() - wall.core().hi()) / 1e6;
    double most =
        wall.isFramed()
            ? board
                + wall.traits().findBattens(face.roomSide()).orElseThrow().depth().value().toMm()
            : skin;
    for (Span s : at.spans()) {
      for (Mm p : new Mm[] {s.a(), s.b()}) {
        double[] local = local(wall, p);
        double in = face.side() == 0 ? local[1] : wall.thickness() / 1e6 - local[1];
        if (in < board - SLACK_MM || in > Math.min(most, skin) + SLACK_MM) {
          charge.step(
              at,
              "lies %.0f mm behind the face of %s, the void there lies from %.0f to %.0f mm",
              in,
              wall.id(),
              board,
              Math.min(most, skin));
          return;
        }
        if (local[2] < face.floorZ() / 1e6 || local[2] > face.ceilingZ() / 1e6) {
          charge.step(at, "leaves the face of %s, whose void ends with it", wall.id());
          return;
        }
      }
    }
  }

  private static void along(Walk.At at, Wall wall, Battens battens, Charge charge) {
    double every =
        battens
            .every()
            .map(e -> e.value().toMm())
            .orElse(battens.level() ? Battens.EVERY.toMm() : wall.every().value().toMm());
    double across = 0;
    for (Span s : at.spans()) {
      double[] a = local(wall, s.a());
      double[] b = local(wall, s.b());
      across += battens.level() ? Math.abs(a[2] - b[2]) : Math.abs(a[0] - b[0]);
    }
    if (across > every) {
      charge.step(
          at,
          "goes %.0f mm across the %s battens of %s",
          across,
          battens.level() ? "level" : "upright",
          wall.id());
    }
  }

  private static void thickness(Walk.At at, Wall wall, Optional<Battens> battens, Charge charge) {
    double usual = (wall.kind() == WallSpec.Kind.FURRED ? Makeup.BATTEN : Makeup.DAB) / 1e6;
    double deep =
        battens
            .map(b -> b.depth().value().toMm())
            .or(() -> wall.traits().hollow().map(h -> h.value().toMm()))
            .orElse(usual);
    double thick =
        Cable.find(at.run().cable())
            .map(c -> Math.max(c.outside().toMm(), c.pullHead().toMm()))
            .orElse(0.0);
    if (thick > deep) {
      charge.step(
          at,
          "is %.1f mm thick in a void %.1f mm deep behind the board of %s",
          thick,
          deep,
          wall.id());
    }
  }

  /** All layers that are seen, else what the room's finish is; board before masonry. */
  private static double boardMm(Wall wall, Wall.WallFace face) {
    long usual = wall.isFramed() ? Makeup.lining(wall.lining(face.side())) : Makeup.BOARD;
    return wall.traits().findLayers(face.roomSide()).map(WallTraits.Layers::nm).orElse(usual) / 1e6;
  }

  private static boolean holds(Wall.WallFace f, Wall wall, Span s) {
    double x = local(wall, s.a())[0];
    return x >= f.s().lo() / 1e6 - SLACK_MM && x <= f.s().hi() / 1e6 + SLACK_MM;
  }

  private static double[] local(Wall w, Mm at) {
    return new Solid(w.frame(), new Box(0, w.length(), 0, w.thickness(), 0, w.height())).local(at);
  }
}
