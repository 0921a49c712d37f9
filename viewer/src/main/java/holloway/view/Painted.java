package holloway.view;

import holloway.framing.MemberKind;
import holloway.look.Bodies;
import holloway.look.Rgb;
import holloway.look.Solids;
import holloway.look.Theme;
import holloway.look.Tube;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.Predicate;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/** Puts what is shown of a model into bodies, in a theme's colours. */
public final class Painted {
  private static final float VEIL = 0.10f;
  private static final float GLOW = 0.26f;
  private static final double CHOSEN = 0.6;
  private static final float CHOSEN_VEIL = 0.5f;
  private static final float STAND_BACK = 0.28f;
  private static final double FLOOR = 0.6;
  private static final double CUT = 0.5;
  private static final float LID = 2e-4f;
  private static final double SKIN = 0.45;

  private final Model model;
  private final Theme theme;
  private final Bodies bodies = new Bodies();
  private String chosen = "";
  private BiPredicate<Vector3fc, Vector3fc> legs = (a, b) -> true;

  public Painted(Model model, Theme theme) {
    this.model = model;
    this.theme = theme;
  }

  /** The piece or hollow of that id stands out. */
  public Painted choosing(String id) {
    chosen = id;
    return this;
  }

  /** Of cables drawn from now on only the straight pieces between such ends. */
  public Painted along(BiPredicate<Vector3fc, Vector3fc> which) {
    legs = which;
    return this;
  }

  public Bodies bodies() {
    return bodies;
  }

  /** Pieces as solid matter. */
  public Painted solid(Predicate<Piece> which) {
    return pieces(which, bodies.solids, 1);
  }

  /** Pieces as a thin veil. */
  public Painted veiled(Predicate<Piece> which) {
    return pieces(which, bodies.veils, VEIL);
  }

  private Painted pieces(Predicate<Piece> which, Solids to, float strength) {
    for (Piece p : model.pieces()) {
      if (which.test(p)) {
        boolean mine = p.id().equals(chosen);
        int colour = to == bodies.veils ? theme.veil() : colour(p);
        to.add(
            p.centre(),
            p.u(),
            p.v(),
            p.w(),
            mine ? Rgb.mix(colour, theme.glow(), CHOSEN) : colour,
            mine ? Math.max(strength, CHOSEN_VEIL) : strength);
      }
    }
    return this;
  }

  /** As {@link #solid}, cut to a slice; what is cut shows it. */
  public Painted solidIn(Slice slice, Predicate<Piece> which) {
    for (Piece p : model.pieces()) {
      if (which.test(p) && slice.touches(p.centre(), p.reach())) {
        Trimmed t = Trimmed.to(p, slice);
        int own = colour(p);
        int shown = t.centre() == p.centre() ? own : Rgb.mix(own, theme.cut(), CUT);
        bodies.solids.add(t.centre(), t.u(), t.v(), t.w(), shown, 1);
        if (t.centre() == p.centre()) {
          close(p, slice, Rgb.mix(own, theme.cut(), CUT));
        }
      }
    }
    return this;
  }

  /** Closes a piece that lies aslant to the slice where the slice cuts it open. */
  private void close(Piece p, Slice slice, int colour) {
    for (int side = -1; side <= 1; side += 2) {
      // A little inside, or the slice would cut the lid away as well.
      float at = slice.at() + side * (slice.thick() / 2 - LID);
      List<Vector3f> lid =
          Cap.of(p.centre(), new Vector3fc[] {p.u(), p.v(), p.w()}, slice.axis(), at);
      for (int i = 1; i + 1 < lid.size(); i++) {
        bodies.sheets.add(lid.get(0), lid.get(i), lid.get(i + 1), colour, 1);
      }
    }
  }

  /** As {@link #solid}, of each piece only what lies near a cable, so that little hides it. */
  public Painted solidNear(Predicate<Piece> which, Cable cable, float near) {
    for (Piece p : model.pieces()) {
      if (which.test(p)) {
        Trimmed.of(p, cable, near)
            .ifPresent(t -> bodies.solids.add(t.centre(), t.u(), t.v(), t.w(), colour(p), 1));
      }
    }
    return this;
  }

  /** Hollows that are lit. */
  public Painted lit(Predicate<Space> which) {
    for (Space s : model.spaces()) {
      boolean mine = s.id().equals(chosen);
      if (mine || s.isLit() && which.test(s)) {
        float much = mine ? 2.2f * GLOW : GLOW;
        bodies.glows.add(s.centre(), s.u(), s.v(), s.w(), theme.glow(), much);
      }
    }
    return this;
  }

  /**
   * All cables; those that are not wanted stand back.
   *
   * @param fat how many times thicker than they are
   */
  public Painted cables(Predicate<Cable> wanted, float fat) {
    return cables(wanted, fat, true);
  }

  /** Some cables and no other. */
  public Painted only(Predicate<Cable> wanted, float fat) {
    return cables(wanted, fat, false);
  }

  private Painted cables(Predicate<Cable> wanted, float fat, boolean standBack) {
    for (Cable c : model.cables()) {
      if (!standBack && !wanted.test(c)) {
        continue;
      }
      tubes(c, c.lane(), c.fan(), c.laneSteps(), fat, wanted.test(c) ? 1 : STAND_BACK);
    }
    return this;
  }

  /** A way as tubes: faint where nobody knows it, else as strong as asked for. */
  private void tubes(
      Cable c,
      List<Vector3fc> way,
      List<Vector3fc> fan,
      List<Integer> steps,
      float fat,
      float strength) {
    for (int from = 0, i = 1; i < way.size(); i++) {
      boolean guessed = c.guessed().contains(steps.get(i));
      boolean wanted = legs.test(way.get(i - 1), way.get(i));
      boolean ends =
          i + 1 == way.size()
              || c.guessed().contains(steps.get(i + 1)) != guessed
              || legs.test(way.get(i), way.get(i + 1)) != wanted;
      if (ends && wanted) {
        bodies.tubes.add(
            new Tube(
                way.subList(from, i + 1),
                fan.subList(from, i + 1),
                c.radius() * fat,
                theme.run(c.number()),
                c.dash(),
                guessed ? Math.min(strength, STAND_BACK) : strength));
      }
      from = ends ? i : from;
    }
  }

  /** One cable by itself, on its true line, between two of its steps. */
  public Painted cable(Cable c, int first, int last, float fat, float strength) {
    List<Vector3fc> points = new ArrayList<>();
    List<Vector3fc> fan = new ArrayList<>();
    List<Integer> steps = new ArrayList<>();
    for (int i = 0; i < c.points().size(); i++) {
      boolean begins = i + 1 < c.points().size() && c.steps().get(i + 1) == first;
      if (c.steps().get(i) >= first && c.steps().get(i) <= last || begins) {
        points.add(c.points().get(i));
        fan.add(new Vector3f());
        steps.add(c.steps().get(i));
      }
    }
    tubes(c, points, fan, steps, fat, strength);
    return this;
  }

  private int colour(Piece p) {
    MemberKind k = p.kind();
    if (p.isSkin()) {
      return Rgb.mix(theme.veil(), theme.ground(), SKIN);
    }
    if (k == MemberKind.GLASS) {
      return theme.veil();
    }
    if (k == MemberKind.SLAB || k == MemberKind.SUBFLOOR) {
      // Floors are the ground that everything stands out from.
      int own = k == MemberKind.SLAB ? theme.slate() : theme.clayFlat();
      return Rgb.mix(own, theme.ground(), FLOOR);
    }
    if (k == MemberKind.MASONRY || k == MemberKind.NOT_OURS) {
      return theme.slate();
    }
    if (k == MemberKind.OBSTACLE || k == MemberKind.BEAM) {
      return theme.thing();
    }
    return p.flat() ? theme.clayFlat() : theme.clay();
  }
}
