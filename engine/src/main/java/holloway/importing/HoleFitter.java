package holloway.importing;

import holloway.house.Side;
import holloway.housefile.draft.Draft;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Says of each opening which face of which room it is in, and where along it. */
final class HoleFitter {
  /** Over an opening there is a plate at least and the frame's play; millimetres. */
  private static final double UNDER_CEILING = 150;

  /** A sill lower than this is a threshold, millimetres. */
  private static final double THRESHOLD = 30;

  /** A face may stand this far from where the wall's thickness would have it, millimetres. */
  private static final double SLACK = 80;

  private static final double NM = Length.NM_PER_MM;

  private final Floors floors;
  private final Grid grid;
  private final Remarks remarks;

  HoleFitter(Floors floors, Grid grid, Remarks remarks) {
    this.floors = floors;
    this.grid = grid;
    this.remarks = remarks;
  }

  /** A face that an opening can be in: where its middle is along it and how far out, nm. */
  private record Fit(Face face, double s, double d) {
    double overlap(double half) {
      return Math.min(s + half, face.length()) - Math.max(s - half, 0);
    }
  }

  List<Draft.Hole> fit(List<PlanHole> holes) {
    List<Draft.Hole> out = new ArrayList<>();
    for (PlanHole h : holes) {
      List<Fit> fits = fits(h);
      if (fits.isEmpty()) {
        remarks.add(
            "%s '%s' is beside no room of the model and is left out"
                .formatted(h.kind().name().toLowerCase(Locale.ROOT), h.title()));
      } else {
        hole(h, fits).ifPresent(out::add);
      }
    }
    return out;
  }

  private List<Fit> fits(PlanHole h) {
    List<Fit> out = new ArrayList<>();
    double half = h.width() * NM / 2;
    double most = (h.wall() / 2 + SLACK) * NM;
    for (PlanRoom room : floors.rooms()) {
      double shared = Math.min(h.top(), room.ceiling()) - Math.max(h.bottom(), room.floor());
      if (shared < (h.top() - h.bottom()) / 2) {
        continue;
      }
      for (Face f : room.faces()) {
        double[] at = f.locate(h.centre().x() * NM, h.centre().y() * NM);
        Fit fit = new Fit(f, at[0], at[1]);
        boolean parallel = Math.abs(f.along().cross(h.along()).z()) < 0.02;
        boolean near = at[1] > -20 * NM && at[1] <= most;
        if (parallel && near && fit.overlap(half) > 0.6 * 2 * half && f.ordinal() <= Face.MOST) {
          out.add(fit);
        }
      }
    }
    out.sort(
        Comparator.comparingDouble((Fit f) -> -Math.rint(f.overlap(half) / NM))
            .thenComparingDouble(f -> Math.rint(Math.abs(f.face.room().floor() - h.bottom())))
            .thenComparingDouble(f -> Math.rint(f.d / NM))
            .thenComparing(f -> f.face.room().name()));
    return out;
  }

  private Optional<Draft.Hole> hole(PlanHole h, List<Fit> fits) {
    Fit fit = fits.get(0);
    Face face = fit.face;
    double half = h.width() * NM / 2;
    long lo = Math.max(0, grid.round(Math.round(fit.s - half)));
    long hi = Math.min(grid.round((long) face.length()), grid.round(Math.round(fit.s + half)));
    PlanRoom room = face.room();
    double sill = h.bottom() - room.floor();
    sill = sill < THRESHOLD ? 0 : sill;
    double limit = room.ceiling() - room.floor() - UNDER_CEILING;
    double head = h.top() - room.floor();
    String remark = leadsTo(face, fits);
    if (head > limit) {
      remarks.add(
          "the head of '%s' is nearer to the ceiling than a plate allows and was lowered"
              .formatted(h.title()));
      head = limit;
    }
    if (hi - lo < 100 * NM || head - sill < 100) {
      remarks.add("'%s' is too small to be written and is left out".formatted(h.title()));
      return Optional.empty();
    }
    return Optional.of(
        new Draft.Hole(
            h.kind(),
            new Draft.Face(room.name(), face.side(), face.ordinal()),
            face.side().runsEastWest() ? Side.WEST : Side.SOUTH,
            new Length(lo),
            new Length(hi - lo),
            grid.length(sill),
            grid.length(head),
            remark));
  }

  private static String leadsTo(Face face, List<Fit> fits) {
    return fits.stream()
        .filter(f -> f.face.room() != face.room())
        .filter(f -> f.face.outward().dot(face.outward()) < 0)
        .findFirst()
        .map(f -> "to " + f.face.room().name())
        .orElse("to the outside");
  }
}
