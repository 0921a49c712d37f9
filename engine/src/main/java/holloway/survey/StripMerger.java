package holloway.survey;

import holloway.geometry.Interval;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Joins stretches in one line into walls: one framed strip may show faces to several rooms. */
final class StripMerger {
  private StripMerger() {}

  /** The stretch whose studs a wall's are in line with: the longest of them, wherever it stands. */
  private static final Comparator<Strip> LEADS =
      Comparator.comparingLong((Strip s) -> -Math.round(s.s().length() / 1e6))
          .thenComparing(s -> s.shown().get(0).edge().room().name())
          .thenComparing(Strip.ORDER);

  static List<Strip> merge(List<Strip> strips) {
    List<Strip> runs = new ArrayList<>();
    List<Strip> leads = new ArrayList<>();
    for (Strip s : strips.stream().sorted(Strip.ORDER).toList()) {
      int at = 0;
      while (at < runs.size() && !canJoin(runs.get(at), s)) {
        at++;
      }
      if (at == runs.size()) {
        runs.add(s);
        leads.add(s);
      } else {
        leads.set(at, LEADS.compare(s, leads.get(at)) < 0 ? s : leads.get(at));
        runs.set(at, join(runs.get(at), s, leads.get(at).core()));
      }
    }
    return runs;
  }

  private static boolean canJoin(Strip run, Strip s) {
    boolean space = run.kind() == Strip.Kind.SPACE || s.kind() == Strip.Kind.SPACE;
    return run.outside() == s.outside()
        && s.s().lo() - run.s().hi() <= bridged(s)
        && StripMakes.near(run.core(), s.core())
        && (space || StripMakes.near(run.t(), s.t()))
        && run.make().isLike(s.make());
  }

  /** An outer wall goes on in front of a recess that nobody surveyed. */
  private static long bridged(Strip s) {
    return s.isOuter() ? Outdoors.WIDEST_RECESS : StripMakes.BRIDGED;
  }

  private static Strip join(Strip a, Strip b, Interval core) {
    Interval t = new Interval(Math.min(a.t().lo(), b.t().lo()), Math.max(a.t().hi(), b.t().hi()));
    Interval s = new Interval(Math.min(a.s().lo(), b.s().lo()), Math.max(a.s().hi(), b.s().hi()));
    List<Strip.Shown> shown = new ArrayList<>(a.shown());
    shown.addAll(b.shown());
    Strip.Kind kind = a.kind() == Strip.Kind.SPACE ? b.kind() : a.kind();
    return new Strip(a.heading(), kind, s, t, core, a.outside(), a.make().and(b.make()), shown);
  }
}
