package holloway.view;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.joml.Vector3f;
import org.joml.Vector3fc;

/**
 * All of a planned house that can be seen, in metres. Lists are in the order of the plan or by id.
 *
 * @param low south-west corner of everything at its lowest, {@code high} the opposite one
 */
public record Model(
    String name,
    List<Piece> pieces,
    List<Space> spaces,
    List<Storey> storeys,
    List<RoomMark> rooms,
    List<EndMark> ends,
    List<Cable> cables,
    List<Pin> pins,
    Vector3fc low,
    Vector3fc high) {
  public Model {
    pieces = List.copyOf(pieces);
    spaces = List.copyOf(spaces);
    storeys = List.copyOf(storeys);
    rooms = List.copyOf(rooms);
    ends = List.copyOf(ends);
    cables = List.copyOf(cables);
    pins = List.copyOf(pins);
  }

  public Vector3f centre() {
    return new Vector3f(low).add(high).mul(0.5f);
  }

  public Optional<Cable> findCable(String id) {
    return cables.stream().filter(c -> c.id().equals(id)).findFirst();
  }

  /** By id or label. */
  public Optional<Pin> findPin(String name) {
    return pins.stream().filter(p -> p.id().equals(name) || p.label().equals(name)).findFirst();
  }

  public Optional<Piece> findPiece(String id) {
    return pieces.stream().filter(p -> p.id().equals(id)).findFirst();
  }

  public Optional<Space> findSpace(String id) {
    return spaces.stream().filter(s -> s.id().equals(id)).findFirst();
  }

  /**
   * The level that a point of the house belongs to: by its height, and in a split-level house by
   * the part that it lies in or next to.
   */
  public Storey storeyAt(Vector3fc p) {
    List<Storey> high = storeys.stream().filter(s -> s.holds(p.z())).toList();
    return high.size() == 1
        ? high.get(0)
        : high.stream().min(Comparator.comparingDouble(s -> away(s.part(), p))).orElseThrow();
  }

  /** Metres in plan from the nearest room of a part, 0 within one. */
  private double away(int part, Vector3fc p) {
    return rooms.stream()
        .filter(r -> storeys.get(r.level()).part() == part)
        .mapToDouble(r -> r.away(p))
        .min()
        .orElse(Double.MAX_VALUE);
  }

  public Optional<Storey> findStorey(String name) {
    return storeys.stream().filter(s -> s.name().equals(name)).findFirst();
  }
}
