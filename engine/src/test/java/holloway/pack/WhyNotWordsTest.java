package holloway.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holloway.hollow.Refused;
import holloway.support.AwkwardHouseText;
import holloway.support.Chain;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Why a run has no route is said in the second language too. */
class WhyNotWordsTest {
  /** Houses with something awkward each; {@code -Dholloway.seeds=N} tries the first N. */
  private static final int SEEDS = 6;

  @Test
  void everyReasonOfAwkwardHousesIsKnown() {
    Set<String> missed = new TreeSet<>();
    int reasons = 0;
    Integer last = Integer.getInteger("holloway.seeds");
    for (long seed = 1; seed <= (last == null ? SEEDS : last); seed++) {
      try {
        AwkwardHouseText.Drawn d = AwkwardHouseText.of(seed);
        Chain house = Chain.of(d.house(), d.found().orElse(""));
        Set<String> own = OwnNames.of(house.placed(), house.request());
        Sayings german = new Sayings(Language.ENGLISH.texts(), Language.GERMAN.texts(), own);
        for (Refused r : house.routed().refused()) {
          german.say(r.line());
          reasons++;
        }
        missed.addAll(german.missed());
      } catch (AssertionError e) {
        // Not each combination is a house.
      }
    }
    assertTrue(reasons > 100, reasons + " reasons");
    assertEquals(Set.of(), missed);
  }

  /** What no house above has, and what is said when nothing draws pictures. */
  @Test
  void rareReasonsAreKnown() {
    String driver =
        "install a graphics driver with OpenGL 3.3 (on Debian and Ubuntu: apt-get install libegl1"
            + " libgl1-mesa-dri)";
    List<String> rare =
        List.of(
            "got as far as office desk",
            "joist, above the ceiling of office, 500 mm from the west wall and 1.658 m from the north"
                + " wall: out of arm's reach from where a body gets to in the attic (from experience)",
            "blocking between joists, under the floor of office, 1 ft from the east wall and 2 ft from"
                + " the south wall: out of arm's reach from where a body gets to in the attic (from"
                + " experience)",
            "office desk: higher than cable is clipped under the slope of the room (framing)",
            "strapped ceiling of office: cat6 is 13.0 mm thick with its pull head, the void is 12.0"
                + " mm deep (house file)",
            "the void behind the board of ground/hall-office/1: cat6 is 13.0 mm thick with its pull"
                + " head, the void is 12.0 mm deep (house file)",
            "got as far as ground level, wall between office and hall, 1.200 m from its west end in"
                + " the office, 300 mm above the floor of office",
            "wall board, ground level, outer wall of office, 4 ft from its south end in the office,"
                + " in its foot: nearer than 150 mm to a drain (house rules) (framing)",
            "every way is banned, or no hollow leads from cabinet to office desk",
            "every attic: no cat6 may lie there (house rules)",
            "conduit old tube: an end lies on no wall (house file)",
            "conduit old tube: 12.0 m and 270 degrees of turns; if there is a pull box half-way, say"
                + " 'parts': cable is drawn through 30 m and 180 degrees at most (TIA-569, BICSI)",
            "conduit old tube: 31.0 m and 90 degrees of turns between two pull boxes: cable is drawn"
                + " through 30 m and 180 degrees at most (TIA-569, BICSI)",
            "link to the shed: its ends lie 12.3 m apart, further than its 10.0 m: check 'length', or"
                + " where the buildings stand ('at') (house file)",
            "attic main roof by the knee wall of the office: less than 406 mm of headroom behind it"
                + " (from experience)",
            "office desk@2: a box of 45 mm does not go in: from the face to the back of the bay there"
                + " are 40 mm (from experience)",
            "joist between upper/floor/bay-1 and upper/floor/bay-2: no lawful hole in the joist (IRC"
                + " R502.8.2, R802.7.2; I-joist makers' guides: Through an I-joist only the web's"
                + " knockouts, 38 mm (1-1/2 in); this is 44 mm.) (rule pack)",
            "wall board at ground/a-b/1/bay-30: nearer than 150 mm to a drain (house rules) (framing)",
            "this program draws no pictures",
            "nothing here can draw a picture: " + driver,
            "no display and no driver that draws without one: " + driver + " (EGL: not found)",
            "the graphics driver has OpenGL 2.1; " + driver,
            "nothing here can draw (libGL.so: no such file): " + driver,
            "the graphics driver cannot draw a picture of 1100 x 760 pixels; ask for a smaller one");
    Sayings german =
        new Sayings(
            Language.ENGLISH.texts(),
            Language.GERMAN.texts(),
            Set.of(
                "office",
                "hall",
                "ground",
                "office desk",
                "main roof",
                "old tube",
                "to the shed",
                "cat6",
                "house rules"));
    rare.forEach(german::say);
    assertEquals(Set.of(), german.missed());
  }
}
