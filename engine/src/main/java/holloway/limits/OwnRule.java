package holloway.limits;

import holloway.finding.Severity;
import holloway.units.Length;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** A rule that a rule file of one's own states beside the figures of the pack. */
public sealed interface OwnRule {
  /** How a finding and a refusal speak of it. */
  Words words();

  /**
   * @param source whose rules, and where the file says that it is written
   * @param remedy what to do; empty for the usual words
   */
  record Words(String source, Severity severity, Optional<String> remedy) {}

  /**
   * No hole wider than this in such members.
   *
   * @param widest still allowed; nothing where none is
   */
  record Bore(Words words, Set<Part> parts, Length widest) implements OwnRule {}

  /**
   * No cable in such spaces.
   *
   * @param unless listed at least so; empty: no cable whatever is printed on it
   */
  record Room(Words words, Set<Space> spaces, Optional<Listed> unless) implements OwnRule {}

  /**
   * The middle of a hole stays this far from such things.
   *
   * @param things words of things and obstacles of a house file
   */
  record KeepOff(Words words, Set<String> things, Length least) implements OwnRule {}

  /** What is bored; the words of members that each stands for. */
  enum Part {
    STUD("stud", "king stud", "jack stud", "cripple", "post"),
    TOP_PLATE("top plate"),
    BOTTOM_PLATE("bottom plate"),
    JOIST("joist"),
    RIM("rim"),
    BLOCKING("blocking"),
    FIRE_BLOCK("fire block"),
    SUBFLOOR("subfloor"),
    SLAB("slab"),
    MASONRY("masonry"),
    CLADDING("cladding");

    private final List<String> members;

    Part(String... members) {
      this.members = List.of(members);
    }

    public List<String> members() {
      return members;
    }
  }

  /** Where cable lies; the names are those of the kinds of hollow. */
  enum Space {
    STUD_BAY,
    JOIST_BAY,
    ATTIC,
    CRAWLSPACE,
    CHASE,
    SOFFIT,
    LOWERED_CEILING,
    SKIRTING,
    FURRED_BAY,
    DAB_VOID,
    SERVICE_VOID,
    BATTEN_VOID,
    PORCH_VOID,
    ROOM_SURFACE,
    OUTSIDE_FACE,
    CONDUIT,
    TRENCH,
    SPAN
  }

  /** Listings of jackets, each good for what the one before it is good for (B1, B7). */
  enum Listed {
    GENERAL,
    RISER,
    PLENUM
  }

  /** The word of a rule file. */
  static String word(Enum<?> e) {
    return e.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The part that a member is, by its word. */
  static Optional<Part> part(String member) {
    return Arrays.stream(Part.values()).filter(p -> p.members().contains(member)).findFirst();
  }
}
