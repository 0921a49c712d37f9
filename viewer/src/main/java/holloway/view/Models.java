package holloway.view;

import holloway.geometry.Point3;
import holloway.look.Theme;
import holloway.scene.Brick;
import holloway.scene.Scene;
import holloway.scene.Vec;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/** Makes models for drawing, in metres, out of the scene that model files are made of too. */
public final class Models {
  private static final float MM = 1e-3f;

  private Models() {}

  /**
   * @param length puts metres of cable into words
   */
  public static Model of(Scene s, DoubleFunction<String> length) {
    List<Piece> pieces = s.solids().stream().map(Models::piece).toList();
    Vector3f low = new Vector3f(Float.MAX_VALUE);
    Vector3f high = new Vector3f(-Float.MAX_VALUE);
    for (Piece p : pieces) {
      low.min(new Vector3f(p.centre()).sub(p.reach()));
      high.max(new Vector3f(p.centre()).add(p.reach()));
    }
    return new Model(
        s.house(),
        pieces,
        s.spaces().stream().map(Models::space).toList(),
        s.levels().stream().map(Models::storey).toList(),
        s.rooms().stream().map(Models::room).toList(),
        s.ends().stream().map(e -> new EndMark(e.name(), metres(e.at()), e.cabinet())).toList(),
        s.tubes().stream().map(t -> cable(t, length)).toList(),
        s.pins().stream().map(Models::pin).toList(),
        low,
        high);
  }

  /** A point of the plan in metres. */
  public static Vector3f place(Point3 p) {
    return metres(p);
  }

  static Vector3f metres(Point3 p) {
    return new Vector3f((float) (p.x() / 1e9), (float) (p.y() / 1e9), (float) (p.z() / 1e9));
  }

  private static Vector3f metres(Vec v) {
    return new Vector3f((float) (v.x() / 1e3), (float) (v.y() / 1e3), (float) (v.z() / 1e3));
  }

  private static List<Vector3fc> metres(List<Vec> all) {
    return all.stream().<Vector3fc>map(Models::metres).toList();
  }

  private static Storey storey(Scene.Level l) {
    return new Storey(
        l.name(),
        l.order(),
        l.part(),
        (float) l.floor() * MM,
        (float) l.ceiling() * MM,
        (float) l.low() * MM,
        (float) l.high() * MM);
  }

  private static RoomMark room(Scene.Room r) {
    return new RoomMark(r.name(), r.level(), metres(r.outline()), metres(r.middle()));
  }

  private static Piece piece(Scene.Solid s) {
    Brick b = s.brick();
    return new Piece(
        s.id(),
        s.kind(),
        metres(b.middle()),
        metres(b.a()),
        metres(b.b()),
        metres(b.c()),
        s.level(),
        s.flat(),
        s.owner(),
        s.assumed());
  }

  private static Space space(Scene.Space s) {
    Brick b = s.brick();
    return new Space(
        s.id(),
        s.kind(),
        metres(b.middle()),
        metres(b.a()),
        metres(b.b()),
        metres(b.c()),
        s.runs(),
        s.open(),
        s.owner(),
        s.fill());
  }

  private static Cable cable(Scene.Tube t, DoubleFunction<String> length) {
    // Widths are numbers, not millimetres.
    List<Vector3fc> fan = new ArrayList<>();
    for (Vec f : t.laid().fan()) {
      fan.add(new Vector3f((float) f.x(), (float) f.y(), (float) f.z()));
    }
    return new Cable(
        t.id(),
        t.number(),
        Theme.dash(t.number()),
        metres(t.path()),
        t.steps(),
        t.guessed(),
        metres(t.laid().points()),
        fan,
        t.laid().steps(),
        (float) t.diameterMm() * MM / 2,
        length.apply(t.metres()));
  }

  private static Pin pin(Scene.Pin p) {
    return new Pin(p.id(), p.label(), metres(p.from()), metres(p.to()), p.runs(), p.breaksLaw());
  }
}
