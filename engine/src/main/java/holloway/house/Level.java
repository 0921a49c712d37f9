package holloway.house;

import holloway.units.Length;
import java.util.Optional;

/**
 * A storey. {@code above} names the level below it (needed when rooms do not tell); {@code rise} is
 * a taped floor-to-floor height (stairwell). A cellar is a level like another, with {@code
 * ceilingOpen} rooms if its joists are bare.
 */
public record Level(
    String name,
    FloorSpec floor,
    Fact<Length> ceilingHeight,
    Optional<String> above,
    Optional<Fact<Length>> rise,
    Where where) {}
