package holloway.request;

import holloway.limits.OwnRule;
import holloway.units.Length;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What only the person knows of the work and of what will be bought; rules that hang on it say so
 * where it is not stated.
 *
 * @param speed that every four-pair run has to carry
 * @param coldC the coldest air while cable is pulled, degrees Celsius
 * @param cords all cords of one channel together, both ends
 * @param listings by cable kind, as printed on the jacket
 */
public record Job(
    Optional<Speed> speed,
    Optional<Integer> coldC,
    Optional<Length> cords,
    Map<String, Listing> listings) {
  /** Nothing is known. */
  public static final Job UNSTATED =
      new Job(Optional.empty(), Optional.empty(), Optional.empty(), Map.of());

  /** Of Ethernet over four pairs; the number is in Gbit/s. */
  public enum Speed {
    G1("1g"),
    G2_5("2.5g"),
    G5("5g"),
    G10("10g");

    private final String word;

    Speed(String word) {
      this.word = word;
    }

    public String word() {
      return word;
    }
  }

  /** US listings of jackets, B1 and B7; NONE: for outdoors alone. */
  public enum Listing {
    NONE,
    CMX,
    CM,
    CMR,
    CMP,
    OFN,
    OFNR,
    OFNP;

    public String word() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** May it go from storey to storey everywhere? */
    public boolean riser() {
      return this == CMR || this == CMP || this == OFNR || this == OFNP;
    }

    /** Its rank among listings; empty where it is good for less than general use. */
    public Optional<OwnRule.Listed> rank() {
      if (this == NONE || this == CMX) {
        return Optional.empty();
      }
      return Optional.of(
          plenum()
              ? OwnRule.Listed.PLENUM
              : riser() ? OwnRule.Listed.RISER : OwnRule.Listed.GENERAL);
    }

    /** May it lie in a space that carries air? */
    public boolean plenum() {
      return this == CMP || this == OFNP;
    }
  }

  public Job {
    listings = Map.copyOf(listings);
  }

  /** The rank of what is said to be printed on a cable. */
  public Optional<OwnRule.Listed> rank(String cable) {
    return listing(cable).flatMap(Listing::rank);
  }

  public Optional<Listing> listing(String cable) {
    return Optional.ofNullable(listings.get(cable));
  }
}
