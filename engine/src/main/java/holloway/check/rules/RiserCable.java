package holloway.check.rules;

import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.finding.Source;
import holloway.hollow.Hollow;
import holloway.hollow.HollowKind;
import holloway.hollow.SiteKind;
import holloway.house.RulePlace;
import holloway.limits.EntryFigures;
import holloway.plan.Plan;
import holloway.request.Job;
import holloway.survey.Wall;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** B1 to B9: which listing a cable wants that goes from storey to storey. */
final class RiserCable implements PlanRule {
  private static final Source SOURCE =
      Source.us(
          "NEC 800.113, 800.154, 770.154; 2002 text 800.53(B)(3), later editions from memory");
  private static final Set<SiteKind> THROUGH =
      Set.of(SiteKind.PLATE_STACK, SiteKind.CEILING_AND_FLOOR, SiteKind.CHASE_FLOOR);

  @Override
  public String id() {
    return "riser-cable";
  }

  @Override
  public String about() {
    return "Which listing the jacket of a cable from storey to storey wants (US). A house for one or"
        + " two families may have general cable there, so riser cable is good practice.";
  }

  @Override
  public Entry entry() {
    return new Entry("practice", SOURCE, "CMR or OFNR; CMX only under 0.25 in (6 mm)");
  }

  @Override
  public List<Finding> find(Finished finished) {
    if (finished.place() != RulePlace.US) {
      return List.of();
    }
    List<Legs> up =
        Legs.of(finished.plan()).stream()
            .filter(r -> !listed(r, finished))
            .filter(r -> rises(r, finished))
            .toList();
    return up.isEmpty() ? List.of() : List.of(finding(up, finished));
  }

  private static boolean listed(Legs r, Finished finished) {
    return finished.job().listing(r.run().cable()).map(Job.Listing::riser).orElse(false);
  }

  /** What is said to be printed on them. */
  private static String stated(List<Legs> up, Finished finished) {
    return up.stream()
        .map(r -> finished.job().listing(r.run().cable()))
        .map(
            l ->
                l.map(x -> "listed " + x.word().toUpperCase(Locale.ROOT))
                    .orElse("no listing stated"))
        .distinct()
        .sorted()
        .collect(Collectors.joining(", "));
  }

  private static boolean rises(Legs r, Finished finished) {
    boolean through =
        r.run().steps().stream()
            .filter(s -> s.kind().equals("crossing"))
            .anyMatch(s -> floor(s, finished));
    return through || leavesItsLevel(r, finished);
  }

  /** Straight up a balloon frame or into a cellar's open ceiling too; not round by the outside. */
  private static boolean leavesItsLevel(Legs r, Finished finished) {
    Set<String> levels = new TreeSet<>();
    for (Plan.PlanStep s : r.run().steps()) {
      if (Legs.isIn(s, HollowKind.OUTSIDE_FACE) || Legs.isIn(s, HollowKind.TRENCH)) {
        levels.clear();
      } else if (s.kind().equals("leg")) {
        level(s, finished).ifPresent(levels::add);
        if (levels.size() > 1) {
          return true;
        }
      }
    }
    return false;
  }

  /** The level of the room or wall that a leg lies in; none for an attic or crawlspace. */
  private static Optional<String> level(Plan.PlanStep s, Finished finished) {
    Optional<String> owner = finished.house().findHollow(s.id()).map(Hollow::owner);
    Optional<String> room =
        owner.flatMap(
            o ->
                finished.placed().rooms().stream()
                    .filter(p -> p.name().equals(o))
                    .map(p -> p.room().level())
                    .findFirst());
    return room.or(() -> owner.flatMap(finished::wall).map(Wall::level));
  }

  private static boolean floor(Plan.PlanStep s, Finished finished) {
    return finished.house().findSite(s.id()).map(x -> THROUGH.contains(x.kind())).orElse(false);
  }

  private Finding finding(List<Legs> up, Finished finished) {
    List<String> kinds = up.stream().map(r -> r.run().cable()).distinct().sorted().toList();
    double widest =
        up.stream()
            .flatMap(r -> r.cable().stream())
            .mapToDouble(c -> c.outside().toMm())
            .max()
            .orElse(0);
    boolean wide = widest >= EntryFigures.CMX_WIDE.length().toMm();
    String remedy =
        "Buy it listed for risers (CMR, fibre OFNR): allowed everywhere but in air spaces. General"
            + " cable (CM) is let through in a house for one or two families"
            + (wide
                ? "; CMX is not for cable of 6 mm (0.25 in) or more, and the thickest here has "
                    + Legs.number("%.1f mm.", widest)
                : ".")
            + " The local code decides.";
    return say(
        Severity.PRACTICE,
        up.get(0).place(),
        SOURCE,
        false,
        new Said(
            "%d runs (%s) go from storey to storey.".formatted(up.size(), String.join(", ", kinds)),
            stated(up, finished),
            "listed CMR or OFNR",
            remedy));
  }
}
