package holloway.hollow;

import java.util.Optional;

/**
 * Ids of what lies open under the joists of a room with an open ceiling. Where several floors reach
 * over the room, each has such a space: the largest is named like the room, the others are counted.
 */
public final class UnderJoists {
  private static final String UNDER = "under/";

  /** In the id of the place where cable is led on from one of a room's spaces to another. */
  static final String ON_TO = "/on-to-";

  private UnderJoists() {}

  static String id(String room) {
    return UNDER + room;
  }

  public static boolean is(String id) {
    return id.startsWith(UNDER);
  }

  /** A crossing from one of a room's spaces to another, below the joists of both. */
  public static boolean leadsOn(String site) {
    return is(site) && site.contains(ON_TO);
  }

  /** The room that a person stands in there. */
  public static String room(String id) {
    return id.substring(UNDER.length()).split("/")[0];
  }

  /** Which of its room's spaces it is, counted from 1. */
  static String part(String id) {
    String[] parts = id.split("/");
    return parts.length < 3 ? "1" : parts[2];
  }

  /** The same space as the room's n-th, counted from 2. */
  static Hollow part(Hollow h, int n) {
    String id = h.id() + "/" + n;
    return new Hollow(
        id, h.kind(), h.frame(), h.clear(), h.area(), h.fill(), h.owner(), Optional.of(id));
  }
}
