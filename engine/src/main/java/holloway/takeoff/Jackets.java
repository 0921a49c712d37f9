package holloway.takeoff;

import holloway.catalog.Cable;
import holloway.catalog.Fit;
import holloway.hollow.HollowKind;
import holloway.limits.LocalRules;
import holloway.limits.RuleKey;
import holloway.limits.WiringFigures;
import holloway.plan.Plan;
import holloway.units.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * In which jacket the cable of each run is bought: one that lies outside is bought for outdoors,
 * also where an indoor kind was asked for. A thicker jacket is taken only where every hole still
 * takes it; else the list asks for one no thicker. Where more of it lies indoors than cable for
 * outdoors alone may, the list asks for both listings.
 */
public final class Jackets {
  /** As from where the finding speaks of it: less is a hole's depth or a loop, metres. */
  private static final double OUTSIDE_M = 0.3;

  /** Indoor kinds that the catalogue has in an outdoor jacket. */
  private static final Map<String, String> OUTDOOR =
      Map.of("cat5e", "outdoor-cat6", "cat6", "outdoor-cat6");

  /** A jacket in words, and the kind whose boxes and prices are its own, or empty. */
  record Jacket(String words, String kind) {}

  private final Map<String, Jacket> byRun = new TreeMap<>();

  /** How far what is listed for outdoors alone may go indoors. */
  private final Length indoors;

  private Jackets(LocalRules own) {
    this.indoors =
        own.of(RuleKey.OUTDOOR_CABLE_INDOORS, WiringFigures.OUTSIDE_CABLE_INDOORS).length();
  }

  /**
   * @param own rules of one's own, which may let it go on indoors further or less far
   */
  static Jackets of(Plan plan, LocalRules own) {
    Jackets out = new Jackets(own);
    Set<String> outside = new TreeSet<>();
    plan.runs().stream().filter(Jackets::needsOther).forEach(r -> outside.add(r.id()));
    Set<String> tight = tight(plan, outside);
    for (Plan.PlannedRun r : plan.runs()) {
      out.byRun.put(
          r.id(),
          outside.contains(r.id())
              ? out.outdoor(r, tight.contains(r.id()))
              : new Jacket(
                  r.cable() + (Cable.get(r.cable()).outdoor() ? out.both(r) : ""), r.cable()));
    }
    return out;
  }

  /** Runs bought in another jacket than asked for, with its words, by run. */
  public static Map<String, String> changed(Plan plan, LocalRules own) {
    Map<String, String> out = new TreeMap<>();
    Jackets all = of(plan, own);
    plan.runs().stream()
        .filter(r -> !all.of(r.id()).words().equals(r.cable()))
        .forEach(r -> out.put(r.id(), all.of(r.id()).words()));
    return out;
  }

  /** "cat6a cable in an outdoor jacket": the noun stands behind the kind. */
  static String named(String words, String noun) {
    int end = words.indexOf(' ');
    return end < 0
        ? words + " " + noun
        : words.substring(0, end) + " " + noun + words.substring(end);
  }

  Jacket of(String run) {
    return byRun.get(run);
  }

  private static boolean needsOther(Plan.PlannedRun r) {
    return !Cable.get(r.cable()).outdoor() && outsideM(r) > OUTSIDE_M;
  }

  private Jacket outdoor(Plan.PlannedRun r, boolean tight) {
    String listed = both(r);
    String kind = OUTDOOR.get(r.cable());
    if (kind != null && !tight) {
      return new Jacket(kind + listed, kind);
    }
    String thin =
        kind == null
            ? ""
            : " no thicker than %.1f mm".formatted(Cable.get(r.cable()).outside().toMm());
    return new Jacket(r.cable() + " in an outdoor jacket" + thin + listed, "");
  }

  /** What is listed for outdoors alone may not go so far indoors. */
  private String both(Plan.PlannedRun r) {
    long indoorsMm = Math.round((r.routeM() - outsideM(r)) * 1000);
    boolean far = indoorsMm > indoors.toMm();
    return far ? " listed for indoors too" : "";
  }

  /** Metres of a run that lie outside, or in a link to another building. */
  private static double outsideM(Plan.PlannedRun r) {
    boolean link = r.steps().stream().anyMatch(s -> s.id().contains("/outdoor-"));
    return r.steps().stream()
        .filter(s -> s.kind().equals("leg"))
        .filter(s -> isOutside(s.hollow().orElse(""), link))
        .mapToDouble(Plan.PlanStep::m)
        .sum();
  }

  private static boolean isOutside(String hollow, boolean link) {
    return hollow.equals(HollowKind.OUTSIDE_FACE.word())
        || hollow.equals(HollowKind.PORCH_VOID.word())
        || hollow.equals(HollowKind.TRENCH.word())
        || hollow.equals(HollowKind.SPAN.word())
        || link && hollow.equals(HollowKind.CONDUIT.word());
  }

  /**
   * Runs that pass a hole which the thicker jackets do not all fit, or of which that is not known.
   */
  private static Set<String> tight(Plan plan, Set<String> outside) {
    Map<String, String> kinds = new TreeMap<>();
    plan.runs().forEach(r -> kinds.put(r.id(), r.cable()));
    Set<String> out = new TreeSet<>();
    List<Plan.PlannedHole> holes = new ArrayList<>(plan.holes());
    holes.sort(Comparator.comparing(Plan.PlannedHole::id));
    for (Plan.PlannedHole h : holes) {
      List<Cable> cables = new ArrayList<>();
      for (String run : h.runs()) {
        String asked = kinds.get(run);
        if (asked == null) {
          continue;
        }
        cables.add(Cable.get(outside.contains(run) ? OUTDOOR.getOrDefault(asked, asked) : asked));
      }
      if (h.bores() != 1 || !Fit.fits(cables, h.diameterMm())) {
        h.runs().stream().filter(outside::contains).forEach(out::add);
      }
    }
    return out;
  }
}
