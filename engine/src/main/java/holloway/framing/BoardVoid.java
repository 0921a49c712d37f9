package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.house.WallSpec;
import holloway.house.WallTraits;
import holloway.survey.Makeup;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;

/**
 * What lies between masonry and the board in front of it on one face: battens upright at the stud
 * spacing with one along the top and the foot, or a bead of adhesive all round (behind-the-board
 * J23). The cavity within the masonry is no part of it.
 *
 * @param t between masonry and board
 * @param frame battens or beads, boxes in the wall's frame
 * @param bays what they leave open
 */
public record BoardVoid(
    Wall wall, Wall.WallFace face, Interval t, List<Box> frame, List<Box> bays) {
  /** Width of a batten or bead at top, foot and ends; common practice, no published source. */
  private static final long EDGE = 40_000_000;

  private static final long BATTEN = 50_000_000;
  private static final long NARROWEST = 60_000_000;

  /** The voids of a wall; none for one that is framed or plastered. */
  public static List<BoardVoid> of(Wall wall) {
    List<BoardVoid> out = new ArrayList<>();
    if (hasVoid(wall)) {
      for (Wall.WallFace f : wall.faces()) {
        long skin = f.side() == 0 ? wall.core().lo() : wall.thickness() - wall.core().hi();
        if (skin > boardNm(wall, f.side()) && f.ceilingZ() - f.floorZ() > 4 * EDGE) {
          out.add(of(wall, f));
        }
      }
    }
    return out;
  }

  static boolean hasVoid(Wall wall) {
    return wall.kind() == WallSpec.Kind.FURRED || wall.kind() == WallSpec.Kind.DABBED;
  }

  /** The board alone where there is a void behind it, else the whole skin. */
  static Interval board(Wall wall, int side, Interval skin) {
    long board = boardNm(wall, side);
    if (!hasVoid(wall) || wall.outside() == side || skin.length() <= board) {
      return skin;
    }
    return side == 0
        ? new Interval(skin.lo(), skin.lo() + board)
        : new Interval(skin.hi() - board, skin.hi());
  }

  /** Thickness of the board in front of the void, all its layers. */
  public static long boardNm(Wall wall, int side) {
    return wall.findLayers(side).map(WallTraits.Layers::nm).orElse(Makeup.BOARD);
  }

  private static BoardVoid of(Wall wall, Wall.WallFace f) {
    long board = boardNm(wall, f.side());
    Interval t =
        f.side() == 0
            ? new Interval(board, wall.core().lo())
            : new Interval(wall.core().hi(), wall.thickness() - board);
    Interval z = new Interval(f.floorZ() + EDGE, f.ceilingZ() - EDGE);
    List<Interval> shut = uprights(wall, f);
    List<Box> frame = new ArrayList<>();
    List<Interval> gaps = new ArrayList<>();
    wall.openings().forEach(o -> gaps.add(new Interval(o.s().lo() - EDGE, o.s().hi() + EDGE)));
    for (Interval s : shut) {
      s.cut(f.s()).ifPresent(c -> c.without(gaps, 1_000_000).forEach(p -> frame.add(box(p, t, z))));
    }
    for (Interval s : f.s().without(gaps, NARROWEST)) {
      frame.add(box(s, t, new Interval(f.floorZ(), z.lo())));
      frame.add(box(s, t, new Interval(z.hi(), f.ceilingZ())));
    }
    List<Box> bays = new ArrayList<>();
    List<Interval> taken = new ArrayList<>(shut);
    taken.addAll(gaps);
    f.s().without(taken, NARROWEST).forEach(s -> bays.add(box(s, t, z)));
    return new BoardVoid(wall, f, t, List.copyOf(frame), List.copyOf(bays));
  }

  /** Both ends of the face; for battens the spacing of studs too. */
  private static List<Interval> uprights(Wall wall, Wall.WallFace f) {
    List<Interval> out = new ArrayList<>();
    out.add(new Interval(f.s().lo(), f.s().lo() + EDGE));
    out.add(new Interval(f.s().hi() - EDGE, f.s().hi()));
    long every = wall.every().value().nm();
    if (wall.kind() == WallSpec.Kind.FURRED && every > 2 * BATTEN) {
      long first = Math.floorMod(wall.studOrigin().value() - f.s().lo(), every) + f.s().lo();
      for (long s = first; s < f.s().hi(); s += every) {
        out.add(new Interval(s - BATTEN / 2, s + BATTEN / 2));
      }
    }
    return out;
  }

  private static Box box(Interval s, Interval t, Interval z) {
    return new Box(s.lo(), s.hi(), t.lo(), t.hi(), z.lo(), z.hi());
  }

  /** The battens or beads as solids. */
  List<Member> members() {
    List<Member> out = new ArrayList<>();
    MemberKind kind = wall.kind() == WallSpec.Kind.FURRED ? MemberKind.BATTEN : MemberKind.MASONRY;
    for (int i = 0; i < frame.size(); i++) {
      String id = wall.id() + "/behind-board-" + face.side() + "-" + face.s().lo() / 1_000_000;
      out.add(new Member(id + "-" + (i + 1), kind, wall.frame(), frame.get(i), wall.id(), true));
    }
    return out;
  }
}
