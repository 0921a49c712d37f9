package holloway.request;

import java.util.List;
import java.util.Optional;

/**
 * What the person prefers.
 *
 * @param visibleMetre minutes of dislike for a metre of cable in sight
 * @param avoid rooms not to be opened or crossed on the surface
 * @param bans ids of holes, hollows or ways ({@code attic}, {@code chase}, {@code under-floor},
 *     {@code outside}, {@code surface}) not to be used
 */
public record Wishes(
    Optional<Money> hourIsWorth,
    double visibleMetre,
    Season attic,
    List<String> avoid,
    List<String> bans,
    Profile profile,
    int crew) {
  public static final Wishes NONE =
      new Wishes(Optional.empty(), 30, Season.MILD, List.of(), List.of(), Profile.LEAST_WORK, 2);

  /** An amount in hundredths of a currency. */
  public record Money(long cents, String currency) {}

  /** When the attic is worked in; NEVER bans it. */
  public enum Season {
    MILD,
    SUMMER,
    NEVER
  }

  public Wishes {
    avoid = List.copyOf(avoid);
    bans = List.copyOf(bans);
  }
}
