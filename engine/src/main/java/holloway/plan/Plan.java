package holloway.plan;

import holloway.geometry.Point3;
import holloway.geometry.SiteFrame;
import java.util.List;
import java.util.Optional;

/**
 * A whole plan. Points in nanometres in the house's own frame (written in its site's, as
 * millimetres to 0.1), metres to three decimals, minutes as the JSON wants them. Findings and
 * materials are filled in by later stages.
 *
 * @param perMinute objective units per minute
 * @param site where the own frame lies in the site's
 */
public record Plan(
    int format,
    String house,
    String profile,
    long perMinute,
    List<Input> inputs,
    Totals totals,
    List<PlannedRun> runs,
    List<PlannedHole> holes,
    List<Unrouted> unrouted,
    List<PlannedWork> works,
    List<FindingLine> findings,
    List<Material> materials,
    SurveyNotes survey,
    SiteFrame site) {
  /** Of a house that stands along the axes. */
  public Plan(
      int format,
      String house,
      String profile,
      long perMinute,
      List<Input> inputs,
      Totals totals,
      List<PlannedRun> runs,
      List<PlannedHole> holes,
      List<Unrouted> unrouted,
      List<PlannedWork> works,
      List<FindingLine> findings,
      List<Material> materials,
      SurveyNotes survey) {
    this(
        format,
        house,
        profile,
        perMinute,
        inputs,
        totals,
        runs,
        holes,
        unrouted,
        works,
        findings,
        materials,
        survey,
        SiteFrame.OWN);
  }

  public record Input(String file, String sha256) {}

  /**
   * {@code gap} is (objective − bound) / objective; {@code zones} the zones set up, sorted; {@code
   * money} empty until prices are used; {@code cutByTime}: the search was ended by the clock, so
   * another time the plan may differ.
   */
  public record Totals(
      long objective,
      long bound,
      double gap,
      double minutes,
      int holes,
      int patches,
      double routeM,
      double cableM,
      double visibleM,
      Optional<Double> money,
      String currency,
      List<String> zones,
      boolean cutByTime) {
    /** Of a search that came to its own end. */
    public Totals(
        long objective,
        long bound,
        double gap,
        double minutes,
        int holes,
        int patches,
        double routeM,
        double cableM,
        double visibleM,
        Optional<Double> money,
        String currency,
        List<String> zones) {
      this(
          objective, bound, gap, minutes, holes, patches, routeM, cableM, visibleM, money, currency,
          zones, false);
    }
  }

  public record PlannedRun(
      String id,
      String from,
      String to,
      String cable,
      double routeM,
      double cableM,
      List<PlanStep> steps) {}

  /** A step: {@code kind} is leg or crossing; fields that do not apply are empty. */
  public record PlanStep(
      String kind,
      String id,
      Optional<String> hollow,
      Optional<String> label,
      List<Point3> path,
      double m,
      Optional<String> feed,
      Optional<Integer> fish,
      Optional<Double> minutes) {}

  /**
   * {@code between}: the two hollow ids; {@code otherMethods}: what else was possible, in words;
   * {@code bores}: 1, or 2 with a second hole beside it.
   */
  public record PlannedHole(
      String id,
      String label,
      String kind,
      int diameterMm,
      double depthMm,
      Point3 at,
      List<String> between,
      String method,
      String stand,
      List<String> works,
      double minutes,
      List<String> runs,
      boolean assumed,
      List<String> otherMethods,
      int bores,
      List<Point3> axis,
      List<String> through) {
    public PlannedHole withMinutes(double other) {
      return new PlannedHole(
          id,
          label,
          kind,
          diameterMm,
          depthMm,
          at,
          between,
          method,
          stand,
          works,
          other,
          runs,
          assumed,
          otherMethods,
          bores,
          axis,
          through);
    }
  }

  public record Unrouted(String id, List<String> whyNot) {}

  public record PlannedWork(
      String id, String kind, double minutes, int holes, int patches, String zone) {
    public PlannedWork withMinutes(double other) {
      return new PlannedWork(id, kind, other, holes, patches, zone);
    }
  }

  /**
   * {@code broken}: the plan itself goes against the rule; false for a duty that carrying it out
   * brings with it, and for advice.
   *
   * @param place id of the hole, hollow, member, outlet or run it is about; may be empty
   * @param measured what the plan has, with its unit; {@code limit} what the rule lets through;
   *     {@code remedy} what to do about it; each may be empty
   */
  public record FindingLine(
      String rule,
      String severity,
      Optional<Point3> at,
      String source,
      String text,
      boolean broken,
      String place,
      String measured,
      String limit,
      String remedy) {
    /** Without a number. */
    public FindingLine(
        String rule,
        String severity,
        Optional<Point3> at,
        String source,
        String text,
        boolean broken) {
      this(rule, severity, at, source, text, broken, "", "", "", "");
    }

    /** A duty or advice. */
    public FindingLine(
        String rule, String severity, Optional<Point3> at, String source, String text) {
      this(rule, severity, at, source, text, false);
    }

    /** True when the plan must not be carried out as it stands. */
    public boolean breaksLaw() {
      return broken && severity.equals("law");
    }
  }

  /**
   * @param price of the whole line, empty when it is not known
   * @param group where in the shop it stands
   */
  public record Material(
      String item, double quantity, String unit, Optional<Double> price, String group) {
    /** Of no group. */
    public Material(String item, double quantity, String unit, Optional<Double> price) {
      this(item, quantity, unit, price, "");
    }
  }

  /**
   * @param spread loops that close within their tolerance, and how their small miss was spread
   * @param checkFirst spaces nobody knows that are worth a look, and what an open shaft would save
   */
  public record SurveyNotes(
      List<String> misclosures,
      List<String> unaccounted,
      List<String> assumed,
      List<String> spread,
      List<OpenShaft> checkFirst) {
    /** Of a house in which no space is worth a look. */
    public SurveyNotes(
        List<String> misclosures,
        List<String> unaccounted,
        List<String> assumed,
        List<String> spread) {
      this(misclosures, unaccounted, assumed, spread, List.of());
    }

    /** Of a house whose loops close exactly. */
    public SurveyNotes(List<String> misclosures, List<String> unaccounted, List<String> assumed) {
      this(misclosures, unaccounted, assumed, List.of());
    }
  }

  /**
   * A space that nothing accounts for, if it were an open shaft.
   *
   * @param minutesLess of a plan through it, against this one; found by planning again
   * @param moreRuns runs that would have a route through it and have none now
   * @param say the entry of {@code hollows} that accepts it
   */
  public record OpenShaft(String space, double minutesLess, int moreRuns, String say) {}

  public Plan withRuns(List<PlannedRun> newRuns, Totals newTotals) {
    return new Plan(
        format, house, profile, perMinute, inputs, newTotals, newRuns, holes, unrouted, works,
        findings, materials, survey, site);
  }

  /** With other minutes of holes and works, and of the whole. */
  public Plan withWork(List<PlannedHole> made, List<PlannedWork> paid, double minutes) {
    Totals t = totals;
    Totals other =
        new Totals(
            t.objective,
            t.bound,
            t.gap,
            minutes,
            t.holes,
            t.patches,
            t.routeM,
            t.cableM,
            t.visibleM,
            t.money,
            t.currency,
            t.zones,
            t.cutByTime);
    return new Plan(
        format, house, profile, perMinute, inputs, other, runs, made, unrouted, paid, findings,
        materials, survey, site);
  }

  public Plan withInputs(List<Input> newInputs, SurveyNotes notes) {
    return new Plan(
        format, house, profile, perMinute, newInputs, totals, runs, holes, unrouted, works,
        findings, materials, notes, site);
  }

  public Plan withFindings(List<FindingLine> more) {
    return new Plan(
        format, house, profile, perMinute, inputs, totals, runs, holes, unrouted, works, more,
        materials, survey, site);
  }

  public Plan withMaterials(List<Material> more) {
    return new Plan(
        format, house, profile, perMinute, inputs, totals, runs, holes, unrouted, works, findings,
        more, survey, site);
  }

  public Plan withUnrouted(List<Unrouted> more) {
    return new Plan(
        format, house, profile, perMinute, inputs, totals, runs, holes, more, works, findings,
        materials, survey, site);
  }

  /** Of a house whose own frame lies so in its site's. */
  public Plan withSite(SiteFrame other) {
    return new Plan(
        format, house, profile, perMinute, inputs, totals, runs, holes, unrouted, works, findings,
        materials, survey, other);
  }
}
