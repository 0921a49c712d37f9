package holloway.hollow;

import holloway.framing.Flight;
import holloway.framing.Framed;
import holloway.geometry.Box;
import holloway.house.Fill;
import holloway.house.Stair;
import holloway.survey.PlacedStair;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The space under stairs: blind where it is closed, worked by hand where it is a cupboard, and part
 * of the room where it is open. Of the wedge only a box under its upper half is used.
 */
final class StairSpaces {
  /** Less is not worth a hole. */
  private static final long LEAST = 450_000_000;

  private StairSpaces() {}

  static List<Hollow> hollows(Framed framed) {
    List<Hollow> out = new ArrayList<>();
    for (PlacedStair s : framed.placed().stairs()) {
      Box space = new Flight(s).space();
      boolean big = space.z().length() >= LEAST && space.y().length() >= LEAST;
      if (s.stair().under() != Stair.Under.OPEN && big) {
        out.add(hollow(s, space));
      }
    }
    return out;
  }

  private static Hollow hollow(PlacedStair s, Box space) {
    boolean closed = s.stair().under() == Stair.Under.CLOSED;
    String id = "stairs/" + s.stair().name() + (closed ? "/under" : "/cupboard");
    return new Hollow(
        id,
        closed ? HollowKind.SOFFIT : HollowKind.ROOM_SURFACE,
        s.frame(),
        space,
        Optional.empty(),
        Fill.EMPTY,
        "cupboard under the " + s.stair().name(),
        closed ? Optional.empty() : Optional.of(id));
  }

  static Optional<Hollow> find(Draft draft, PlacedStair s) {
    String id = "stairs/" + s.stair().name();
    return draft.find(id + "/under").or(() -> draft.find(id + "/cupboard"));
  }
}
