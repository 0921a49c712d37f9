package holloway.framing;

import holloway.geometry.Box;
import holloway.geometry.Interval;
import holloway.house.Battens;
import holloway.house.WallSpec;
import holloway.survey.BehindBoard;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What lies behind the board on one face of a wall, before masonry or before the lining that a
 * framed wall has already (a service layer): battens upright at the stud spacing, or level at their
 * own, with more along the edges, or a bead of adhesive all round (behind-the-board J23). The
 * cavity within the masonry is no part of it.
 *
 * @param t between what stands behind and board
 * @param level its battens lie level
 * @param frame battens or beads, boxes in the wall's frame
 * @param bays what they leave open
 */
public record BoardVoid(
    Wall wall, Wall.WallFace face, Interval t, boolean level, List<Box> frame, List<Box> bays) {
  /** Width of a batten or bead at top, foot and ends; common practice, no published source. */
  private static final long EDGE = 40_000_000;

  private static final long BATTEN = 50_000_000;
  private static final long NARROWEST = 60_000_000;
  private static final long SLIVER = 1_000_000;

  /** The voids of a wall; none for one that is plastered, or framed without a service layer. */
  public static List<BoardVoid> of(Wall wall) {
    List<BoardVoid> out = new ArrayList<>();
    for (Wall.WallFace f : wall.faces()) {
      Optional<Interval> t = BehindBoard.between(wall, f.side());
      if (t.isPresent() && f.ceilingZ() - f.floorZ() > 4 * EDGE) {
        out.add(of(wall, f, t.get()));
      }
    }
    return out;
  }

  /** The board alone where there is a void behind it, else the whole skin. */
  static Interval board(Wall wall, int side, Interval skin) {
    Optional<Interval> t =
        wall.outside() == side ? Optional.empty() : BehindBoard.between(wall, side);
    return t.map(v -> side == 0 ? new Interval(skin.lo(), v.lo()) : new Interval(v.hi(), skin.hi()))
        .orElse(skin);
  }

  /** What lies on the studs behind a service layer. */
  static Optional<Interval> behind(Wall wall, int side, Interval skin) {
    return wall.findBattens(side)
        .flatMap(b -> BehindBoard.between(wall, side))
        .map(v -> side == 0 ? new Interval(v.hi(), skin.hi()) : new Interval(skin.lo(), v.lo()));
  }

  private static BoardVoid of(Wall wall, Wall.WallFace f, Interval t) {
    Optional<Battens> level = wall.findBattens(f.side()).filter(Battens::level);
    Interval z = new Interval(f.floorZ() + EDGE, f.ceilingZ() - EDGE);
    List<Interval> ends = ends(f);
    List<Box> frame = new ArrayList<>();
    List<Box> bays = new ArrayList<>();
    if (level.isPresent()) {
      List<Interval> rails = rails(level.get(), f, z);
      rails.forEach(r -> pieces(wall, f, r, ends).forEach(s -> frame.add(box(s, t, r))));
      for (Interval band : z.without(rails, NARROWEST)) {
        pieces(wall, f, band, ends).forEach(s -> bays.add(box(s, t, band)));
      }
      ends.forEach(e -> uncut(wall, e, z).forEach(p -> frame.add(box(p, t, z))));
    } else {
      List<Interval> shut = uprights(wall, f, ends);
      shut.forEach(
          s ->
              s.cut(f.s()).ifPresent(c -> uncut(wall, c, z).forEach(p -> frame.add(box(p, t, z)))));
      List<Interval> taken = new ArrayList<>(shut);
      taken.addAll(gaps(wall, z));
      f.s().without(taken, NARROWEST).forEach(s -> bays.add(box(s, t, z)));
    }
    for (Interval s : f.s().without(gaps(wall, z), NARROWEST)) {
      frame.add(box(s, t, new Interval(f.floorZ(), z.lo())));
      frame.add(box(s, t, new Interval(z.hi(), f.ceilingZ())));
    }
    return new BoardVoid(wall, f, t, level.isPresent(), List.copyOf(frame), List.copyOf(bays));
  }

  /** What openings and the battens beside them take of a height. */
  private static List<Interval> gaps(Wall wall, Interval z) {
    List<Interval> out = new ArrayList<>();
    for (Wall.WallOpening o : wall.openings()) {
      if (o.z().lo() - EDGE < z.hi() && o.z().hi() + EDGE > z.lo()) {
        out.add(new Interval(o.s().lo() - EDGE, o.s().hi() + EDGE));
      }
    }
    return out;
  }

  private static List<Interval> uncut(Wall wall, Interval s, Interval z) {
    return s.without(gaps(wall, z), SLIVER);
  }

  /** What lies between the battens at both ends, round the openings at that height. */
  private static List<Interval> pieces(
      Wall wall, Wall.WallFace f, Interval z, List<Interval> ends) {
    List<Interval> taken = new ArrayList<>(ends);
    taken.addAll(gaps(wall, z));
    return f.s().without(taken, NARROWEST);
  }

  private static List<Interval> ends(Wall.WallFace f) {
    return List.of(
        new Interval(f.s().lo(), f.s().lo() + EDGE), new Interval(f.s().hi() - EDGE, f.s().hi()));
  }

  /** The level battens between foot and head: from the stated one, else from the floor. */
  private static List<Interval> rails(Battens battens, Wall.WallFace f, Interval z) {
    List<Interval> out = new ArrayList<>();
    long every = battens.every().map(e -> e.value().nm()).orElse(Battens.EVERY.nm());
    long from = battens.first().map(h -> h.value().nm()).orElse(every) % every;
    for (long at = f.floorZ() + from; at < f.ceilingZ(); at += every) {
      Interval rail = new Interval(at - BATTEN / 2, at + BATTEN / 2);
      if (rail.lo() >= z.lo() && rail.hi() <= z.hi()) {
        out.add(rail);
      }
    }
    return out;
  }

  /** Both ends of the face; for battens their spacing too, that of the studs unless stated. */
  private static List<Interval> uprights(Wall wall, Wall.WallFace f, List<Interval> ends) {
    List<Interval> out = new ArrayList<>(ends);
    long studs = wall.every().value().nm();
    Optional<Battens> own = wall.findBattens(f.side());
    long every = own.flatMap(Battens::every).map(e -> e.value().nm()).orElse(studs);
    if (wall.kind() != WallSpec.Kind.DABBED && every > 2 * BATTEN) {
      long first = Math.floorMod(wall.studOrigin().value() - f.s().lo(), every) + f.s().lo();
      for (long s = first; s - BATTEN / 2 < f.s().hi() - EDGE; s += every) {
        if (s + BATTEN / 2 > f.s().lo() + EDGE) { // else it lies in the one at the end
          out.add(new Interval(s - BATTEN / 2, s + BATTEN / 2));
        }
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
    MemberKind kind = wall.kind() == WallSpec.Kind.DABBED ? MemberKind.MASONRY : MemberKind.BATTEN;
    for (int i = 0; i < frame.size(); i++) {
      String id = wall.id() + "/behind-board-" + face.side() + "-" + face.s().lo() / 1_000_000;
      out.add(new Member(id + "-" + (i + 1), kind, wall.frame(), frame.get(i), wall.id(), true));
    }
    return out;
  }
}
