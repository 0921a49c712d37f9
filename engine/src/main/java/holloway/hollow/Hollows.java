package holloway.hollow;

import holloway.framing.Framed;
import java.util.List;

/**
 * The hollow stage: from solid members to the spaces between them, the crossings, accesses and
 * stands.
 */
public final class Hollows {
  private Hollows() {}

  /**
   * @param interests spots near which crossings of surfaces and outside faces are looked for
   */
  public static HollowHouse of(Framed framed, List<Interest> interests) {
    return of(framed).near(interests);
  }

  /** What a house has wherever its ends may be. */
  public static HollowBase of(Framed framed) {
    return new HollowBase(framed);
  }
}
