package holloway.report;

import holloway.house.Chase;
import holloway.house.Thing;
import holloway.limits.BlockPriors;
import holloway.plan.Plan;
import holloway.survey.OnWall;
import holloway.survey.Placed;
import holloway.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What may lie unseen where a plan goes: blocks in bays, power beside holes, shut chase floors. */
final class UnseenDoubts {
  /** Two studs at 16 in or 400 mm: a thing nearer than this may share the bay. */
  private static final long BAY = 410_000_000L;

  private final Plan plan;
  private final Placed placed;
  private final UnitWords units;
  private final PlaceWords places;

  UnseenDoubts(Sheet sheet) {
    this.plan = sheet.plan();
    this.placed = sheet.placed();
    this.units = sheet.units();
    this.places = new PlaceWords(placed, units);
  }

  List<String> lines() {
    List<String> out = new ArrayList<>();
    blocks().ifPresent(out::add);
    plan.holes().forEach(h -> power(h).ifPresent(out::add));
    placed.house().chases().forEach(c -> chase(c).ifPresent(out::add));
    return out;
  }

  private Optional<String> blocks() {
    boolean dropped =
        plan.runs().stream()
            .flatMap(r -> r.steps().stream())
            .anyMatch(
                s ->
                    s.hollow().equals(Optional.of("stud bay"))
                        && s.feed().equals(Optional.of("blind")));
    if (!dropped) {
      return Optional.empty();
    }
    BlockPriors.Row row =
        BlockPriors.of(placed.house().place().name(), placed.house().built().value());
    return Optional.of(
        ("a block may stand half-way up a bay: %s %s hold one (%s). Probe the first bay you use with"
                + " a wire or a camera; what you find there goes for the others. A block that is"
                + " found goes into the house file: plan again.")
            .formatted("about " + row.shares(), row.words(), BlockPriors.SOURCE));
  }

  private Optional<String> power(Plan.PlannedHole h) {
    Optional<Wall> wall = places.wall(h.at(), 60_000_000L);
    if (wall.isEmpty()) {
      return Optional.empty();
    }
    long s = wall.get().frame().toLocal(h.at()).x();
    List<String> near = new ArrayList<>();
    for (Thing t : placed.house().things()) {
      Optional<OnWall> on =
          t.kind().isPower()
              ? placed.findSpot(t.at().face(), t.at().along(), t.at().height().value().nm())
              : Optional.empty();
      if (on.isPresent()
          && on.get().wall().id().equals(wall.get().id())
          && Math.abs(on.get().s() - s) < BAY) {
        near.add(
            "a %s %s along the same wall (%s)"
                .formatted(
                    t.kind().name().toLowerCase(Locale.ROOT),
                    units.tape(Math.abs(on.get().s() - s)),
                    t.at().face()));
      }
    }
    return near.isEmpty()
        ? Optional.empty()
        : Optional.of(
            h.label()
                + ": "
                + String.join(", ", near)
                + ": a power cable may run in this bay. Switch that circuit off, prove it dead, and"
                + " look in before you bore.");
  }

  private Optional<String> chase(Chase c) {
    boolean used =
        plan.runs().stream()
            .flatMap(r -> r.steps().stream())
            .anyMatch(s -> s.id().startsWith("chase/" + c.name() + "/"));
    List<String> unsure = new ArrayList<>();
    c.floors()
        .forEach(
            (floor, pass) -> {
              if (pass.isAssumed() || pass.value() == Chase.FloorPass.UNKNOWN) {
                unsure.add(floor);
              }
            });
    if (!used || c.known() && unsure.isEmpty() && !c.floors().isEmpty()) {
      return Optional.empty();
    }
    String where =
        unsure.isEmpty() ? "is at its floors" : "closes it at " + String.join(", ", unsure);
    return Optional.of(
        "the %s: nobody has seen what %s. Shine a torch down it or push a rod through before you cut"
                .formatted(c.name(), where)
            + " anything else.");
  }
}
