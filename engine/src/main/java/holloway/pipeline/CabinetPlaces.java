package holloway.pipeline;

import holloway.house.WallSpot;
import holloway.plan.Plan;
import holloway.request.Request;
import holloway.survey.Placed;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;

/**
 * Ranks the places where the cabinet could stand: runs left without a route, then minutes, metres
 * of route, holes, heat, access, then the order of the file. Heat and access are common practice,
 * no published source: a garage follows the weather; gear is best reached standing.
 */
final class CabinetPlaces {
  /** Heights of the middle of the gear that are reached standing on the floor (from experience). */
  private static final double LOW_MM = 600;

  private static final double HIGH_MM = 1900;

  private CabinetPlaces() {}

  static List<Answers.CabinetPlace> ranked(
      Placed placed, Request request, Function<Request, Plan> planner) {
    Request.Cabinet cabinet = request.cabinet();
    if (cabinet.others().isEmpty()) {
      throw new InputTrouble(
          cabinet.where()
              + ": the cabinet has one place only; give others: cabinet: { ..., or: [{ in: hall,"
              + " wall: north, from: west 3 ft, height: 5 ft }] }");
    }
    List<Answers.CabinetPlace> out = new ArrayList<>();
    out.add(place(placed, request, cabinet.at(), true, planner));
    cabinet.others().forEach(o -> out.add(place(placed, request, o, false, planner)));
    // The sort keeps the order of the file where all is equal.
    out.sort(
        Comparator.comparingInt((Answers.CabinetPlace p) -> p.plan().unrouted().size())
            .thenComparing(p -> p.plan().totals().minutes())
            .thenComparing(p -> p.plan().totals().routeM())
            .thenComparing(p -> p.plan().totals().holes())
            .thenComparing(Answers.CabinetPlace::warm)
            .thenComparing(Answers.CabinetPlace::awkward));
    return List.copyOf(out);
  }

  private static Answers.CabinetPlace place(
      Placed placed,
      Request request,
      WallSpot at,
      boolean stated,
      Function<Request, Plan> planner) {
    Plan plan = planner.apply(request.with(new Request.Cabinet(at, at.face().where(), List.of())));
    boolean garage =
        placed.rooms().stream()
            .anyMatch(r -> r.name().equals(at.face().room()) && r.room().garage());
    double mm = at.height().value().toMm();
    return new Answers.CabinetPlace(at, stated, plan, garage, mm < LOW_MM || mm > HIGH_MM);
  }
}
