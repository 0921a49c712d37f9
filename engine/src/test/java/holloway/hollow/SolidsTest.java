package holloway.hollow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.framing.Framing;
import holloway.framing.Member;
import holloway.geometry.Box;
import holloway.geometry.Point3;
import holloway.house.House;
import holloway.housefile.HouseFile;
import holloway.housefile.Reading;
import holloway.survey.Survey;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The index of members tells of each one that an axis goes into, rafters with their slope too. */
final class SolidsTest {
  /**
   * Short axes begun anywhere in a member's own box, in any direction: the member must be among
   * those met, since the axis is in it from its start, and 30 mm do not leave it at once.
   */
  @ParameterizedTest
  @ValueSource(strings = {"quince-ranch", "wren-hollow"})
  void whatAnAxisBeginsInIsMet(String sample) {
    Path file = Path.of("..", "samples", sample + ".yaml");
    House house = ((Reading.Sound) HouseFile.read(file)).house();
    List<Member> members = Framing.of(Survey.of(house).value()).members();
    Solids solids = new Solids(members);
    Random random = new Random(11);
    int sloped = 0;
    for (Member m : members) {
      Box b = m.box();
      Point3 from =
          m.frame()
              .toWorld(
                  within(b.x0(), b.x1(), random),
                  within(b.y0(), b.y1(), random),
                  within(b.z0(), b.z1(), random));
      for (long[] d : new long[][] {{0, 0, 1}, {0, 0, -1}, {1, 0, 0}, {0, 1, 0}, {1, 1, 1}}) {
        Point3 to =
            new Point3(
                from.x() + d[0] * 30_000_000,
                from.y() + d[1] * 30_000_000,
                from.z() + d[2] * 30_000_000);
        assertTrue(
            solids.hits(from, to, 4_500_000).stream().anyMatch(h -> h.member() == m), m.id());
        assertEquals(solids.hits(from, to, 0).isEmpty(), solids.free(from, to, 0), m.id());
      }
      sloped += Math.abs(m.frame().w().z()) < 0.999 ? 1 : 0;
    }
    assertTrue(members.size() > 500, "" + members.size());
    assertTrue(sloped > 5, sloped + " of them stand aslope");
  }

  private static long within(long lo, long hi, Random random) {
    return lo + (hi - lo) / 4 + (long) (random.nextDouble() * (hi - lo) / 2);
  }
}
