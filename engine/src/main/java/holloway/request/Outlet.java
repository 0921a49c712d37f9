package holloway.request;

import holloway.house.Fact;
import holloway.house.Where;
import holloway.units.Length;
import java.util.List;
import java.util.Optional;

/**
 * A place where cables end. {@code cables} are cable kinds of the catalog, one each; {@code spare}
 * more of the first kind are pulled for later.
 *
 * @param spots the wanted spot first, then alternatives
 * @param feed the provider's box: its cables are outdoor cables to the cabinet
 * @param boxDepth of the box that will be fitted, from the face of the lining to its back
 */
public record Outlet(
    String name,
    List<Spot> spots,
    List<String> cables,
    int spare,
    boolean feed,
    String power,
    Optional<Fact<Length>> boxDepth,
    Where where) {
  /** Of any box that fits. */
  public Outlet(
      String name,
      List<Spot> spots,
      List<String> cables,
      int spare,
      boolean feed,
      String power,
      Where where) {
    this(name, spots, cables, spare, feed, power, Optional.empty(), where);
  }

  public Outlet {
    spots = List.copyOf(spots);
    cables = List.copyOf(cables);
  }
}
