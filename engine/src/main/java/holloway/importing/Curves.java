package holloway.importing;

import holloway.step.StepEntity;
import holloway.step.StepValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Points along a curve. Arcs become straight pieces through their middle, and that is noted. */
final class Curves {
  private static final int MOST_POINTS = 5_000;
  private static final int DEEPEST = 8;

  private final Model model;
  private final Set<String> notes;

  Curves(Model model, Set<String> notes) {
    this.model = model;
    this.notes = notes;
  }

  /** Corners of a closed curve, the first not repeated. */
  List<Vec> loop(StepEntity curve) {
    return opened(points(curve, 0));
  }

  /** Neighbours that are the same point become one, and the last does not repeat the first. */
  static List<Vec> opened(List<Vec> points) {
    List<Vec> out = new ArrayList<>();
    for (Vec p : points) {
      if (out.isEmpty() || p.minus(out.get(out.size() - 1)).length() > 1e-6) {
        out.add(p);
      }
    }
    while (out.size() > 1 && out.get(0).minus(out.get(out.size() - 1)).length() <= 1e-6) {
      out.remove(out.size() - 1);
    }
    if (out.size() < 3 || out.size() > MOST_POINTS) {
      throw new Unreadable("an outline has " + out.size() + " corners");
    }
    return out;
  }

  private List<Vec> points(StepEntity c, int depth) {
    if (depth > DEEPEST) {
      throw new Unreadable("curves are made of curves without end");
    }
    return switch (c.type()) {
      case "IFCPOLYLINE" -> model.getMembers(c.value(0)).stream().map(model::point).toList();
      case "IFCINDEXEDPOLYCURVE" -> indexed(c);
      case "IFCCOMPOSITECURVE" -> composite(c, depth);
      default -> throw new Unreadable("its outline is a " + c.type() + ", which we do not read");
    };
  }

  private List<Vec> composite(StepEntity c, int depth) {
    List<Vec> out = new ArrayList<>();
    for (StepEntity segment : model.getMembers(c.value(0))) {
      List<Vec> part = new ArrayList<>(points(model.get(segment, 2), depth + 1));
      if (Model.word(segment, 1).equals("F")) {
        java.util.Collections.reverse(part);
      }
      out.addAll(part);
    }
    return out;
  }

  private List<Vec> indexed(StepEntity c) {
    List<Vec> all = pointList(model.get(c, 0));
    List<StepValue> segments = Model.items(c.value(1));
    if (segments.isEmpty()) {
      return all;
    }
    List<Vec> out = new ArrayList<>();
    for (StepValue s : segments) {
      if (s instanceof StepValue.Typed t && t.type().equals("IFCARCINDEX")) {
        notes.add("an arc of its outline is written as straight pieces");
      }
      out.addAll(picked(all, s));
    }
    return out;
  }

  /** Of IfcCartesianPointList2D or 3D. */
  List<Vec> pointList(StepEntity list) {
    return Model.items(list.value(0)).stream()
        .map(v -> model.coordinates(v, model.units().mm()))
        .toList();
  }

  /** Points by their numbers from 1. */
  static List<Vec> picked(List<Vec> all, StepValue numbers) {
    List<Vec> out = new ArrayList<>();
    for (StepValue v : Model.items(numbers)) {
      double n = Model.number(v).orElse(0.0);
      if (n != Math.rint(n) || n < 1 || n > all.size()) {
        throw new Unreadable("it asks for point %s of %d".formatted(n, all.size()));
      }
      out.add(all.get((int) n - 1));
    }
    return out;
  }
}
