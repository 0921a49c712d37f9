package holloway.pipeline;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holloway.housefile.HouseFile;
import holloway.housefile.HouseWriter;
import holloway.housefile.Reading;
import holloway.plan.Plan;
import holloway.plan.PlanJson;
import holloway.schedule.WorkReferee;
import holloway.support.AwkwardHouseText.Drawn;
import holloway.support.MirroredStages;
import holloway.support.Respelled;
import holloway.support.Turned;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What is looked at in the plan of each awkward house. */
final class AwkwardHouses {
  /**
   * @param told what is wrong with the house file itself; then it was not planned
   * @param faults what the program did wrong
   */
  record Looked(List<String> told, List<String> faults, int routed, int holes) {}

  private final Path folder;
  private final PlanSettings how;
  private final List<String> faults = new ArrayList<>();

  private AwkwardHouses(Path folder, PlanSettings how) {
    this.folder = folder;
    this.how = how;
  }

  /**
   * Plans one house and looks at the plan.
   *
   * @param again also written anew, respelled, turned and in a mirror
   */
  static Looked look(Path folder, long seed, Drawn drawn, boolean again, PlanSettings how)
      throws Exception {
    AwkwardHouses a = new AwkwardHouses(folder, how);
    Looked l;
    try {
      l = a.looked(drawn, again);
    } catch (InputTrouble told) {
      return new Looked(told.lines(), List.of(), 0, 0);
    } catch (RuntimeException | AssertionError e) {
      a.faults.add(e + " at " + ours(e));
      l = new Looked(List.of(), List.of(), 0, 0);
    }
    List<String> named = a.faults.stream().map(f -> "seed " + seed + ": " + f).toList();
    return new Looked(l.told, named, l.routed, l.holes);
  }

  private static List<StackTraceElement> ours(Throwable e) {
    return Stream.of(e.getStackTrace())
        .filter(t -> t.getClassName().startsWith("holloway"))
        .limit(4)
        .toList();
  }

  private Looked looked(Drawn drawn, boolean again) throws Exception {
    Path house = written("house", drawn.house(), drawn.found());
    Answers.Planned planned = new Pipeline(Progress.SILENT).plan(house, how);
    Plan plan = planned.plan();
    planned.refusals().forEach(f -> faults.add("refused: " + f));
    JsonNode json = new ObjectMapper().readTree(PlanJson.write(plan));
    faults.addAll(HangsTogether.faults(json));
    if (plan.runs().size() + plan.unrouted().size() != drawn.runs()) {
      faults.add("some runs are neither planned nor unrouted");
    }
    lawful(plan);
    work(planned);
    if (again) {
      rewritten(house, drawn, plan);
      turned(house, plan);
    }
    return new Looked(List.of(), List.of(), plan.runs().size(), plan.holes().size());
  }

  private Path written(String name, String text, Optional<String> found) throws Exception {
    Path beside = folder.resolve(name + ".found.yaml");
    Files.deleteIfExists(beside);
    if (found.isPresent()) {
      Files.writeString(beside, found.get());
    }
    return Files.writeString(folder.resolve(name + ".yaml"), text);
  }

  /** A hole is chosen by the planner, so what it breaks could have been avoided. */
  private void lawful(Plan plan) {
    Set<String> made = plan.holes().stream().map(Plan.PlannedHole::id).collect(Collectors.toSet());
    plan.findings().stream()
        .filter(f -> f.breaksLaw() && made.contains(f.place()))
        .forEach(f -> faults.add("against the law: " + f));
  }

  private void work(Answers.Planned planned) {
    Plan plan = planned.plan();
    Stages.Site site = new RealStages(Progress.SILENT).derive(planned.placed(), planned.request());
    WorkReferee.faults(plan, site.work(plan, planned.request()))
        .forEach(f -> faults.add("order of work: " + f));
  }

  private Plan again(String name, String text, Optional<String> found) throws Exception {
    return new Pipeline(Progress.SILENT).plan(written(name, text, found), how).plan();
  }

  private void rewritten(Path house, Drawn drawn, Plan plan) throws Exception {
    Reading.Sound read = (Reading.Sound) HouseFile.read(house);
    String text = HouseWriter.house(read.house(), read.request(), Optional.empty());
    try {
      same("written anew", plan, again("anew", text, HouseWriter.found(read.house())));
      Optional<String> found = drawn.found().map(f -> Respelled.of(f).text());
      same("respelled", plan, again("respelled", Respelled.of(drawn.house()).text(), found));
    } catch (InputTrouble told) {
      faults.add("written anew or respelled it is refused: " + told.lines());
    }
  }

  private void same(String which, Plan one, Plan other) {
    if (!one.runs().equals(other.runs())
        || !one.holes().equals(other.holes())
        || one.totals().objective() != other.totals().objective()) {
      faults.add(which + " it has another plan: " + one.totals() + " / " + other.totals());
    }
  }

  /** What was found is not turned along, so houses with such a file are left out. */
  private void turned(Path house, Plan plan) throws Exception {
    Reading.Sound read = (Reading.Sound) HouseFile.read(house);
    if (HouseWriter.found(read.house()).isPresent()) {
      return;
    }
    for (Turned way : Turned.values()) {
      String text;
      try {
        text =
            HouseWriter.house(
                way.of(read.house()), way.of(read.request(), read.house()), Optional.empty());
      } catch (IllegalArgumentException cannotBeSaid) {
        continue;
      }
      try {
        alike(house, way, plan, again("turned", text, Optional.empty()));
      } catch (InputTrouble told) {
        faults.add(way + " it is refused: " + told.lines());
      }
    }
  }

  /**
   * The search may end at another plan in the mirror. Then the two graphs have to be one in the
   * mirror, and no plan may cost less than what is proven of the other's.
   */
  private void alike(Path house, Turned way, Plan one, Plan other) {
    Plan.Totals a = one.totals();
    Plan.Totals b = other.totals();
    if (one.unrouted().size() != other.unrouted().size()) {
      faults.add(way + ": other runs have a way: " + one.unrouted() + " / " + other.unrouted());
    } else if (Math.abs(a.objective() - b.objective()) > 1 + a.objective() / 1000
        || a.holes() != b.holes()) {
      List<String> apart =
          MirroredStages.faults(house, folder.resolve("turned.yaml"), List.of(way), 1);
      boolean possible = a.objective() >= b.bound() && b.objective() >= a.bound();
      if (!possible || !apart.isEmpty()) {
        faults.add(
            "%s: holes %d/%d, minutes %.4f/%.4f, metres %.3f/%.3f, %s %s"
                .formatted(
                    way,
                    a.holes(),
                    b.holes(),
                    a.minutes(),
                    b.minutes(),
                    a.routeM(),
                    b.routeM(),
                    possible ? "both possible" : "one is less than is proven of the other",
                    apart.stream().limit(3).toList()));
      }
    }
  }
}
