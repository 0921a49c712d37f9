package holloway.survey;

import holloway.house.WallSpec;
import holloway.house.WallTraits;
import holloway.house.Where;
import java.util.ArrayList;
import java.util.List;

/** How thick a wall between two faces is expected to be before anything is adjusted. */
final class WallPriors {
  /**
   * A gap this near to a 2x6 wall's thickness is taken for one when nobody said; from experience.
   */
  static final long NEAR_2X6 = 10_000_000L;

  /** Faces of an open side are one and the same: 0.01 mm, so that rounding is all that is left. */
  private static final long OPEN_SPREAD = 10_000L;

  private final Specs specs;
  private final Texts texts;

  WallPriors(Specs specs, Texts texts) {
    this.specs = specs;
    this.texts = texts;
  }

  /** Expected thickness and its spread, nanometres. */
  record Prior(long thickness, long spread, boolean stated, String text, Where where) {}

  Prior between(RoomShape.Face a, RoomShape.Face b) {
    Make make = Make.of(specs.house(), a.shape().room().level(), said(a, b), false);
    if (make.isOpenThrough()) {
      return open(a, b);
    }
    long thickness =
        make.thickness().isPresent() ? make.thickness().get().value().nm() : thickness(make, a, b);
    boolean stated = make.thickness().isPresent() || !make.studs().isAssumed();
    long spread = make.thickness().map(t -> t.spread().nm()).filter(s -> s > 0).orElse(usual(make));
    Where where = said(a, b).stream().findFirst().map(WallSpec::where).orElse(Where.NOWHERE);
    String from =
        stated && where.equals(Where.NOWHERE) ? "" : texts.at(stated ? where : Where.NOWHERE);
    String text = "wall %s to %s %s%s".formatted(a, b, texts.length(thickness), from);
    return new Prior(thickness, spread, stated, text, where);
  }

  /** Nothing lies between: the two faces are one line. */
  private Prior open(RoomShape.Face a, RoomShape.Face b) {
    Where where = said(a, b).get(0).where();
    String text = "open side %s to %s%s".formatted(a, b, texts.at(where));
    return new Prior(0, OPEN_SPREAD, true, text, where);
  }

  boolean isOpenThrough(RoomShape.Face a, RoomShape.Face b) {
    return Make.of(specs.house(), a.shape().room().level(), said(a, b), false).isOpenThrough();
  }

  /** The prior for a gap that closes a loop: 2x6 where nothing is stated and the gap is its. */
  Prior closing(RoomShape.Face a, RoomShape.Face b, long gap) {
    Prior usual = between(a, b);
    if (usual.stated() || !looksLike2x6(gap) || isLayered(a, b) || isDouble(a, b)) {
      return usual;
    }
    return new Prior(
        Makeup.WALL_2X6,
        Makeup.WALL_SPREAD,
        false,
        "wall %s to %s %s (assumed 2x6)".formatted(a, b, texts.length(Makeup.WALL_2X6)),
        usual.where());
  }

  private boolean isDouble(RoomShape.Face a, RoomShape.Face b) {
    return Make.of(specs.house(), a.shape().room().level(), said(a, b), false).isDouble();
  }

  private boolean isLayered(RoomShape.Face a, RoomShape.Face b) {
    return Make.of(specs.house(), a.shape().room().level(), said(a, b), false).isLayered();
  }

  static boolean looksLike2x6(long gap) {
    return Math.abs(gap - Makeup.WALL_2X6) <= NEAR_2X6;
  }

  private List<WallSpec> said(RoomShape.Face a, RoomShape.Face b) {
    List<WallSpec> said =
        new ArrayList<>(specs.between(a.shape().room().name(), b.shape().room().name(), 1));
    for (RoomShape.Face f : List.of(a, b)) {
      said.addAll(specs.behind(f.shape().room().name(), f.side(), f.ordinal()));
    }
    return said;
  }

  private static long usual(Make make) {
    return isFramed(make) ? Makeup.WALL_SPREAD : Makeup.MASONRY_SPREAD;
  }

  private static long thickness(Make make, RoomShape.Face a, RoomShape.Face b) {
    if (!isFramed(make)) {
      long battens =
          switch (make.kind()) {
            case FURRED, DABBED -> 2 * make.behindBoard();
            default -> 0;
          };
      return Makeup.MASONRY_INNER
          + battens
          + layers(make, a, Makeup.PLASTER)
          + layers(make, b, Makeup.PLASTER);
    }
    long depth = make.studs().value().depth().nm();
    return (make.isDouble() ? 2 * depth + Makeup.BETWEEN_ROWS : depth)
        + layers(make, a, Makeup.lining(a.shape().room().walls()))
        + layers(make, b, Makeup.lining(b.shape().room().walls()))
        + StripMakes.battens(make, a.shape().room(), a.side())
        + StripMakes.battens(make, b.shape().room(), b.side());
  }

  private static boolean isFramed(Make make) {
    return make.kind() == WallSpec.Kind.FRAMED || make.kind() == WallSpec.Kind.OPEN;
  }

  private static long layers(Make make, RoomShape.Face f, long usual) {
    return make.traits().findLayers(f.side()).map(WallTraits.Layers::nm).orElse(usual);
  }
}
