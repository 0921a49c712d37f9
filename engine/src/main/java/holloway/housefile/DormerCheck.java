package holloway.housefile;

import holloway.house.Dormer;
import holloway.house.FaceRef;
import holloway.house.House;
import holloway.house.Roof;
import holloway.house.Side;
import java.util.List;
import java.util.Optional;

/**
 * A dormer stands in a slope of rafters, over an attic or out from a room with a knee wall, and is
 * taped along its eave.
 */
final class DormerCheck {
  private DormerCheck() {}

  static void check(House house, Problems problems) {
    for (Roof r : house.roofs()) {
      for (Dormer d : r.dormers()) {
        check(r, d, problems);
      }
    }
  }

  private static void check(Roof r, Dormer d, Problems problems) {
    String roof = "roof '" + r.name() + "'";
    List<Side> eaves = KneeCheck.eaves(r);
    if (r.frame() == Roof.Frame.TRUSSES) {
      add(
          d,
          problems,
          "frame: rafters, or no dormer",
          roof
              + " has trusses: a dormer only stands on them, and nothing opens below it; leave it"
              + " out, unless somebody saw rafters there");
    } else if (r.knees().isEmpty() && d.room().isPresent()) {
      add(
          d,
          problems,
          "knee-walls of " + roof + ", or no in",
          "no knee wall is stated under "
              + roof
              + ": 'in' names the room whose knee wall stops at a dormer. Over an attic leave it"
              + " out; a vaulted room without knee walls is taken to end under the slope");
    } else if (!r.knees().isEmpty() && knee(r, d).isEmpty()) {
      add(
          d,
          problems,
          "in: ROOM, with a knee wall on its " + d.side().word() + " side",
          room(r, d));
    } else if (eaves.isEmpty()) {
      add(
          d,
          problems,
          "shape: gable or shed",
          "dormers are known under gable and shed roofs alone: " + roof + " is neither");
    } else if (!eaves.contains(d.side())) {
      add(
          d,
          problems,
          "side: " + words(eaves, " or side: "),
          roof
              + " does not come down on its "
              + d.side().word()
              + " side: a dormer is named after the eave below it");
    } else if (d.from().from().runsEastWest() == d.side().runsEastWest()) {
      String ends = d.side().runsEastWest() ? "west or from: east" : "south or from: north";
      add(
          d,
          problems,
          "from: " + ends + ", and a distance",
          "the "
              + d.side().word()
              + " eave runs "
              + (d.side().runsEastWest() ? "east-west" : "north-south")
              + ": tape along it to the dormer's nearer cheek");
    }
  }

  /** The face of the knee wall that stops at a dormer. */
  private static Optional<FaceRef> knee(Roof r, Dormer d) {
    return d.room().flatMap(in -> r.kneeOf(in, d.side()));
  }

  private static String room(Roof r, Dormer d) {
    String roof = "roof '" + r.name() + "'";
    return d.room()
        .map(
            in ->
                "'"
                    + in
                    + "' does not state one knee wall on its "
                    + d.side().word()
                    + " side under "
                    + roof
                    + ": a dormer is named after the eave below it, and the knee wall before that"
                    + " eave stops at its cheeks")
        .orElse(
            roof
                + " has knee walls: say which room goes out into the dormer, and tape it from inside"
                + " that room");
  }

  private static String words(List<Side> sides, String between) {
    return String.join(between, sides.stream().map(Side::word).toList());
  }

  private static void add(Dormer d, Problems problems, String want, String text) {
    problems.add(d.where(), d.side().word(), want, "", text);
  }
}
