package holloway.importing;

import holloway.step.StepEntity;
import holloway.step.StepValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The faces of a solid, each a loop of points in the product's frame: extrusions of outlines,
 * boundary representations, face sets, and mapped ones of these.
 */
final class Solids {
  private static final int DEEPEST = 12;

  /** A product with more faces is furniture, not a room or wall. */
  private static final int MOST_FACES = 50_000;

  private final Model model;
  private final Placements placements;
  private final Set<String> notes;
  private final Curves curves;

  /**
   * @param notes is given what was taken more simply than it stands there
   */
  Solids(Model model, Placements placements, Set<String> notes) {
    this.model = model;
    this.placements = placements;
    this.notes = notes;
    this.curves = new Curves(model, notes);
  }

  List<List<Vec>> faces(StepEntity item) {
    List<List<Vec>> out = new ArrayList<>();
    add(item, Move.NONE, out, 0);
    return out;
  }

  private void add(StepEntity item, Move move, List<List<Vec>> out, int depth) {
    if (depth > DEEPEST || out.size() > MOST_FACES) {
      throw new Unreadable("its shape is made of more parts than we read");
    }
    switch (item.type()) {
      case "IFCEXTRUDEDAREASOLID" -> extruded(item, move, out);
      case "IFCFACETEDBREP", "IFCFACETEDBREPWITHVOIDS" -> shell(model.get(item, 0), move, out);
      case "IFCSHELLBASEDSURFACEMODEL", "IFCFACEBASEDSURFACEMODEL" ->
          model.getMembers(item.value(0)).forEach(s -> shell(s, move, out));
      case "IFCPOLYGONALFACESET" -> polygonal(item, move, out);
      case "IFCTRIANGULATEDFACESET" -> indexed(item, item.value(3), move, out);
      case "IFCBOOLEANCLIPPINGRESULT", "IFCBOOLEANRESULT" -> {
        notes.add("what is cut off from its solid was not looked at");
        add(model.get(item, 1), move, out, depth + 1);
      }
      case "IFCMAPPEDITEM" -> mapped(item, move, out, depth);
      default -> throw new Unreadable("its shape is a " + item.type() + ", which we do not read");
    }
  }

  private void mapped(StepEntity item, Move move, List<List<Vec>> out, int depth) {
    StepEntity source = model.get(item, 0);
    Move origin = model.maybe(source, 0).map(placements::axes).orElse(Move.NONE);
    Move target = placements.operator(model.get(item, 1));
    Move whole = move.then(target).then(origin);
    for (StepEntity inner : model.getMembers(model.get(source, 1).value(3))) {
      add(inner, whole, out, depth + 1);
    }
  }

  private void extruded(StepEntity e, Move move, List<List<Vec>> out) {
    Move position = model.maybe(e, 1).map(placements::axes).orElse(Move.NONE);
    Move whole = move.then(position);
    Vec way = model.maybe(e, 2).map(model::direction).orElse(Vec.Z).unit();
    Vec up = way.times(model.getLength(e, 3));
    List<Vec> profile = profile(model.get(e, 0));
    List<Vec> bottom = profile.stream().map(whole::apply).toList();
    List<Vec> top = profile.stream().map(p -> whole.apply(p.plus(up))).toList();
    out.add(bottom);
    out.add(top);
    for (int i = 0; i < bottom.size(); i++) {
      int j = (i + 1) % bottom.size();
      out.add(List.of(bottom.get(i), bottom.get(j), top.get(j), top.get(i)));
    }
  }

  private List<Vec> profile(StepEntity p) {
    switch (p.type()) {
      case "IFCRECTANGLEPROFILEDEF", "IFCROUNDEDRECTANGLEPROFILEDEF" -> {
        double x = model.getLength(p, 3) / 2;
        double y = model.getLength(p, 4) / 2;
        Move at = model.maybe(p, 2).map(placements::axes).orElse(Move.NONE);
        return List.of(
            at.apply(new Vec(-x, -y, 0)),
            at.apply(new Vec(x, -y, 0)),
            at.apply(new Vec(x, y, 0)),
            at.apply(new Vec(-x, y, 0)));
      }
      case "IFCARBITRARYCLOSEDPROFILEDEF" -> {
        return curves.loop(model.get(p, 2));
      }
      case "IFCARBITRARYPROFILEDEFWITHVOIDS" -> {
        notes.add("a hole in its outline (a shaft or column) is left out");
        return curves.loop(model.get(p, 2));
      }
      default -> throw new Unreadable("its outline is a " + p.type() + ", which we do not read");
    }
  }

  private void shell(StepEntity shell, Move move, List<List<Vec>> out) {
    for (StepEntity face : model.getMembers(shell.value(0))) {
      List<StepEntity> bounds = model.getMembers(face.value(0));
      StepEntity outer =
          bounds.stream()
              .filter(b -> b.type().equals("IFCFACEOUTERBOUND"))
              .findFirst()
              .or(() -> bounds.stream().findFirst())
              .orElseThrow(() -> new Unreadable("a face has no bound"));
      StepEntity loop = model.get(outer, 0);
      if (!loop.type().equals("IFCPOLYLOOP")) {
        throw new Unreadable("a face is bounded by a " + loop.type() + ", which we do not read");
      }
      face(model.getMembers(loop.value(0)).stream().map(model::point).toList(), move, out);
    }
  }

  private void polygonal(StepEntity set, Move move, List<List<Vec>> out) {
    List<Vec> all = curves.pointList(model.get(set, 0));
    for (StepEntity face : model.getMembers(set.value(2))) {
      face(Curves.picked(all, renumbered(set.value(3), face.value(0))), move, out);
    }
  }

  private void indexed(StepEntity set, StepValue faces, Move move, List<List<Vec>> out) {
    List<Vec> all = curves.pointList(model.get(set, 0));
    for (StepValue face : Model.items(faces)) {
      face(Curves.picked(all, renumbered(set.value(4), face)), move, out);
    }
  }

  /** Numbers that count in a list of numbers (PnIndex), where there is one. */
  private static StepValue renumbered(StepValue through, StepValue numbers) {
    List<StepValue> list = Model.items(through);
    if (list.isEmpty()) {
      return numbers;
    }
    List<StepValue> out = new ArrayList<>();
    for (StepValue n : Model.items(numbers)) {
      double at = Model.number(n).orElse(0.0);
      if (!(at >= 1 && at <= list.size())) {
        throw new Unreadable("it asks for point %s of %d".formatted(at, list.size()));
      }
      out.add(list.get((int) at - 1));
    }
    return new StepValue.Many(out);
  }

  private void face(List<Vec> loop, Move move, List<List<Vec>> out) {
    if (out.size() > MOST_FACES) {
      throw new Unreadable("its shape is made of more parts than we read");
    }
    if (loop.size() >= 3) {
      out.add(loop.stream().map(move::apply).toList());
    }
  }
}
