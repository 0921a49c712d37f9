package holloway.check.rules;

import static holloway.check.rules.Found.of;
import static holloway.check.rules.ToyCase.at;
import static holloway.check.rules.ToyCase.toy;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.finding.Finding;
import holloway.finding.Severity;
import holloway.hollow.AccessPlace;
import holloway.house.RulePlace;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What a patch takes out of a garage's board, by where it is cut and in which country. */
class GaragePatchTest {
  private static List<Finding> find(ToyCase toy) {
    return of("garage-patch", toy.find("cat6", 12));
  }

  private static ToyCase wall(String bay) {
    return toy().patched(AccessPlace.Kind.WALL_PATCH, bay, at(4057, 1000, 400));
  }

  private static ToyCase ceiling() {
    return toy().patched(AccessPlace.Kind.CEILING_PATCH, "attic", at(2000, 1500, 2390));
  }

  /** IRC Table R302.6: 1/2 in on the garage side. */
  @Test
  void theWallToTheHouse() {
    List<Finding> found = find(wall("east/bay-800").garage());
    assertEquals(1, found.size());
    assertEquals(Severity.LAW, found.get(0).severity());
    assertEquals("1/2 in (13 mm) of gypsum board", found.get(0).limit());
    assertTrue(found.get(0).source().contains("R302.6"), found.get(0).source());
    assertEquals(List.of(), find(wall("west/bay-800").garage()));
    assertEquals(List.of(), find(wall("east/bay-800")), "no garage");
    assertEquals(
        Severity.STANDARD,
        find(wall("east/bay-800").garage().place(RulePlace.UK)).get(0).severity());
  }

  /** The same table: 5/8 in Type X below a habitable room, else 1/2 in. */
  @Test
  void theCeilingWithAndWithoutARoomAbove() {
    Finding attic = find(ceiling().garage()).get(0);
    assertEquals("1/2 in (13 mm) of gypsum board", attic.limit());
    assertEquals("1/2 in (13 mm) of gypsum board", beside(2001).limit());
    assertEquals("5/8 in (16 mm) of Type X board", beside(1999).limit());
    assertEquals(List.of(), find(ceiling()), "no garage");
  }

  private static Finding beside(long roomFromX) {
    return find(ceiling().garage().roomAbove(roomFromX)).get(0);
  }
}
