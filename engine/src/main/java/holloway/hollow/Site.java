package holloway.hollow;

import holloway.geometry.Point3;
import java.util.List;

/**
 * A crossing on a straight axis from hollow A to hollow B.
 *
 * @param a end of the axis in hollow A, at the surface of what is pierced; {@code b} likewise in
 *     hollow B
 * @param pierces member ids on the axis in order from a to b
 * @param layers the same in words with thickness in nanometres; voids between are named too
 * @param largestBit largest lawful bit in millimetres here without a nail plate; 0 when made
 * @param platedBit the same with a nail plate (at least {@code largestBit})
 * @param made an existing opening: no work
 * @param assumed hangs on an assumed layout ("find the stud first")
 */
public record Site(
    String id,
    SiteKind kind,
    Point3 a,
    Point3 b,
    String hollowA,
    String hollowB,
    List<String> pierces,
    List<Layer> layers,
    int largestBit,
    int platedBit,
    boolean made,
    boolean assumed) {
  /** What the bit meets: member kind word or "void", thickness along the axis. */
  public record Layer(String what, long thickness) {}

  public Site {
    pierces = List.copyOf(pierces);
    layers = List.copyOf(layers);
  }

  /** The same crossing under another id. */
  public Site named(String newId) {
    return new Site(
        newId, kind, a, b, hollowA, hollowB, pierces, layers, largestBit, platedBit, made, assumed);
  }

  public Point3 middle() {
    return new Point3((a.x() + b.x()) / 2, (a.y() + b.y()) / 2, (a.z() + b.z()) / 2);
  }
}
