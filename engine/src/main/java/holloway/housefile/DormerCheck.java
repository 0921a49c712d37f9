package holloway.housefile;

import holloway.house.Dormer;
import holloway.house.House;
import holloway.house.Roof;
import holloway.house.Side;
import java.util.List;

/** A dormer stands in a slope of rafters, over an attic, and is taped along its eave. */
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
    } else if (!r.knees().isEmpty()) {
      add(
          d,
          problems,
          "no dormer, or a roof without knee-walls",
          roof
              + " has knee walls: a dormer of the rooms below is not known here; left out, these"
              + " rooms are taken to end under the slope");
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

  private static String words(List<Side> sides, String between) {
    return String.join(between, sides.stream().map(Side::word).toList());
  }

  private static void add(Dormer d, Problems problems, String want, String text) {
    problems.add(d.where(), d.side().word(), want, "", text);
  }
}
