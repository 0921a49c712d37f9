package holloway.importing;

import holloway.geometry.Point2;
import holloway.housefile.draft.Draft;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** What most inner and outer walls are like, and which walls differ. */
final class WallThickness {
  /** Walls within this are alike; a tape does not tell them apart. */
  private static final long ALIKE = 2 * Length.NM_PER_MM;

  private static final long THINNEST = 50 * Length.NM_PER_MM;
  private static final double NM = Length.NM_PER_MM;

  private final Floors floors;
  private final Grid grid;
  private final Remarks remarks;
  private final List<Gaps.Gap> gaps;
  private final List<PlanWall> outer;
  private final List<PlanWall> inner;

  WallThickness(Floors floors, Collection<PlanWall> walls, Grid grid, Remarks remarks) {
    this.floors = floors;
    this.grid = grid;
    this.remarks = remarks;
    this.gaps = Gaps.of(floors);
    this.outer = walls.stream().filter(w -> sides(w) == 1).toList();
    this.inner = walls.stream().filter(w -> sides(w) == 2).toList();
  }

  /** On how many of its two sides a room lies. */
  private int sides(PlanWall w) {
    int count = 0;
    for (int sign : new int[] {-1, 1}) {
      boolean room = false;
      for (double part : new double[] {-0.4, -0.2, 0, 0.2, 0.4}) {
        Vec p =
            w.centre()
                .plus(w.along().times(part * w.length()))
                .plus(w.across().times(sign * (w.thickness() / 2 + 60)));
        Point2 at = new Point2(Math.round(p.x() * NM), Math.round(p.y() * NM));
        room |= floors.rooms().stream().anyMatch(r -> isBeside(r, w) && r.outline().contains(at));
      }
      count += room ? 1 : 0;
    }
    return count;
  }

  private static boolean isBeside(PlanRoom r, PlanWall w) {
    return Math.min(r.ceiling(), w.top()) - Math.max(r.floor(), w.bottom()) > 300;
  }

  Draft.WallDefault inner() {
    Map<Long, Double> weight = new TreeMap<>();
    gaps.stream()
        .filter(g -> g.wide() >= THINNEST)
        .forEach(g -> weight.merge(g.wide(), (double) g.stretch(), Double::sum));
    Optional<Long> usual = most(weight);
    if (usual.isEmpty()) {
      inner.forEach(w -> weight.merge(grid.of(w.thickness()), w.length(), Double::sum));
    }
    return said(usual.or(() -> most(weight)), inner, "inner");
  }

  Draft.WallDefault outer() {
    Map<Long, Double> weight = new TreeMap<>();
    outer.forEach(w -> weight.merge(grid.of(w.thickness()), w.length(), Double::sum));
    return said(most(weight), outer, "outer");
  }

  private Draft.WallDefault said(Optional<Long> thickness, List<PlanWall> walls, String which) {
    Map<String, Double> made = new TreeMap<>();
    double masonry = 0;
    double whole = 0;
    for (PlanWall w : walls) {
      whole += w.length();
      masonry += Materials.areMasonry(w.layers()) ? w.length() : 0;
      if (!w.layers().isEmpty()) {
        made.merge(Materials.words(w.layers(), grid), w.length(), Double::sum);
      }
    }
    String as = most(made).map(m -> "; the model makes most of them of " + m).orElse("");
    boolean solid = masonry > whole / 2 && whole > 0;
    String what =
        solid ? "whether %s walls are masonry, as written%s" : "%s walls: studs, every, fill%s";
    String thick = thickness.isPresent() ? "" : " (and how thick they are)";
    return new Draft.WallDefault(
        thickness.map(Length::new), solid, List.of(what.formatted(which, thick + as)));
  }

  private static <T extends Comparable<T>> Optional<T> most(Map<T, Double> weight) {
    T best = null;
    for (Map.Entry<T, Double> e : weight.entrySet()) {
      best = best == null || e.getValue() > weight.get(best) + 1e-6 ? e.getKey() : best;
    }
    return Optional.ofNullable(best);
  }

  /** Walls unlike the defaults. */
  List<Draft.Wall> others(Draft.WallDefault usualInner, Draft.WallDefault usualOuter) {
    Map<String, Draft.Wall> out = new TreeMap<>();
    Map<String, List<Gaps.Gap>> pairs = new TreeMap<>();
    for (Gaps.Gap g : gaps) {
      String a = g.low().room().name();
      String b = g.high().room().name();
      pairs
          .computeIfAbsent(a.compareTo(b) < 0 ? a + "/" + b : b + "/" + a, k -> new ArrayList<>())
          .add(g);
    }
    long inner = usualInner.thickness().map(Length::nm).orElse(0L);
    pairs.values().forEach(p -> pair(p, inner, out));
    usualOuter.thickness().ifPresent(t -> outer.forEach(w -> outside(w, t.nm(), out)));
    return List.copyOf(out.values());
  }

  private void pair(List<Gaps.Gap> pair, long usual, Map<String, Draft.Wall> out) {
    Gaps.Gap first = pair.get(0);
    boolean alike = pair.stream().allMatch(g -> Math.abs(g.wide() - first.wide()) <= ALIKE);
    for (Gaps.Gap g : pair) {
      if (g.wide() < THINNEST) {
        remarks.add(
            "between '%s' and '%s' the model leaves only %.0f mm; a wall needs 50 mm. If there is none, make one room of the two"
                .formatted(g.low().room().name(), g.high().room().name(), g.wide() / NM));
      } else if (Math.abs(g.wide() - usual) > ALIKE) {
        Length wide = new Length(g.wide());
        if (alike) {
          List<String> two = List.of(g.low().room().name(), g.high().room().name());
          out.putIfAbsent("1 " + two, new Draft.Wall(two, Optional.empty(), wide));
        } else if (g.low().ordinal() <= Face.MOST) {
          out.putIfAbsent(
              "2 " + key(g.low()), new Draft.Wall(List.of(), Optional.of(face(g.low())), wide));
        }
      }
    }
  }

  private void outside(PlanWall w, long usual, Map<String, Draft.Wall> out) {
    long thick = grid.of(w.thickness());
    if (Math.abs(thick - usual) <= ALIKE) {
      return;
    }
    for (PlanRoom r : floors.rooms()) {
      for (Face f : r.faces()) {
        double[] at = f.locate(w.centre().x() * NM, w.centre().y() * NM);
        boolean parallel = Math.abs(f.along().cross(w.along()).z()) < 0.02;
        boolean here = Math.abs(at[1] / NM - w.thickness() / 2) < 40 && isBeside(r, w);
        double shared =
            Math.min(at[0] + w.length() * NM / 2, f.length())
                - Math.max(at[0] - w.length() * NM / 2, 0);
        boolean faced = gaps.stream().anyMatch(g -> g.low().equals(f) || g.high().equals(f));
        if (parallel && here && !faced && shared > f.length() / 2 && f.ordinal() <= Face.MOST) {
          out.putIfAbsent(
              "3 " + key(f), new Draft.Wall(List.of(), Optional.of(face(f)), new Length(thick)));
        }
      }
    }
  }

  private static String key(Face f) {
    return f.room().name() + " " + f.side() + " " + f.ordinal();
  }

  static Draft.Face face(Face f) {
    return new Draft.Face(f.room().name(), f.side(), f.ordinal());
  }
}
