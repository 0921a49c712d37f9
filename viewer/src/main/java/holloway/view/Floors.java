package holloway.view;

import holloway.look.Bodies;
import holloway.look.Rgb;
import holloway.look.Theme;
import java.util.List;
import org.joml.Vector3f;
import org.joml.Vector3fc;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.triangulate.polygon.PolygonTriangulator;

/** Floors of rooms as flat sheets, a little lighter than the ground. */
final class Floors {
  private static final GeometryFactory JTS = new GeometryFactory();
  private static final float UNDER = 0.012f;

  private Floors() {}

  static void add(Bodies bodies, Model model, int level, Theme theme) {
    int colour = Rgb.mix(theme.ground(), theme.additive() ? theme.clayFlat() : theme.slate(), 0.20);
    for (RoomMark r : model.rooms()) {
      if (r.level() == level) {
        triangles(bodies, r.outline(), colour);
      }
    }
  }

  private static void triangles(Bodies bodies, List<Vector3fc> ring, int colour) {
    Coordinate[] closed = new Coordinate[ring.size() + 1];
    for (int i = 0; i <= ring.size(); i++) {
      Vector3fc p = ring.get(i % ring.size());
      closed[i] = new Coordinate(p.x(), p.y());
    }
    float z = ring.get(0).z() - UNDER;
    Geometry parts = PolygonTriangulator.triangulate(JTS.createPolygon(closed));
    for (int i = 0; i < parts.getNumGeometries(); i++) {
      Coordinate[] c = parts.getGeometryN(i).getCoordinates();
      bodies.sheets.add(at(c[0], z), at(c[1], z), at(c[2], z), colour, 1);
    }
  }

  private static Vector3f at(Coordinate c, float z) {
    return new Vector3f((float) c.x, (float) c.y, z);
  }
}
