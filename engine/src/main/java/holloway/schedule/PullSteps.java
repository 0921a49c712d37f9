package holloway.schedule;

import holloway.catalog.Cable;
import holloway.plan.Plan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The steps that mark lengths and draw cable. */
final class PullSteps {
  /** Supports at most this far apart: 1.2 m (4 ft), trade-facts A2-15. */
  private static final double SUPPORT_M = 1.2;

  private final Set<String> holes;
  private final Openings openings;
  private final Places places;
  private final Map<String, Plan.PlannedRun> runs = new TreeMap<>();

  PullSteps(Plan plan, Places places, Openings openings) {
    this.holes = plan.holes().stream().map(Plan.PlannedHole::id).collect(Collectors.toSet());
    this.openings = openings;
    this.places = places;
    plan.runs().forEach(r -> runs.put(r.id(), r));
  }

  List<Step> list(List<Pull> pulls) {
    List<Step> out = new ArrayList<>();
    Map<String, List<Pull.Strand>> byBox = new TreeMap<>();
    Map<String, Pull> before = new TreeMap<>();
    Map<String, List<Pull>> widerFirst = widerFirst(pulls);
    for (Pull p : pulls) {
      p.strands().stream()
          .filter(s -> s.stretch() == 0)
          .forEach(s -> byBox.computeIfAbsent(s.box(), k -> new ArrayList<>()).add(s));
      String way = p.hollows() + " " + p.from() + p.feed() + p.id().replaceFirst("/[^/]*$", "");
      List<Pull> first = new ArrayList<>(widerFirst.get(p.id()));
      if (p.feed().equals("fish")) {
        Optional.ofNullable(before.put(way, p)).ifPresent(first::add);
      }
      out.add(pull(p, first));
    }
    byBox.forEach((box, strands) -> out.add(mark(box, strands)));
    return out;
  }

  /**
   * What has wider pull heads goes through a hole before what has narrower ones; of the same head
   * leads alone before leads that bring other cables along.
   */
  private Map<String, List<Pull>> widerFirst(List<Pull> pulls) {
    Map<String, List<Pull>> out = new TreeMap<>();
    for (Pull p : pulls) {
      List<Pull> before = new ArrayList<>();
      for (Pull q : pulls) {
        boolean meet = p.holes().stream().anyMatch(h -> holes.contains(h) && q.holes().contains(h));
        boolean alone = head(q) == head(p) && leads(q) == q.strands().size() && mixed(p);
        if (meet && (head(q) > head(p) || alone)) {
          before.add(q);
        }
      }
      out.put(p.id(), before);
    }
    return out;
  }

  private static boolean mixed(Pull p) {
    return leads(p) > 0 && leads(p) < p.strands().size();
  }

  private static long leads(Pull p) {
    return p.strands().stream().filter(Pull.Strand::readyMade).count();
  }

  private static double head(Pull p) {
    return p.strands().stream()
        .mapToDouble(s -> Cable.get(s.cable()).pullHead().toMm())
        .max()
        .orElse(0);
  }

  /** Lengths are measured out, both ends get the run's name, and the cut is marked. */
  private Step mark(String box, List<Pull.Strand> strands) {
    List<String> ids = strands.stream().map(Pull.Strand::run).sorted().toList();
    Plan.PlannedRun first = runs.get(ids.get(0));
    WorkPlace at = places.end(first.from(), first.steps().get(0).path().get(0));
    StepDraft out =
        new StepDraft("mark/" + box + "/" + Marks.of(ids), Step.Kind.MARK, box, at)
            .runs(ids)
            .bring(
                Bring.of(Bring.Item.TAPE_MEASURE),
                Bring.of(Bring.Item.MARKER),
                cable(strands.get(0)));
    ids.forEach(r -> out.makes("marked:" + r));
    return out.done();
  }

  private static Bring cable(Pull.Strand s) {
    Bring.Item item = s.readyMade() ? Bring.Item.LEAD : Bring.Item.CABLE_BOX;
    return new Bring(item, 0, 1, s.readyMade() ? s.run() : s.box());
  }

  private Step pull(Pull p, List<Pull> before) {
    StepDraft out =
        new StepDraft(p.id(), Step.Kind.PULL, p.id(), p.from()).with(p.to()).runs(p.runs());
    for (Pull.Strand s : p.strands()) {
      boolean first = s.stretch() == 0;
      out.needs(first ? "marked:" + s.run() : "end:" + s.run() + ":" + (s.stretch() - 1));
      out.makes("end:" + s.run() + ":" + s.stretch());
      if (first) {
        out.bring(cable(s));
      }
      if (s.last()) {
        out.bringOther(Bring.of(Bring.Item.CUTTERS));
      }
    }
    p.holes().stream().filter(holes::contains).forEach(h -> passes(out, h, p));
    List<String> ways = new ArrayList<>(p.hollows());
    ways.addAll(p.holes());
    for (Pull.Strand s : p.strands()) {
      if (s.stretch() == 0) {
        ways.add(runs.get(s.run()).from() + Openings.CUT_OUT);
      }
      if (s.last()) {
        ways.add(runs.get(s.run()).to() + Openings.CUT_OUT);
      }
    }
    Set<String> open = new TreeSet<>(openings.needed(ways));
    open.forEach(o -> out.needs("open:" + o));
    before.forEach(b -> out.needs("pulled:" + b.id()));
    out.makes("pulled:" + p.id());
    gear(out, p);
    return out.done();
  }

  private static void passes(StepDraft out, String hole, Pull p) {
    out.needs("hole:" + hole);
    p.runs().forEach(r -> out.makes("through:" + hole + ":" + r));
  }

  private static void gear(StepDraft out, Pull p) {
    if (p.feed().equals("fish")) {
      out.bring(Bring.of(Bring.Item.FISH_RODS));
      if (p.stringM() > 0) {
        out.bring(new Bring(Bring.Item.STRING, 0, p.stringM(), ""));
      }
    } else if (supported(p.to()) || supported(p.from())) {
      double n = Math.ceil(p.metres() / SUPPORT_M) + 1;
      Bring supports = new Bring(Bring.Item.SUPPORT, 0, n, "");
      if (supported(p.to())) {
        out.bringOther(supports);
      } else {
        out.bring(supports);
      }
    }
  }

  private static boolean supported(WorkPlace p) {
    return p.kind() == WorkPlace.Kind.ATTIC || p.kind() == WorkPlace.Kind.CRAWLSPACE;
  }
}
