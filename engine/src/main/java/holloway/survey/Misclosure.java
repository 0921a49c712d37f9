package holloway.survey;

import holloway.units.Length;
import java.util.List;

/**
 * A loop that does not close: by how much, what its own spread would allow, and the measurements in
 * it, in order.
 */
public record Misclosure(String where, Length size, Length tolerance, List<String> measurements) {}
