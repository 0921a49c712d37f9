package holloway.support;

import holloway.catalog.Cable;
import holloway.check.Referee;
import holloway.framing.Framed;
import holloway.framing.Framing;
import holloway.framing.Member;
import holloway.hollow.HollowHouse;
import holloway.hollow.Hollows;
import holloway.housefile.HouseFile;
import holloway.housefile.Reading;
import holloway.plan.Plan;
import holloway.request.Profile;
import holloway.request.Request;
import holloway.routing.Ends;
import holloway.routing.Routing;
import holloway.solve.Budget;
import holloway.solve.JointPlanner;
import holloway.solve.Order;
import holloway.solve.Progress;
import holloway.survey.Placed;
import holloway.survey.Survey;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** A house file's text carried through the stages one by one, for worked examples. */
public record Chain(
    Request request,
    Placed placed,
    Framed framed,
    HollowHouse house,
    Ends ends,
    Routing.Routed routed) {

  /** Reads and derives; a faulty text fails with its problems. */
  public static Chain of(String text) {
    return of(text, "");
  }

  /** The same with a companion file of what was found; none if it is empty. */
  public static Chain of(String text, String found) {
    Reading.Sound sound = read(text, found);
    Placed placed = Survey.of(sound.house()).value();
    Ends ends = Ends.of(placed, sound.request());
    if (!ends.problems().isEmpty()) {
      throw new AssertionError(ends.problems().toString());
    }
    Framed framed = Framing.of(placed);
    HollowHouse house = Hollows.of(framed, ends.interests());
    return new Chain(
        sound.request(), placed, framed, house, ends, Routing.of(house, ends, sound.request()));
  }

  /** Only reads; a faulty text fails with its problems. */
  public static Reading.Sound read(String text, String found) {
    try {
      Path dir = Files.createTempDirectory("chain");
      Path file = Files.writeString(dir.resolve("house.yaml"), text);
      Path beside = dir.resolve("house.found.yaml");
      if (!found.isEmpty()) {
        Files.writeString(beside, found);
      }
      Reading reading = HouseFile.read(file);
      Files.delete(file);
      Files.deleteIfExists(beside);
      Files.delete(dir);
      if (reading instanceof Reading.Faulty faulty) {
        throw new AssertionError(faulty.problems().toString());
      }
      return (Reading.Sound) reading;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A sample of the project, its text changed before it is read. */
  public static String sample(String name) {
    try {
      return Files.readString(Path.of("../samples/" + name + ".yaml"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The joint plan of the wanted runs alone; it must pass the referee. */
  public Plan plan(Profile profile, Set<String> bans, Predicate<String> runs) {
    List<Order.Wanted> wanted =
        request.runs().stream()
            .filter(r -> runs.test(r.id()))
            .map(r -> new Order.Wanted(r.id(), r.from(), r.to(), Cable.get(r.cable())))
            .toList();
    Order order = new Order(wanted, profile, bans, Map.of());
    Plan plan = JointPlanner.solve(routed.graph(), order, Budget.QUICK, Progress.SILENT).plan();
    CatalogueSheets.write(placed, request, plan);
    return plan;
  }

  /** What the referee says besides asking for findings and for the runs that were left out. */
  public List<String> refusals(Plan plan) {
    return Referee.check(plan, house, request).refusals().stream()
        .map(Object::toString)
        .filter(r -> !r.contains("no finding asks for one"))
        .filter(r -> !r.contains("must be either planned or unrouted"))
        .toList();
  }

  public List<Member> members(String wall) {
    return framed.membersOf(wall);
  }
}
