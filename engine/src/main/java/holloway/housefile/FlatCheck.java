package holloway.housefile;

import holloway.house.House;
import holloway.house.Roof;

/** A flat roof is either a set of bays between joists or an attic that a body gets into. */
final class FlatCheck {
  private FlatCheck() {}

  static void check(House house, Problems problems) {
    for (Roof r : house.roofs()) {
      if (r.run().isPresent()) {
        problem(r, problems);
      }
    }
  }

  private static void problem(Roof r, Problems problems) {
    String name = "roof '" + r.name() + "' ";
    if (r.shape() != Roof.Shape.FLAT) {
      add(r, problems, "no 'run'", name + "is not flat: only a flat roof's joists have a 'run'");
    } else if (r.frame() == Roof.Frame.TRUSSES) {
      add(
          r,
          problems,
          "frame: rafters",
          name + "states 'run', but what lies between flat trusses is not known here");
    } else if (r.heel().isPresent()) {
      add(
          r,
          problems,
          "run or heel",
          name
              + "states both 'run' (cable lies between its joists) and 'heel' (an attic is in it)");
    } else if (!r.hatches().isEmpty()) {
      add(
          r,
          problems,
          "no hatch, or 'heel' instead of 'run'",
          name + "states 'run': nobody gets in between its joists by a hatch");
    }
  }

  private static void add(Roof r, Problems problems, String want, String text) {
    problems.add(r.where(), r.name(), want, "", text);
  }
}
