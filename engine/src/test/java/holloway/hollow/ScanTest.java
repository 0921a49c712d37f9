package holloway.hollow;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holloway.geometry.Interval;
import holloway.geometry.Polygon2;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What of a line lies over a room. */
class ScanTest {
  private static final Polygon2 ROOM = Polygon2.rectangle(0, 0, 4_000_000_000L, 3_000_000_000L);

  /** The middle of a bay that lies over a wall's face is over the room on neither side of it. */
  @Test
  void aLineOnTheEdgeOfARoomIsNotOverIt() {
    List<Interval> whole = List.of(new Interval(0, 4_000_000_000L));
    assertEquals(whole, Scan.along(ROOM, 1_500_000_000L));
    assertEquals(whole, Scan.along(ROOM, 1_000_000L));
    assertEquals(List.of(), Scan.along(ROOM, 0));
    assertEquals(List.of(), Scan.along(ROOM, 3_000_000_000L));
  }
}
